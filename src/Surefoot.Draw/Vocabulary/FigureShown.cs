using System.Text;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Draw.Vocabulary;

/// <summary>One way of dancing a figure from one foot, step by step.</summary>
/// <param name="Way">"going forward", "turning left", or empty for the only way.</param>
public sealed record FigureShown(string Way, Foot From, DanceScore Score)
{
    // A name that no notebook would give a figure.
    private const string Stand = "the figure shown here";

    // Figures that fill any counts are shown over so many.
    private const int AnyCounts = 4;

    /// <summary>Every way of a figure, from the left foot and from the right.</summary>
    public static List<FigureShown> All(Figure figure, FigureBook book)
    {
        var shown = new List<FigureShown>();
        for (var v = 0; v < figure.Versions.Count; v++)
        {
            foreach (var foot in (ReadOnlySpan<Foot>)[Foot.Left, Foot.Right]) shown.Add(new(WayOf(figure, v), foot, Danced(figure, v, foot, book)));
        }

        return shown;
    }

    /// <summary>True when lead and follow have words of their own.</summary>
    public static bool ForCouples(Figure figure) =>
        figure.TurnsRole is not null || figure.Versions.Exists(v => v.Lines.Exists(l => l.Segments.Exists(s => s.Role is not null)));

    private static string WayOf(Figure figure, int index)
    {
        var version = figure.Versions[index];
        var turning = version.Turning switch { > 0 => "turning left", < 0 => "turning right", _ => "" };
        if (figure.Versions.Count == 1 || version.Going is not { } going) return turning;
        return turning.Length > 0 ? $"going {going.Word()}, {turning}" : $"going {going.Word()}";
    }

    // A small page describes the figure by this way alone and dances it once: the reader itself says what it comes to.
    private static DanceScore Danced(Figure figure, int index, Foot foot, FigureBook book)
    {
        var page = new StringBuilder("Shown\n");
        page.Append(ForCouples(figure) ? "Kind: partner, circle\nHold: sweetheart\n" : "Kind: line, 1 wall\n");
        page.Append($"Feet: same, {foot.Word()} free\n\nFigure: {Stand}");
        foreach (var line in Facts(figure)) page.Append(line).Append('\n');
        foreach (var line in Body(figure, index)) page.Append(line).Append('\n');
        page.Append($"\nPart A\n{Counts(figure, index)} {Stand}\n");
        return DanceReader.Read(page.ToString(), book).Score;
    }

    // The heading's counts, and what is said of turns and feet; names, sources and examples are left out.
    private static IEnumerable<string> Facts(Figure figure)
    {
        var (source, from, _) = Place(figure);
        var heading = source.Words(source.Line(from));
        var paren = heading.IndexOf('(', StringComparison.Ordinal);
        yield return paren < 0 ? "" : " " + heading[paren..];
        for (var n = from + 1; n < FirstLine(figure, 0); n++)
        {
            var line = source.Words(source.Line(n)).Trim();
            if (line.StartsWith("turn", StringComparison.OrdinalIgnoreCase) && line.Contains(':', StringComparison.Ordinal)) yield return line;
            else if (line.StartsWith("free after", StringComparison.OrdinalIgnoreCase) || line.StartsWith("closing", StringComparison.OrdinalIgnoreCase)) yield return line;
        }
    }

    private static IEnumerable<string> Body(Figure figure, int index)
    {
        var (source, _, to) = Place(figure);
        // The line before another way's first counts names that way.
        var end = index + 1 < figure.Versions.Count ? FirstLine(figure, index + 1) - 1 : to;
        for (var n = FirstLine(figure, index); n < end; n++)
        {
            var line = source.Words(source.Line(n));
            if (!line.StartsWith('>')) yield return line;
        }
    }

    private static int FirstLine(Figure figure, int index) =>
        figure.Versions[index].Lines.Count > 0 ? figure.Home!.LineOf(figure.Versions[index].Lines[0].Span.Start) : Place(figure).To;

    private static (SourceText Source, int From, int To) Place(Figure figure)
    {
        var home = figure.Home!;
        foreach (var (head, from, to) in FigureReader.Heads(home))
        {
            if (head.Name == figure.Name) return (home, from, to);
        }

        return (home, 0, 0);
    }

    /// <summary>The counts the figure is danced on, written as a page writes them: "1&amp;2", "1,2,3&amp;4".</summary>
    private static string Counts(Figure figure, int index)
    {
        var lines = figure.Versions[index].Lines;
        var whole = Math.Max(figure.StatedCounts, lines.Count == 0 ? 0 : lines.Max(l => l.Group.End.Whole - 1));
        if (figure.AnyCounts) whole = Math.Max(whole, AnyCounts);
        if (figure.AnyCounts || lines.Count == 0) return $"1-{whole}";
        var counts = new StringBuilder();
        var last = Count.At(0);
        foreach (var slot in lines.SelectMany(l => l.Group.Slots).Concat(Enumerable.Range(1, whole).Select(Count.At)).Distinct().Order())
        {
            var name = slot.Name;
            if (!slot.Value.IsWhole) counts.Append(slot.Whole == 0 ? name[..1] : name[^1..]);
            else counts.Append(counts.Length > 0 && last.Value.IsWhole ? "," : "").Append(slot.Whole);
            last = slot;
        }

        return counts.ToString();
    }
}
