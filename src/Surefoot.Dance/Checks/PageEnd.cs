using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>
/// Where a page grows while somebody writes, and what is no fault there yet. It grows in its last part with steps in
/// it; headings without steps may stand after that one: many write those first.
/// </summary>
internal static class PageEnd
{
    /// <summary>The index of that part, or -1 for a page without steps.</summary>
    public static int Part(Page page) => page.Parts.FindLastIndex(HasSteps);

    /// <summary>Counts stated that the page does not reach, as what is still to write; null where it is another part that is short.</summary>
    public static StillToWrite? Short(DanceCase dance, int part, string what, int stated, int length) =>
        part >= 0 && part == Part(dance.Page) && length < stated ? new(Where(dance.Page, part), $"{what}: {length} of {Say.Counts(stated)} so far.", Writing.Stated) : null;

    /// <summary>What is wrong with a dance that ends where its page now ends, as it reads while somebody may still write on there; null for a page without steps.</summary>
    public static StillToWrite? SoFar(Page page, string message) => Open(page, $"So far {char.ToLowerInvariant(message[0])}{message[1..]}");

    /// <summary>What only the next counts will show, while somebody may still write on there; null for a page without steps.</summary>
    public static StillToWrite? Open(Page page, string says)
    {
        var part = Part(page);
        if (part < 0) return null;
        var last = page.Parts[part].Lines.FindLast(IsSteps)!.Span.End;
        // Also on headings below it that have no steps yet: who writes those goes on there.
        return new(TextSpan.Between(last, page.Source.Text.Length), says, Writing.Open);
    }

    /// <summary>A role whose counts are missing up to the end of the last part: she may come to them next, line by line or all at once.</summary>
    public static StillToWrite? NotYet(DanceCase dance, LayingFault gap, string says) =>
        gap.Role is not null && gap.Part == Part(dance.Page) && gap.To.Value - Beats.One >= dance.Score.Parts[gap.Part].Length ? new(Where(dance.Page, gap.Part), says, Writing.Open) : null;

    /// <summary>A line that has fewer steps than its counts ask for, while somebody stands at its end.</summary>
    public static StillToWrite LineEnd(Page page, int from, string says)
    {
        var end = page.Source.Text.IndexOf('\n', from);
        return new(TextSpan.Between(from, end < 0 ? page.Source.Text.Length : end), says, Writing.Typed);
    }

    /// <summary>A word that nobody knows, while somebody stands right behind its last letter.</summary>
    public static StillToWrite Word(TextSpan span, string typed) => new(new(span.End, 0), $"\"{typed}\" is still being written.", Writing.Typed);

    /// <summary>True when the page stops before the counts stated for its last part or for the whole: nothing can be said of how its end leads into its start.</summary>
    public static bool IsShort(DanceCase dance)
    {
        var part = Part(dance.Page);
        if (part < 0 || part >= dance.Score.Parts.Count) return false;
        return dance.Score.Parts[part].Length.Ceiling < Stated(dance.Page.Parts[part])
            || dance.Score.Counts.Ceiling < PartLength.StatedForAll(dance.Page);
    }

    /// <summary>The counts a heading states, in words or as a range; 0 where it states none.</summary>
    public static int Stated(PartNode part) => part.StatedCounts ?? (part.StatedRange is { } range ? range.To - range.From + 1 : 0);

    private static bool HasSteps(PartNode part) => part.Lines.Exists(IsSteps);

    private static bool IsSteps(LineNode line) => line is CountLine or RepeatLine;

    // From the part's first line to the next heading, or to the end of the page. Whoever stands on the heading looks at the number.
    private static TextSpan Where(Page page, int part)
    {
        var node = page.Parts[part];
        var from = node.Lines[0].Span.Start;
        var to = part + 1 < page.Parts.Count ? page.Parts[part + 1].Span.Start : page.Source.Text.Length;
        return TextSpan.Between(from, to);
    }
}
