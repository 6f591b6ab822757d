using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Writing;

/// <summary>"1st. ... 2d. ... 16th.": numbers of order that go through to a whole phrase, one step beside nearly each, are its counts.</summary>
internal static class OrderAsCounts
{
    // Shorter lists number movements as a rule.
    private const int Fewest = 8;

    // "1st. ... 2d. ... 3d and 4th. ... 5th to 8th. The same": each as long as its numbers say.
    private static bool Ranges(PlanPart part, List<PlanGroup> items, PhraseWords words)
    {
        if (items.Count < 3 || !items.Exists(g => g.Label!.Length > 1) || items.Exists(g => g.Label!.Unit != LabelUnit.Order)) return false;
        if (part.Groups.Exists(g => g is { Label: null, Again: null, Reckons: 0 } && !g.Phrases.TrueForAll(p => Laying.OnlyLooks(words.Read(p.Text)) || !words.Speaks(p.Text)))) return false;
        var next = 1;
        foreach (var item in items.DistinctBy(g => g.Line))
        {
            if (item.Label!.From != next) return false;
            next = item.Label.To + 1;
        }

        if (next - 1 < Fewest || (next - 1) % 4 != 0) return false;
        var told = items.FindAll(g => g.Again is null);
        if (told.Count(g => BarsOrCounts.Own(g, words) == Beats.Of(g.Label!.Length)) * 4 < told.Count * 3) return false;
        foreach (var item in items) item.Label = item.Label! with { Unit = LabelUnit.Counts };
        return true;
    }

    /// <returns>Slips of a number that were mended, with their line.</returns>
    public static List<(int Line, string Says)> In(PlanPart part, PhraseWords words)
    {
        var mended = new List<(int, string)>();
        var items = part.Groups.FindAll(g => g.Label is not null);
        if (Ranges(part, items, words)) return mended;
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
