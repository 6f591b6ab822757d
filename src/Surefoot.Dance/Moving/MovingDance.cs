using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Moving;

/// <summary>
/// Everybody at any moment of a repeat: bodies, feet and hands, smooth between counts. Made from the score, the
/// motion and the solved hands; cheap to ask, the same answer every time.
/// </summary>
public sealed class MovingDance
{
    /// <summary>A free hand hangs beside the body: ahead, outward and up, / stature. Working values, from memory.</summary>
    private const double HangsAhead = 0.03, HangsAside = 0.16, HangsUp = 0.46;

    private readonly HandsTrack[] _hands;

    private MovingDance(DanceScore score, ValueList<MovingDancer> dancers, HandsTrack[] hands)
    {
        (Dancers, _hands, Score) = (dancers, hands, score);
        End = score.Counts.ToDouble() + 1;
    }

    public DanceScore Score { get; }

    public ValueList<MovingDancer> Dancers { get; }

    /// <summary>The count at which the repeat is over and count 1 comes again.</summary>
    public double End { get; }

    public static MovingDance Of(DanceScore score, DanceMotion motion, CoupleSolution? couple)
    {
        var dancers = new List<MovingDancer>();
        foreach (var role in motion.Roles)
        {
            if (score.Of(role.Role) is { } steps) dancers.Add(new(steps, role, OneDancer.StatureOf(score.Facts, role.Role)));
        }

        return new(score, dancers.ToValueList(), HandsOf(score, motion, couple));
    }

    private static HandsTrack[] HandsOf(DanceScore score, DanceMotion motion, CoupleSolution? couple)
    {
        if (couple is not { Hands: { } solved, Moments: var moments } || motion.Of(Role.Lead) is null || motion.Of(Role.Follow) is null) return [];
        var statures = (OneDancer.StatureOf(score.Facts, Role.Lead), OneDancer.StatureOf(score.Facts, Role.Follow));
        var holds = HeldOn.Of(score, motion, moments);
        return [.. solved.Pairs.Select(p => new HandsTrack(p, moments, holds, UnderHands.Of(p, motion, moments, statures), PerSecond(score.Facts), score.Counts.ToDouble() + 1))];
    }

    // Where a page names no tempo, two counts a second: a brisk walk.
    private static double PerSecond(DanceFacts facts) => ((facts.TempoFrom ?? 120) + (facts.TempoTo ?? facts.TempoFrom ?? 120)) / 120.0;

    public MovingDancer? Of(Role role)
    {
        foreach (var one in Dancers)
        {
            if (one.Role == role) return one;
        }

        return null;
    }

    /// <summary>Where both hands of a dancer are while everybody stands as they do at a count.</summary>
    public (HandMoved Left, HandMoved Right) Hands(Role role, double count)
    {
        var own = Of(role)!;
        var body = own.At(count);
        var (left, right) = (Hanging(body, own.Stature, Foot.Left), Hanging(body, own.Stature, Foot.Right));
        if (_hands.Length == 0 || role == Role.Dancer) return (left, right);
        var (lead, follow) = (Of(Role.Lead)!, Of(Role.Follow)!);
        var (leadBody, followBody) = role == Role.Lead ? (body, follow.At(count)) : (lead.At(count), body);
        foreach (var track in _hands)
        {
            var (place, joined) = track.At(count, leadBody, followBody, lead.Stature, follow.Stature);
            if (joined == 0) continue;
            var (hand, at) = role == Role.Lead ? (track.Pair.LeadHand(), place.Lead) : (track.Pair.FollowHand(), place.Follow);
            if (hand == Foot.Left) left = Joined(left);
            else right = Joined(right);

            HandMoved Joined(HandMoved free)
            {
                var there = new HandPlace(free.At, free.Up).Towards(at, joined);
                return new(there.At, there.Up, joined == 1 ? track.Pair : free.Joined);
            }
        }

        return (left, right);
    }

    private static HandMoved Hanging(DancerMoved body, double stature, Foot hand) =>
        new(body.Beside(HangsAhead * stature, HangsAside * stature * (hand == Foot.Left ? 1 : -1)), HangsUp * stature, Pairs.None);
}
