using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Follows the couple's hold through the repeat, from what the page says of hands and from facings alone,
/// before anybody's place is known.
/// </summary>
public sealed class HoldTrack
{
    /// <summary>Partners are this far from a hold's centre at most, in metres for 1.70 m. Common practice, working value.</summary>
    private const double HoldGive = 0.15;

    /// <summary>Where what they hold has no name, they may be this much further from where they were. Working value.</summary>
    private const double NamelessGive = 0.30;

    /// <summary>While somebody turns under or passes, she is within this reach of the lead. Working value.</summary>
    private const double TurnReach = 0.95;

    /// <summary>Without joined hands they stay within calling distance, in metres. Working value.</summary>
    private const double FreeReach = 2.5;

    private readonly DanceScore _score;
    private readonly RoleScore _lead;
    private readonly RoleScore _follow;
    private readonly double _scale;
    private readonly List<(Count At, HandWords Words)> _hands;

    private HoldTrack(DanceScore score, double scale)
    {
        _score = score;
        _scale = scale;
        _lead = score.Of(Role.Lead)!;
        _follow = score.Of(Role.Follow)!;
        _hands = HandsOf(score);
    }

    /// <param name="scale">Mean stature of the two against 1.70 m.</param>
    public static List<Moment> Of(DanceScore score, double scale) => new HoldTrack(score, scale).Walk();

    /// <summary>What the page says of hands through the whole repeat, in order.</summary>
    public static List<(Count At, HandWords Words)> HandsOf(DanceScore score)
    {
        var all = new List<(Count, HandWords)>();
        foreach (var section in score.Sections)
        {
            foreach (var hands in score.Hands)
            {
                if (hands.Part != section.Part) continue;
                all.Add((section.Start + (hands.At - Count.First), section.Mirrored ? hands.Words.Mirrored() : hands.Words));
            }
        }

        return [.. all.OrderBy(h => h.Item1)];
    }

    private List<Moment> Walk()
    {
        var moments = new List<Moment>();
        var start = Holds.Named(_score.Facts.Hold);
        var (leadFacing, followFacing) = (_lead.Start.Facing, _follow.Start.Facing);
        var joined = start?.Joined ?? Pairs.None;
        var raised = Pairs.None;
        var hold = start;
        var centre = start is null ? new Spot(0.75, 0) : new Spot(start.Ahead, start.Left);
        // The lead looked this way when she was last at the centre; turning since then has moved it round him.
        var since = leadFacing;
        var apart = followFacing - leadFacing;
        string? into = null;
        moments.Add(new(Count.At(0), 0, 0, leadFacing, followFacing, joined, raised, Settled(hold?.Name, centre, hold is not null)));
        var (l, f, h) = (0, 0, 0);
        var turnsLead = Turning(_lead.Steps);
        var turnsFollow = Turning(_follow.Steps);
        while (l < _lead.Steps.Count || f < _follow.Steps.Count)
        {
            var at = Next(l, f);
            var turning = false;
            while (l < _lead.Steps.Count && _lead.Steps[l].At == at) turning |= turnsLead[l++];
            while (f < _follow.Steps.Count && _follow.Steps[f].At == at) turning |= turnsFollow[f++];
            if (l > 0) leadFacing = _lead.Steps[l - 1].Facing;
            if (f > 0) followFacing = _follow.Steps[f - 1].Facing;
            var handsMoved = false;
            var under = false;
            while (h < _hands.Count && _hands[h].At <= at)
            {
                handsMoved |= Apply(_hands[h].Words, followFacing - leadFacing, ref joined, ref raised, ref into, ref under);
                h++;
            }

            if (turning || under || raised != Pairs.None)
            {
                moments.Add(new(at, l, f, leadFacing, followFacing, joined, raised, new(null, true, Round(centre, since, leadFacing), (joined == Pairs.None ? FreeReach : TurnReach) * _scale)));
                // A pair that somebody went under comes down with the next count.
                if (under) raised = Pairs.None;
                continue;
            }

            var now = followFacing - leadFacing;
            if (into is not null || handsMoved || now != apart || leadFacing != since)
            {
                var seen = Round(centre, since, leadFacing);
                hold = into is not null && Holds.Named(into) is { } named && new Facing(named.FollowTurn.Eighths) == new Facing(now.Eighths) ? named : Nearest(joined, now, seen);
                centre = hold is null ? seen : new(hold.Ahead, hold.Left);
                (since, apart, into) = (leadFacing, now, null);
            }

            moments.Add(new(at, l, f, leadFacing, followFacing, joined, raised, joined == Pairs.None && hold is not { Joined: not Pairs.None }
                ? new("hands free", true, centre, FreeReach * _scale)
                : Settled(hold?.Name, centre, hold is not null)));
        }

        return moments;
    }

