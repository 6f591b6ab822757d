using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>
/// One dancer in the couple's program. Unknown: how far each step departs from its usual length, and a small
/// dear give to the side. A middle is the sum of the steps before it. So that sums stay short, every few steps
/// a middle has unknowns of its own, with rows that say how it follows from the one before.
/// </summary>
internal sealed class DancerColumns
{
    /// <summary>Shares of what is left to the limit at the first and second price; the rest has the third.</summary>
    private const double FirstShare = 0.25, SecondShare = 0.35;

    /// <summary>
    /// Prices a metre of departing from the usual length. They rise, so that the give is spread over several
    /// steps, as dancers do it.
    /// </summary>
    private const double FirstPrice = 1, SecondPrice = 2, ThirdPrice = 4;

    /// <summary>Price a metre of a foot's give to the side.</summary>
    private const double AsidePrice = 6;

    /// <summary>Price a metre of a step longer or shorter than dancers take, where that is asked about. Far above the others, far below being out of place.</summary>
    private const double BeyondPrice = 500;

    /// <summary>
    /// From so many steps on a sum starts anew. Without sums a program has half as many rows again; with one sum
    /// from the start, rows of hundreds of steps. Found by timing; any number gives an equally cheap way.
    /// </summary>
    private const int LongestSum = 2;

    private readonly LinearProgram _program;
    private readonly RowSum _row;
    private readonly CoupleFrame _frame;
    private readonly Footwork _work;
    private readonly StepLength[] _room;
    private readonly Sum[] _middles;
    private readonly StepColumns?[] _steps;

    /// <param name="row">Where rows of the program are summed up.</param>
    /// <param name="start">True for the one who begins at the middle of the frame.</param>
    /// <param name="stances">How many stances take part; the first ones do.</param>
    /// <param name="beyond">True when steps may be longer and shorter than dancers take, at a high price.</param>
    public DancerColumns(LinearProgram program, RowSum row, CoupleFrame frame, Footwork work, StepLength[] room, double aside, bool start, int stances, bool beyond)
    {
        (_program, _row, _frame, _work, _room) = (program, row, frame, work, room);
        _middles = new Sum[stances];
        _steps = new StepColumns?[room.Length];
        _middles[0] = new(Unknown(start ? 0 : double.PositiveInfinity), Spot.Origin, []);
        var anew = new List<(int Stance, Sum Sum)>();
        for (var i = 1; i < stances; i++)
        {
            var sum = SumOf(work.MiddleOf(i));
            if (sum.Terms.Length > LongestSum)
            {
                anew.Add((i, sum));
                sum = new(Unknown(double.PositiveInfinity), Spot.Origin, []);
            }

            _middles[i] = sum;
        }

        for (var i = 0; i < stances - 1; i++) _steps[i] = Step(i, aside, beyond);
        foreach (var (stance, sum) in anew)
        {
            Follows(stance, sum, new(1, 0));
            Follows(stance, sum, new(0, 1));
        }
    }

    public int Last => _middles.Length - 1;

    /// <summary>The columns of one step; each first one is -1 where the step has no such room.</summary>
    private readonly record struct StepColumns(int Longer, int LongerCount, int Shorter, int ShorterCount, int Aside);

    /// <summary>A place as a sum: the unknowns of a middle, that along y being the next, what is fixed from there, and steps.</summary>
    private readonly record struct Sum(int Column, Spot Beyond, Term[] Terms);

    /// <summary>Adds to the row how far a place lies along a way of the frame.</summary>
    public void Along(Form place, Spot way, double share) => Along(SumOf(place), way, share);

    /// <inheritdoc cref="Along(Form, Spot, double)"/>
    public void Along(int stance, Spot way, double share) => Along(_middles[stance], way, share);

    /// <summary>Where the first middle is, in the frame.</summary>
    public Spot Start(LinearSolution solution) => new(solution.Values[_middles[0].Column], solution.Values[_middles[0].Column + 1]);

