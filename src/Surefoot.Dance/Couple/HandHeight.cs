using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>How high joined hands are.</summary>
public enum HandHeight
{
    /// <summary>At the waist or the hip.</summary>
    Low,

    /// <summary>At the shoulder, or in front of it.</summary>
    Shoulder,

    /// <summary>Overhead, so that somebody can go under.</summary>
    Raised,
}

internal static class HandHeights
{
    /// <summary>Where a hold has its hands. Common practice; anything not named here is held at the waist.</summary>
    public static HandHeight Of(Hold? hold) => hold?.Kind is "closed" or "promenade" or "sweetheart" or "shadow" or "right side to right side"
        ? HandHeight.Shoulder
        : HandHeight.Low;

    /// <summary>True where hands may as well be overhead in a hold: right side to right side they stay up between two halves of a turn. Common practice.</summary>
    public static bool MayBeUp(Hold hold) => hold.Kind == "right side to right side";
}
