namespace Surefoot.Web.Deeds;

/// <summary>Files that are gone when they are closed, under names of our own: what was uploaded names none.</summary>
internal static class TempFile
{
    public static string Name() => Path.Combine(Path.GetTempPath(), "surefoot-" + Path.GetRandomFileName());

    public static FileStream Make() => Open(Name(), FileMode.CreateNew);

    /// <summary>Opens a file that was written already; it goes when the stream is closed.</summary>
    public static FileStream Last(string name) => Open(name, FileMode.Open);

    private static FileStream Open(string name, FileMode mode) =>
        new(name, mode, FileAccess.ReadWrite, FileShare.Read | FileShare.Delete, 1 << 16, FileOptions.DeleteOnClose | FileOptions.Asynchronous);
}
