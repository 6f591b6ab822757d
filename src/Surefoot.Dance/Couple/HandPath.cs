using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>
/// The least-effort way of one pair of hands through the moments of a repeat. Its states are apart, low, at the
/// shoulder and raised, each with whole passes over either head; moments are its stages.
/// </summary>
internal sealed class HandPath
{
    /// <summary>Effort of going up or coming down, of a lesser change of height, of letting go, of taking, of a pass over a head, and of being up for an action while somebody turns or nobody does.</summary>
    private const double Lift = 1, Shift = 0.3, Release = 2, Take = 2, Pass = 0.5, Up = 0.05, StayUp = 0.3;

    /// <summary>Effort of each action for which hands are apart that the page has joined, so that they are let go no earlier than need be.</summary>
    private const double ApartUnsaid = 0.05;

    /// <summary>Effort of each action for which the arms lie otherwise than the hold in force has them, and of a pass while nobody turns.</summary>
    private const double OddWay = 0.2, PassStanding = 1;

    /// <summary>Effort of going up or coming down in the middle of a turn, and of each action for which hands are at another height than the hold in force has them.</summary>
    private const double Amid = 0.4, OddHeight = 0.25;

    /// <summary>A pair at the shoulder that winds further than this in one turning, in degrees, sweeps through a face.</summary>
    private const double Sweep = 90;

    /// <summary>Winds beyond this, in degrees, are not followed: no arm lies so.</summary>
    private const double Furthest = 420;

    /// <summary>Arms lie as in a named hold when their wind is less than half a turn from the hold's own.</summary>
    private const double SameWay = 180;

    /// <param name="Height">Null while apart.</param>
    internal readonly record struct State(HandHeight? Height, int Lead, int Follow);

    private sealed record Node(State State, double Effort, Node? Before);

    private readonly Pairs _pair;
    private readonly Wind[] _winds;
    private readonly IReadOnlyList<Moment> _moments;
    private readonly ArmRules _arms;
    private readonly double _scale;
    private readonly bool[] _sweeps;
    private readonly bool[] _turned;
    private readonly bool[] _turnsOn;
    private readonly Wind?[] _held;
    private readonly Wind?[] _taken;
    private readonly HandHeight?[] _heights;
    private (Hold? Hold, Wind? Wind) _last;

    public HandPath(Pairs pair, Wind[] winds, IReadOnlyList<Moment> moments, ArmRules arms, double scale)
    {
        (_pair, _winds, _moments, _arms, _scale) = (pair, winds, moments, arms, scale);
        _sweeps = Sweeping();
        (_turned, _turnsOn) = Amidst();
        (_held, _taken, _heights) = (new Wind?[moments.Count], new Wind?[moments.Count], new HandHeight?[moments.Count]);
        for (var m = 0; m < moments.Count; m++)
        {
            var hold = Holds.Named(moments[m].Where.Hold);
            _held[m] = moments[m].Where.Wide ? null : OwnWind(hold);
            _taken[m] = OwnWind(hold ?? Holds.Named(Ahead(m)));
            _heights[m] = hold is not null && !moments[m].Where.Wide ? HandHeights.Of(hold) : null;
        }
    }

    public Pairs Pair => _pair;

    /// <returns>The states, and where there is none the first moment that cannot be reached.</returns>
    public (State[]? States, int Blocked) Find(PairRule[] rules, bool loop)
    {
        var (nodes, states) = (new List<Node>(), new List<State>());
        States(states, 0, rules[0], fresh: true);
        foreach (var state in states)
        {
            // Before count 1 the arms lie as the hold has them.
            if (state is { Lead: 0, Follow: 0 }) nodes.Add(new(state, 0, null));
        }

        for (var m = 1; m < _moments.Count; m++)
        {
            var next = new List<Node>();
            States(states, m, rules[m], fresh: false);
            foreach (var state in states)
            {
                Node? best = null;
                var least = double.PositiveInfinity;
                foreach (var node in nodes)
                {
                    if (Effort(node.State, state, m) is not { } effort || node.Effort + effort >= least - 1e-9) continue;
                    (best, least) = (node, node.Effort + effort);
                }

                if (best is not null) next.Add(new(state, least + Odd(state, m), best));
            }

            if (loop && m == _moments.Count - 1) next.RemoveAll(n => !Returns(n.State));
            if (next.Count == 0) return (null, m);
            nodes = next;
        }

        if (nodes.Count == 0) return (null, 0);
        var cheapest = nodes[0];
        foreach (var node in nodes)
        {
            if (node.Effort < cheapest.Effort - 1e-9) cheapest = node;
        }

        var way = new State[_moments.Count];
        var at = way.Length - 1;
        for (var node = cheapest; node is not null; node = node.Before) way[at--] = node.State;
        return (way, -1);
    }

    // All that the pair can be at a moment.
    private void States(List<State> states, int m, PairRule rule, bool fresh)
    {
        states.Clear();
        if (rule.Allowed.HasFlag(PairStates.Released)) states.Add(default);
        if ((rule.Allowed & PairStates.Joined) == PairStates.None) return;
        var wind = _winds[m];
        var own = fresh ? null : OwnWind(rule.Hold);
        for (var lead = Least(wind.Lead); wind.Lead + (360.0 * lead) <= Furthest; lead++)
        {
            for (var follow = Least(wind.Follow); wind.Follow + (360.0 * follow) <= Furthest; follow++)
            {
                var passed = wind.Passed(lead, follow);
                if (own is { } asHeld && !LiesAs(asHeld, passed)) continue;
                for (var height = HandHeight.Low; height <= HandHeight.Raised; height++)
                {
                    if (!rule.Allowed.HasFlag(Flag(height)) || !_arms.Allows(passed, height, rule.Hammerlock, _moments[m].Turning)) continue;
                    states.Add(new(height, lead, follow));
                }
            }
        }

        static int Least(double wind) => (int)Math.Ceiling((-Furthest - wind) / 360);
    }

