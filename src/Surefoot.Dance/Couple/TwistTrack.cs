using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Follows how both pairs together lie to each other. A turn to the left under both pairs turns them about each
/// other one way and a turn to the right the other way, whoever of the two turns: from crossed hands, right over
/// left, a full turn to the right ends left over right, and one to the left ends in a knot. When both dancers
/// turn under, opposite ways undo each other; the same way they need not twist either, as one pair can be
/// carried above the other all round.
/// </summary>
internal static class TwistTrack
{
    /// <returns>Half twists at each moment, as <see cref="Twist.Halves"/> counts them, and how many of them the hands had when they were taken.</returns>
    public static (int Halves, int Taken)[] Of(IReadOnlyList<Moment> moments, (Pairs Pair, HandPath.State[] States) one, (Pairs Pair, HandPath.State[] States) other, Hold? start)
    {
        var halves = new (int Halves, int Taken)[moments.Count];
        var (taken, lead, follow) = (AsIn(start), default(Passes), default(Passes));
        halves[0] = (taken, taken);
        for (var m = 1; m < halves.Length; m++)
        {
            var (a, b, wasA, wasB) = (one.States[m], other.States[m], one.States[m - 1], other.States[m - 1]);
            if (a.Height is null || b.Height is null || wasA.Height is null || wasB.Height is null)
            {
                // A pair that is let go takes all twisting with it.
                (taken, lead, follow) = (AsIn(HoldAt(moments[m])), default, default);
            }
            else
            {
                lead = new(lead.One + Sense(one.Pair.LeadHand(), wasA.Lead, a.Lead), lead.Other + Sense(other.Pair.LeadHand(), wasB.Lead, b.Lead));
                follow = new(follow.One + Sense(one.Pair.FollowHand(), wasA.Follow, a.Follow), follow.Other + Sense(other.Pair.FollowHand(), wasB.Follow, b.Follow));
            }

            halves[m] = (taken + (2 * Both(lead.Common, follow.Common)), taken);
        }

        return halves;
    }

    /// <summary>Half twists that a hold has.</summary>
    public static int AsIn(Hold? hold) => hold?.Kind != "crossed hands" ? 0 : hold.OtherWay ? -1 : 1;

    /// <summary>The hold that is named next after a moment while both pairs stay joined, if the arms lie otherwise than it needs; at last the hold in which the repeat begins again.</summary>
    public static (string? Hold, Count At) Hindered(IReadOnlyList<Moment> moments, (int Halves, int Taken)[] halves, Pairs both, int from, Hold? start)
    {
        for (var m = from; m < halves.Length; m++)
        {
            if (!moments[m].Joined.HasFlag(both) || halves[m].Halves != halves[from].Halves) return default;
            if (moments[m].Stated is not { Fits: true } stated) continue;
            return Math.Abs(halves[m].Halves - AsIn(Holds.Named(stated.Hold))) > 1 ? (stated.Hold, moments[m].At) : default;
        }

        return start is not null && start.Joined.HasFlag(both) && Math.Abs(halves[^1].Halves - halves[0].Halves) > 1 ? (start.Name, moments[0].At) : default;
    }

    private readonly record struct Passes(int One, int Other)
    {
        /// <summary>Passes that both pairs made, with their sense.</summary>
        public int Common => Math.Sign(One) != Math.Sign(Other) ? 0 : Math.Sign(One) * Math.Min(Math.Abs(One), Math.Abs(Other));
    }

    // A pass that undoes a turn to the left takes wind from a right arm and adds it to a left one.
    private static int Sense(Foot hand, int before, int after) => (after - before) * (hand == Foot.Left ? 1 : -1);

    private static int Both(int lead, int follow) => Math.Abs(lead) >= Math.Abs(follow)
        ? lead - (Math.Sign(lead) * Math.Abs(follow))
        : follow - (Math.Sign(follow) * Math.Abs(lead));

    private static Hold? HoldAt(Moment moment) => Holds.Named(moment.Stated is { Fits: true } stated ? stated.Hold : moment.Where.Hold);
}
