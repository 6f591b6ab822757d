
namespace Surefoot.Dance.Basics;

/// <summary>
/// Where partners stand in a hold, seen from the lead: metres ahead and to the left for two dancers of
/// 1.70 m, and the follow's facing against the lead's. Common practice; working values, from memory.
/// </summary>
/// <param name="Joined">Which hands are joined, or lie on the partner as in a closed hold.</param>
public sealed record Hold(string Name, double Ahead, double Left, Turn FollowTurn, Pairs Joined);

public static class Holds
{
    public static ValueList<Hold> All { get; } =
    [
        new("closed", 0.40, -0.08, new(4), Pairs.Facing),
        new("two hands", 0.75, 0, new(4), Pairs.Facing),
        new("one hand", 0.75, 0, new(4), Pairs.LeftRight),
        new("handshake", 0.75, 0, new(4), Pairs.RightRight),
        new("crossed hands", 0.75, 0, new(4), Pairs.Alike),
        new("promenade", 0.30, -0.35, new(2), Pairs.Facing),
        new("open", 0, -0.65, new(0), Pairs.RightLeft),
        new("sweetheart", 0.15, -0.40, new(0), Pairs.Alike),
        new("left sweetheart", 0.15, 0.40, new(0), Pairs.Alike),
        new("skaters", 0, -0.42, new(0), Pairs.Alike),
        new("shadow", 0.45, 0, new(0), Pairs.Alike),
        new("lead in front", -0.45, 0, new(0), Pairs.Alike),
        new("wrap", 0.05, -0.38, new(0), Pairs.Facing),
        new("hammerlock", 0, -0.45, new(4), Pairs.LeftRight),
        new("right side to right side", 0.10, -0.45, new(4), Pairs.RightRight),
        new("hands free", 0.75, 0, new(4), Pairs.None),
    ];

    public static Hold? Named(string? name)
    {
        foreach (var hold in All)
        {
            if (string.Equals(hold.Name, name, StringComparison.OrdinalIgnoreCase)) return hold;
        }

        return null;
    }
}
