using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;

namespace Surefoot.Web.OnTheFloor;

/// <summary>A stretch that is taught in one go.</summary>
/// <param name="From">First count of the repeat.</param>
/// <param name="To">Last count of it.</param>
internal sealed record FloorBite(string Name, int From, int To);

/// <summary>What there is to choose from on the floor: 8s (in 3/4 of two bars), whole parts, the whole dance. The handbook's trade.md, "A lesson".</summary>
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
            for (var at = 0; at < length; at += size)
            {
                var end = Math.Min(length, at + size);
                // A lesson's sheet calls it so, where it says more than the part's own letter.
                var name = taught.Find(t => t.At.Section == s && t.At.From == at && t.At.Counts == end - at).Name;
                bites.Add(new($"{label}, {Name(part, at + 1)} to {Name(part, end)}{(name is null || name == part.Key ? "" : $" ({name})")}", before + at + 1, before + end));
            }

            if (length > size && score.Sections.Count > 1) bites.Add(new($"{label}, all of it", before + 1, before + length));
        }

        if (total > size) bites.Add(new("The whole dance", 1, total));
        return bites;
    }

    private static string Name(PartScore part, int count) => (Count.At(count) + Beats.Of(part.CountOffset)).Name;
}
