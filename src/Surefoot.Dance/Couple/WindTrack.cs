using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>How one pair of hands winds round both dancers at a moment, in degrees, and how far the shoulders are apart.</summary>
/// <param name="Lead">
/// The direction from the lead's middle to the partner's joined shoulder, from straight ahead, never cut at
/// half a turn: for a right arm clockwise counts up, for a left arm counter-clockwise. Likewise the follow's.
/// </param>
/// <param name="Apart">Between the two joined shoulders, in metres.</param>
public readonly record struct Wind(double Lead, double Follow, double Apart);

/// <summary>Measures winds continuously along a motion.</summary>
public static class WindTrack
{
    /// <summary>One wind for each moment, passes overhead not counted.</summary>
    /// <param name="start">Winds that the hold at the start already has, in whole turns of (lead, follow).</param>
    public static Wind[] Of(DanceMotion motion, IReadOnlyList<Moment> moments, Pairs pair, (int Lead, int Follow) start, (double Lead, double Follow) statures)
    {
        var (lead, follow) = (motion.Of(Role.Lead)!.Stances, motion.Of(Role.Follow)!.Stances);
        var winds = new Wind[moments.Count];
        var at = Poses(0);
        var (l, f) = Directions(at.Lead, at.Follow);
        var (windLead, windFollow) = (Sign(pair.LeadHand()) * l, Sign(pair.FollowHand()) * f);
        windLead = Principal(windLead) + (360 * start.Lead);
        windFollow = Principal(windFollow) + (360 * start.Follow);
        winds[0] = new(windLead, windFollow, Apart(at.Lead, at.Follow));
        for (var m = 1; m < moments.Count; m++)
        {
            var next = Poses(m);
            // In pieces of an eighth of a turn at most, so that no direction jumps by half a turn.
            var pieces = 2 * Math.Max(2, Math.Max(Math.Abs(next.LeadTurn), Math.Abs(next.FollowTurn)));
            for (var k = 1; k <= pieces; k++)
            {
                var part = (double)k / pieces;
                var a = Between(at.Lead, next.Lead, at.Lead.Angle + (45.0 * next.LeadTurn), part);
                var b = Between(at.Follow, next.Follow, at.Follow.Angle + (45.0 * next.FollowTurn), part);
                var (leadNow, followNow) = Directions(a, b);
                windLead += Principal((Sign(pair.LeadHand()) * leadNow) - windLead);
                windFollow += Principal((Sign(pair.FollowHand()) * followNow) - windFollow);
            }

            at = (next.Lead, next.Follow, 0, 0);
            winds[m] = new(windLead, windFollow, Apart(at.Lead, at.Follow));
        }

        return winds;

        (Pose Lead, Pose Follow, int LeadTurn, int FollowTurn) Poses(int m)
        {
            var (a, b) = (lead[moments[m].LeadStance], follow[moments[m].FollowStance]);
            return (
                new(a.Middle, a.Facing.Eighths * 45.0),
                new(b.Middle, b.Facing.Eighths * 45.0),
                m == 0 ? 0 : Turned(motion.Of(Role.Lead)!, moments[m - 1].LeadStance, moments[m].LeadStance),
                m == 0 ? 0 : Turned(motion.Of(Role.Follow)!, moments[m - 1].FollowStance, moments[m].FollowStance));
        }

        (double Lead, double Follow) Directions(Pose a, Pose b)
        {
            var toFollow = Shoulder(b, pair.FollowHand(), statures.Follow) - a.Middle;
            var toLead = Shoulder(a, pair.LeadHand(), statures.Lead) - b.Middle;
            return (Degrees(toFollow) - a.Angle, Degrees(toLead) - b.Angle);
        }

        double Apart(Pose a, Pose b) => (Shoulder(b, pair.FollowHand(), statures.Follow) - Shoulder(a, pair.LeadHand(), statures.Lead)).Length;
    }

    /// <summary>Where a dancer is and looks, the angle in degrees to the left of the floor's first direction and never cut.</summary>
    private readonly record struct Pose(Spot Middle, double Angle);

    private static int Turned(RoleMotion role, int from, int to)
    {
        var eighths = 0;
        for (var s = from + 1; s <= to; s++) eighths += role.Stances[s].Turned;
        return eighths;
    }

    private static Pose Between(Pose a, Pose b, double turnedTo, double part) =>
        new(a.Middle + ((b.Middle - a.Middle) * part), a.Angle + ((turnedTo - a.Angle) * part));

    private static Spot Shoulder(Pose pose, Foot side, double stature)
    {
        var half = Body.HalfShoulders * stature * (side == Foot.Left ? 1 : -1);
        var (sine, cosine) = Angles.SineAndCosine(pose.Angle);
        return pose.Middle + new Spot(-sine * half, cosine * half);
    }

    private static double Degrees(Spot way) => Math.Atan2(way.Y, way.X) * 180 / Math.PI;

    // A left arm counts counter-clockwise, a right arm clockwise.
    private static int Sign(Foot hand) => hand == Foot.Left ? 1 : -1;

    private static double Principal(double degrees)
    {
        var turned = degrees % 360;
        return turned > 180 ? turned - 360 : turned <= -180 ? turned + 360 : turned;
    }
}
