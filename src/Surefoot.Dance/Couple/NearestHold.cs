using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>Names what a couple holds from the hands joined, how they look and about where they are.</summary>
internal static class NearestHold
{
    /// <summary>Further than this from its centre, in metres for 1.70 m, nobody would call it that hold. Working value.</summary>
    private const double Furthest = 0.60;

    /// <summary>The same where only one hold has those hands and facings. Working value.</summary>
    private const double FurthestOfOne = 1.00;

    /// <summary>Two holds as near as this are not told apart, in metres.</summary>
    private const double Alike = 0.02;

    /// <param name="seen">About where the follow is, in the lead's frame, for two dancers of 1.70 m.</param>
    /// <param name="before">The hold that was last known by name.</param>
    public static Hold? Of(Pairs joined, Turn apart, Spot seen, Hold? before)
    {
        if (joined == Pairs.None) return null;
        Hold? best = null;
        var (nearest, second, found) = (double.PositiveInfinity, double.PositiveInfinity, 0);
        foreach (var hold in Holds.All)
        {
            if (hold.Joined != joined || !Looks(hold, apart) || hold.Kind == "hammerlock") continue;
            if (!ReachedUnsaid(hold, before)) continue;
            found++;
            var away = (new Spot(hold.Ahead, hold.Left) - seen).Length;
            if (away < nearest) (best, nearest, second) = (hold, away, nearest);
            else second = Math.Min(second, away);
        }

        return nearest <= (found == 1 ? FurthestOfOne : Furthest) && second - nearest > Alike ? best : null;
    }

    // Nobody comes into a closed hold, or from the shoulder to the hip, by turning alone; the page says it.
    private static bool ReachedUnsaid(Hold hold, Hold? before) => hold.Kind switch
    {
        "closed" or "promenade" => before?.Kind is "closed" or "promenade" && before.OtherWay == hold.OtherWay,
        // Turned about together, hands at her right hip come to lie at her left hip.
        "skaters" => before?.Kind == "skaters",
        "sweetheart" => before?.Kind != "skaters",
        // Two hands opened out side by side look like it and are not: nobody has gone under.
        "wrap" => before == hold,
        // Which hands are on top is seen by nobody; right over left is the usual way.
        "crossed hands" => hold.OtherWay == (before is { Kind: "crossed hands", OtherWay: true }),
        _ => true,
    };

    /// <summary>True when partners look as a hold needs them to. In a promenade both look along the travel, more or less.</summary>
    public static bool Looks(Hold hold, Turn apart)
    {
        var off = Math.Abs((new Facing(apart.Eighths) - new Facing(hold.FollowTurn.Eighths)).Eighths);
        return off == 0 || (off == 1 && hold.FollowTurn.Eighths is not (0 or 4));
    }
}
