using System.Runtime.CompilerServices;

namespace Surefoot.Tests.Support;

/// <summary>Finds the repository's folders from wherever the tests run.</summary>
internal static class Root
{
    public static string Folder { get; } = Find();

    public static string At(params string[] parts) => Path.Combine([Folder, .. parts]);

    public static IEnumerable<string> Pages(params string[] folder) =>
        Directory.Exists(At(folder)) ? Directory.EnumerateFiles(At(folder), "*.dance", SearchOption.AllDirectories).Order(StringComparer.Ordinal) : [];

    private static string Find([CallerFilePath] string here = "")
    {
        var folder = Path.GetDirectoryName(here);
        while (folder is not null && !File.Exists(Path.Combine(folder, "Surefoot.slnx"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("The tests were built from a folder that is no longer there.");
    }
}
