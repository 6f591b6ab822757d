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

    private readonly double[] _times;
    private readonly Grip[] _grips;

    /// <param name="overLead">For each moment whether raised hands are over the lead's head (1), the follow's (0) or between.</param>
    public HandsTrack(PairTrack pair, IReadOnlyList<Moment> moments, double[] overLead)
    {
        Pair = pair.Pair;
        (_times, _grips) = (new double[moments.Count], new Grip[moments.Count]);
        for (var m = 0; m < _times.Length; m++)
        {
            var moment = moments[m];
            _times[m] = moment.At.Value.ToDouble();
            if (m > 0) _times[m] = Math.Max(_times[m], _times[m - 1]);
            _grips[m] = new(pair.Heights[m], moment.Where is { Wide: false } where ? where.Hold : null, pair.Winds[m], overLead[m]);
        }
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
        if (after.Height == HandHeight.Raised && before.Height != HandHeight.Raised) share = Easing.LeastJerk(now, from, from + (Early * length));
        else if (before.Height == HandHeight.Raised && after.Height != HandHeight.Raised) share = Easing.LeastJerk(now, _times[m + 1] - (Early * length), _times[m + 1]);
        return (Place(before).Towards(Place(after), share), joined);

        PairPlace Place(Grip grip) => grip.Height is null ? default : grip.Place(Pair, lead, follow, leadStature, followStature);
        static double Joined(Grip grip) => grip.Height is null ? 0 : 1;
    }
}
