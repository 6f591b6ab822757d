using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Figures;

/// <summary>
/// A figure as its text defines it: written for a dancer whose left foot is free, danced from the right
/// foot as its mirror image.
/// </summary>
public sealed class Figure(string name)
{
    public string Name { get; } = name;

    public ValueList<string> OtherNames { get; set; }

    /// <summary>One plain sentence.</summary>
    public string Means { get; set; } = "";

    /// <summary>Where the definition comes from.</summary>
    public string Source { get; set; } = "";

    /// <summary>"the same foot", "the other foot" or "as told".</summary>
    public string FreeAfter { get; set; } = "";

    public ValueList<string> Examples { get; set; }

    /// <summary>How it is called out, where its name by itself is not how: for everybody, or for one role.</summary>
    public ValueList<FigureCall> Calls { get; set; }

    /// <summary>The counts its heading states, 0 when it fills whatever counts the page gives.</summary>
    public int StatedCounts { get; set; }

    public bool AnyCounts { get; set; }

    /// <summary>"(2 counts or more)": the last action may be drawn out.</summary>
    public bool OrMore { get; set; }

    public TurnRule Turns { get; set; }

    /// <summary>Whose turn it is in a figure of a couple; null when everybody turns.</summary>
    public Role? TurnsRole { get; set; }

    /// <summary>The count of the body on which a named turn is taken, for <see cref="TurnRule.OnCount"/>.</summary>
    public Count TurnsOn { get; set; }

    /// <summary>The turn danced when the page names none; seen from the left foot.</summary>
    public Turn UsualTurn { get; set; }

    /// <summary>What may stand in place of the last action.</summary>
    public List<Move> Closings { get; } = [];

    public List<FigureVersion> Versions { get; } = [];

    /// <summary>True when a notebook or a page defines it.</summary>
    public bool Own { get; set; }

    /// <summary>True when it takes the place of a figure that Surefoot brings along.</summary>
    public bool Overrides { get; set; }

    /// <summary>Where its heading stands in the text that defines it.</summary>
    public TextSpan Span { get; set; }

    /// <summary>The text that defines it.</summary>
    public SourceText? Home { get; set; }

    /// <summary>The way it goes unless told otherwise is part of its definition, so taking it assumes nothing.</summary>
    public bool UsualWaySaid { get; set; }

    /// <summary>It turns as usually danced, or has "turn" in its name, so that a side word after it is the way round.</summary>
    public bool NamesTurn { get; set; }

    public override string ToString() => Name;
}

public enum TurnRule
{
    /// <summary>The figure says nothing about turns named by the page.</summary>
    Unsaid,
    /// <summary>A named turn is spread over the steps that take weight.</summary>
    OverSteps,
    /// <summary>A named turn is taken on one count.</summary>
    OnCount,
    /// <summary>The turn in the body may go either way round.</summary>
    EitherWay,
}

/// <summary>
/// What is called before a figure. Words in braces are filled in from how it is danced: {side} the side it begins to,
/// {way} where it goes, {turn} how far it turns, {round} which way round, {lead} and {follow} what the hall calls them.
/// </summary>
/// <param name="Role">For whom; null for everybody.</param>
public sealed record FigureCall(Role? Role, string Words);

/// <summary>One way of dancing a figure: going somewhere, turning some way.</summary>
public sealed class FigureVersion
{
    public Direction? Going { get; set; }

    /// <summary>+1 turning left, -1 turning right, seen from the left foot; 0 when it is not a turning version.</summary>
    public int Turning { get; set; }

    public List<CountLine> Lines { get; } = [];

    /// <summary>What it comes to for each role, danced by itself; made once when first needed.</summary>
    internal FigureDance?[] Danced { get; } = new FigureDance?[3];
}
