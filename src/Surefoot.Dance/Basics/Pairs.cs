namespace Surefoot.Dance.Basics;

/// <summary>Joined hands, named by the lead's hand and then the follow's.</summary>
[Flags]
public enum Pairs
{
    None = 0,
    LeftRight = 1,
    RightLeft = 2,
    RightRight = 4,
    LeftLeft = 8,
    Facing = LeftRight | RightLeft,
    Alike = RightRight | LeftLeft,
}

public static class PairsOf
{
    public static IReadOnlyList<Pairs> Each { get; } = [Pairs.LeftRight, Pairs.RightLeft, Pairs.RightRight, Pairs.LeftLeft];

    public static Foot LeadHand(this Pairs pair) => pair is Pairs.LeftRight or Pairs.LeftLeft ? Foot.Left : Foot.Right;

    public static Foot FollowHand(this Pairs pair) => pair is Pairs.RightLeft or Pairs.LeftLeft ? Foot.Left : Foot.Right;

    /// <summary>The pair seen in a mirror.</summary>
    public static Pairs Mirrored(this Pairs pairs)
    {
        var mirrored = Pairs.None;
        if (pairs.HasFlag(Pairs.LeftRight)) mirrored |= Pairs.RightLeft;
        if (pairs.HasFlag(Pairs.RightLeft)) mirrored |= Pairs.LeftRight;
        if (pairs.HasFlag(Pairs.RightRight)) mirrored |= Pairs.LeftLeft;
        if (pairs.HasFlag(Pairs.LeftLeft)) mirrored |= Pairs.RightRight;
        return mirrored;
    }

    /// <summary>"right hands", "left hands", "his left and her right".</summary>
    public static string Words(this Pairs pair) => pair switch
    {
        Pairs.RightRight => "right hands",
        Pairs.LeftLeft => "left hands",
        Pairs.LeftRight => "the lead's left and the follow's right hand",
        Pairs.RightLeft => "the lead's right and the follow's left hand",
        _ => "hands",
    };
}
