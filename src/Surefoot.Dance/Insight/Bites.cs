using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Insight;

/// <summary>A stretch that is taught in one go.</summary>
/// <param name="From">The first whole count of the repeat, from 0.</param>
/// <param name="Written">True where the page itself says that it repeats something, as it is or but for some counts.</param>
internal readonly record struct Bite(int From, int Length, bool Written);

/// <summary>A dance cut into bites, each part by itself, as it is taught.</summary>
internal static class Bites
{
    /// <summary>
    /// Sizes at which repeats are looked for, in counts, the usual one last: half a bar, a bar and two bars in 4/4; a bar, two and
    /// four in 3/4. Teaching in 8s is common practice, no source.
    /// </summary>
    public static ValueList<int> Sizes(Meter meter) => meter.Beats == 3 ? [3, 6, 12] : [2, 4, 8];

    public static List<Bite> Of(DanceScore score, int size)
    {
        var bites = new List<Bite>();
        var seen = new HashSet<int>();
        var total = score.Counts.Ceiling;
        foreach (var section in score.Sections)
        {
            var part = score.Parts[section.Part];
            var start = (section.Start - Count.First).Floor;
            var end = Math.Min(total, start + part.Length.Ceiling);
            var again = !seen.Add(section.Part);
            var at = start;
            // A repeat that does not begin where an 8 does is still begun afresh.
            foreach (var repeat in part.Repeats.OrderBy(r => r.From))
            {
                var from = Math.Min(end, start + (repeat.From - Count.First).Floor);
                if (from < at) continue;
                Cut(at, from, again);
                at = Math.Min(end, from + repeat.Length.Ceiling);
                Cut(from, at, written: true);
            }

            Cut(at, end, again);
        }

        return bites;

        void Cut(int from, int to, bool written)
        {
            for (var at = from; at < to; at += size) bites.Add(new(at, Math.Min(size, to - at), written));
        }
    }
}
