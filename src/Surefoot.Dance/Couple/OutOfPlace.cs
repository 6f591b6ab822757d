using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>What a couple cannot do, however long or short their steps.</summary>
public enum OutOfPlaceKind
{
    /// <summary>Be where their hold needs them.</summary>
    Hold,

    /// <summary>Stay within reach of each other.</summary>
    Reach,

    /// <summary>End the repeat where they began it, seen from each other.</summary>
    Loop,

    /// <summary>End the repeat as far from the centre of the room as they began it.</summary>
    Track,
}

/// <summary>Where a couple cannot be: the proof is a stretch of counts that is impossible by itself.</summary>
/// <param name="From">Where the smallest such stretch begins.</param>
/// <param name="At">Where it ends: the first count at which it shows.</param>
/// <param name="Worst">The count at which they are furthest out.</param>
/// <param name="Metres">How far they are then from where they would have to be.</param>
/// <param name="Hold">The hold that asks for it, or null when what they hold has no name.</param>
public sealed record OutOfPlace(OutOfPlaceKind Kind, Count From, Count At, Count Worst, double Metres, string? Hold)
{
    /// <summary>What one dancer's steps would have to be; null where that cannot be said of one dancer's steps.</summary>
    public Shortfall? Shortfall { get; init; }

    /// <summary>What would mend it, tried; empty where nothing that was tried does.</summary>
    public ValueList<Repair> Repairs { get; init; }
}

/// <summary>A couple's places, solved.</summary>
/// <param name="Effort">The price of all departures from usual steps and holds; 0 when usual steps do.</param>
public sealed record CoupleSolution(DanceMotion Motion, ValueList<Moment> Moments, ValueList<OutOfPlace> Impossible, double Effort)
{
    /// <summary>What the hands do, or null where the couple cannot be in place at all.</summary>
    public HandsSolved? Hands { get; init; }

    /// <summary>True when both can be where the other needs them; whether the couple stays in its lane is another matter.</summary>
    public bool InPlace => Impossible.Count == 0 || Impossible[0].Kind == OutOfPlaceKind.Track;
}
