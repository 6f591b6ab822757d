using System.Globalization;
using Surefoot.Transcribe.Layout;

namespace Surefoot.Transcribe.Writing;

/// <summary>
/// A part that comes out shorter than the sheet tells is waited to its end, so that what was not understood in it moves
/// nothing of the parts after it.
/// </summary>
internal static class PartsFilled
{
    // More counts than these are not missing: something else was meant.
    private const int MostMissing = 8;

    public static void In(List<DraftPart> parts, SheetFacts facts)
    {
        // The last one moves nothing.
        for (var i = 0; i + 1 < parts.Count; i++)
        {
            // Counts that go on through the dance need nothing of the kind.
            if (parts[i].Lines.Count == 0 || parts[i].Lines.Min(l => l.Counts.From) > 1 || parts[i + 1].Lines.Count == 0 || parts[i + 1].Lines.Min(l => l.Counts.From) > 1) continue;
            var missing = (parts[i].StatedCounts ?? Usual(parts, facts)) - Length(parts[i]);
            if (missing is > 0 and <= MostMissing) Fill(parts[i], missing);
        }
    }

    // "32 counts" of four parts, most of which have eight.
    private static int Usual(List<DraftPart> parts, SheetFacts facts)
    {
        if (facts.Counts is not { } all || parts.Count < 2 || all % parts.Count != 0) return 0;
        var each = all / parts.Count;
        return parts.Count(p => Length(p) == each) * 2 >= parts.Count ? each : 0;
    }

    private static int Length(DraftPart part) => part.Lines.Select(l => l.Counts.To).DefaultIfEmpty(0).Max();

    private static void Fill(DraftPart part, int missing)
    {
        var few = missing == 1 ? "one count" : string.Create(CultureInfo.InvariantCulture, $"{missing} counts");
        foreach (var line in part.Lines.Where(l => !l.Labelled)) line.Assumed.Add($"its counts are not sure, because the steps of its part are {few} short");
        var last = part.Lines.MaxBy(l => l.Counts.To)!;
        var wait = new DraftLine(null, CountLabel.Of(last.Counts.To + 1, missing), [new(missing == 1 ? "hold" : $"hold {missing} counts", "", [])], last.From);
        wait.Assumed.Add($"the part is waited to its end, {few}, because the sheet tells how long it is");
        part.Lines.Add(wait);
    }
}
