using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>
/// The couple's places as one linear program: each dancer's steps (<see cref="DancerColumns"/>) and where she
/// may be seen from him at the moments asked about (<see cref="RegionRows"/>).
/// </summary>
internal sealed class CoupleProgram
{
    private readonly LinearProgram _program = new();
    private readonly RowSum _row;
    private readonly CoupleSetting _setting;
    private readonly DancerColumns _lead;
    private readonly DancerColumns _follow;
    private readonly RegionRows _regions;
    private readonly int _last;
    private readonly List<(int Row, int Column)> _apart = [];
    private readonly Queue<int> _spare = [];

    /// <param name="last">The last moment that will be asked about; the last of all when null.</param>
    /// <param name="beyond">Whose steps may be longer and shorter than dancers take, at a high price.</param>
    /// <param name="strict">True where being out of place is not an answer: then there is no solution instead.</param>
    public CoupleProgram(CoupleSetting setting, int? last = null, Role? beyond = null, bool strict = false)
    {
        _setting = setting;
        _row = new(_program);
        _last = last ?? setting.Moments.Count - 1;
        var (moment, aside) = (setting.Moments[_last], setting.Limits.Aside / Body.ReferenceStature);
        _lead = new(_program, _row, setting.Frame, setting.Lead, setting.LeadRoom, aside * setting.Lead.Stature, start: true, moment.LeadStance + 1, beyond == Role.Lead);
        _follow = new(_program, _row, setting.Frame, setting.Follow, setting.FollowRoom, aside * setting.Follow.Stature, start: false, moment.FollowStance + 1, beyond == Role.Follow);
        _regions = new(_program, _row, setting, _lead, _follow, strict);
    }

    /// <summary>She is in the region of a moment.</summary>
    public void Keep(int moment) => _regions.Keep(moment, _setting.Moments[moment].Where);

    /// <summary>She is in the regions of a stretch of moments.</summary>
    public void Keep(int from, int to)
    {
        for (var m = from; m <= to; m++)
        {
            if (m == from || _setting.AsksAnew(m)) Keep(m);
        }
    }

    /// <summary>She begins in the middle of the first hold if nothing else is asked.</summary>
    public void BeginInTheMiddle() => _regions.Begin();

    /// <summary>At the end she is where she was at the start.</summary>
    public void ComeBack()
    {
        var moments = _setting.Moments;
        if (moments[_last].Lead == moments[0].Lead && moments[_last].Follow == moments[0].Follow) _regions.Keep(_last, moments[0].Where);
    }

    /// <summary>At the end the lead is not further in or out than he may be.</summary>
    public void KeepTheLane()
    {
        if (_setting.Lane is { } give) _regions.Lane(give);
    }

    /// <summary>Sets unknowns aside for places that may have to keep apart, so that only rows are added later: those are quick to solve.</summary>
    public void LeaveRoom(int places)
    {
        for (var i = 0; i < places; i++) _spare.Enqueue(_program.AddPriced(0, double.PositiveInfinity, Apart.Price));
    }

    /// <summary>Two places of them keep apart, at a price.</summary>
    public void KeepApart(Apart apart)
    {
        foreach (var (place, share) in apart.Follow) _follow.Along(place, apart.Way, share);
        foreach (var (place, share) in apart.Lead) _lead.Along(place, apart.Way, -share);
        if (!_spare.TryDequeue(out var nearer)) nearer = _program.AddPriced(0, double.PositiveInfinity, Apart.Price);
        _row.Add(nearer, 1);
        _apart.Add((_program.Rows.Count, nearer));
        _row.Into(apart.Metres, double.PositiveInfinity);
    }

    /// <summary>No two places have to keep apart any longer.</summary>
    public void ComeNear()
    {
        foreach (var (row, column) in _apart)
        {
            _program.LetGo(row);
            _spare.Enqueue(column);
        }

        _apart.Clear();
    }

    /// <summary>Begins to solve, with more rows to come.</summary>
    public ILinearRun Begin(ILinearSolver solver) => solver.Begin(_program);

    /// <returns>Nothing when there is no solution, which slack rules out, or numbers were lost.</returns>
    public CouplePlaces? Solve(ILinearSolver solver) => Places(solver.Solve(_program));

    /// <inheritdoc cref="Solve(ILinearSolver)"/>
    public CouplePlaces? Solve(ILinearRun run) => Places(run.Solve());

    private CouplePlaces? Places(LinearSolution solution)
    {
        if (!solution.Solved) return null;
        var slack = 0.0;
        foreach (var column in _regions.Slacks) slack += solution.Values[column];
        return new(_lead.StepsOf(solution), _follow.StepsOf(solution), _setting.Frame.Of(_follow.Start(solution)), solution.Objective, slack);
    }
}

/// <summary>Places found for a couple.</summary>
/// <param name="FollowStart">Where she begins, seen from him, in the lead's own frame.</param>
/// <param name="Price">Of all departures from usual steps and holds.</param>
/// <param name="Slack">How far they are out of place, over all moments, in metres.</param>
internal sealed record CouplePlaces(
    (double[] Lengths, double[] Asides) Lead, (double[] Lengths, double[] Asides) Follow, Spot FollowStart, double Price, double Slack)
{
    /// <summary>Slack below this, in metres, is rounding and no fault.</summary>
    public const double Rounding = 1e-4;

    public bool InPlace => Slack <= Rounding;
}
