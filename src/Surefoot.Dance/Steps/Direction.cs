namespace Surefoot.Dance.Steps;

/// <summary>
/// Where a foot goes, seen from the dancer's own facing at that moment. "Side" is the side of the
/// foot that moves; "across" and "behind" lead past the standing foot to the other side.
/// </summary>
public enum Direction
{
    InPlace,
    Together,
    Forward,
    Back,
    Side,
    DiagonalForward,
    DiagonalBack,
    Across,
    Behind,
    /// <summary>Forward and over the standing foot, as in a cross walk.</summary>
    ForwardAcross,
    /// <summary>Closed up behind the standing foot, as in a lock step.</summary>
    LockBehind,
    /// <summary>Closed up in front of the standing foot.</summary>
    LockFront,
    /// <summary>Both feet apart.</summary>
    Apart,
}

public static class Directions
{
    private static readonly string[] Words =
    [
        "in place", "together", "forward", "back", "side", "diagonal forward", "diagonal back", "across", "behind",
        "forward across", "lock behind", "lock in front", "apart",
    ];

    public static string Word(this Direction direction) => Words[(int)direction];

    /// <summary>Forward turned to back and back to forward, for partners who face each other.</summary>
    public static Direction TurnedRound(this Direction direction) => direction switch
    {
        Direction.Forward => Direction.Back,
        Direction.Back => Direction.Forward,
        Direction.DiagonalForward => Direction.DiagonalBack,
        Direction.DiagonalBack => Direction.DiagonalForward,
        Direction.LockBehind => Direction.LockFront,
        Direction.LockFront => Direction.LockBehind,
        _ => direction,
    };
}
