using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Phrases;

/// <summary>
/// One thing a line asks a dancer to do, as far as words alone tell: an atom or a figure with what the
/// page says about foot, way, turn and length. Which counts it takes is decided when the line is laid.
/// </summary>
public sealed record Move
{
    /// <summary>The words it came from.</summary>
    public TextSpan Span { get; set; }

    /// <summary>The figure, or null for an atom.</summary>
    public Figure? Figure { get; set; }

    public ActionKind Verb { get; set; }

    /// <summary>False when only a way, a foot or a turn was written and the verb was understood.</summary>
    public bool HeadSaid { get; set; }

    /// <summary>True when all that was written is a turn: "full turn right".</summary>
    public bool OnlyTurn { get; set; }

    public Direction? Way { get; set; }

    /// <summary>"To the right", said of the direction and not of the foot.</summary>
    public Foot? Towards { get; set; }

    /// <summary>The feet named, in order, each with its place on the page.</summary>
    public List<NamedFoot> Feet { get; } = [];

    /// <summary>True when a side word may be the foot or the way round ("pivot turn right").</summary>
    public bool SideOpen { get; set; }

    /// <summary>Eighths of turning that the page names, 0 when it names none.</summary>
    public int TurnAmount { get; set; }

    /// <summary>+1 left, -1 right, 0 when the page does not say.</summary>
    public int TurnSide { get; set; }

    /// <summary>"Turn to face partner".</summary>
    public bool ToPartner { get; set; }

    /// <summary>"Turn to face RLOD".</summary>
    public Facing? TurnTo { get; set; }

    public TextSpan? TurnSpan { get; set; }

    /// <summary>How often it is danced.</summary>
    public int Times { get; set; } = 1;

    /// <summary>"4 walks": how many units of a figure that fills; 0 when not said.</summary>
    public int Units { get; set; }

    /// <summary>"Hold 2 counts", "slow": counts one action takes; 0 when not said.</summary>
    public int CountsEach { get; set; }

    public StepSize Size { get; set; }

    /// <summary>"Weight on right" after a turn, an unwind or a jump, where the weight is as told.</summary>
    public Weight? EndsOn { get; set; }

    /// <summary>A word in the phrase was not understood; what follows from it stays silent.</summary>
    public bool Unclear { get; set; }

    /// <summary>Replaces the last action of the figure before it ("vine right, scuff").</summary>
    public Move? Closing { get; set; }

    /// <summary>"Step forward turning ½" in one breath: one action, or two where the counts want two.</summary>
    public bool TurnMaySplit { get; set; }

    /// <summary>The way was not written but follows from what comes next.</summary>
    public bool WayTaken { get; set; }

    /// <summary>A rock that fills two counts: there and back.</summary>
    public bool AndBack { get; set; }

    /// <summary>How many of the figure's first actions the page wrote out itself just before.</summary>
    public int Skip { get; set; }

    /// <summary>True when the turn is danced in steps, over all the counts given.</summary>
    public bool InSteps { get; set; }

    public Move Mirrored()
    {
        var copy = this with { };
        for (var i = 0; i < copy.Feet.Count; i++) copy.Feet[i] = copy.Feet[i] with { Foot = copy.Feet[i].Foot.Other() };
        copy.TurnSide = -TurnSide;
        copy.Towards = Towards?.Other();
        copy.EndsOn = EndsOn?.Mirrored();
        copy.Closing = Closing?.Mirrored();
        return copy;
    }

    private Move(Move other)
    {
        Span = other.Span;
        Figure = other.Figure;
        Verb = other.Verb;
        HeadSaid = other.HeadSaid;
        OnlyTurn = other.OnlyTurn;
        Way = other.Way;
        Towards = other.Towards;
        Feet = [.. other.Feet];
        SideOpen = other.SideOpen;
        TurnAmount = other.TurnAmount;
        TurnSide = other.TurnSide;
        TurnTo = other.TurnTo;
        ToPartner = other.ToPartner;
        TurnSpan = other.TurnSpan;
        Times = other.Times;
        Units = other.Units;
        CountsEach = other.CountsEach;
        Size = other.Size;
        EndsOn = other.EndsOn;
        Unclear = other.Unclear;
        Closing = other.Closing;
        TurnMaySplit = other.TurnMaySplit;
        WayTaken = other.WayTaken;
        AndBack = other.AndBack;
        Skip = other.Skip;
        InSteps = other.InSteps;
    }

    public Move()
    {
    }
}

/// <summary>A foot as the page names it.</summary>
/// <param name="Counts">How many counts this step is said to take ("R slow"); 0 when not said.</param>
public readonly record struct NamedFoot(Foot Foot, TextSpan Span, int Counts = 0);
