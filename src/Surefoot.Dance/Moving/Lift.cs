using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;

namespace Surefoot.Dance.Moving;

/// <summary>A stretch for which a pair of hands is overhead, with the way up and the way down. All times are in counts.</summary>
/// <param name="Rises">When hands set out from below, <paramref name="Risen"/> when they are up; one and the same where they are taken overhead.</param>
/// <param name="Falls">When they begin to come down, <paramref name="Fallen"/> when they are; one and the same where they are let go overhead.</param>
/// <param name="Taken">From when to when they find each other overhead, or null.</param>
/// <param name="LetGo">From when to when they part overhead, or null.</param>
/// <param name="First">The first moment they are up, and <paramref name="Last"/> the last.</param>
internal sealed record Lift(double Rises, double Risen, double Falls, double Fallen, (double From, double To)? Taken, (double From, double To)? LetGo, int First, int Last)
{
    /// <summary>Hands that go up are up after this share of an action, of which no more than a count is asked, and begin to come down as long before its end: heads pass in between. Working values.</summary>
    private const double UpAfter = 0.3, DownBefore = 0.45;

    /// <summary>Hands over a turn come down so many counts after it, or this share of the time until the next action: not before whoever turns is round. Working values.</summary>
    private const double AfterTurn = 0.3, AfterTurnShare = 0.4;

    /// <summary>Hands that are let go after they have come down part over this share of the action, at its end. Working value.</summary>
    private const double LettingGo = 0.4;

    /// <summary>Nobody takes less for the way up or down than so many counts, nor than so many seconds. Working values; a count is common practice.</summary>
    private const double Counts = 1, Seconds = 0.5;

    /// <summary>
    /// Hands come up before they go over, and go across while they are high before they come down: past faces and breasts
    /// rather than through them. Shares of the way up; of the way down the same from its end. Working values.
    /// </summary>
    private const double OverFrom = 0.4, OverTo = 1.15;

    /// <summary>When they are taken for a pair overhead, or set out for it.</summary>
    public double From => Taken?.From ?? Rises;

    /// <summary>When nothing is left of it.</summary>
    public double To => LetGo?.To ?? Fallen;

    /// <summary>Half way: until here what is below is what was there before, then what comes after.</summary>
    public double Middle => (Math.Max(Risen, Rises) + Math.Min(Falls, Fallen)) / 2;

    public static Lift[] Of(IReadOnlyList<Moment> moments, double[] times, Grip[] grips, double perSecond, double end)
    {
        var lifts = new List<Lift>();
        var long_ = Math.Max(Counts, Seconds * perSecond);
        for (var first = 1; first < grips.Length; first++)
        {
            if (grips[first].Height != HandHeight.Raised) continue;
            var last = first;
            while (last + 1 < grips.Length && grips[last + 1].Height == HandHeight.Raised) last++;
            var (rises, risen, taken) = Up(first);
            var (falls, fallen, letGo) = Down(last);
            if (lifts.Count > 0 && lifts[^1].To > rises && lifts[^1].LetGo is null && taken is null)
            {
                // Down and up again at once: each has half of the time.
                var half = Math.Max(lifts[^1].Falls, Math.Min(risen, (lifts[^1].To + rises) / 2));
                (lifts[^1], rises) = (lifts[^1] with { Fallen = half }, half);
            }

            lifts.Add(new(rises, risen, falls, fallen, taken, letGo, first, last));
            first = last;
        }

        return [.. lifts];

        (double Rises, double Risen, (double, double)? Taken) Up(int m)
        {
            var from = Math.Max(times[m - 1], times[m] - 1);
            if (grips[m - 1].Height is null) return (from, from, (from, times[m]));
            var up = from + (UpAfter * (times[m] - from));
            // Not before they have each other, nor while somebody still turns under or beside them.
            var free = m - 1;
            while (free > 0 && grips[free - 1].Height is not null && !Turned(free)) free--;
            return (Math.Min(up, Math.Max(times[free], up - long_)), up, null);
        }

        (double Falls, double Fallen, (double, double)? LetGo) Down(int m)
        {
            if (m + 1 == times.Length) return (end, end, null);
            var from = Math.Max(times[m], times[m + 1] - 1);
            if (grips[m + 1].Height is null) return (times[m + 1], times[m + 1], (from, times[m + 1]));
            if (!Turned(m + 1)) return (from, Math.Max(times[m + 1], Math.Min(end, from + long_)), null);
            // Who lets go soon is down before: nobody lets go of a hand over a head that only has to be lowered.
            var apart = m + 2;
            while (apart < times.Length && grips[apart].Height is not null) apart++;
            var last = apart < times.Length ? times[apart] - (LettingGo * (times[apart] - times[apart - 1])) : end;
            var round = times[m + 1] + Math.Min(AfterTurn, AfterTurnShare * ((m + 2 < times.Length ? times[m + 2] : end) - times[m + 1]));
            var falls = round - (DownBefore * (times[m + 1] - from));
            return (falls, Math.Max(round, Math.Min(last, falls + long_)), null);
        }

        bool Turned(int m) => moments[m].Lead != moments[m - 1].Lead || moments[m].Follow != moments[m - 1].Follow;
    }

    /// <summary>How far overhead hands are, from 0 to 1: across the floor, and how high.</summary>
    public (double Across, double Up) At(double now)
    {
        if (now < Middle) return (Easing.LeastJerk(now, Part(Rises, Risen, OverFrom), Part(Rises, Risen, OverTo)), Easing.LeastJerk(now, Rises, Risen));
        return (1 - Easing.LeastJerk(now, Part(Fallen, Falls, OverTo), Part(Fallen, Falls, OverFrom)), 1 - Easing.LeastJerk(now, Falls, Fallen));

        static double Part(double from, double to, double share) => from + ((to - from) * share);
    }

    /// <summary>What share of being joined there is while hands are up.</summary>
    public double Joined(double now)
    {
        if (Taken is var (taking, taken) && now < taken) return Easing.LeastJerk(now, taking, taken);
        return LetGo is var (parting, parted) ? 1 - Easing.LeastJerk(now, parting, parted) : 1;
    }
}
