using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Insight;

/// <summary>
/// What one dancer does at one moment, small enough to be compared a million times: action, way, turn and foot,
/// and not where it leads, which follows from what came before. Zero is nothing; a hold is nothing too.
/// </summary>
/// <param name="Packed">From the lowest bit: 5 bits of action, 4 of direction, 5 of turn in eighths (signed), 2 of foot.</param>
public readonly record struct CountStep(ushort Packed)
{
    // Five signed bits hold it; nobody turns nearly two whole turns on one action.
    private const int MostTurn = 15;

    public static CountStep Nothing => default;

    public bool IsNothing => Packed == 0;

    public ActionKind Kind => IsNothing ? ActionKind.Hold : (ActionKind)((Packed & 31) is var code && code <= (int)ActionKind.Hold ? code - 1 : code);

    public Direction Direction => (Direction)((Packed >> 5) & 15);

    /// <summary>In eighths, positive to the dancer's left, as <see cref="Basics.Turn"/>.</summary>
    public int Turn => ((Packed >> 9) & 31) is var bits && bits > MostTurn ? bits - 32 : bits;

    public FootUse Foot => (FootUse)(Packed >> 14);

    /// <summary>The same seen in a mirror.</summary>
    public CountStep Mirrored => IsNothing ? this : Of(Kind, Direction, -Turn, Foot.Mirrored());

    public static CountStep Of(ScoreStep step) => Of(step.Kind, step.Direction, step.Turn.Eighths, step.Foot);

    public static CountStep Of(ActionKind kind, Direction direction, int eighths, FootUse foot)
    {
        if (kind == ActionKind.Hold)
        {
            if (eighths == 0) return Nothing;
            kind = ActionKind.Turn;
        }

        var code = kind < ActionKind.Hold ? (int)kind + 1 : (int)kind;
        return new((ushort)(code | ((int)direction << 5) | ((Math.Clamp(eighths, -MostTurn, MostTurn) & 31) << 9) | ((int)foot << 14)));
    }

    /// <summary>Two actions at one moment as one: the one that moves more weight stays, and they turn together.</summary>
    public static CountStep Together(CountStep a, CountStep b)
    {
        if (a.IsNothing) return b;
        if (b.IsNothing) return a;
        var main = Rank(b) > Rank(a) ? b : a;
        return Of(main.Kind, main.Direction, a.Turn + b.Turn, main.Foot);
    }

    private static int Rank(CountStep step) => step.Kind.Rule() switch
    {
        WeightRule.Takes or WeightRule.Returns or WeightRule.Evens => 3,
        WeightRule.Leans or WeightRule.FreeFootActs => 2,
        _ => step.Turn != 0 ? 1 : 0,
    };
}
