using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Follows the couple's hold through the repeat, from what the page says of hands, from facings and from usual
/// steps, before anybody's place is known.
/// </summary>
internal sealed class HoldTrack
{
    /// <summary>A hold further than this from the one before, in metres for 1.70 m, is reached by changing places. Working value.</summary>
    private const double OtherPlace = 0.25;

    private readonly DanceScore _score;
    private readonly CoupleLimits _limits;
    private readonly double _scale;
    private readonly RoleScore _lead;
    private readonly RoleScore _follow;
    private readonly List<Standing> _standings;
    private readonly List<HandTime> _hands;
    private readonly Spot[] _leadUsual;
    private readonly Spot[] _followUsual;
    private readonly Facing _ahead;

    private Pairs _joined;
    private Pairs _raised;
    private Pairs _letGo;
    private bool _upUsed;

    private HoldTrack(DanceScore score, Footwork lead, Footwork follow, CoupleLimits limits)
    {
        (_score, _limits, _ahead) = (score, limits, lead.Frame);
        _scale = (lead.Stature + follow.Stature) / 2 / Body.ReferenceStature;
        (_lead, _follow) = (lead.Role, follow.Role);
        _hands = HandTimes.Of(score);
        (_leadUsual, _followUsual) = (Usual(lead), Usual(follow));
        _standings = Standings();
    }

    /// <remarks>Places are estimated in the frame of the footwork, so that the same dance begun with another facing is followed alike to the last bit.</remarks>
    public static List<Moment> Of(DanceScore score, Footwork lead, Footwork follow, CoupleLimits limits) => new HoldTrack(score, lead, follow, limits).Walk();

    private static Spot[] Usual(Footwork work)
    {
        var lengths = new double[work.Role.Steps.Count];
        for (var i = 0; i < lengths.Length; i++) lengths[i] = StepLengths.Usual.Chosen(work.Role.Steps[i], work.Stature);
        return work.Middles(Spot.Origin, lengths, new double[lengths.Length]);
    }

    private readonly record struct Standing(Count At, int LeadStance, int FollowStance, Facing Lead, Facing Follow, bool Turning)
    {
        public Turn Apart => Follow - Lead;
    }

    private List<Standing> Standings()
    {
        var all = new List<Standing> { new(Count.At(0), 0, 0, _lead.Start.Facing, _follow.Start.Facing, false) };
        var (turnsLead, turnsFollow) = (Turnings.Of(_lead), Turnings.Of(_follow));
        var (l, f) = (0, 0);
        while (l < _lead.Steps.Count || f < _follow.Steps.Count)
        {
            var at = l >= _lead.Steps.Count ? _follow.Steps[f].At
                : f >= _follow.Steps.Count || _lead.Steps[l].At < _follow.Steps[f].At ? _lead.Steps[l].At : _follow.Steps[f].At;
            var turning = false;
            while (l < _lead.Steps.Count && _lead.Steps[l].At == at) turning |= turnsLead[l++];
            while (f < _follow.Steps.Count && _follow.Steps[f].At == at) turning |= turnsFollow[f++];
            all.Add(new(at, l, f, l > 0 ? _lead.Steps[l - 1].Facing : _lead.Start.Facing, f > 0 ? _follow.Steps[f - 1].Facing : _follow.Start.Facing, turning));
        }

        return all;
    }

    private List<Moment> Walk()
    {
        var start = Holds.Named(_score.Facts.Hold);
        var (hold, named) = (start, start);
        var centre = start is null ? new Spot(0.75, 0) : new Spot(start.Ahead, start.Left);
        _joined = start?.Joined ?? Pairs.None;
        var known = 0;
        var moments = new List<Moment> { Moment(0, false, Settled(hold, centre)) };
        for (var (m, h) = (1, 0); m < _standings.Count; m++)
        {
            var now = _standings[m];
            var before = _joined;
            StatedHold? stated = null;
            var seen = Seen(known, centre, m);
            for (; h < _hands.Count && _hands[h].At <= now.At; h++) stated = Apply(_hands[h], now.Apart, seen.Y > 0) ?? stated;
            var moving = now.Turning || OnTheWay(h, now, hold, seen, named);
            if (now.Turning) _upUsed |= _raised != Pairs.None;
            else if (_upUsed) (_raised, _upUsed) = (Pairs.None, false);
            if (stated is { Fits: true } && Holds.Named(stated.Hold) is { } told)
            {
                (hold, named, known, centre) = (told, told, m, new(told.Ahead, told.Left));
                var where = Settled(hold, centre);
                // Whoever has only just stopped turning is not quite there yet.
                moments.Add(Moment(m, now.Turning, where.Wide || !now.Turning ? where : where with { Give = _limits.RaisedGive * _scale }) with { Stated = stated });
                continue;
            }

            if (moving)
            {
                moments.Add(Moment(m, true, AsOne(hold, known, m) ? Near(hold!, seen) : Wide(seen)) with { Stated = stated });
                continue;
            }

            var justNamed = moments[m - 1].Stated is { Fits: true } && _joined == before;
            if (!justNamed && (moments[m - 1].Turning || _joined != before))
            {
                // With hands up between two turns they are under way.
                hold = moments[m - 1].Turning && _raised != Pairs.None ? null : NearestHold.Of(_joined, now.Apart, seen, named);
                if (hold is not null) (named, centre, known) = (hold, new(hold.Ahead, hold.Left), m);
            }
            else if (hold is not null)
            {
                known = m;
            }

            moments.Add(Moment(m, false, hold is null ? Wide(seen) : Settled(hold, centre)) with { Stated = stated });
        }

        return moments;
    }

