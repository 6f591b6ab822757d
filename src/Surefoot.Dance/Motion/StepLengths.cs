using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Motion;

/// <summary>Usual, least and most length of a step in metres.</summary>
public readonly record struct StepLength(double Usual, double Least, double Most)
{
    public StepLength Scaled(double by) => new(Usual * by, Least * by, Most * by);
}

/// <summary>
/// How long steps are: working values, from memory, for a stature of 1.70 m; they scale with stature.
/// Longer usual steps make dances travel further, longer limits make fewer of them a problem.
/// </summary>
public sealed record StepLengths
{
    public static StepLengths Usual { get; } = new();

    public StepLength Forward { get; init; } = new(0.50, 0.15, 0.80);

    public StepLength Back { get; init; } = new(0.40, 0.10, 0.65);

    public StepLength Side { get; init; } = new(0.40, 0.10, 0.70);

    public StepLength Rock { get; init; } = new(0.30, 0.10, 0.50);

    public StepLength Triple { get; init; } = new(0.25, 0.05, 0.45);

    public StepLength Crossing { get; init; } = new(0.25, 0.10, 0.50);

    public StepLength Closing { get; init; } = new(0, 0, 0.10);

    /// <summary>The row of the table that a step belongs to.</summary>
    public StepLength For(ScoreStep step) => step.Direction switch
    {
        Direction.InPlace or Direction.Together or Direction.LockBehind or Direction.LockFront => Closing,
        _ when step.Kind == ActionKind.Rock => Rock,
        Direction.Across or Direction.Behind => Crossing,
        _ when step.InTriple => Triple,
        Direction.Forward or Direction.DiagonalForward or Direction.ForwardAcross => Forward,
        Direction.Back or Direction.DiagonalBack => Back,
        _ => Side,
    };

    /// <summary>The length a dancer takes when nothing but the page's own words ask for another.</summary>
    public double Chosen(ScoreStep step, double stature)
    {
        if (step.Size.Metres > 0) return step.Size.Metres;
        var length = For(step).Scaled(stature / Body.ReferenceStature);
        return step.Size.Word switch
        {
            StepSizeWord.Small => (length.Usual + length.Least) / 2,
            StepSizeWord.Large => (length.Usual + length.Most) / 2,
            _ => length.Usual,
        };
    }
}
