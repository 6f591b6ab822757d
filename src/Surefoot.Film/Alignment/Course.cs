using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Film.Alignment;

/// <summary>One dancing of a part: within the repeat, or a tag or bridge outside it.</summary>
/// <param name="First">Its first moment in the course.</param>
/// <param name="End">The moment after its last.</param>
internal sealed record Stage(int Part, bool Extra, int First, int End);

/// <summary>A moment at which something can be said: a step's, or a whole count without one.</summary>
/// <param name="InPart">The count in its part.</param>
/// <param name="Step">Index into the course's steps, -1 where nothing begins.</param>
/// <param name="Ask">Index of what the page asks for there.</param>
internal readonly record struct Moment(int Stage, Count InPart, int Step, int Ask)
{
    public bool Whole => InPart.Value.IsWhole;
}

/// <summary>What one stretch of the page asks of a dancer: all steps of a figure, or one action.</summary>
/// <param name="First">Its first moment.</param>
/// <param name="End">The moment at which the next begins.</param>
/// <param name="PageSides">Lefts and rights in the page's words, a turn's side left out; empty where it is danced mirrored.</param>
/// <param name="PageWays">Forward and back in the page's words.</param>
/// <param name="Again">Danced from earlier words.</param>
/// <param name="AgainUntil">For such: index of the first after the whole stretch that is danced again; else its own index.</param>
internal sealed record Ask(
    int Stage,
    int First,
    int End,
    string? Figure,
    ValueList<ScoreStep> Steps,
    ValueList<Foot> PageSides,
    ValueList<Direction> PageWays,
    TextSpan Source,
    bool Again)
{
    public int AgainUntil { get; init; }

    /// <summary>For the follow: the page's words are the lead's as well.</summary>
    public bool Shared { get; init; }

    /// <summary>Moments inside at which a walk or another of the same may end.</summary>
    public ValueList<int> Breaks { get; init; }

    /// <summary>The page's words begin with the foot: "LF rock back".</summary>
    public bool FootBefore { get; init; }

    /// <summary>Which way round the page's words turn; the words are the lead's where both share them.</summary>
    public Foot? PageTurn { get; init; }

    public ScoreStep Step => Steps[0];

    public int Turned => Math.Abs(Steps.Aggregate(Turn.None, (sum, s) => sum + s.Turn).Eighths);

    public Foot? TurnSide => Steps.Aggregate(Turn.None, (sum, s) => sum + s.Turn).Eighths switch { > 0 => Foot.Left, < 0 => Foot.Right, _ => null };

    public ValueList<Foot> Feet => Steps.Select(s => s.Foot.Single()).OfType<Foot>().ToValueList();
}

/// <summary>The whole dance as one role goes through it, in order, with tags and bridges after the repeat.</summary>
internal sealed record Course(Role Role, ValueList<Stage> Stages, ValueList<Moment> Moments, ValueList<Ask> Asks)
{
    /// <summary>Where the repeat ends and begins again.</summary>
    public int RepeatEnd => Stages.Where(s => !s.Extra).Select(s => s.End).DefaultIfEmpty(0).Max();

    /// <summary>The first thing asked for at or after a moment.</summary>
    public int AskFrom(int moment)
    {
        var (low, high) = (0, Asks.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (Asks[middle].First >= moment) high = middle;
            else low = middle + 1;
        }

        return low;
    }

    /// <summary>The stage that a moment belongs to; the last one at the very end.</summary>
    public int StageAt(int moment) => moment < Moments.Count ? Moments[moment].Stage : Stages.Count - 1;
}
