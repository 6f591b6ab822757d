using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;

namespace Surefoot.Dance.Moving;

/// <summary>The hands of one pair through a repeat: a way from hold to hold below, and stretches for which they are lifted overhead.</summary>
internal sealed class HandsTrack
{
    /// <summary>Counts before an action at which hands that have been at rest set out. Working value.</summary>
    private const double SetOut = 1;

    /// <summary>On the way from one hold to the next hands go round bodies, wholly so but for its beginning and end. Working value.</summary>
    private const double Round = 8;

    // Below: what the hands are as at which count. Grips overhead are for the lifts.
    private readonly double[] _times;
    private readonly Grip[] _grips;
    private readonly Lift[] _lifts;
    private readonly (double[] Times, Grip[] Grips) _all;

    /// <param name="overLead">For each moment whether raised hands are over the lead's head (1), the follow's (0) or between.</param>
    /// <param name="perSecond">Counts a second.</param>
    /// <param name="end">The count at which the repeat is over.</param>
    public HandsTrack(PairTrack pair, IReadOnlyList<Moment> moments, HeldOn holds, double[] overLead, double perSecond, double end)
    {
        Pair = pair.Pair;
        var (times, grips) = (new double[moments.Count], new Grip[moments.Count]);
        for (var m = 0; m < times.Length; m++)
        {
            times[m] = moments[m].At.Value.ToDouble();
            if (m > 0) times[m] = Math.Max(times[m], times[m - 1]);
            grips[m] = new(pair.Heights[m], holds.Names[m], pair.Winds[m], overLead[m]);
        }

        _all = (times, grips);
        _lifts = Lift.Of(moments, times, grips, perSecond, end);
        (_times, _grips) = Below(times, grips, holds.Midway, _lifts);
    }

    public Pairs Pair { get; }

    /// <summary>Where the hands are, and what share of being joined there is; the rest is hanging free.</summary>
    public (PairPlace Place, double Joined) At(double now, DancerMoved lead, DancerMoved follow, double leadStature, double followStature)
    {
        var lift = LiftOn(now);
        var (across, up) = lift?.At(now) ?? (0, 0);
        if (lift is null || (across == 0 && up == 0)) return OnTheWay();
        var overhead = Overhead(lift);
        if (across == 1 && up == 1) return (overhead, lift.Joined(now));
        var (low, joined) = OnTheWay();
        var there = low.Towards(overhead, across, up);
        return (there.Lead == there.Follow ? OutOfTheWay(there, GripOn(now), up) : there, joined);

        PairPlace Overhead(Lift lift)
        {
            var m = Math.Clamp(Easing.Last(_all.Times, now), lift.First, lift.Last);
            if (m == lift.Last) return Place(_all.Grips[m]);
            var from = Math.Max(_all.Times[m], _all.Times[m + 1] - SetOut);
            return Place(_all.Grips[m]).Towards(Place(_all.Grips[m + 1]), Easing.LeastJerk(now, from, _all.Times[m + 1]));
        }

        (PairPlace Place, double Joined) OnTheWay()
        {
            var (before, after, share) = Step(now);
            if (before.Height is null && after.Height is null) return (default, 0);
            // They find each other at the end of the way there, and part at its beginning.
            if (before.Height is null) return (Place(after), share);
            if (after.Height is null) return (Place(before), 1 - share);
            if (share is 0 or 1 || before == after) return (Place(share == 1 ? after : before), 1);
            var between = Place(before).Towards(Place(after), share);
            var same = before.Hold == after.Hold && (before.Height == after.Height || HoldGrips.Of(before.Hold, Pair) is not null);
            return (same || between.Lead != between.Follow ? between : OutOfTheWay(between, Grip.Between(before, after, share), share), 1);
        }

        // The straight way from one hold to the next may lead through somebody: then round, as the arms wind.
        PairPlace OutOfTheWay(PairPlace there, Grip grip, double share)
        {
            var aside = Math.Min(1, Round * share * (1 - share));
            return aside > 0 ? there.Towards(grip.OutOfBodies(there, Pair, lead, follow, leadStature, followStature), aside) : there;
        }

        PairPlace Place(Grip grip) => grip.Height is null ? default : grip.Place(Pair, lead, follow, leadStature, followStature);
    }

    private Lift? LiftOn(double now)
    {
        foreach (var lift in _lifts)
        {
            if (now <= lift.To) return lift.From <= now ? lift : null;
        }

        return null;
    }

    // Between which two grips below the hands are, and how far.
    private (Grip Before, Grip After, double Share) Step(double now)
    {
        var m = Easing.Last(_times, now);
        if (m < 0) return (_grips[0], _grips[0], 0);
        if (m == _times.Length - 1) return (_grips[m], _grips[m], 0);
        return (_grips[m], _grips[m + 1], Easing.LeastJerk(now, Math.Max(_times[m], _times[m + 1] - SetOut), _times[m + 1]));
    }

    private Grip GripOn(double now)
    {
        var (before, after, share) = Step(now);
        return Grip.Between(before, after, share);
    }

    private static (double[] Times, Grip[] Grips) Below(double[] times, Grip[] grips, string?[] midway, Lift[] lifts)
    {
        var all = new List<(double At, Grip Grip)>(times.Length);
        var lift = 0;
        for (var m = 0; m < times.Length; m++)
        {
            if (lift < lifts.Length && lifts[lift].First == m)
            {
                // While they are up it changes at once what they will come down to: nobody sees it.
                var middle = lifts[lift].Middle;
                all.Add((middle, grips[m - 1]));
                m = lifts[lift++].Last;
                if (m + 1 < times.Length) all.Add((middle, grips[m + 1]));
                continue;
            }

            // They part when they are down.
            if (lift > 0 && grips[m].Height is null && all[^1] is { Grip.Height: not null } last && lifts[lift - 1].Fallen > last.At && lifts[lift - 1].Fallen < times[m]) all.Add((lifts[lift - 1].Fallen, last.Grip));

            if (m > 0 && midway[m] is { } through && grips[m - 1].IsDown && grips[m].IsDown)
            {
                // Half way into a hold hands are as in the one that the couple passes through.
                var from = Math.Max(times[m - 1], times[m] - SetOut);
                if (from > times[m - 1]) all.Add((from, grips[m - 1]));
                all.Add(((from + times[m]) / 2, Grip.Between(grips[m - 1], grips[m], 0.5) with { Hold = through }));
            }

            all.Add((all.Count > 0 ? Math.Max(times[m], all[^1].At) : times[m], grips[m]));
        }

        return ([.. all.Select(a => a.At)], [.. all.Select(a => a.Grip)]);
    }
}
