using System.Collections.Frozen;

namespace Surefoot.Dance.Basics;

/// <summary>
/// Where partners stand in a hold, seen from the lead: metres ahead and to the left for two dancers of
/// 1.70 m, and the follow's facing against the lead's. Common practice; working values, from memory.
/// </summary>
/// <param name="Joined">Which hands are joined, or lie on the partner as in a closed hold.</param>
/// <param name="Kind">The hold this is, whichever way round; its own name unless it is the mirror image of another.</param>
/// <param name="OtherWay">True for the mirror image of the hold that <paramref name="Kind"/> names.</param>
public sealed record Hold(string Name, double Ahead, double Left, Turn FollowTurn, Pairs Joined, string Kind, bool OtherWay = false)
{
    public Hold(string name, double ahead, double left, Turn followTurn, Pairs joined)
        : this(name, ahead, left, followTurn, joined, name)
    {
    }

    /// <summary>The same hold seen in a mirror, under the name by which the trade knows it.</summary>
    public Hold OtherWayRound(string name) => new(name, Ahead, -Left + 0.0, FollowTurn.Mirrored, Joined.Mirrored(), Kind, !OtherWay);
}

public static class Holds
{
    private static readonly Hold[] OneWay =
    [
        new("closed", 0.40, -0.08, new(4), Pairs.Facing),
        new("two hands", 0.75, 0, new(4), Pairs.Facing),
        new("one hand", 0.75, 0, new(4), Pairs.LeftRight),
        new("handshake", 0.75, 0, new(4), Pairs.RightRight),
        // Right hands over left; the way the arms lie makes this another hold than its mirror image.
        new("crossed hands", 0.75, 0, new(4), Pairs.Alike),
        new("promenade", 0.30, -0.35, new(2), Pairs.Facing),
        new("open", 0, -0.65, new(0), Pairs.RightLeft),
        new("sweetheart", 0.15, -0.40, new(0), Pairs.Alike),
        new("skaters", 0, -0.42, new(0), Pairs.Alike),
        new("shadow", 0.45, 0, new(0), Pairs.Alike),
        new("lead in front", -0.45, 0, new(0), Pairs.Alike),
        new("wrap", 0.05, -0.38, new(0), Pairs.Facing),
        // Her left arm lies behind her back; her right hand is joined in front of her or free, as told.
        new("hammerlock", 0, -0.45, new(4), Pairs.Facing),
        new("right side to right side", 0.10, -0.45, new(4), Pairs.RightRight),
        new("hands free", 0.75, 0, new(4), Pairs.None),
    ];

    // The mirror images that are holds of their own; those not named here are their own mirror image.
    private static readonly (string Hold, string OtherWay)[] OtherWays =
    [
        ("closed", "left closed"), ("one hand", "reverse one hand"), ("handshake", "left handshake"), ("crossed hands", "left crossed hands"),
        ("promenade", "left promenade"), ("open", "left open"), ("sweetheart", "left sweetheart"), ("skaters", "left skaters"),
        ("wrap", "left wrap"), ("hammerlock", "left hammerlock"), ("right side to right side", "left side to left side"),
    ];

    public static ValueList<Hold> All { get; } = Both();

    private static readonly FrozenDictionary<string, Hold> ByName = All.DistinctBy(h => h.Name, StringComparer.OrdinalIgnoreCase).ToFrozenDictionary(h => h.Name, StringComparer.OrdinalIgnoreCase);

    public static Hold? Named(string? name) => name is null ? null : ByName.GetValueOrDefault(name);

    /// <summary>The mirror image of a hold, which for some is the hold itself.</summary>
    public static Hold Mirror(Hold hold)
    {
        foreach (var other in All.AsSpan())
        {
            if (other.Kind == hold.Kind && other.OtherWay != hold.OtherWay) return other;
        }

        return hold;
    }

    private static ValueList<Hold> Both()
    {
        var all = new List<Hold>();
        foreach (var hold in OneWay)
        {
            all.Add(hold);
            foreach (var (name, otherWay) in OtherWays)
            {
                if (name == hold.Name) all.Add(hold.OtherWayRound(otherWay));
            }
        }

        return all.ToValueList();
    }
}
