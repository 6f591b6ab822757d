using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Finds what every pair of hands does, from where both dancers are and what the page says.</summary>
internal sealed class HandsSolve
{
    /// <summary>Room above a head under raised hands, in metres. Working value.</summary>
    private const double OverTheHead = 0.02;

    private readonly DanceScore _score;
    private readonly DanceMotion _motion;
    private readonly IReadOnlyList<Moment> _moments;
    private readonly ArmRules _arms;
    private readonly double _scale;
    private readonly List<PairTrack> _tracks = [];
    private readonly List<HandSuggestion> _suggestions = [];
    private readonly List<HandTrouble> _troubles = [];
    private readonly Dictionary<Pairs, HandPath.State[]> _states = [];

    private HandsSolve(DanceScore score, DanceMotion motion, IReadOnlyList<Moment> moments, CoupleLimits limits)
    {
        (_score, _motion, _moments) = (score, motion, moments);
        var statures = (OneDancer.StatureOf(score.Facts, Role.Lead), OneDancer.StatureOf(score.Facts, Role.Follow));
        _arms = new(statures, limits);
        _scale = (statures.Item1 + statures.Item2) / 2 / Body.ReferenceStature;
    }

    public static HandsSolved Of(DanceScore score, DanceMotion motion, IReadOnlyList<Moment> moments, CoupleLimits limits)
    {
        var solve = new HandsSolve(score, motion, moments, limits);
        foreach (var pair in PairsOf.Each) solve.Follow(pair);
        solve.Twisted();
        return new(solve._tracks.ToValueList(), solve._suggestions.OrderBy(s => s.At).ToValueList(), solve._troubles.OrderBy(t => t.At).ToValueList());
    }

    private void Follow(Pairs pair)
    {
        var used = false;
        foreach (var moment in _moments) used |= moment.Joined.HasFlag(pair);
        if (!used) return;
        var winds = WindTrack.Of(_motion, _moments, pair, HoldWinds.WholeTurns(Holds.Named(_score.Facts.Hold), pair), _arms.Statures);
        var rules = PairRules.Of(_score, _moments, pair);
        var path = new HandPath(pair, winds, _moments, _arms, _scale);
        // Whether the dance leads back into its hold is only asked where it ends looking as it began.
        var loop = _moments[0].Lead == _moments[^1].Lead && _moments[0].Follow == _moments[^1].Follow && _moments[^1].Joined.HasFlag(pair) == _moments[0].Joined.HasFlag(pair);
        var (states, blocked) = path.Find(rules, loop);
        if (states is null)
        {
            _troubles.Add(Trouble(pair, path, rules, winds, blocked, loop));
            return;
        }

        _states[pair] = states;
        _tracks.Add(new(pair, states.Select(s => s.Height).ToValueList(), states.Select((s, m) => winds[m].Passed(s.Lead, s.Follow)).ToValueList()));
        Suggest(pair, states);
        TooLow(pair, states);
    }

    // The first repair that mends it tells what is wrong: only up and over, or only letting go.
    private HandTrouble Trouble(Pairs pair, HandPath path, PairRule[] rules, Wind[] winds, int blocked, bool loop)
    {
        var (at, wind) = (_moments[blocked].At, winds[blocked]);
        Role? whose = Math.Abs(wind.Lead) > Math.Abs(wind.Follow) ? Role.Lead : Role.Follow;
        var degrees = Math.Max(Math.Abs(wind.Lead), Math.Abs(wind.Follow));
        if (wind.Apart > _arms.Reach) return new(HandTroubleKind.Reach, at, pair, null, wind.Apart - _arms.Reach, HandVerb.Release);
        // Up while somebody turns and down again is a repair; standing about with hands overhead is none.
        if (Works(r => (r with { Allowed = r.Allowed | PairStates.Raised }, r with { Allowed = r.Allowed & ~PairStates.Raised }))) return new(HandTroubleKind.Overhead, at, pair, whose, degrees, HandVerb.Raise);
        var release = Works(r => (r with { Allowed = r.Allowed | PairStates.Released }, r with { Allowed = r.Allowed | PairStates.Released }));
        return new(HandTroubleKind.Wind, at, pair, whose, degrees, release ? HandVerb.Release : null);

        bool Works(Func<PairRule, (PairRule Turning, PairRule Standing)> freer)
        {
            var relaxed = rules.Select((r, m) => m == 0 || (r.Allowed & PairStates.Joined) == PairStates.None ? r : _moments[m].Turning ? freer(r).Turning : freer(r).Standing).ToArray();
            return path.Find(relaxed, loop).States is not null;
        }
    }

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
            var missing = stature + OverTheHead - (Body.RaisedGrip * raiser);
            if (missing > 0) _troubles.Add(new(HandTroubleKind.Low, _moments[m].At, pair, who, missing, HandVerb.Release));
        }
    }

    private void Twisted()
    {
        foreach (var (one, other) in ((Pairs, Pairs)[])[(Pairs.RightRight, Pairs.LeftLeft), (Pairs.LeftRight, Pairs.RightLeft)])
        {
            if (!_states.TryGetValue(one, out var a) || !_states.TryGetValue(other, out var b)) continue;
            for (var m = 1; m < _moments.Count; m++)
            {
                if (!_moments[m].Turning) continue;
                var last = m;
                while (last + 1 < _moments.Count && _moments[last + 1].Turning) last++;
                var (overA, overB) = (Over(a, m, last), Over(b, m, last));
                if (overA.Follow != 0 && overB.Follow != 0) _troubles.Add(new(HandTroubleKind.Twisted, _moments[m].At, one | other, Role.Follow, 0, HandVerb.Release));
                else if (overA.Lead != 0 && overB.Lead != 0) _troubles.Add(new(HandTroubleKind.Twisted, _moments[m].At, one | other, Role.Lead, 0, HandVerb.Release));
                m = last;
            }
        }

        static (int Lead, int Follow) Over(HandPath.State[] states, int from, int to)
        {
            var (lead, follow) = (0, 0);
            for (var m = from; m <= to; m++)
            {
                if (states[m].Height is null || states[m - 1].Height is null) continue;
                (lead, follow) = (lead + states[m].Lead - states[m - 1].Lead, follow + states[m].Follow - states[m - 1].Follow);
            }

            return (lead, follow);
        }
    }
}
