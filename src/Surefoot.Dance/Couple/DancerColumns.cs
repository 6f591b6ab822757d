using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>
/// One dancer in the couple's program. Unknown: the middle after every action that moves it by a length, how
/// far each step departs from its usual length, and a small dear give to the side. Rows: how a middle follows
/// from an earlier one. A middle that is a fixed way from an earlier one has no unknowns of its own.
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

    private readonly LinearProgram _program;
    private readonly CoupleFrame _frame;
    private readonly Footwork _work;
    private readonly StepLength[] _room;
    private readonly (int Column, Spot Beyond)[] _middles;
    private readonly StepColumns?[] _steps;

    /// <param name="start">True for the one who begins at the middle of the frame.</param>
    /// <param name="stances">How many stances take part; the first ones do.</param>
    /// <param name="beyond">True when steps may be longer and shorter than dancers take, at a high price.</param>
    public DancerColumns(LinearProgram program, CoupleFrame frame, Footwork work, StepLength[] room, double aside, bool start, int stances, bool beyond)
    {
        (_program, _frame, _work, _room) = (program, frame, work, room);
        _middles = new (int, Spot)[stances];
        _steps = new StepColumns?[room.Length];
        var bound = start ? 0 : double.PositiveInfinity;
        _middles[0] = (_program.AddColumn(-bound, bound, 0), Spot.Origin);
        _program.AddColumn(-bound, bound, 0);
        for (var i = 1; i < stances; i++)
        {
            if (work.MiddleOf(i).Terms.Length > 0)
            {
                _middles[i] = (_program.AddColumn(double.NegativeInfinity, double.PositiveInfinity, 0), Spot.Origin);
                _program.AddColumn(double.NegativeInfinity, double.PositiveInfinity, 0);
            }
        }

        for (var i = 0; i < stances - 1; i++) _steps[i] = Step(i, aside, beyond);
        for (var i = 1; i < stances; i++) Follow(i);
    }

    public int Last => _middles.Length - 1;

    /// <summary>The columns of one step; each first one is -1 where the step has no such room.</summary>
    private readonly record struct StepColumns(int Longer, int LongerCount, int Shorter, int ShorterCount, int Aside);

    /// <summary>The column of a stance's middle along x, that along y being the next, and how far from there the middle is.</summary>
    public (int Column, Spot Beyond) Middle(int stance) => _middles[stance];

    /// <summary>Adds how far a place lies along a way of the frame to a row, and gives what is fixed of it.</summary>
    public double Along(Form place, Spot way, double share, Action<int, double> add)
    {
        var (column, beyond) = _middles[place.Base];
        var away = beyond + new Spot(place.Fixed.X, place.Fixed.Y * _frame.Side);
        add(column, way.X * share);
        add(column + 1, way.Y * share);
        var known = ((away.X * way.X) + (away.Y * way.Y)) * share;
        foreach (var term in place.Terms)
        {
            var along = ((term.Along.X * way.X) + (term.Along.Y * _frame.Side * way.Y)) * share;
            var aside = ((term.Aside.X * way.X) + (term.Aside.Y * _frame.Side * way.Y)) * share * AsideSign(_work.Role.Steps[term.Step]);
            known += along * _room[term.Step].Usual;
            var step = _steps[term.Step]!.Value;
            for (var k = 0; k < step.LongerCount; k++) add(step.Longer + k, along);
            for (var k = 0; k < step.ShorterCount; k++) add(step.Shorter + k, -along);
            add(step.Aside, aside);
            add(step.Aside + 1, -aside);
        }

        return known;
    }

    /// <summary>Where a stance's middle is, in the frame.</summary>
    public Spot Place(LinearSolution solution, int stance)
    {
        var (column, beyond) = _middles[stance];
        return new Spot(solution.Values[column], solution.Values[column + 1]) + beyond;
    }

    /// <summary>Lengths and asides of the steps.</summary>
    public (double[] Lengths, double[] Asides) StepsOf(LinearSolution solution)
    {
        var lengths = new double[_steps.Length];
        var asides = new double[lengths.Length];
        for (var i = 0; i < lengths.Length; i++)
        {
            if (_steps[i] is not { } step) continue;
            lengths[i] = _room[i].Usual + Sum(step.Longer, step.LongerCount) - Sum(step.Shorter, step.ShorterCount);
            asides[i] = (solution.Values[step.Aside] - solution.Values[step.Aside + 1]) * AsideSign(_work.Role.Steps[i]);
        }

        return (lengths, asides);

        double Sum(int column, int count)
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

    // middle − middle of the base − Σ terms = fixed
    private void Follow(int stance)
    {
        var form = _work.MiddleOf(stance);
        var (from, beyond) = _middles[form.Base];
        // No negative nought, which a mirror would bring in.
        var away = beyond + new Spot(form.Fixed.X + 0.0, (form.Fixed.Y * _frame.Side) + 0.0);
        if (form.Terms.Length == 0)
        {
            _middles[stance] = (from, away);
            return;
        }

        var to = _middles[stance].Column;
        Axis(form, to, from, away.X, x: true);
        Axis(form, to + 1, from + 1, away.Y, x: false);
    }

    private void Axis(Form form, int to, int from, double constant, bool x)
    {
        var columns = new List<int>(12) { to, from };
        var values = new List<double>(12) { 1, -1 };
        foreach (var term in form.Terms)
        {
            var along = x ? term.Along.X : term.Along.Y * _frame.Side;
            var aside = (x ? term.Aside.X : term.Aside.Y * _frame.Side) * AsideSign(_work.Role.Steps[term.Step]);
            constant += along * _room[term.Step].Usual;
            var step = _steps[term.Step]!.Value;
            for (var k = 0; k < step.LongerCount; k++) Add(step.Longer + k, -along);
            for (var k = 0; k < step.ShorterCount; k++) Add(step.Shorter + k, along);
            Add(step.Aside, -aside);
            Add(step.Aside + 1, aside);
        }

        constant += 0.0;
        _program.AddRow(constant, constant, [.. columns], [.. values]);

        void Add(int column, double value)
        {
            if (value == 0) return;
            columns.Add(column);
            values.Add(value);
        }
    }

    // Left of a walk becomes right of it in the mirror; ahead of a side step stays ahead.
    private int AsideSign(ScoreStep step) =>
        step.Direction is Direction.Side or Direction.Across or Direction.Behind or Direction.Apart ? 1 : _frame.Side;
}