    private Moment Moment(int m, bool turning, Region where) =>
        new(_standings[m].At, _standings[m].LeadStance, _standings[m].FollowStance, _standings[m].Lead, _standings[m].Follow, turning, _joined, _raised, where);

    private Region Settled(Hold? hold, Spot centre) =>
        hold is null or { Joined: Pairs.None } ? Wide(centre)
            : new(hold.Name, false, centre * _scale, (_raised == Pairs.None ? _limits.HoldGive : _limits.RaisedGive) * _scale);

    // Without joined hands nothing keeps them near each other but the way back.
    private Region Wide(Spot seen) =>
        new(_joined == Pairs.None ? "hands free" : null, true, seen * _scale, _joined == Pairs.None ? double.PositiveInfinity : _limits.TurnReach * _limits.Arms * _scale);

    // Two who turn as one, like a wheel: all the while they look at each other as their hold has them.
    private bool AsOne(Hold? hold, int known, int m)
    {
        if (hold is null or { Joined: Pairs.None } || _joined != hold.Joined) return false;
        for (var k = known + 1; k <= m; k++)
        {
            if (!NearestHold.Looks(hold, _standings[k].Apart)) return false;
        }

        return true;
    }

    // They stay as near as the hold has them, wherever she is seen from him.
    private Region Near(Hold hold, Spot seen)
    {
        var wide = Wide(seen);
        return wide with { Give = Math.Min(wide.Give, (new Spot(hold.Ahead, hold.Left).Length + _limits.HoldGive) * _scale) };
    }

    // On the way under a pair, or into a hold that the page names and that is somewhere else.
    private bool OnTheWay(int h, Standing now, Hold? hold, Spot seen, Hold? named)
    {
        for (var i = h; i < _hands.Count; i++)
        {
            if (_hands[i].From > now.At || _hands[i].At <= now.At) continue;
            if (_hands[i].Words.Verb is HandVerb.Under or HandVerb.Over) return true;
            if (_hands[i].Words.Verb != HandVerb.Into) continue;
            if (Holds.Named(_hands[i].Words.Hold) is not { } next) continue;
            // A fact may tell of what is so already.
            if (_hands[i].Claimed && NearestHold.Of(_joined, now.Apart, seen, named) == next) continue;
            if (hold is null || (new Spot(next.Ahead, next.Left) - new Spot(hold.Ahead, hold.Left)).Length > OtherPlace) return true;
        }

        return false;
    }

    // About where she is, seen from him, when both have danced usual steps since the last place that is known.
    private Spot Seen(int known, Spot centre, int m)
    {
        var (a, b) = (_standings[known], _standings[m]);
        var moved = (_followUsual[b.FollowStance] - _followUsual[a.FollowStance]) - (_leadUsual[b.LeadStance] - _leadUsual[a.LeadStance]);
        var place = Spot.Origin.Moved(InFrame(a.Lead), centre.X, centre.Y) + (moved * (1 / _scale));
        return Spot.Origin.Moved(new(-InFrame(b.Lead).Eighths), place.X, place.Y);
    }

    private Facing InFrame(Facing facing) => new(facing.Eighths - _ahead.Eighths);

    private StatedHold? Apply(HandTime hand, Turn apart, bool onHisLeft)
    {
        var words = hand.Words;
        switch (words.Verb)
        {
            case HandVerb.Release:
                var let = PairWords.Meant(words, _joined);
                _joined &= ~let;
                _raised &= ~let;
                _letGo |= let;
                break;
            case HandVerb.Take:
                _joined |= PairWords.Taken(words, _joined, apart, onHisLeft);
                _letGo &= ~_joined;
                // What was lifted for a turn comes down where other hands are taken.
                if (_upUsed) (_raised, _upUsed) = (Pairs.None, false);
                break;
            case HandVerb.Raise or HandVerb.Under or HandVerb.Over:
                _raised |= PairWords.Meant(words, _joined);
                _upUsed = false;
                break;
            case HandVerb.Lower:
                _raised &= ~PairWords.Meant(words, _joined);
                break;
            case HandVerb.Into when Holds.Named(words.Hold) is { } named:
                // A stated fact takes no hands; going into a hold does.
                if (named.Kind == "hammerlock") named = AsTold(named);
                var missing = hand.Claimed ? named.Joined & _letGo : Pairs.None;
                var fits = NearestHold.Looks(named, apart) && missing == Pairs.None;
                if (fits) (_joined, _raised, _letGo) = (HandsOf(named), Pairs.None, _letGo & ~named.Joined);
                return hand.Again && !fits ? null : new(named.Name, hand.Claimed, missing, fits, hand.Span);
        }

        return null;
    }

    // Behind which arm a back lies is told by the hands: only her right one joined, it is the other way round.
    private Hold AsTold(Hold hammerlock)
    {
        var (left, right) = (_joined & (Pairs.RightLeft | Pairs.LeftLeft), _joined & (Pairs.LeftRight | Pairs.RightRight));
        var behind = hammerlock.OtherWay ? right : left;
        return behind == Pairs.None && _joined != Pairs.None ? Holds.Mirror(hammerlock) : hammerlock;
    }

    // A hammerlock can be had with any hands that are joined already.
    private Pairs HandsOf(Hold hold) => hold.Kind == "hammerlock" && _joined != Pairs.None ? _joined : hold.Joined;
}
