using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;

namespace Surefoot.Web.Notebook;

/// <summary>Where the studio's pages come from. Read only: keeping pages is somebody else's work.</summary>
internal interface INotebook
{
    /// <summary>The words and figures in force on every page.</summary>
    FigureBook Book { get; }

    /// <summary>The names of all dances, in the order in which they are listed.</summary>
    IReadOnlyList<string> List();

    /// <summary>A dance's text, or null where there is no such dance.</summary>
    string? Read(string name);
}

/// <summary>A folder of pages, as the demo notebook is. A page headed "Page: figures" lends its figures to all.</summary>
internal sealed class FolderNotebook : INotebook
{
    private const string Ending = ".dance";
    private readonly SortedDictionary<string, string> _paths = new(StringComparer.Ordinal);

    public FolderNotebook(string folder)
    {
        Book = FigureBook.Shipped;
        if (!Directory.Exists(folder)) return;
        foreach (var path in Directory.EnumerateFiles(folder, "*" + Ending, SearchOption.AllDirectories).Order(StringComparer.Ordinal))
        {
            var text = File.ReadAllText(path);
            if (LendsFigures(text)) Book = Book.With(new SourceText(text));
            else _paths[Path.GetFileNameWithoutExtension(path)] = path;
        }
    }

    public FigureBook Book { get; }

    public IReadOnlyList<string> List() => [.. _paths.Keys];

    // Only names that were found are looked up, so that no name leads out of the folder.
    public string? Read(string name) => _paths.TryGetValue(name, out var path) ? File.ReadAllText(path) : null;

    private static bool LendsFigures(string text)
    {
        foreach (var line in text.AsSpan().EnumerateLines())
        {
            if (line.StartsWith("Figure:", StringComparison.OrdinalIgnoreCase)) return false;
            if (line.StartsWith("Page:", StringComparison.OrdinalIgnoreCase)) return line.Contains("figure", StringComparison.OrdinalIgnoreCase);
        }

        return false;
    }
}
