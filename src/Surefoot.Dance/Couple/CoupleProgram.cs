using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>
/// The couple's places as one linear program. Unknown: the middles of both after every action, how far each
/// step departs from its usual length, and a small dear give to the side. Rows: how a middle follows from
/// an earlier one, and where she may be seen from him at every moment. Slack, at a high price, shows where
/// no lengths will do.
/// </summary>
internal sealed class CoupleProgram
{
    /// <summary>Metres of departure from the usual length at the first price, as a share of what is left to the limit.</summary>
    private const double EasyShare = 0.5;

    /// <summary>Prices a metre: of an easy departure, of a hard one, of the sideways give, and of being where no lengths lead.</summary>
    private const double EasyPrice = 1, HardPrice = 3, AsidePrice = 6, SlackPrice = 1000;

    /// <summary>How far a foot gives to the side of its way at most, in metres. Working value, learned from in-place turns.</summary>
    private const double MostAside = 0.15;

    /// <summary>While somebody turns, her middle stays at least this far on her side of him, in metres.</summary>
    private const double OnHerSide = 0.25;

    /// <summary>How far a repeat may end towards or away from the centre of where it began, in metres. Working value.</summary>
    private const double RadialGive = 0.30;

    private readonly LinearProgram _program = new();
    private readonly Footwork _lead;
    private readonly Footwork _follow;
    private readonly List<Moment> _moments;
    private readonly double _flip;
    private readonly List<int>[] _steps = [[], []];
    private readonly List<(int Column, int Moment)> _slacks = [];
    private int _leadMiddles;
    private int _followMiddles;

    public CoupleProgram(Footwork lead, Footwork follow, List<Moment> moments)
    {
        (_lead, _follow, _moments) = (lead, follow, moments);
        // A dance and its mirror image make the very same program: everything is written as from the left foot.
        _flip = lead.Role.Start.Weight == Weight.Left ? -1 : 1;
    }

    public LinearProgram Program => _program;

    public IReadOnlyList<(int Column, int Moment)> Slacks => _slacks;

    /// <param name="from">First moment whose region must hold; later ones up to <paramref name="to"/>.</param>
    public void Build(int from, int to, bool loop)
    {
        _leadMiddles = Middles(_lead);
        _followMiddles = Middles(_follow);
        StepColumns(_lead, 0);
        StepColumns(_follow, 1);
        MiddleRows(_lead, _leadMiddles, 0);
        MiddleRows(_follow, _followMiddles, 1);
        // The lead begins at the middle of the floor's frame.
        _program.AddRow(0, 0, [_leadMiddles], [1]);
        _program.AddRow(0, 0, [_leadMiddles + 1], [1]);
        for (var m = from; m <= to; m++) RegionRows(m, _moments[m].Where);
        if (!loop) return;
        LoopRows();
    }

    /// <summary>Lengths and asides of each role's steps, and where the follow begins.</summary>
    public (double[] Lengths, double[] Asides) Steps(LinearSolution solution, int role)
    {
        var work = role == 0 ? _lead : _follow;
        var lengths = new double[work.Role.Steps.Count];
        var asides = new double[lengths.Length];
        for (var i = 0; i < lengths.Length; i++)
        {
            var first = _steps[role][i];
            if (first < 0) continue;
            var v = solution.Values;
            lengths[i] = Usual(work, i) + v[first] + v[first + 1] - v[first + 2] - v[first + 3];
            // The give to the side is mirrored with the program.
            asides[i] = (v[first + 4] - v[first + 5]) * AsideSign(work.Role.Steps[i]);
        }

        return (lengths, asides);
    }

    public Spot FollowStart(LinearSolution solution) => new(solution.Values[_followMiddles], solution.Values[_followMiddles + 1] * _flip);

    public double Usual(Footwork work, int step) => Lengths(work, step).Usual;

    private StepLength Lengths(Footwork work, int index)
    {
        var step = work.Role.Steps[index];
        var mean = (_lead.Stature + _follow.Stature) / 2 / Body.ReferenceStature;
        var own = StepLengths.Usual.For(step).Scaled(work.Stature / Body.ReferenceStature);
        // Partners match each other: both aim at the length that suits the mean of the two.
        var usual = StepLengths.Usual.Chosen(step, mean * Body.ReferenceStature);
        if (step.Size.Metres > 0) return new(step.Size.Metres, step.Size.Metres, step.Size.Metres);
        if (step.Direction is Direction.InPlace or Direction.Together or Direction.LockBehind or Direction.LockFront) return new(0, -own.Most, own.Most);
        return new(Math.Clamp(usual, own.Least, own.Most), own.Least, own.Most);
    }

    private int Middles(Footwork work)
    {
        var first = _program.Columns;
        for (var i = 0; i < work.Stances * 2; i++) _program.AddColumn(double.NegativeInfinity, double.PositiveInfinity, 0);
        return first;
    }

