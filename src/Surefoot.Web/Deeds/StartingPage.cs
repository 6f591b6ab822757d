using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;

namespace Surefoot.Web.Deeds;

/// <summary>The small page a new dance begins with, and pages with another title.</summary>
internal static class StartingPage
{
    // Both are danced without a complaint (tested), so that whoever begins sees a clean page first.
    private const string Couples = """
        {0}
        Kind:   partner, circle
        Meter:  4/4
        Tempo:  {1}
        Hold:   sweetheart
        Facing: LOD
        Feet:   same, left free
        Level:  beginner
        Phrase: not checked

        Part A  (8 counts)
        1-2    Rock forward L, recover R
        3&4    Shuffle back L R L
        5-6    Rock back R, recover L
        7&8    Shuffle forward R L R

        > Write your own counts over these.
        """;

    private const string Line = """
        {0}
        Kind:   line, 1 wall
        Meter:  4/4
        Tempo:  {1}
        Feet:   right free
        Level:  beginner
        Phrase: not checked

        Section 1  (8 counts)
        1-4    Vine right, touch L together
        5-8    Vine left, touch R together

        > Write your own counts over these.
        """;

    public static string For(string title, bool couples, int? tempo) =>
        (couples ? Couples : Line).Replace("{0}", title, StringComparison.Ordinal).Replace("{1}", tempo is { } told ? $"{told - 8}-{told + 8}" : "108-124", StringComparison.Ordinal) + "\n";

    /// <summary>The page with another title, its first line; nothing else changes.</summary>
    public static string Retitled(string text, string title)
    {
        var page = PageReader.Read(text, FigureBook.Shipped).Page;
        return page.TitleSpan is { } span ? string.Concat(text.AsSpan(0, span.Start), title, text.AsSpan(span.End)) : $"{title}\n{text}";
    }

    /// <summary>A title as one line that reads as a title; empty when nothing is left of it.</summary>
    public static string Title(string? typed)
    {
        var title = string.Join(' ', (typed ?? "").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Trim();
        return title.Length > 120 ? title[..120].TrimEnd() : title;
    }
}
