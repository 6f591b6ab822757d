namespace Surefoot.Tests.Support;

/// <summary>Folders that tests make for themselves.</summary>
internal static class TestFolder
{
    private const int Attempts = 200;

    /// <summary>Removes a folder. Programs and databases just closed may still let go of their files, so it is tried again for a while.</summary>
    /// <exception cref="IOException">Somebody still writes there long after the test.</exception>
    public static async Task RemoveAsync(string folder)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
                return;
            }
            catch (Exception fault) when (attempt < Attempts && fault is IOException or UnauthorizedAccessException)
            {
                await Task.Delay(100);
            }
        }
    }
}