    /// <summary>Lengths and asides of the steps.</summary>
    public (double[] Lengths, double[] Asides) StepsOf(LinearSolution solution)
    {
        var lengths = new double[_steps.Length];
        var asides = new double[lengths.Length];
        for (var i = 0; i < lengths.Length; i++)
        {
            if (_steps[i] is not { } step) continue;
            lengths[i] = _room[i].Usual + All(step.Longer, step.LongerCount) - All(step.Shorter, step.ShorterCount);
            asides[i] = (solution.Values[step.Aside] - solution.Values[step.Aside + 1]) * AsideSign(_work.Role.Steps[i]);
        }

        return (lengths, asides);

        double All(int column, int count)
        {
            var sum = 0.0;
            for (var k = 0; k < count; k++) sum += solution.Values[column + k];
            return sum;
        }
    }

    private StepColumns? Step(int i, double aside, bool beyond)
    {
        var kind = _work.Role.Steps[i].Kind;
        if (kind.Rule() != WeightRule.Takes || kind == ActionKind.Drop) return null;
        var (longer, longerCount) = Depart(_room[i].Most - _room[i].Usual, beyond);
        var (shorter, shorterCount) = Depart(_room[i].Usual - _room[i].Least, beyond);
        var give = _program.AddPriced(0, aside, AsidePrice);
        _program.AddPriced(0, aside, AsidePrice);
        return new(longer, longerCount, shorter, shorterCount, give);
    }

    private (int Column, int Count) Depart(double room, bool beyond)
    {
        var first = _program.Columns;
        if (room > 0)
        {
            _program.AddPriced(0, room * FirstShare, FirstPrice);
            _program.AddPriced(0, room * SecondShare, SecondPrice);
            _program.AddPriced(0, room * (1 - FirstShare - SecondShare), ThirdPrice);
        }

        if (beyond) _program.AddPriced(0, double.PositiveInfinity, BeyondPrice);
        return (first, _program.Columns - first);
    }

    // Both columns of a place; the second is the next.
    private int Unknown(double bound)
    {
        _program.AddColumn(-bound, bound, 0);
        return _program.AddColumn(-bound, bound, 0) - 1;
    }

    private Sum SumOf(Form place)
    {
        var (column, beyond, terms) = _middles[place.Base];
        return new(column, beyond + new Spot(place.Fixed.X, place.Fixed.Y * _frame.Side), terms.Length == 0 ? place.Terms : place.Terms.Length == 0 ? terms : [.. terms, .. place.Terms]);
    }

    // middle − sum = 0
    private void Follows(int stance, Sum sum, Spot way)
    {
        Along(_middles[stance], way, 1);
        Along(sum, way, -1);
        _row.Into(0, 0);
    }

    private void Along(Sum sum, Spot way, double share)
    {
        _row.Add(sum.Column, way.X * share);
        _row.Add(sum.Column + 1, way.Y * share);
        _row.AddKnown(((sum.Beyond.X * way.X) + (sum.Beyond.Y * way.Y)) * share);
        foreach (var term in sum.Terms)
        {
            var along = ((term.Along.X * way.X) + (term.Along.Y * _frame.Side * way.Y)) * share;
            var aside = ((term.Aside.X * way.X) + (term.Aside.Y * _frame.Side * way.Y)) * share * AsideSign(_work.Role.Steps[term.Step]);
            _row.AddKnown(along * _room[term.Step].Usual);
            var step = _steps[term.Step]!.Value;
            for (var k = 0; k < step.LongerCount; k++) _row.Add(step.Longer + k, along);
            for (var k = 0; k < step.ShorterCount; k++) _row.Add(step.Shorter + k, -along);
            _row.Add(step.Aside, aside);
            _row.Add(step.Aside + 1, -aside);
        }
    }

    // Left of a walk becomes right of it in the mirror; ahead of a side step stays ahead.
    private int AsideSign(ScoreStep step) =>
        step.Direction is Direction.Side or Direction.Across or Direction.Behind or Direction.Apart ? 1 : _frame.Side;
}
