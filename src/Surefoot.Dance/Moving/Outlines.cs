using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>The room that bodies and feet take up.</summary>
public static class Outlines
{
    /// <summary>
    /// Half the depth of a chest / stature: half of 0.145 and 0.152 (ANSUR II). With the shoulder joints it is the
    /// part of a body that no partner's body can share: in the nearest holds elbows and upper arms overlap.
    /// </summary>
    private const double HalfChest = 0.074;

    public static Outline Trunk(DancerMoved at, double stature) => new(at.Middle, at.Angle, HalfChest * stature, Body.HalfShoulders * stature);

    /// <summary>The room that a standing person is given on a floor, 0.60 by 0.50 m (<see cref="Body.EllipseAcross"/>): for those who do not hold each other.</summary>
    public static Outline Room(DancerMoved at) => new(at.Middle, at.Angle, Body.EllipseThrough / 2, Body.EllipseAcross / 2);

    public static Outline Sole(FootMoved at, double stature) => new(at.At, at.Angle, Body.FootLength * stature / 2, Body.FootBreadth * stature / 2);
}
