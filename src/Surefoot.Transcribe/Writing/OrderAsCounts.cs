using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Writing;

/// <summary>"1st. ... 2d. ... 16th.": numbers of order that go through to a whole phrase, one step beside nearly each, are its counts.</summary>
internal static class OrderAsCounts
{
    // Shorter lists number movements as a rule.
    private const int Fewest = 8;

    /// <returns>Slips of a number that were mended, with their line.</returns>
    public static List<(int Line, string Says)> In(PlanPart part, PhraseWords words)
    {
        var mended = new List<(int, string)>();
        var items = part.Groups.FindAll(g => g.Label is not null);
        if (items.Count < Fewest || items.Count % 4 != 0 || items.Count != part.Groups.Count(g => g.Reckons == 0) || items.Exists(g => g is not { Role: null, Again: null, Label: { Unit: LabelUnit.Order, Length: 1 } })) return mended;
        for (var i = 0; i < items.Count; i++)
        {
            // "12th, 12th, 14th": the second is the 13th.
            if (items[i].Label!.From != i + 1 && !(items[i].Label!.From == i && (i + 1 == items.Count || items[i + 1].Label!.From == i + 2))) return [];
        }

        if (items.Count(g => BarsOrCounts.Own(g, words) == Beats.One) * 4 < items.Count * 3) return [];
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i].Label!.From != i + 1) mended.Add((items[i].Line.Number, $"the second {i} was taken for {i + 1}, because {i + 2} comes next"));
            items[i].Label = CountLabel.Of(i + 1, 1);
        }

        return mended;
    }
}
