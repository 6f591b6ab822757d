using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>How a figure is going to be danced here: from which foot, which version, turning how much where.</summary>
internal sealed class FigurePlan
{
    private readonly Figure _figure;
    private readonly Move _move;
    private readonly Role _role;
    private (int Action, int Eighths) _extra = (-1, 0);

    private FigurePlan(Figure figure, Move move, Role role)
    {
        _figure = figure;
        _move = move;
        _role = role;
    }

    public required FigureDance Dance { get; init; }

    public required Foot Start { get; init; }

    /// <summary>True when the page, not the alternation, says which foot starts.</summary>
    public required bool StartNamed { get; init; }

    /// <summary>The feet listed are those that take weight, touches left out.</summary>
    public bool ListsWeightOnly { get; private set; }

    public Assumed Assumed { get; private set; }

    /// <summary>+1 or -1 where the page names the way round, else 0.</summary>
    private int TurnSide { get; init; }

    private bool MirrorsTurns { get; init; }

    /// <param name="opposite">True for a follow who uses the other foot: in a figure of a couple the turns then go by the lead's foot.</param>
    public static FigurePlan Make(Figure figure, Move move, Role role, Foot? free, FigureBook book, bool opposite = false)
    {
        var assumed = Assumed.Nothing;
        var side = move.TurnSide;
        Foot? named = move.Feet.Count > 0 ? move.Feet[0].Foot : null;
        var usual = FigureDancer.Choose(figure, move.Way, 0, false, out _);
        var built = usual is null ? 0 : FigureDancer.Of(figure, usual, role, book).Steps.Sum(s => s.Turn.Eighths);
        var tied = built != 0 && figure.Turns is TurnRule.Unsaid && !figure.Versions.Exists(v => v.Turning != 0);
        if (move.SideOpen && named is { } word)
        {
            var wordSide = word == Foot.Left ? 1 : -1;
            if (!tied)
            {
                // Where foot and way round are independent, the word is the way round.
                if (side == 0)
                {
                    side = wordSide;
                    named = null;
                }
            }
            else
            {
                var byTurn = Math.Sign(built) == wordSide ? Foot.Left : Foot.Right;
                if (byTurn == word || free is null || byTurn == free || word != free) named = byTurn;
            }
        }
        else if (tied && side != 0)
        {
            named ??= Math.Sign(built) == side ? Foot.Left : Foot.Right;
        }

        // "Vine right", "side shuffle to the left": the way names the foot too.
        if (named is null && move.Towards is { } towards) named = towards;
        var start = named ?? free ?? Foot.Left;
        var turns = move.TurnAmount > 0 || side != 0;
        var seen = start == Foot.Right ? -side : side;
        var version = FigureDancer.Choose(figure, move.Way, seen == 0 && turns ? 1 : seen, turns, out var exact);
        if (!exact && move.Way is not null && !(figure.Versions.Count > 0 && figure.Versions[0].Going is Direction.Side && move.Way is Direction.Side)) assumed |= Assumed.WordWithoutEffect;
        if (move.Way is null && !figure.UsualWaySaid && figure.Versions.Count > 0 && figure.Versions[0].Going is { } first && first != Direction.InPlace
            && figure.Versions.Any(v => v.Going != first) && !(named is not null && first == Direction.Side)) assumed |= Assumed.DirectionNotNamed;
        var dance = version is null ? FigureDance.Nothing : FigureDancer.Of(figure, version, role, book);
        var plan = new FigurePlan(figure, move, role)
        {
            Dance = dance,
            Start = start,
            StartNamed = named is not null,
            TurnSide = side,
            MirrorsTurns = (opposite && dance.ByRole ? start.Other() : start) == Foot.Right,
        };
        plan.Assumed = assumed;
        // Lists name the steps that take weight or all actions; where neither fits, the one of the same length was meant.
        plan.ListsWeightOnly = ListFits(dance, move, start, weightOnly: true)
            || (!ListFits(dance, move, start, weightOnly: false) && dance.Steps.Count(s => s.Foot != FootUse.None) != move.Feet.Count);
        return plan;
    }

    /// <summary>The turn on each of a number of actions, the figure's own and the page's together.</summary>
    public Turn[] Turns(int actions)
    {
        var unit = Dance.Steps.Count;
        if (_figure.AnyCounts || unit == 0 || actions <= unit || actions % unit != 0 || _move.Skip > 0) return Once(actions);
        // "Paddle turn ¼ left x2": each turns that much.
        var one = Once(unit);
        var all = new Turn[actions];
        var swaps = _figure.FreeAfter == "the other foot" && TurnSide == 0;
        for (var i = 0; i < actions; i++) all[i] = swaps && i / unit % 2 == 1 ? one[i % unit].Mirrored : one[i % unit];
        return all;
    }