    private static PairStates Flag(HandHeight height) => height switch
    {
        HandHeight.Low => PairStates.Low,
        HandHeight.Shoulder => PairStates.Shoulder,
        _ => PairStates.Raised,
    };

    private double? Effort(State from, State to, int m)
    {
        var up = to.Height != HandHeight.Raised ? 0 : Turns(m) || _turnsOn[m] ? Up : StayUp;
        // Let go overhead, hands come down all the same, and whoever went under has gone under.
        if (to.Height is null) return (from.Height is null ? 0 : Release) + (from.Height == HandHeight.Raised ? Lift + (Natural(from, m - 1) ? 0 : Pass) : 0) + (_moments[m].Joined.HasFlag(_pair) ? ApartUnsaid : 0);
        // Taken anew the arms lie the shortest way, or as the hold has them.
        if (from.Height is null) return Natural(to, m) ? Take + up + (to.Height == HandHeight.Raised ? Lift : 0) : null;
        var passes = Math.Abs(to.Lead - from.Lead) + Math.Abs(to.Follow - from.Follow);
        // A pair that was up may pass and come down within the action, or go up and pass.
        if (passes > 0 && from.Height != HandHeight.Raised && to.Height != HandHeight.Raised) return null;
        if (passes > 1) return null;
        if (_sweeps[m] && from.Height == HandHeight.Shoulder && to.Height == HandHeight.Shoulder) return null;
        if (from.Height != to.Height && (from.Height == HandHeight.Raised ? _turnsOn[m] : to.Height == HandHeight.Raised && _turned[m])) up += Amid;
        var pass = passes == 0 ? 0 : _moments[m].Turning ? Pass : Pass + PassStanding;
        var change = from.Height == to.Height ? 0 : from.Height == HandHeight.Raised || to.Height == HandHeight.Raised ? Lift : Shift;
        return pass + change + up;
    }

    private double Odd(State state, int m) =>
        state.Height is null ? 0
        : (_held[m] is { } own && !LiesAs(own, _winds[m].Passed(state.Lead, state.Follow)) ? OddWay : 0)
            + (_heights[m] is { } height && state.Height != height ? OddHeight : 0);

    private bool Natural(State state, int m)
    {
        var wind = _winds[m].Passed(state.Lead, state.Follow);
        return (Math.Abs(wind.Lead) <= 180 && Math.Abs(wind.Follow) <= 180) || (_taken[m] is { } own && LiesAs(own, wind));
    }

    // Hands are often taken a little before the couple has arrived in the hold.
    private string? Ahead(int m)
    {
        for (var k = m + 1; k < _moments.Count && k <= m + 3; k++)
        {
            if (_moments[k].Where.Hold is { } hold) return hold;
        }

        return null;
    }

    // How the pair winds in a hold that joins it. Holds last, so the one before is nearly always asked for again.
    private Wind? OwnWind(Hold? hold)
    {
        if (!ReferenceEquals(hold, _last.Hold)) _last = (hold, hold is not null && hold.Joined.HasFlag(_pair) ? HoldWinds.Of(hold, _pair, _scale, _arms.Statures) : null);
        return _last.Wind;
    }

    private static bool LiesAs(Wind own, Wind wind) => Math.Abs(wind.Lead - own.Lead) < SameWay && Math.Abs(wind.Follow - own.Follow) < SameWay;

    private bool Returns(State state)
    {
        var joined = _moments[0].Joined.HasFlag(_pair);
        if (!joined || state.Height is null) return joined == state.Height is not null;
        var (start, end) = (_winds[0], _winds[^1].Passed(state.Lead, state.Follow));
        return state.Height != HandHeight.Raised && Math.Abs(end.Lead - start.Lead) < SameWay && Math.Abs(end.Follow - start.Follow) < SameWay;
    }

    // For each moment whether somebody has turned before it, or will after it, in the turning it belongs to. Where hands are taken one is over.
    private (bool[] Turned, bool[] TurnsOn) Amidst()
    {
        var (turned, turnsOn) = (new bool[_moments.Count], new bool[_moments.Count]);
        for (var m = 1; m < turned.Length; m++) turned[m] = _moments[m].Turning && _moments[m - 1].Turning && !Taken(m - 1) && (turned[m - 1] || (m > 1 && Turns(m - 1)));
        for (var m = turned.Length - 2; m > 0; m--) turnsOn[m] = _moments[m + 1].Turning && !Taken(m) && (turnsOn[m + 1] || Turns(m + 1));
        return (turned, turnsOn);

        bool Taken(int m) => m > 0 && (_moments[m].Joined & ~_moments[m - 1].Joined) != Pairs.None;
    }

    private bool Turns(int m) => _moments[m].Lead != _moments[m - 1].Lead || _moments[m].Follow != _moments[m - 1].Follow;

    private bool[] Sweeping()
    {
        var sweeps = new bool[_moments.Count];
        for (var m = 1; m < sweeps.Length; m++)
        {
            if (!_moments[m].Turning) continue;
            var last = m;
            while (last + 1 < sweeps.Length && _moments[last + 1].Turning) last++;
            var wide = false;
            for (var k = m; k <= last; k++) wide |= Math.Abs(_winds[k].Lead - _winds[m - 1].Lead) > Sweep || Math.Abs(_winds[k].Follow - _winds[m - 1].Follow) > Sweep;
            for (; m <= last; m++) sweeps[m] = wide;
        }

        return sweeps;
    }
}
