using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Steps;

/// <summary>One action of one dancer at its exact count.</summary>
/// <param name="At">When, running from 1 through one repeat of the dance.</param>
/// <param name="Turn">How far the body turns during the action.</param>
/// <param name="Facing">Where the dancer looks afterwards.</param>
/// <param name="Weight">Which foot carries the weight afterwards.</param>
/// <param name="Section">Which dancing of a part it belongs to, from 0, in the order of the repeat.</param>
/// <param name="Source">The words of the page it came from.</param>
/// <param name="Figure">The figure it is part of, or null when an atom was written.</param>
/// <param name="Size">How large the step is, where the page says so.</param>
public sealed record ScoreStep(
    Count At,
    FootUse Foot,
    ActionKind Kind,
    Direction Direction,
    Turn Turn,
    Facing Facing,
    Weight Weight,
    int Section,
    TextSpan Source,
    string? Figure,
    StepSize Size,
    Assumed Assumed,
    Conflict Conflict)
{
    /// <summary>True for a step half a count or less from the one before or after it; such steps are shorter than walks.</summary>
    public bool InTriple { get; internal set; }

    /// <summary>How long until the same dancer's next action, in counts.</summary>
    public Beats Lasts { get; internal set; }

    /// <summary>True for an action that is danced again from earlier words (a repeat), not written at this count.</summary>
    public bool Repeated { get; init; }

    /// <summary>The line of the page that has it danced again, for a repeat inside a part.</summary>
    public TextSpan? RepeatedBy { get; init; }

    /// <summary>True when the page names this very foot, false when it followed from the alternation.</summary>
    public bool FootNamed { get; init; }

    public bool ChangesWeight => Kind.Rule() is WeightRule.Takes or WeightRule.Returns or WeightRule.Evens;
}

/// <summary>How large a step the page asks for.</summary>
/// <param name="Metres">A length given by the page in metres, or 0 when only a word or nothing was given.</param>
public readonly record struct StepSize(StepSizeWord Word, double Metres)
{
    public static StepSize Usual => default;
}

public enum StepSizeWord
{
    Usual,
    Small,
    Large,
}

/// <summary>What was taken where the page left something out.</summary>
[Flags]
public enum Assumed
{
    Nothing = 0,
    FootNotNamed = 1,
    DirectionNotNamed = 2,
    TurnSpread = 4,
    TurnSideNotNamed = 8,
    VersionNotNamed = 16,
    StepsNotNamed = 32,
    TurnAmountNotNamed = 64,
    WordWithoutEffect = 128,
    /// <summary>"Step forward, turn ½": read as a pivot, so the weight moves on.</summary>
    TurnAsPivot = 256,
    /// <summary>Where the weight is after a turn that can end on either foot.</summary>
    WeightNotNamed = 512,
}

/// <summary>Where the words and the dancer's feet do not agree.</summary>
public enum Conflict
{
    None,
    /// <summary>The foot that should act carries the weight.</summary>
    FootCarriesWeight,
    /// <summary>Recover, but there was no rock to recover from.</summary>
    NothingToRecover,
    /// <summary>Both feet carry the weight and the page does not say which acts.</summary>
    WeightEven,
    /// <summary>The page lists feet for a figure that do not alternate as the figure does.</summary>
    FeetListed,
    /// <summary>A hop on the foot that is in the air.</summary>
    HopOnFreeFoot,
}
