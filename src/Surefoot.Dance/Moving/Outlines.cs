using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>The room that bodies and feet take up.</summary>
public static class Outlines
{
    public static Outline Trunk(DancerMoved at, double stature) => Trunks.Of(at.Middle, at.Angle, stature);

    /// <summary>The room that a standing person is given on a floor, 0.60 by 0.50 m (<see cref="Body.EllipseAcross"/>): for those who do not hold each other.</summary>
    public static Outline Room(DancerMoved at) => new(at.Middle, at.Angle, Body.EllipseThrough / 2, Body.EllipseAcross / 2);

    public static Outline Sole(FootMoved at, double stature) => Trunks.Sole(at.At, at.Angle, stature);
}
