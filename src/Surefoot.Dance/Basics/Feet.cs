namespace Surefoot.Dance.Basics;

public enum Foot
{
    Left,
    Right,
}

/// <summary>Which feet an action uses.</summary>
public enum FootUse
{
    None,
    Left,
    Right,
    Both,
}

/// <summary>Which foot carries the dancer's weight.</summary>
public enum Weight
{
    Left,
    Right,
    Both,
}

public static class Feet
{
    public static Foot Other(this Foot foot) => foot == Foot.Left ? Foot.Right : Foot.Left;

    public static string Word(this Foot foot) => foot == Foot.Left ? "left" : "right";

    public static string Letter(this Foot foot) => foot == Foot.Left ? "L" : "R";

    public static FootUse Use(this Foot foot) => foot == Foot.Left ? FootUse.Left : FootUse.Right;

    public static Foot? Single(this FootUse use) => use switch
    {
        FootUse.Left => Foot.Left,
        FootUse.Right => Foot.Right,
        _ => null,
    };

    public static Weight Weight(this Foot foot) => foot == Foot.Left ? Basics.Weight.Left : Basics.Weight.Right;

    public static Weight Mirrored(this Weight weight) => weight switch
    {
        Basics.Weight.Left => Basics.Weight.Right,
        Basics.Weight.Right => Basics.Weight.Left,
        _ => weight,
    };

    public static FootUse Mirrored(this FootUse use) => use switch
    {
        FootUse.Left => FootUse.Right,
        FootUse.Right => FootUse.Left,
        _ => use,
    };

    /// <summary>The foot without weight, or null when both carry it.</summary>
    public static Foot? Free(this Weight weight) => weight switch
    {
        Basics.Weight.Left => Foot.Right,
        Basics.Weight.Right => Foot.Left,
        _ => null,
    };
}
