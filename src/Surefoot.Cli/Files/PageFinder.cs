using Surefoot.Dance.Text;

namespace Surefoot.Cli.Files;

/// <summary>Finds the pages that were asked for: files as they are, folders with everything below them.</summary>
internal static class PageFinder
{
    /// <returns>Each page once, in the order of their names, and what could not be looked into.</returns>
    public static (List<string> Pages, List<Trouble> Troubles) Find(IEnumerable<string> asked)
    {
        var pages = new SortedDictionary<string, string>(StringComparer.Ordinal);
        var known = new HashSet<string>(StringComparer.Ordinal);
        var troubles = new List<Trouble>();
        foreach (var path in asked)
        {
            if (Directory.Exists(path))
            {
                var found = Below(path, troubles);
                if (found.Count == 0) troubles.Add(new(path, "there are no pages in this folder.", "Pages are plain text files whose names end in .dance."));
                foreach (var page in found) Add(page);
            }
            else if (!File.Exists(path) && Pattern(path) is { Count: > 0 } matches)
            {
                foreach (var page in matches) Add(page);
            }
            else
            {
                Add(path);
            }
        }

        return ([.. pages.Keys], troubles);

        void Add(string page)
        {
            if (known.Add(Full(page))) pages.TryAdd(page, page);
        }
    }

    /// <summary>Every page of a folder and the folders below it. Links to folders are not followed: they may lead in a circle.</summary>
    private static List<string> Below(string folder, List<Trouble> troubles)
    {
        var found = new List<string>();
        try
        {
            foreach (var file in Directory.EnumerateFiles(folder))
            {
                if (IsPage(file)) found.Add(Shown(file));
            }

            foreach (var inner in Directory.EnumerateDirectories(folder))
            {
                if (Path.GetFileName(inner).StartsWith('.') || File.GetAttributes(inner).HasFlag(FileAttributes.ReparsePoint)) continue;
                found.AddRange(Below(inner, troubles));
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            troubles.Add(PageFiles.Refused(folder, fault, "read"));
        }

        return found;
    }

    public static bool IsPage(string path) => PageNames.IsPage(path);

    // "./a" and "a" are one page to the reader.
    private static string Shown(string path) => path.StartsWith("./", StringComparison.Ordinal) ? path[2..] : path;

    private static string Full(string path)
    {
        try
        {
            return Path.GetFullPath(path);
        }
        catch (ArgumentException)
        {
            return path;
        }
    }

    // Some shells leave "*.dance" to the program.
    private static List<string>? Pattern(string path)
    {
        var name = Path.GetFileName(path);
        if (!name.Contains('*', StringComparison.Ordinal) && !name.Contains('?', StringComparison.Ordinal)) return null;
        var folder = Path.GetDirectoryName(path) is { Length: > 0 } said ? said : ".";
        return Directory.Exists(folder) ? [.. Directory.EnumerateFiles(folder, name).Where(IsPage).Select(Shown)] : null;
    }
}
