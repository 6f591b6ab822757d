using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
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
    /// <summary>Shares of what is left to the limit at the first and second price; the rest has the third.</summary>
    private const double FirstShare = 0.25, SecondShare = 0.35;

    /// <summary>
    /// Prices a metre of departing from the usual length. They rise, so that the give is spread over several
    /// steps, as dancers do it.
    /// </summary>
    private const double FirstPrice = 1, SecondPrice = 2, ThirdPrice = 4;

    /// <summary>Price a metre of a foot's give to the side.</summary>
    private const double AsidePrice = 6;

    /// <summary>
    /// Price a metre, at each moment, of being away from the hold's middle by more than <see cref="Easy"/>.
    /// Low enough that a step is not bent for a moment's sake; it brings a couple home over a few steps.
    /// </summary>
    private const double AwayPrice = 0.4;

    /// <summary>Metres from a hold's middle that nobody minds, for 1.70 m, as a share of the give.</summary>
    private const double Easy = 1.0 / 3;

    /// <summary>Price a metre of being where no lengths lead. Far above all others together.</summary>
    private const double SlackPrice = 10_000;

    /// <summary>Price a metre of crossing to the other side of him while somebody turns, and how far on her side she keeps, in metres.</summary>
    private const double SidePrice = 3, OnHerSide = 0.20;

    /// <summary>The circle of reach is taken as eight sides whose corners lie on it: the cosine of a sixteenth of a turn.</summary>
    private const double Inscribed = 0.92387953251128674;

    private readonly LinearProgram _program = new();
    private readonly CoupleFrame _frame;
    private readonly IReadOnlyList<Moment> _moments;
    private readonly CoupleLimits _limits;
    private readonly Side _lead;
    private readonly Side _follow;
    private readonly List<(int Column, int Moment)> _slacks = [];

    public CoupleProgram(CoupleFrame frame, Footwork lead, Footwork follow, StepLength[][] room, IReadOnlyList<Moment> moments, CoupleLimits limits)
    {
        (_frame, _moments, _limits) = (frame, moments, limits);
        _lead = new(lead, room[0], _program.Columns, []);
        Columns(_lead);
        _follow = new(follow, room[1], _program.Columns, []);
        Columns(_follow);
        MiddleRows(_lead);
        MiddleRows(_follow);
        // The lead begins at the middle of the frame.
        _program.AddRow(0, 0, [_lead.Middles], [1]);
        _program.AddRow(0, 0, [_lead.Middles + 1], [1]);
    }

    /// <summary>A dancer's unknowns: x and y of each middle from a column on, and six columns for each step.</summary>
    private sealed record Side(Footwork Work, StepLength[] Room, int Middles, List<int> Steps);

    public LinearProgram Program => _program;

    public IReadOnlyList<(int Column, int Moment)> Slacks => _slacks;

    /// <summary>True when being somewhere at a moment costs nothing in this program.</summary>
    public static bool Costless(Region where, Spot seen)
    {
        if (!where.Wide) return Math.Abs(seen.X - where.Centre.X) <= where.Give * Easy && Math.Abs(seen.Y - where.Centre.Y) <= where.Give * Easy;
        if (double.IsPositiveInfinity(where.Give)) return true;
        if (seen.Length > where.Give * Inscribed) return false;
        var side = new Facing(SideOf(where.Centre));
        return where.Centre.Length <= OnHerSide || (seen.X * side.Cosine) + (seen.Y * side.Sine) >= OnHerSide;
    }

    /// <summary>She is in the region of a moment.</summary>
    public void Keep(int moment) => RegionRows(moment, _moments[moment].Where);

    /// <summary>At the end she is where she was at the start.</summary>
    public void ComeBack()
    {
        var last = _moments.Count - 1;
        if (_moments[last].Lead == _moments[0].Lead && _moments[last].Follow == _moments[0].Follow) RegionRows(last, _moments[0].Where);
    }

    /// <summary>At the end the lead is not further in or out than he may be; the way round the room is free.</summary>
    public void KeepTheTrack(double give)
    {
        var last = _moments.Count - 1;
        // In the mirror the middle of the room is on the other side.
        var inwards = _frame.Across(new(2 * _frame.Side));
        var columns = new List<int>();
        var values = new List<double>();
        var end = _lead.Middles + (2 * (_lead.Work.Stances - 1));
        Add(columns, values, end, inwards.X);
        Add(columns, values, end + 1, inwards.Y);
        Slack(columns, values, last, 1);
        Slack(columns, values, last, -1);
        _program.AddRow(-give, give, [.. columns], [.. values]);
    }

    /// <summary>Lengths and asides of each role's steps.</summary>
    public (double[] Lengths, double[] Asides) StepsOf(LinearSolution solution, bool lead)
    {
        var side = lead ? _lead : _follow;
        var lengths = new double[side.Steps.Count];
        var asides = new double[lengths.Length];
        var v = solution.Values;
        for (var i = 0; i < lengths.Length; i++)
        {
            var c = side.Steps[i];
            if (c < 0) continue;
            lengths[i] = side.Room[i].Usual + (v[c] + v[c + 1] + v[c + 2]) - (v[c + 3] + v[c + 4] + v[c + 5]);
            asides[i] = (v[c + 6] - v[c + 7]) * AsideSign(side.Work.Role.Steps[i]);
        }

        return (lengths, asides);
    }

    /// <summary>Where she begins, seen from him, in the lead's own frame.</summary>
    public Spot FollowStart(LinearSolution solution) => _frame.Of(new Spot(solution.Values[_follow.Middles], solution.Values[_follow.Middles + 1]));

    /// <summary>Where she is seen from him at a moment, in the lead's own frame.</summary>
    public Spot Seen(LinearSolution solution, int m)
    {
        var (l, f) = (_lead.Middles + (2 * _moments[m].LeadStance), _follow.Middles + (2 * _moments[m].FollowStance));
        var v = solution.Values;
        var way = new Spot(v[f] - v[l], v[f + 1] - v[l + 1]);
        return _frame.Of(Spot.Origin.Moved(new(-_frame.Of(_moments[m].Lead).Eighths), way.X, way.Y));
    }

    private void Columns(Side side)
    {
        for (var i = 0; i < side.Work.Stances * 2; i++) _program.AddColumn(double.NegativeInfinity, double.PositiveInfinity, 0);
        for (var i = 0; i < side.Room.Length; i++)
        {
            var step = side.Work.Role.Steps[i];
            if (step.Kind.Rule() != WeightRule.Takes || step.Kind == ActionKind.Drop)
            {
                side.Steps.Add(-1);
                continue;
            }

            side.Steps.Add(_program.Columns);
            Depart(side.Room[i].Most - side.Room[i].Usual);
            Depart(side.Room[i].Usual - side.Room[i].Least);
            _program.AddColumn(0, _limits.Aside * side.Work.Stature / Body.ReferenceStature, AsidePrice);
            _program.AddColumn(0, _limits.Aside * side.Work.Stature / Body.ReferenceStature, AsidePrice);
        }

        void Depart(double room)
        {
            _program.AddColumn(0, room * FirstShare, FirstPrice);
            _program.AddColumn(0, room * SecondShare, SecondPrice);
            _program.AddColumn(0, room * (1 - FirstShare - SecondShare), ThirdPrice);
        }
    }

    // middle − middle of the base − Σ terms = fixed
    private void MiddleRows(Side side)
    {
        for (var i = 1; i < side.Work.Stances; i++)
        {
            var form = side.Work.MiddleOf(i);
            var (to, from) = (side.Middles + (2 * i), side.Middles + (2 * form.Base));
            AxisRow(side, form, to, from, form.Fixed.X, x: true);
            AxisRow(side, form, to + 1, from + 1, form.Fixed.Y * _frame.Side, x: false);
        }
    }

    private void AxisRow(Side side, Form form, int to, int from, double constant, bool x)
    {
        var columns = new List<int> { to, from };
        var values = new List<double> { 1, -1 };
        foreach (var term in form.Terms)
        {
            var along = x ? term.Along.X : term.Along.Y * _frame.Side;
            var aside = (x ? term.Aside.X : term.Aside.Y * _frame.Side) * AsideSign(side.Work.Role.Steps[term.Step]);
            constant += along * side.Room[term.Step].Usual;
            var c = side.Steps[term.Step];
            for (var k = 0; k < 6; k++) Add(columns, values, c + k, k < 3 ? -along : along);
            Add(columns, values, c + 6, -aside);
            Add(columns, values, c + 7, aside);
        }

        // No negative nought, which a mirror would bring in.
        constant += 0.0;
        _program.AddRow(constant, constant, [.. columns], [.. values]);
    }

    // Left of a walk becomes right of it in the mirror; ahead of a side step stays ahead.
    private int AsideSign(ScoreStep step) =>
        step.Direction is Direction.Side or Direction.Across or Direction.Behind or Direction.Apart ? 1 : _frame.Side;

    private void RegionRows(int m, Region where)
    {
        var centre = _frame.Of(where.Centre);
        if (!where.Wide)
        {
            Near(m, 0, centre.X, where.Give);
            Near(m, 2, centre.Y, where.Give);
            return;
        }

        if (double.IsPositiveInfinity(where.Give)) return;
        for (var side = 0; side < 8; side++) Within(m, side, where.Give * Inscribed);
        if (centre.Length > OnHerSide) OnSide(m, SideOf(centre));
    }

    // The eighth of the circle, seen by the lead, in which a place lies.
    private static int SideOf(Spot place)
    {
        var best = 0;
        var furthest = double.NegativeInfinity;
        for (var side = 0; side < 8; side++)
        {
            var facing = new Facing(side);
            var reach = (place.X * facing.Cosine) + (place.Y * facing.Sine);
            if (reach <= furthest + 1e-9) continue;
            (best, furthest) = (side, reach);
        }

        return best;
    }

    // Within easy reach of the middle for nothing, within the give for a little, further only as slack.
    private void Near(int m, int side, double centre, double give)
    {
        var (columns, values) = Towards(m, side);
        for (var sign = 1; sign >= -1; sign -= 2)
        {
            Add(columns, values, _program.AddColumn(0, give * (1 - Easy), AwayPrice), sign);
            Slack(columns, values, m, sign);
        }

        _program.AddRow(centre - (give * Easy), centre + (give * Easy), [.. columns], [.. values]);
    }

    private void Within(int m, int side, double reach)
    {
        var (columns, values) = Towards(m, side);
        Slack(columns, values, m, -1);
        _program.AddRow(double.NegativeInfinity, reach, [.. columns], [.. values]);
    }

    // She keeps to her side of him where she can; this proves nothing.
    private void OnSide(int m, int side)
    {
        var (columns, values) = Towards(m, side);
        Add(columns, values, _program.AddColumn(0, double.PositiveInfinity, SidePrice), 1);
        _program.AddRow(OnHerSide, double.PositiveInfinity, [.. columns], [.. values]);
    }

    // (her middle − his) in a direction some eighths to the lead's left.
    private (List<int> Columns, List<double> Values) Towards(int m, int side)
    {
        var moment = _moments[m];
        var direction = new Facing(_frame.Of(moment.Lead).Eighths + side);
        var (l, f) = (_lead.Middles + (2 * moment.LeadStance), _follow.Middles + (2 * moment.FollowStance));
        var (columns, values) = (new List<int>(8), new List<double>(8));
        Add(columns, values, f, direction.Cosine);
        Add(columns, values, l, -direction.Cosine);
        Add(columns, values, f + 1, direction.Sine);
        Add(columns, values, l + 1, -direction.Sine);
        return (columns, values);
    }

    private void Slack(List<int> columns, List<double> values, int m, double sign)
    {
        var slack = _program.AddColumn(0, double.PositiveInfinity, SlackPrice);
        _slacks.Add((slack, m));
        Add(columns, values, slack, sign);
    }

    private static void Add(List<int> columns, List<double> values, int column, double value)
    {
        if (value == 0) return;
        columns.Add(column);
        values.Add(value);
    }
}
