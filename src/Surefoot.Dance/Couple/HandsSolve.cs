using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Finds what every pair of hands does, from where both dancers are and what the page says.</summary>
internal sealed class HandsSolve
{
    /// <summary>Arms this far out, as a share of their reach, are at arm's length. Working value, common practice.</summary>
    private const double ArmsLength = 0.85;

    private readonly DanceScore _score;
    private readonly DanceMotion _motion;
    private readonly IReadOnlyList<Moment> _moments;
    private readonly List<HandTime> _hands;
    private readonly bool[] _hammerlocks;
    private readonly ArmRules _arms;
    private readonly double _scale;
    private readonly List<PairTrack> _tracks = [];
    private readonly List<HandSuggestion> _suggestions = [];
    private readonly List<HandTrouble> _troubles = [];
    private readonly Dictionary<Pairs, PairWay> _ways = [];
    private readonly Hold? _start;

    private HandsSolve(DanceScore score, DanceMotion motion, IReadOnlyList<Moment> moments, CoupleLimits limits)
    {
        (_score, _motion, _moments, _start) = (score, motion, moments, Holds.Named(score.Facts.Hold));
        var statures = (OneDancer.StatureOf(score.Facts, Role.Lead), OneDancer.StatureOf(score.Facts, Role.Follow));
        _arms = new(statures, limits);
        _hands = HandTimes.Of(score);
        _hammerlocks = Hammerlocks.Asked(score, _hands, moments);
        _scale = (statures.Item1 + statures.Item2) / 2 / Body.ReferenceStature;
    }

    public static HandsSolved Of(DanceScore score, DanceMotion motion, IReadOnlyList<Moment> moments, CoupleLimits limits)
    {
        var solve = new HandsSolve(score, motion, moments, limits);
        foreach (var pair in PairsOf.Each) solve.Follow(pair);
        solve.Twisted(Pairs.RightRight, Pairs.LeftLeft);
        solve.Twisted(Pairs.LeftRight, Pairs.RightLeft);
        foreach (var pair in PairsOf.Each) solve.Tell(pair);
        return new(solve._tracks.ToValueList(), solve._suggestions.OrderBy(s => s.At).ToValueList(), solve._troubles.OrderBy(t => t.At).ToValueList());
    }

    private void Follow(Pairs pair)
    {
        var used = false;
        foreach (var moment in _moments) used |= moment.Joined.HasFlag(pair);
        if (!used) return;
        var winds = WindTrack.Of(_motion, _moments, pair, HoldWinds.WholeTurns(_start, pair), _arms.Statures);
        var rules = PairRules.Of(_score, _hands, _moments, pair, _hammerlocks);
        var path = new HandPath(pair, winds, _moments, _arms, _scale);
        var (states, blocked) = path.Find(rules, Loops(pair));
        if (states is not null) _ways[pair] = new(pair, path, rules, winds, states);
        else _troubles.Add(Trouble(pair, path, rules, winds, blocked, Loops(pair)));
    }

    // Whether the dance leads back into its hold is only asked where it ends looking as it began.
    private bool Loops(Pairs pair) => _moments[0].Lead == _moments[^1].Lead && _moments[0].Follow == _moments[^1].Follow && _moments[^1].Joined.HasFlag(pair) == _moments[0].Joined.HasFlag(pair);

    private void Twisted(Pairs one, Pairs other)
    {
        if (!_ways.TryGetValue(one, out var a) || !_ways.TryGetValue(other, out var b)) return;
        var (left, right, troubles) = new HandTwists(_moments, _start).Of(a, b, (rules, path) => path.Find(rules, Loops(path.Pair)).States);
        (_ways[one], _ways[other]) = (left, right);
        _troubles.AddRange(troubles);
    }

    private void Tell(Pairs pair)
    {
        if (!_ways.TryGetValue(pair, out var way)) return;
        _tracks.Add(new(pair, way.States.Select(s => s.Height).ToValueList(), way.States.Select((s, m) => way.Winds[m].Passed(s.Lead, s.Follow)).ToValueList()));
        Suggest(pair, way.States);
        TooLow(pair, way.States);
        Stretched(way);
    }