    private Turn[] Once(int actions)
    {
        var turns = new Turn[actions];
        if (Dance.Steps.Count == 0) return turns;
        var own = 0;
        var turningSteps = 0;
        for (var i = 0; i < actions; i++)
        {
            var step = StepAt(i);
            turns[i] = MirrorsTurns ? step.Turn.Mirrored : step.Turn;
            own += turns[i].Eighths;
            if (!turns[i].IsNone) turningSteps++;
        }

        var mine = _figure.TurnsRole is null || _figure.TurnsRole == _role || (_role == Role.Dancer && _figure.TurnsRole == Role.Follow);
        if (_move.TurnAmount == 0 && TurnSide == 0)
        {
            if (!_figure.UsualTurn.IsNone && mine) Spread(turns, _figure.UsualTurn);
            return turns;
        }

        if (!mine) return turns;
        var amount = _move.TurnAmount > 0 ? _move.TurnAmount : own != 0 ? Math.Abs(own) : Math.Abs(_figure.UsualTurn.Eighths);
        if (amount == 0) return turns;
        var side = TurnSide != 0 ? TurnSide
            : own != 0 ? Math.Sign(own)
            : !_figure.UsualTurn.IsNone ? Math.Sign(_figure.UsualTurn.Eighths)
            : Start == Foot.Left ? 1 : -1;
        if (TurnSide == 0 && own == 0 && _figure.UsualTurn.IsNone && _figure.Turns != TurnRule.OnCount) Assumed |= Assumed.TurnSideNotNamed;
        var wanted = new Turn(amount * side);
        switch (_figure.Turns)
        {
            case TurnRule.OnCount:
                Array.Clear(turns);
                turns[ActionOn(actions)] = wanted;
                return turns;
            case TurnRule.OverSteps when turningSteps == 0:
                Spread(turns, wanted);
                return turns;
        }

        if (turningSteps == 0)
        {
            Assumed |= Assumed.TurnSpread;
            Spread(turns, wanted);
            return turns;
        }

        if (turningSteps == 1)
        {
            for (var i = 0; i < actions; i++)
            {
                if (!turns[i].IsNone) turns[i] = wanted;
            }

            return turns;
        }

        Rescale(turns, own, wanted);
        return turns;
    }

    /// <summary>How many eighths an action turns beyond what the figure's own text has it turn.</summary>
    public int ExtraTurn(int action) => action == _extra.Action ? _extra.Eighths : 0;

    private void Rescale(Turn[] turns, int own, Turn wanted)
    {
        var flip = own != 0 && Math.Sign(own) != Math.Sign(wanted.Eighths);
        var last = 0;
        for (var i = 0; i < turns.Length; i++)
        {
            if (flip) turns[i] = turns[i].Mirrored;
            if (!turns[i].IsNone) last = i;
        }

        var missing = wanted.Eighths - (flip ? -own : own);
        if (missing == 0) return;
        // A rolling vine of 1¼ turns takes the rest on its last turning step.
        turns[last] += new Turn(missing);
        _extra = (last, missing);
        Assumed |= Assumed.TurnSpread;
    }

    private void Spread(Turn[] turns, Turn total)
    {
        var steps = new List<int>();
        for (var i = 0; i < turns.Length; i++)
        {
            if (StepAt(i).ChangesWeight) steps.Add(i);
        }

        if (steps.Count == 0) steps.Add(turns.Length - 1);
        for (var k = 0; k < steps.Count; k++) turns[steps[k]] += Dancer.Share(total, k, steps.Count);
    }

    private int ActionOn(int actions)
    {
        var wanted = _figure.TurnsOn - Count.First;
        for (var i = 0; i < Math.Min(actions, Dance.Offsets.Count); i++)
        {
            if (Dance.Offsets[i] == wanted) return i;
        }

        return Math.Min(actions, Dance.Offsets.Count) - 1;
    }

    private ScoreStep StepAt(int action) => Dance.Steps[(action + _move.Skip) % Dance.Steps.Count];

    private static bool ListFits(FigureDance dance, Move move, Foot start, bool weightOnly)
    {
        if (move.Feet.Count <= 1) return false;
        var at = 0;
        foreach (var step in dance.Steps)
        {
            if (weightOnly ? !step.ChangesWeight && step.Kind != ActionKind.Pivot : step.Foot == FootUse.None) continue;
            // A pivot is listed by the foot it ends on.
            var foot = step.Kind == ActionKind.Pivot ? step.Foot.Single()?.Other() : step.Foot.Single();
            if (start == Foot.Right) foot = foot?.Other();
            if (at >= move.Feet.Count) return false;
            if (foot != move.Feet[at].Foot) return false;
            at++;
        }

        return at == move.Feet.Count;
    }
}
