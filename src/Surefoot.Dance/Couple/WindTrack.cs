using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>How one pair of hands winds round both dancers at a moment, in degrees, and how far the shoulders are apart.</summary>
/// <param name="Lead">
/// The direction from the lead's middle to the partner's joined shoulder, from straight ahead, never cut at
/// half a turn: for a right arm clockwise counts up, for a left arm counter-clockwise. Likewise the follow's.
/// </param>
/// <param name="Apart">Between the two joined shoulders, in metres.</param>
public readonly record struct Wind(double Lead, double Follow, double Apart)
{
    /// <summary>The same after whole passes of the pair over either head.</summary>
    public Wind Passed(int lead, int follow) => this with { Lead = Lead + (360.0 * lead), Follow = Follow + (360.0 * follow) };
}

/// <summary>Where a dancer is and looks; the angle in degrees to the left of the floor's first direction, never cut.</summary>
public readonly record struct Pose(Spot Middle, double Angle);

/// <summary>Measures winds continuously along a motion.</summary>
public static class WindTrack
{
    /// <summary>Pieces of an eighth of a turn into which turning is cut, so that no direction jumps by half a turn.</summary>
    private const int PiecesAnEighth = 2;

    /// <summary>One wind for each moment, passes overhead not counted.</summary>
    /// <param name="start">Whole turns that the hold at the start already has.</param>
    public static Wind[] Of(DanceMotion motion, IReadOnlyList<Moment> moments, Pairs pair, (int Lead, int Follow) start, (double Lead, double Follow) statures)
    {
        var (lead, follow) = (motion.Of(Role.Lead)!.Stances, motion.Of(Role.Follow)!.Stances);
        var winds = new Wind[moments.Count];
        var (l, f) = (PoseOf(lead[moments[0].LeadStance]), PoseOf(follow[moments[0].FollowStance]));
        var wind = winds[0] = At(l, f, pair, start, statures);
        for (var m = 1; m < winds.Length; m++)
        {
            var (leadTurn, followTurn) = (Turned(lead, moments[m - 1].LeadStance, moments[m].LeadStance), Turned(follow, moments[m - 1].FollowStance, moments[m].FollowStance));
            var (nextLead, nextFollow) = (new Pose(lead[moments[m].LeadStance].Middle, l.Angle + (45.0 * leadTurn)), new Pose(follow[moments[m].FollowStance].Middle, f.Angle + (45.0 * followTurn)));
            // Going straight past each other turns no direction by half a turn.
            var pieces = leadTurn == 0 && followTurn == 0 ? 1 : PiecesAnEighth * Math.Max(2, Math.Max(Math.Abs(leadTurn), Math.Abs(followTurn)));
            for (var k = 1; k <= pieces; k++)
            {
                var part = (double)k / pieces;
                wind = Next(wind, At(Between(l, nextLead, part), Between(f, nextFollow, part), pair, (0, 0), statures));
            }

            (l, f, winds[m]) = (nextLead, nextFollow, wind);
        }

        return winds;
    }

    /// <summary>The wind of a pair where two dancers stand, by the shortest way and some whole turns.</summary>
    public static Wind At(Pose lead, Pose follow, Pairs pair, (int Lead, int Follow) turns, (double Lead, double Follow) statures)
    {
        var (hers, his) = (Shoulder(follow, pair.FollowHand(), statures.Follow), Shoulder(lead, pair.LeadHand(), statures.Lead));
        return new Wind(
            Shortest(Sign(pair.LeadHand()) * (Degrees(hers - lead.Middle) - lead.Angle)),
            Shortest(Sign(pair.FollowHand()) * (Degrees(his - follow.Middle) - follow.Angle)),
            (hers - his).Length).Passed(turns.Lead, turns.Follow);
    }

    private static Wind Next(Wind before, Wind now) =>
        new(before.Lead + Shortest(now.Lead - before.Lead), before.Follow + Shortest(now.Follow - before.Follow), now.Apart);

    private static Pose PoseOf(Stance stance) => new(stance.Middle, stance.Facing.Eighths * 45.0);

    private static int Turned(ValueList<Stance> stances, int from, int to)
    {
        var eighths = 0;
        for (var s = from + 1; s <= to; s++) eighths += stances[s].Turned;
        return eighths;
    }

    private static Pose Between(Pose a, Pose b, double part) => new(a.Middle + ((b.Middle - a.Middle) * part), a.Angle + ((b.Angle - a.Angle) * part));

    private static Spot Shoulder(Pose pose, Foot side, double stature)
    {
        var half = Body.HalfShoulders * stature * (side == Foot.Left ? 1 : -1);
        var (sine, cosine) = Angles.SineAndCosine(pose.Angle);
        return pose.Middle + new Spot(-sine * half, cosine * half);
    }

    private static double Degrees(Spot way) => Math.Atan2(way.Y, way.X) * 180 / Math.PI;

    // A left arm counts counter-clockwise, a right arm clockwise.
    private static int Sign(Foot hand) => hand == Foot.Left ? 1 : -1;

    private static double Shortest(double degrees)
    {
        var turned = degrees % 360;
        return turned > 180 ? turned - 360 : turned <= -180 ? turned + 360 : turned;
    }
}
