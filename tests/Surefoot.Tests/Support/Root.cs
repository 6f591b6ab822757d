namespace Surefoot.Tests.Support;

/// <summary>Finds the repository's folders from wherever the tests run.</summary>
internal static class Root
{
    public static string Folder { get; } = Find();

    public static string At(params string[] parts) => Path.Combine([Folder, .. parts]);

    public static IEnumerable<string> Pages(params string[] folder) =>
        Directory.Exists(At(folder)) ? Directory.EnumerateFiles(At(folder), "*.dance", SearchOption.AllDirectories).Order(StringComparer.Ordinal) : [];

    // From where the built tests lie, not from where their source was: a build whose paths are made the
    // same on every machine does not know its own folder.
    private static string Find()
    {
        var folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Surefoot.slnx"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("The tests do not lie inside the repository.");
    }
}
