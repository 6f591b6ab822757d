using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Film.Hearing;

internal enum HeardKind
{
    Talk,
    /// <summary>A figure or an action.</summary>
    Step,
    /// <summary>A count, or a quick or a slow.</summary>
    Number,
    /// <summary>"Five six seven eight", before it begins.</summary>
    CountIn,
    Part,
    Role,
    Side,
    Again,
    /// <summary>"From the top", "with the music".</summary>
    Top,
    /// <summary>"With counts".</summary>
    Tally,
    /// <summary>"Let me start that again".</summary>
    Restart,
}

/// <summary>From which side the film shows a dance.</summary>
public enum FilmSide
{
    Unsaid,
    Back,
    Front,
    Side,
    Above,
}

/// <summary>One thing that was said.</summary>
/// <param name="From">Seconds from the film's beginning.</param>
/// <param name="Words">How many words it took.</param>
/// <param name="Line">The caption file's line.</param>
internal sealed record Heard(HeardKind Kind, double From, double To, int Words, int Line, string Said)
{
    /// <summary>For a number: its value; 0 for a quick (one count) and -1 for a slow (two).</summary>
    public int Number { get; init; }

    /// <summary>An "and" follows the number.</summary>
    public bool AndAfter { get; init; }

    /// <summary>Seconds from count to count, for a count-in.</summary>
    public double Beat { get; init; }

    /// <summary>For a part: indices into the score's parts.</summary>
    public ValueList<int> Parts { get; init; }

    /// <summary>For a part: named by what its heading calls it, not by its letter or number.</summary>
    public bool ByName { get; init; }

    /// <summary>For a role: who; null for everybody.</summary>
    public Role? Role { get; init; }

    public FilmSide Side { get; init; }

    public HeardMove? Move { get; init; }
}

/// <summary>A step as far as it was said.</summary>
/// <param name="Figure">The figure's name in the figure book, or null for an action.</param>
/// <param name="Way">Where it goes.</param>
/// <param name="Sides">Lefts and rights in order, a turn's side left out.</param>
/// <param name="Turn">Amount of turn in eighths.</param>
/// <param name="TurnSide">Which way round.</param>
/// <param name="Bare">Only a way was said: "side", "behind".</param>
/// <param name="Loose">A word that talk uses as well.</param>
internal sealed record HeardMove(string? Figure, ActionKind Kind, Direction? Way, ValueList<Foot> Sides, int? Turn, Foot? TurnSide, bool Bare, bool Loose)
{
    /// <summary>Feet said right before it that are not its own: what is left of a step that was not heard.</summary>
    public ValueList<Foot> Stray { get; init; }

    /// <summary>Its feet were said before the step.</summary>
    public bool FeetBefore { get; init; }

    /// <summary>The amount of turn was said before the step.</summary>
    public bool TurnBefore { get; init; }

    /// <summary>The way was said after the feet, where another step's words may have begun.</summary>
    public bool WayAfterFeet { get; init; }

    /// <summary>The same figure or action, whatever its feet and ways.</summary>
    public bool SameHead(HeardMove other) => Figure == other.Figure && (Figure is not null || (Kind == other.Kind && Bare == other.Bare));
}
