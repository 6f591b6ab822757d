using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>
/// The last part of a page with steps in it, which is the one that grows while somebody writes. Headings without
/// steps may stand after it: many write those first.
/// </summary>
internal static class PageEnd
{
    /// <summary>The index of that part, or -1 for a page without steps.</summary>
    public static int Part(Page page) => page.Parts.FindLastIndex(HasSteps);

    /// <summary>Counts stated that the page does not reach, as what is still to write; null where it is another part that is short.</summary>
    public static StillToWrite? Short(DanceCase dance, int part, string what, int stated, int length) =>
        part >= 0 && part == Part(dance.Page) && length < stated ? new(Where(dance.Page, part), $"{what}: {length} of {Say.Counts(stated)} so far.") : null;

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

    private static bool HasSteps(PartNode part) => part.Lines.Exists(l => l is CountLine or RepeatLine);

    // From the part's first line to the next heading, or to the end of the page. Whoever stands on the heading looks at the number.
    private static TextSpan Where(Page page, int part)
    {
        var node = page.Parts[part];
        var from = node.Lines[0].Span.Start;
        var to = part + 1 < page.Parts.Count ? page.Parts[part + 1].Span.Start : page.Source.Text.Length;
        return TextSpan.Between(from, to);
    }
}
