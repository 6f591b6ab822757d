using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>A foot at a moment between or on counts.</summary>
/// <param name="At">The middle of its sole.</param>
/// <param name="Up">How high the sole is above the floor, in metres.</param>
/// <param name="Angle">Which way the toe looks, in degrees to the left of the floor's first direction, never cut at a whole turn.</param>
/// <param name="Toe">How far the toe is tipped up (positive) or down, in degrees.</param>
/// <param name="Weight">Share of the dancer's weight on it, 0 to 1.</param>
/// <param name="Still">True while it is not on its way anywhere.</param>
public readonly record struct FootMoved(Spot At, double Up, double Angle, double Toe, double Weight, bool Still)
{
    /// <summary>A sole higher than this above the floor, in metres, is in the air: a touching toe or heel lifts it by less.</summary>
    private const double Touching = 0.05;

    /// <summary>True while the foot stands or touches where it is.</summary>
    public bool Down => Still && Up < Touching;
}

/// <summary>A hand at a moment: where its grip is, and with which pair it is joined.</summary>
/// <param name="Up">Above the floor, in metres.</param>
/// <param name="Joined"><see cref="Pairs.None"/> while it is free.</param>
public readonly record struct HandMoved(Spot At, double Up, Pairs Joined);

/// <summary>A dancer's body and feet at a moment.</summary>
/// <param name="Middle">The middle of the body seen from above.</param>
/// <param name="Angle">Which way the body looks, in degrees to the left of the floor's first direction, never cut at a whole turn.</param>
public readonly record struct DancerMoved(Spot Middle, double Angle, FootMoved Left, FootMoved Right)
{
    public FootMoved Foot(Foot foot) => foot == Basics.Foot.Left ? Left : Right;

    // Asked for many times a moment: shoulders, hands and outlines are all told from the body.
    private readonly (double Sine, double Cosine) _looks = Angles.SineAndCosine(Angle);

    /// <summary>A place given from the body: metres ahead and to its left.</summary>
    public Spot Beside(double ahead, double left) =>
        new(Middle.X + (_looks.Cosine * ahead) - (_looks.Sine * left), Middle.Y + (_looks.Sine * ahead) + (_looks.Cosine * left));

    /// <summary>A place of the floor, seen from the body: metres ahead and to its left.</summary>
    public Spot Seen(Spot place)
    {
        var way = place - Middle;
        return new((_looks.Cosine * way.X) + (_looks.Sine * way.Y), (_looks.Cosine * way.Y) - (_looks.Sine * way.X));
    }

    /// <summary>The shoulder joint on one side.</summary>
    /// <param name="stature">In metres.</param>
    public Spot Shoulder(Foot side, double stature) => Beside(0, Body.HalfShoulders * stature * (side == Basics.Foot.Left ? 1 : -1));
}
