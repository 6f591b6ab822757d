using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Feet;

/// <summary>
/// Where a foot in the air is drawn. The motion keeps such a foot at the place on the floor it left;
/// a picture has to show which way it swings. Metres from the middle of the body; working values, larger
/// ones leave the panel.
/// </summary>
internal static class Gestures
{
    public static FootPlace Place(ScoreStep step, Foot foot, Stance stance)
    {
        var (forward, outward) = Reach(step);
        var side = foot == Foot.Left ? 1 : -1;
        var half = Body.HalfStance * Body.ReferenceStature;
        var at = stance.Middle.Moved(stance.Facing, forward, side * (half + outward));
        return new(at, stance.Facing);
    }

    private static (double Forward, double Outward) Reach(ScoreStep step)
    {
        var far = step.Kind == ActionKind.Kick ? 0.36 : 0.24;
        return step.Direction switch
        {
            Direction.Forward => (far, 0),
            Direction.Back => (-far, 0),
            Direction.Side => (0, far),
            Direction.DiagonalForward => (far * 0.7, far * 0.7),
            Direction.DiagonalBack => (-far * 0.7, far * 0.7),
            Direction.Across or Direction.ForwardAcross => (0.22, -0.2),
            Direction.Behind => (-0.22, -0.16),
            _ => Usual(step.Kind, far),
        };
    }

    /// <summary>The way each gesture goes when the page names none.</summary>
    private static (double Forward, double Outward) Usual(ActionKind kind, double far) => kind switch
    {
        ActionKind.Hitch => (0.14, 0.02),
        ActionKind.Hook => (0.2, -0.16),
        ActionKind.Flick => (-far, 0.05),
        ActionKind.Sweep => (0.1, far),
        _ => (far, 0),
    };
}
