using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;

namespace Surefoot.Web.OnTheFloor;

/// <summary>A stretch that is taught in one go.</summary>
/// <param name="From">First count of the repeat.</param>
/// <param name="To">Last count of it.</param>
internal sealed record FloorBite(string Name, int From, int To);

/// <summary>What there is to choose from on the floor: 8s (in 3/4 of two bars) and what lessons teach, whole parts, the whole dance, and tags and the like. The handbook's trade.md, "A lesson".</summary>
internal static class FloorBites
{
    public static List<FloorBite> Of(DanceScore score)
    {
        var size = score.Facts.Meter.Beats == 3 ? 6 : 8;
        var total = score.Counts.Ceiling;
        var bites = new List<FloorBite>();
        var times = new int[score.Parts.Count];
        var taught = TeachingBite.Of(score, []).Select(b => (b.Name, At: b.Stretches[0])).ToList();
        for (var s = 0; s < score.Sections.Count; s++)
        {
            var section = score.Sections[s];
            var part = score.Parts[section.Part];
            var length = part.Length.Ceiling;
            var before = section.Start.Whole - 1;
            var time = ++times[section.Part];
            var label = (part.Label.Length > 0 ? part.Label : "The dance") + (time > 1 ? $", time {time}" : "");
            var eights = Enumerable.Range(0, (length + size - 1) / size).Select(n => (From: n * size, Counts: Math.Min(size, length - (n * size))));
            // What lessons teach in other stretches is there as well; the longer one first, so that an 8 goes on to an 8.
            var shorter = taught.Where(t => t.At.Section == s).Select(t => (t.At.From, t.At.Counts));
            foreach (var (at, counts) in eights.Union(shorter).OrderBy(b => b.From).ThenByDescending(b => b.Counts))
            {
                // A lesson's sheet calls it so, where it says more than the part's own letter.
                var name = taught.Find(t => t.At.Section == s && t.At.From == at && t.At.Counts == counts).Name;
                bites.Add(new($"{label}, {(counts == 1 ? Name(part, at + 1) : $"{Name(part, at + 1)} to {Name(part, at + counts)}")}{(name is null || name == part.Key ? "" : $" ({name})")}", before + at + 1, before + at + counts));
            }

            if (length > size && score.Sections.Count > 1) bites.Add(new($"{label}, all of it", before + 1, before + length));
        }

        if (total > size) bites.Add(new("The whole dance", 1, total));
        foreach (var extra in score.Extras.DistinctBy(e => e.Part))
        {
            var (part, before) = (score.Parts[extra.Part], score.BeforeExtra(extra.Part)!.Value);
            if (part.Length.Ceiling > 0) bites.Add(new(part.Label.Length > 0 ? part.Label : part.Key, before + 1, before + part.Length.Ceiling));
        }

        return bites;
    }

    private static string Name(PartScore part, int count) => (Count.At(count) + Beats.Of(part.CountOffset)).Name;
}
