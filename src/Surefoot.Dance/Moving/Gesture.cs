using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Moving;

/// <summary>
/// What a foot looks like once an action is done, beyond where it stands. Working values, from memory, as shares
/// of stature: they make a kick tell from a touch and are no measure of how high anybody should kick.
/// </summary>
/// <param name="Ahead">Ahead of its place under the body; null for a foot that is where its stance says.</param>
/// <param name="Outward">Outward of that place.</param>
/// <param name="Up">Above the floor.</param>
/// <param name="Toe">Degrees the toe is tipped up, or down when negative.</param>
/// <param name="Lift">How high the foot goes on its way.</param>
/// <param name="Swings">True for a foot that swings back by itself.</param>
internal readonly record struct Gesture(double? Ahead, double Outward, double Up, double Toe, double Lift, bool Swings = false)
{
    private const double Walking = 0.025, Small = 0.015;

    public static Gesture Of(ScoreStep step) => step.Kind switch
    {
        ActionKind.Touch or ActionKind.Tap => new(null, 0, 0.012, -22, Walking),
        ActionKind.Point or ActionKind.Toe => new(null, 0, 0.015, -32, Walking),
        ActionKind.Heel => new(null, 0, 0.012, 30, Walking),
        // Nearly straight from the hip, else it would look like a hitch.
        ActionKind.Kick => new(0.30, 0, 0.11, -18, 0.02, true),
        ActionKind.Flick => new(-0.16, 0.02, 0.17, -60, 0.02, true),
        ActionKind.Hook => new(0.06, -0.12, 0.17, -20, 0.02),
        ActionKind.Hitch => new(0.09, 0, 0.22, -12, 0.02),
        ActionKind.Brush => step.Direction == Direction.Back ? new(-0.14, 0, 0.03, -20, 0, true) : new(0.14, 0, 0.03, 8, 0, true),
        ActionKind.Scuff => new(0.15, 0, 0.04, 28, 0, true),
        ActionKind.Sweep => new(step.Direction == Direction.Back ? -0.10 : 0.10, 0.16, 0.008, -15, 0),
        ActionKind.Stomp or ActionKind.StompUp => new(null, 0, 0, 0, 0.07),
        ActionKind.Leap => new(null, 0, 0, 0, 0.06),
        ActionKind.Jump => new(null, 0, 0, 0, 0.05),
        ActionKind.Drag => new(null, 0, 0, -10, 0),
        _ => new(null, 0, 0, 0, step.InTriple ? Small : Walking),
    };

    /// <summary>How high a foot that hops on the spot leaves the floor, / stature.</summary>
    public const double Hop = 0.04;
}
