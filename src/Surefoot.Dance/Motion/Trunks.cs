namespace Surefoot.Dance.Motion;

/// <summary>The room that the hard part of a body and a sole take up.</summary>
public static class Trunks
{
    /// <summary>
    /// A chest between the shoulder joints: the part of a body that no partner's body can share. In the nearest holds
    /// elbows and upper arms overlap.
    /// </summary>
    /// <param name="degrees">Where the body looks, to the left of the first direction.</param>
    /// <param name="stature">In metres.</param>
    public static Outline Of(Spot middle, double degrees, double stature) => new(middle, degrees, Body.HalfDepth * stature, Body.HalfShoulders * stature);

    /// <summary>A sole; the parameters are those of <see cref="Of"/>.</summary>
    public static Outline Sole(Spot middle, double degrees, double stature) => new(middle, degrees, Body.FootLength * stature / 2, Body.FootBreadth * stature / 2);

    /// <summary>Trunks of two statures whose middles are further apart than this, in metres, cannot touch.</summary>
    public static double Farthest(double one, double other) => Body.HalfShoulders * (one + other);

    /// <summary>The same of their soles.</summary>
    public static double FarthestSoles(double one, double other) => Body.FootLength * (one + other) / 2;
}
