using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Couple;

/// <summary>Finds step lengths for both dancers with which the holds of the page can be kept.</summary>
public sealed class CoupleSolve
{
    /// <summary>Slack below this, in metres, is rounding and no fault.</summary>
    internal const double Rounding = 1e-4;

    private readonly DanceScore _score;
    private readonly ILinearSolver _solver;
    private readonly CoupleLimits _limits;
    private readonly CoupleFrame _frame;
    private readonly Footwork _lead;
    private readonly Footwork _follow;
    private readonly StepLength[][] _room;
    private readonly List<Moment> _moments;
    private readonly double _scale;

    private CoupleSolve(DanceScore score, RoleScore lead, RoleScore follow, ILinearSolver solver, CoupleLimits limits)
    {
        (_score, _solver, _limits) = (score, solver, limits);
        var statures = (Lead: OneDancer.StatureOf(score.Facts, Role.Lead), Follow: OneDancer.StatureOf(score.Facts, Role.Follow));
        var mean = (statures.Lead + statures.Follow) / 2;
        _scale = mean / Body.ReferenceStature;
        _frame = CoupleFrame.Of(lead, score.Facts.Hold);
        (_lead, _follow) = (Footwork.Of(lead, statures.Lead, _frame.Ahead), Footwork.Of(follow, statures.Follow, _frame.Ahead));
        _moments = HoldTrack.Of(score, _lead, _follow, limits);
        _room = [StepRoom.Of(_lead, mean, limits), StepRoom.Of(_follow, mean, limits)];
    }

    /// <returns>Nothing where there is no couple, or the solver gave up.</returns>
    public static CoupleSolution? Of(DanceScore score, ILinearSolver solver, CoupleLimits? limits = null)
    {
        if (score.Of(Role.Lead) is not { Steps.Count: > 0 } lead || score.Of(Role.Follow) is not { Steps.Count: > 0 } follow) return null;
        var chosen = limits ?? CoupleLimits.Usual;
        var solved = new CoupleSolve(score, lead, follow, solver, chosen).Solve();
        // Hands are only asked about where both can be in place to each other; the lane is another matter.
        return solved is not null && (solved.Impossible.Count == 0 || solved.Impossible[0].Kind == OutOfPlaceKind.Track) ? solved with { Hands = HandsSolve.Of(score, solved.Motion, solved.Moments, chosen) } : solved;
    }

    private CoupleSolution? Solve()
    {
        var usual = Dance(_room[0].Select(r => r.Usual).ToArray(), new double[_room[0].Length], _room[1].Select(r => r.Usual).ToArray(), new double[_room[1].Length], _moments[0].Where.Centre);
        // Nothing costs less than nothing: where usual steps will do there is nothing to solve.
        if (UsualWillDo(usual)) return new(usual, _moments.ToValueList(), default, 0);
        var (program, solution) = Try(track: false);
        if (!solution.Solved) return null;
        var impossible = Out(program, solution) ? new Impossibility(_moments, _solver, NewProgram).Of() : null;
        var motion = Dance(program, solution);
        if (impossible is null && OffTrack(motion) > Rounding)
        {
            var (kept, again) = Try(track: true);
            if (!again.Solved) return null;
            (program, solution, motion) = (kept, again, Dance(kept, again));
            if (Out(program, solution))
            {
                var last = _moments[^1].At;
                impossible = new(OutOfPlaceKind.Track, _moments[1].At, last, last, OffTrack(motion) + (_limits.Radial * _scale), null);
            }
        }

        return new(motion, _moments.ToValueList(), impossible is null ? default : [impossible], solution.Objective);
    }

    private (CoupleProgram Program, LinearSolution Solution) Try(bool track)
    {
        var program = NewProgram();
        for (var m = 0; m < _moments.Count; m++)
        {
            // Where nobody moves nothing new is asked.
            if (m == 0 || !Still(_lead, _moments[m - 1].LeadStance, _moments[m].LeadStance) || !Still(_follow, _moments[m - 1].FollowStance, _moments[m].FollowStance)
                || _moments[m].Where != _moments[m - 1].Where || _moments[m].Lead != _moments[m - 1].Lead) program.Keep(m);
        }

        program.ComeBack();
        if (track) program.KeepTheTrack(_limits.Radial * _scale);
        return (program, _solver.Solve(program.Program));
    }

    private static bool Still(Footwork work, int from, int to)
    {
        for (var i = from + 1; i <= to; i++)
        {
            if (work.MiddleOf(i) is not { Terms.Length: 0 } form || form.Base != i - 1 || form.Fixed != Spot.Origin) return false;
        }

        return true;
    }

    private CoupleProgram NewProgram() => new(_frame, _lead, _follow, _room, _moments, _limits);

    private static bool Out(CoupleProgram program, LinearSolution solution)
    {
        foreach (var (column, _) in program.Slacks)
        {
            if (solution.Values[column] > Rounding) return true;
        }

        return false;
    }

    private DanceMotion Dance(CoupleProgram program, LinearSolution solution)
    {
        var (lead, follow) = (program.StepsOf(solution, lead: true), program.StepsOf(solution, lead: false));
        return Dance(lead.Lengths, lead.Asides, follow.Lengths, follow.Asides, program.FollowStart(solution));
    }

    private DanceMotion Dance(double[] leadLengths, double[] leadAsides, double[] followLengths, double[] followAsides, Spot followStart) =>
        new([_lead.Dance(Spot.Origin, leadLengths, leadAsides), _follow.Dance(followStart, followLengths, followAsides)]);

    private bool UsualWillDo(DanceMotion usual)
    {
        var (lead, follow) = (usual.Of(Role.Lead)!.Stances, usual.Of(Role.Follow)!.Stances);
        for (var m = 0; m < _moments.Count; m++)
        {
            var moment = _moments[m];
            var way = follow[moment.FollowStance].Middle - lead[moment.LeadStance].Middle;
            var seen = Spot.Origin.Moved(new(-moment.Lead.Eighths), way.X, way.Y);
            if (!CoupleProgram.Costless(moment.Where, seen)) return false;
            if (m == _moments.Count - 1 && (moment.Lead != _moments[0].Lead || moment.Follow != _moments[0].Follow || !CoupleProgram.Costless(_moments[0].Where, seen))) return false;
        }

        return OffTrack(usual) <= 0;
    }

    // By how much the lead ends further in or out than he may.
    private double OffTrack(DanceMotion motion) =>
        _score.Facts.Floor == Floor.Track ? Math.Max(0, Math.Abs(motion.Of(Role.Lead)!.Travel.Y) - (_limits.Radial * _scale)) : 0;
}
