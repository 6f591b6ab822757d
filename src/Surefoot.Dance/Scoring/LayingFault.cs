using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring;

/// <summary>Where actions and counts did not meet while the page was laid on the music.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="From">First count concerned, in the part.</param>
/// <param name="Named">What the line names: counts or slots.</param>
/// <param name="Taken">What its actions take.</param>
public sealed record LayingFault(
    LayingFaultKind Kind,
    int Part,
    Count From,
    Count To,
    Role? Role,
    Beats Named,
    Beats Taken,
    TextSpan Span,
    TextSpan? Other = null,
    string Words = "");

public enum LayingFaultKind
{
    /// <summary>No action for a role at a count.</summary>
    Gap,
    /// <summary>Two lines name the same count for a role.</summary>
    Overlap,
    /// <summary>A line's actions do not fit its counts.</summary>
    Mismatch,
    /// <summary>The part starts counting anew where the page so far counted on, or the other way round.</summary>
    CountsMixed,
    /// <summary>"Repeat" names something that is not there.</summary>
    RepeatOfNothing,
    /// <summary>"Repeat" asks for something other than what it repeats.</summary>
    RepeatSaysMore,
    /// <summary>The order line names a part that is not there.</summary>
    OrderOfNothing,
    /// <summary>A figure of the page uses itself.</summary>
    FigureInItself,
}
