using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Moving;

/// <summary>What moving through a repeat brings to light of a couple.</summary>
/// <param name="Bumps">Where the two bump into each other.</param>
/// <param name="Spacing">How far couples have to be apart.</param>
public sealed record CoupleMoving(ValueList<Bump> Bumps, Spacing Spacing)
{
    public static CoupleMoving Of(MovingDance dance) => new(Moving.Bumps.Of(dance), Neighbours.Least(dance));
}