    private void StepColumns(Footwork work, int role)
    {
        for (var i = 0; i < work.Role.Steps.Count; i++)
        {
            var step = work.Role.Steps[i];
            if (step.Kind.Rule() != WeightRule.Takes || step.Kind == ActionKind.Drop)
            {
                _steps[role].Add(-1);
                continue;
            }

            var length = Lengths(work, i);
            var (more, less) = (length.Most - length.Usual, length.Usual - length.Least);
            _steps[role].Add(_program.AddColumn(0, more * EasyShare, EasyPrice));
            _program.AddColumn(0, more * (1 - EasyShare), HardPrice);
            _program.AddColumn(0, less * EasyShare, EasyPrice);
            _program.AddColumn(0, less * (1 - EasyShare), HardPrice);
            _program.AddColumn(0, MostAside, AsidePrice);
            _program.AddColumn(0, MostAside, AsidePrice);
        }
    }

    // middle − middle of the base − Σ terms = fixed
    private void MiddleRows(Footwork work, int middles, int role)
    {
        for (var i = 1; i < work.Stances; i++)
        {
            var form = work.MiddleOf(i);
            AxisRow(middles + (2 * i), middles + (2 * form.Base), form, role, work, x: true);
            AxisRow(middles + (2 * i) + 1, middles + (2 * form.Base) + 1, form, role, work, x: false);
        }
    }

    private void AxisRow(int column, int from, Form form, int role, Footwork work, bool x)
    {
        var columns = new List<int> { column, from };
        var values = new List<double> { 1, -1 };
        var side = x ? 1 : _flip;
        var constant = (x ? form.Fixed.X : form.Fixed.Y) * side;
        foreach (var term in form.Terms)
        {
            var along = (x ? term.Along.X : term.Along.Y) * side;
            var aside = (x ? term.Aside.X : term.Aside.Y) * side * AsideSign(work.Role.Steps[term.Step]);
            constant += along * Usual(work, term.Step);
            var first = _steps[role][term.Step];
            if (along != 0)
            {
                columns.AddRange([first, first + 1, first + 2, first + 3]);
                values.AddRange([-along, -along, along, along]);
            }

            if (aside != 0)
            {
                columns.AddRange([first + 4, first + 5]);
                values.AddRange([-aside, aside]);
            }
        }

        _program.AddRow(constant, constant, [.. columns], [.. values]);
    }

    // Left of a walk becomes right of it in the mirror; ahead of a side step stays ahead.
    private double AsideSign(ScoreStep step) =>
        step.Direction is Direction.Side or Direction.Across or Direction.Behind or Direction.Apart ? 1 : _flip;

    private void RegionRows(int m, Region where)
    {
        var moment = _moments[m];
        if (!where.Wide)
        {
            Within(m, moment.Lead, 0, where.Centre.X, where.Give);
            Within(m, moment.Lead, 2, where.Centre.Y, where.Give);
            return;
        }

        // Eight sides of a polygon inside the circle of reach, and the side on which she is.
        for (var side = 0; side < 8; side++) Towards(m, moment.Lead, side, double.NegativeInfinity, where.Give * 0.96);
        if (where.Hold is null && where.Centre.Length > OnHerSide) Towards(m, moment.Lead, Side(where.Centre), OnHerSide * 0.6, double.PositiveInfinity);
    }

    // The eighth of the circle, seen by the lead, in which a place lies.
    private static int Side(Spot place)
    {
        var best = 0;
        var furthest = double.NegativeInfinity;
        for (var side = 0; side < 8; side++)
        {
            var facing = new Facing(side);
            var reach = (place.X * facing.Cosine) + (place.Y * facing.Sine);
            if (reach <= furthest) continue;
            (best, furthest) = (side, reach);
        }

        return best;
    }

    private void Within(int m, Facing lead, int side, double centre, double give) => Towards(m, lead, side, centre - give, centre + give);

    // lower ≤ (her middle − his) · direction ≤ upper, the direction being some eighths to the lead's left.
    private void Towards(int m, Facing lead, int side, double lower, double upper)
    {
        var moment = _moments[m];
        var direction = new Facing(lead.Eighths + side);
        var (x, y) = (direction.Cosine, direction.Sine * _flip);
        var (l, f) = (_leadMiddles + (2 * moment.LeadStance), _followMiddles + (2 * moment.FollowStance));
        var columns = new List<int>(6);
        var values = new List<double>(6);
        if (x != 0)
        {
            columns.AddRange([f, l]);
            values.AddRange([x, -x]);
        }

        if (y != 0)
        {
            columns.AddRange([f + 1, l + 1]);
            values.AddRange([y, -y]);
        }

        if (!double.IsNegativeInfinity(lower)) Slack(1);
        if (!double.IsPositiveInfinity(upper)) Slack(-1);
        _program.AddRow(lower, upper, [.. columns], [.. values]);

        void Slack(double sign)
        {
            var slack = _program.AddColumn(0, double.PositiveInfinity, SlackPrice);
            _slacks.Add((slack, m));
            columns.Add(slack);
            values.Add(sign);
        }
    }

    // At the end she is where she was at the start, and neither has wandered in or out; the way round the room is free.
    private void LoopRows()
    {
        var last = _moments.Count - 1;
        var start = _moments[0];
        if (_moments[last].Lead == start.Lead && _moments[last].Follow == start.Follow) RegionRows(last, start.Where);
        var end = _leadMiddles + (2 * (_lead.Stances - 1)) + 1;
        var (above, below) = (_program.AddColumn(0, double.PositiveInfinity, SlackPrice / 10), _program.AddColumn(0, double.PositiveInfinity, SlackPrice / 10));
        _program.AddRow(-RadialGive, RadialGive, [end, above, below], [1, 1, -1]);
    }
}
