using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;

namespace Surefoot.Dance.Moving;

/// <summary>The hands of one pair through a repeat.</summary>
internal sealed class HandsTrack
{
    /// <summary>Counts before an action at which hands that have been at rest set out. Working value.</summary>
    private const double SetOut = 1;

    /// <summary>Hands that go up are up after this share of an action, and come down as late: heads pass in between. Working value.</summary>
    private const double Early = 0.45;

    /// <summary>On the way down they go across while they are high, past faces and breasts rather than through them: between these shares before its end. Working values.</summary>
    private const double OverFrom = 0.15, OverTo = 0.7;

    /// <summary>On the way from one hold to the next hands go round bodies, wholly so but for its beginning and end. Working value.</summary>
    private const double Round = 8;

    /// <summary>Hands over a turn come down so many counts after it, or this share of the time until the next action: not before whoever turns is round. Working values.</summary>
    private const double AfterTurn = 0.3, AfterTurnShare = 0.4;

    private readonly double[] _times;
    private readonly Grip[] _grips;

    /// <param name="overLead">For each moment whether raised hands are over the lead's head (1), the follow's (0) or between.</param>
    public HandsTrack(PairTrack pair, IReadOnlyList<Moment> moments, HeldOn holds, double[] overLead)
    {
        Pair = pair.Pair;
        var (times, grips) = (new double[moments.Count], new Grip[moments.Count]);
        for (var m = 0; m < times.Length; m++)
        {
            times[m] = moments[m].At.Value.ToDouble();
            if (m > 0) times[m] = Math.Max(times[m], times[m - 1]);
            grips[m] = new(pair.Heights[m], holds.Names[m], pair.Winds[m], overLead[m]);
        }

        for (var m = times.Length - 2; m > 0; m--)
        {
            var down = grips[m - 1].Height == HandHeight.Raised && grips[m].Height is HandHeight.Low or HandHeight.Shoulder;
            if (down && (moments[m].Lead != moments[m - 1].Lead || moments[m].Follow != moments[m - 1].Follow)) times[m] += Math.Min(AfterTurn, AfterTurnShare * (times[m + 1] - times[m]));
        }

        (_times, _grips) = ByWayOf(times, grips, holds.Midway);
    }

    // Half way into a hold hands are as in the one that the couple passes through.
    private static (double[] Times, Grip[] Grips) ByWayOf(double[] times, Grip[] grips, string?[] midway)
    {
        var all = new List<(double At, Grip Grip)>(times.Length);
        for (var m = 0; m < times.Length; m++)
        {
            if (midway[m] is { } through && Down(grips[m - 1]) && Down(grips[m]))
            {
                var from = Math.Max(times[m - 1], times[m] - SetOut);
                if (from > times[m - 1]) all.Add((from, grips[m - 1]));
                all.Add(((from + times[m]) / 2, Grip.Between(grips[m - 1], grips[m], 0.5) with { Hold = through }));
            }

            all.Add((times[m], grips[m]));
        }

        return ([.. all.Select(a => a.At)], [.. all.Select(a => a.Grip)]);

        static bool Down(Grip grip) => grip.Height is HandHeight.Low or HandHeight.Shoulder;
    }

    public Pairs Pair { get; }

    /// <summary>Where the hands are, and what share of being joined there is; the rest is hanging free.</summary>
    public (PairPlace Place, double Joined) At(double now, DancerMoved lead, DancerMoved follow, double leadStature, double followStature)
    {
        var m = Easing.Last(_times, now);
        if (m < 0) return (Place(_grips[0]), Joined(_grips[0]));
        if (m == _times.Length - 1 || _grips[m] == _grips[m + 1]) return (Place(_grips[m]), Joined(_grips[m]));
        var (before, after) = (_grips[m], _grips[m + 1]);
        var from = Math.Max(_times[m], _times[m + 1] - SetOut);
        var (length, joined) = (_times[m + 1] - from, 1.0);
        var share = Easing.LeastJerk(now, from, _times[m + 1]);
        if (before.Height is null && after.Height is null) return (default, 0);
        // They find each other at the end of the way there, and part at its beginning.
        if (before.Height is null) return (Place(after), Easing.LeastJerk(now, from, _times[m + 1]));
        if (after.Height is null) return (Place(before), 1 - Easing.LeastJerk(now, from, _times[m + 1]));
        var across = share;
        if (after.Height == HandHeight.Raised && before.Height != HandHeight.Raised) share = across = Easing.LeastJerk(now, from, from + (Early * length));
        else if (before.Height == HandHeight.Raised && after.Height != HandHeight.Raised)
        {
            share = Easing.LeastJerk(now, _times[m + 1] - (Early * length), _times[m + 1]);
            across = Easing.LeastJerk(now, _times[m + 1] - (OverTo * length), _times[m + 1] - (OverFrom * length));
        }

        var there = Place(before).Towards(Place(after), across, share);
        // The straight way from one hold to the next may lead through somebody: then round, as the arms wind.
        var aside = before.Hold == after.Hold && before.Height == after.Height ? 0 : Math.Min(1, Round * share * (1 - share));
        return (aside > 0 && there.Lead == there.Follow ? there.Towards(Grip.Between(before, after, share).OutOfBodies(there, Pair, lead, follow, leadStature, followStature), aside) : there, joined);

        PairPlace Place(Grip grip) => grip.Height is null ? default : grip.Place(Pair, lead, follow, leadStature, followStature);
        static double Joined(Grip grip) => grip.Height is null ? 0 : 1;
    }
}