    // The first repair that mends it tells what is wrong: only up and over, or only letting go.
    private HandTrouble Trouble(Pairs pair, HandPath path, PairRule[] rules, Wind[] winds, int blocked, bool loop)
    {
        var (at, wind) = (_moments[blocked].At, winds[blocked]);
        Role? whose = Math.Abs(wind.Lead) > Math.Abs(wind.Follow) ? Role.Lead : Role.Follow;
        var degrees = Math.Max(Math.Abs(wind.Lead), Math.Abs(wind.Follow));
        if (Furthest(rules[blocked].Allowed) is var (height, reach) && wind.Apart > reach) return new(HandTroubleKind.Reach, at, pair, null, wind.Apart - reach, HandVerb.Release) { Height = height };
        var hammerlock = path.Find(rules.Select(r => r with { Hammerlock = true }).ToArray(), loop).States is not null;
        // Up while somebody turns and down again is a repair; standing about with hands overhead is none.
        if (Works(r => (r with { Allowed = r.Allowed | PairStates.Raised }, r with { Allowed = r.Allowed & ~PairStates.Raised }))) return new(HandTroubleKind.Overhead, at, pair, whose, degrees, HandVerb.Raise) { Hammerlock = hammerlock };
        var release = Works(r => (r with { Allowed = r.Allowed | PairStates.Released }, r with { Allowed = r.Allowed | PairStates.Released }));
        return new(HandTroubleKind.Wind, at, pair, whose, degrees, release ? HandVerb.Release : null) { Hammerlock = hammerlock };

        bool Works(Func<PairRule, (PairRule Turning, PairRule Standing)> freer)
        {
            var relaxed = rules.Select((r, m) => m == 0 || (r.Allowed & PairStates.Joined) == PairStates.None ? r : _moments[m].Turning ? freer(r).Turning : freer(r).Standing).ToArray();
            return path.Find(relaxed, loop).States is not null;
        }
    }

    // The height, of those that the page leaves, at which two arms reach furthest.
    private (HandHeight Height, double Reach) Furthest(PairStates allowed) =>
        allowed.HasFlag(PairStates.Shoulder) ? (HandHeight.Shoulder, Math.Max(_arms.Reach(HandHeight.Shoulder), allowed.HasFlag(PairStates.Raised) ? _arms.Reach(HandHeight.Raised) : 0))
        : allowed.HasFlag(PairStates.Raised) ? (HandHeight.Raised, _arms.Reach(HandHeight.Raised))
        : (HandHeight.Low, _arms.Reach(HandHeight.Low));

    private void Suggest(Pairs pair, HandPath.State[] states)
    {
        for (var m = 1; m < states.Length; m++)
        {
            var (before, now) = (states[m - 1].Height, states[m].Height);
            var (wasJoined, joined) = (_moments[m - 1].Joined.HasFlag(pair), _moments[m].Joined.HasFlag(pair));
            if (now == HandHeight.Raised && before != HandHeight.Raised && !Told(pair, m)) _suggestions.Add(new(_moments[m].At, pair, HandVerb.Raise));
            if (before is not null && now is null && joined && !LetGoSoon(pair, m)) _suggestions.Add(new(_moments[m].At, pair, HandVerb.Release));
            if (before is null && now is not null && wasJoined) _suggestions.Add(new(_moments[m].At, pair, HandVerb.Take));
        }
    }

    // The page has the pair up at some moment of the stretch for which it goes up.
    private bool Told(Pairs pair, int m)
    {
        for (; m < _moments.Count; m++)
        {
            if (_moments[m].Raised.HasFlag(pair)) return true;
            if (!_moments[m].Turning) return false;
        }

        return false;
    }

    // The page lets go in the same turning, only later in its words.
    private bool LetGoSoon(Pairs pair, int m)
    {
        for (; m < _moments.Count; m++)
        {
            if (!_moments[m].Joined.HasFlag(pair)) return true;
            if (!_moments[m].Turning) return false;
        }

        return false;
    }

    private void TooLow(Pairs pair, HandPath.State[] states)
    {
        for (var m = 1; m < states.Length; m++)
        {
            if (states[m].Height is null || states[m - 1].Height is null) continue;
            if (states[m].Follow != states[m - 1].Follow) Under(m, Role.Follow, _arms.Statures.Follow, _arms.Statures.Lead);
            if (states[m].Lead != states[m - 1].Lead) Under(m, Role.Lead, _arms.Statures.Lead, _arms.Statures.Follow);
        }

        void Under(int m, Role who, double stature, double raiser)
        {
            var missing = stature + ArmSpan.OverTheHead - (Body.RaisedGrip * raiser);
            if (missing > 0) _troubles.Add(new(HandTroubleKind.Low, _moments[m].At, pair, who, missing, HandVerb.Release));
        }
    }

    // Straight arms rise to the shoulder by themselves: hands that are down are stretched when they are so there too.
    private void Stretched(PairWay way)
    {
        var (pair, states, winds, rules) = (way.Pair, way.States, way.Winds, way.Rules);
        var long_ = false;
        for (var m = 0; m < states.Length; m++)
        {
            // In the middle of a turn nobody stays, and a shoulder swings out and in again.
            if (states[m].Height is not { } height || _moments[m].Turning) continue;
            if (height == HandHeight.Low && rules[m].Allowed.HasFlag(PairStates.Shoulder)) height = HandHeight.Shoulder;
            var (reach, was) = (_arms.Reach(height), long_);
            long_ = winds[m].Apart > ArmsLength * reach;
            // Once for as long as it lasts.
            if (long_ && !was) _troubles.Add(new(HandTroubleKind.Stretched, _moments[m].At, pair, null, winds[m].Apart / reach, null) { Height = height });
        }
    }
}
