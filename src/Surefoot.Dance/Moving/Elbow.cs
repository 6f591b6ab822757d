using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>Bends an arm between its shoulder and its hand.</summary>
public static class Elbow
{
    /// <summary>Upper arm / stature (ANSUR II, 0.191 in both columns).</summary>
    public const double UpperArm = 0.191;

    /// <summary>Elbow to grip / stature: what is left of the whole arm.</summary>
    public const double Forearm = Body.ArmToGrip - UpperArm;

    /// <summary>An elbow hangs down, and out and back a little. Working values.</summary>
    private const double Down = 1, Out = 0.6, Back = 0.35;

    /// <summary>Where the elbow is over the floor, and how high, in metres.</summary>
    public static (Spot At, double Up) Of(DancerMoved body, double stature, Foot side, HandMoved hand)
    {
        var shoulder = body.Shoulder(side, stature);
        var (x, y, z) = (hand.At.X - shoulder.X, hand.At.Y - shoulder.Y, hand.Up - (Body.ShoulderHeight * stature));
        var far = Math.Sqrt((x * x) + (y * y) + (z * z));
        var (upper, fore) = (UpperArm * stature, Forearm * stature);
        var out_ = body.Beside(-Back, side == Foot.Left ? Out : -Out) - body.Middle;
        if (far < 1e-6) return (shoulder, Body.ShoulderHeight * stature);
        var along = Math.Clamp(((upper * upper) - (fore * fore) + (far * far)) / (2 * far), -upper, upper);
        var aside = Math.Sqrt(Math.Max(0, (upper * upper) - (along * along)));
        var (ux, uy, uz) = (x / far, y / far, z / far);
        // The way it bends, with what lies along the arm taken out.
        var dot = (out_.X * ux) + (out_.Y * uy) - (Down * uz);
        var (px, py, pz) = (out_.X - (dot * ux), out_.Y - (dot * uy), -Down - (dot * uz));
        var length = Math.Sqrt((px * px) + (py * py) + (pz * pz));
        if (length < 1e-9) return (shoulder + new Spot(ux * along, uy * along), (Body.ShoulderHeight * stature) + (uz * along));
        var bend = aside / length;
        return (shoulder + new Spot((ux * along) + (px * bend), (uy * along) + (py * bend)), (Body.ShoulderHeight * stature) + (uz * along) + (pz * bend));
    }
}
