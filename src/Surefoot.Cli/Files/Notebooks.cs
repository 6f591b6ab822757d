using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;

namespace Surefoot.Cli.Files;

/// <summary>
/// The words and figures in force for a page. A figure page lends its figures to every page of its folder and
/// of the folders below, as long as they hold pages: such a tree of folders is one notebook, whether the
/// whole of it is asked for or a single page.
/// </summary>
internal sealed class Notebooks
{
    // A head is shorter than this, so a page that is none of figures is known after one small read.
    private const int Head = 4096;

    private readonly Dictionary<string, FolderBook> _folders = new(StringComparer.Ordinal);

    /// <summary>Figure pages that could not be read.</summary>
    public List<Trouble> Troubles { get; } = [];

    /// <summary>The book for a page; a figure page reads with the other figure pages' figures, not its own.</summary>
    public FigureBook For(string page)
    {
        var full = Path.GetFullPath(page);
        var folder = Of(Path.GetDirectoryName(full) ?? full);
        if (!folder.Pages.ContainsKey(full)) return folder.Book;
        var book = folder.Below;
        foreach (var (path, text) in folder.Pages)
        {
            if (!string.Equals(path, full, StringComparison.Ordinal)) book = book.With(text);
        }

        return book;
    }

    /// <summary>The book of a folder itself.</summary>
    public FigureBook ForFolder(string folder) => Of(Path.GetFullPath(folder)).Book;

    /// <summary>True for a page that lends its figures.</summary>
    public bool IsFigurePage(string page)
    {
        var full = Path.GetFullPath(page);
        return Of(Path.GetDirectoryName(full) ?? full).Pages.ContainsKey(full);
    }

    private FolderBook Of(string folder)
    {
        if (_folders.TryGetValue(folder, out var known)) return known;
        var above = Path.GetDirectoryName(folder);
        var below = above is not null && HoldsPages(above) ? Of(above).Book : FigureBook.Shipped;
        var book = below;
        var pages = new SortedDictionary<string, SourceText>(StringComparer.Ordinal);
        foreach (var path in Pages(folder))
        {
            if (!LooksLikeFigures(path)) continue;
            var (file, trouble) = PageFiles.Read(path);
            if (trouble is not null) Troubles.Add(trouble);
            if (file is not null) pages.Add(path, new(file.Text));
        }

        foreach (var text in pages.Values) book = book.With(text);
        return _folders[folder] = new(below, book, pages);
    }

    private static bool HoldsPages(string folder) => Pages(folder).Any();

    private static IEnumerable<string> Pages(string folder)
    {
        try
        {
            return Directory.EnumerateFiles(folder).Where(PageFinder.IsPage).ToList();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static bool LooksLikeFigures(string path)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
            Span<byte> head = stackalloc byte[Head];
            head = head[..stream.ReadAtLeast(head, Head, throwOnEndOfStream: false)];
            if (head is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..]) return PageFiles.Read(path).File is { } file && HeadReader.IsFigurePage(file.Text);
            return HeadReader.IsFigurePage(System.Text.Encoding.UTF8.GetString(head));
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    private sealed record FolderBook(FigureBook Below, FigureBook Book, SortedDictionary<string, SourceText> Pages);
}