    private Region Settled(string? hold, Spot centre, bool named) =>
        new(hold, false, centre * _scale, (named ? HoldGive : NamelessGive) * _scale);

    private Count Next(int l, int f)
    {
        if (l >= _lead.Steps.Count) return _follow.Steps[f].At;
        if (f >= _follow.Steps.Count) return _lead.Steps[l].At;
        return _lead.Steps[l].At < _follow.Steps[f].At ? _lead.Steps[l].At : _follow.Steps[f].At;
    }

    // Where she is in the lead's frame after he has turned on the spot.
    private static Spot Round(Spot centre, Facing since, Facing now) => Spot.Origin.Moved(new(since.Eighths - now.Eighths), centre.X, centre.Y);

    private static Hold? Nearest(Pairs joined, Turn apart, Spot seen)
    {
        Hold? best = null;
        var nearest = 0.45;
        foreach (var hold in Holds.All)
        {
            if (hold.Joined != joined || joined == Pairs.None || new Facing(hold.FollowTurn.Eighths) != new Facing(apart.Eighths)) continue;
            var away = (new Spot(hold.Ahead, hold.Left) - seen).Length;
            if (away >= nearest) continue;
            (best, nearest) = (hold, away);
        }

        return best;
    }

    // From the first to the last turning action of the same words somebody is turning.
    private static bool[] Turning(ValueList<ScoreStep> steps)
    {
        var turning = new bool[steps.Count];
        for (var i = 0; i < steps.Count; i++)
        {
            if (steps[i].Turn.IsNone) continue;
            turning[i] = true;
            var last = i;
            for (var k = i + 1; k < steps.Count && steps[k].Source == steps[i].Source && steps[k].Section == steps[i].Section; k++)
            {
                if (!steps[k].Turn.IsNone) last = k;
            }

            for (; i < last; i++) turning[i + 1] = true;
        }

        return turning;
    }

    private static bool Apply(HandWords words, Turn apart, ref Pairs joined, ref Pairs raised, ref string? into, ref bool under)
    {
        switch (words.Verb)
        {
            case HandVerb.Release:
                var let = Meant(words, joined, apart);
                joined &= ~let;
                raised &= ~let;
                return true;
            case HandVerb.Take:
                joined |= Taken(words, joined, apart);
                if (words.Hold is { } taken) into = taken;
                return true;
            case HandVerb.Into when words.Hold is { } hold:
                into = hold;
                if (Holds.Named(hold) is { } named) joined = named.Joined;
                raised = Pairs.None;
                return true;
            case HandVerb.Raise:
                raised |= Meant(words, joined, apart);
                return false;
            case HandVerb.Lower:
                raised &= ~Meant(words, joined, apart);
                return false;
            case HandVerb.Under or HandVerb.Over:
                under = true;
                return false;
            default:
                return false;
        }
    }

    /// <summary>Which joined pairs words such as "right hands" or "his left hand" mean.</summary>
    public static Pairs Meant(HandWords words, Pairs joined, Turn apart)
    {
        var named = words.Pair switch
        {
            HandPair.Right => joined.HasFlag(Pairs.RightRight) && words.Whose is null ? Pairs.RightRight : words.Whose == Role.Follow ? Pairs.LeftRight | Pairs.RightRight : Pairs.RightLeft | Pairs.RightRight,
            HandPair.Left => joined.HasFlag(Pairs.LeftLeft) && words.Whose is null ? Pairs.LeftLeft : words.Whose == Role.Follow ? Pairs.RightLeft | Pairs.LeftLeft : Pairs.LeftRight | Pairs.LeftLeft,
            HandPair.Inside => Pairs.RightLeft | Pairs.LeftRight,
            _ => joined,
        };
        return named & joined;
    }

    private static Pairs Taken(HandWords words, Pairs joined, Turn apart)
    {
        var facing = Math.Abs(apart.Eighths) >= 3;
        return words.Pair switch
        {
            HandPair.Right when words.Whose is null => Pairs.RightRight,
            HandPair.Left when words.Whose is null => Pairs.LeftLeft,
            HandPair.Right => facing ? (words.Whose == Role.Lead ? Pairs.RightLeft : Pairs.LeftRight) : Pairs.RightRight,
            HandPair.Left => facing ? (words.Whose == Role.Lead ? Pairs.LeftRight : Pairs.RightLeft) : Pairs.LeftLeft,
            HandPair.Inside => Pairs.RightLeft,
            _ => facing ? Pairs.Facing : joined == Pairs.RightLeft ? Pairs.RightLeft : Pairs.Alike,
        };
    }
}
