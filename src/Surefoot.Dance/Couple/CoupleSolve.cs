using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Couple;

/// <summary>Finds step lengths for both dancers with which the holds of the page can be kept.</summary>
public sealed class CoupleSolve
{
    /// <summary>How often places are solved again for bodies and feet that are in each other's way. Working value: what is not clear then stays near.</summary>
    private const int Rounds = 4;

    /// <summary>Places for which room is left to keep apart: as many as most dances need. More only take longer.</summary>
    private const int Places = 96;

    private readonly CoupleSetting _setting;
    private readonly ILinearSolver _solver;

    private CoupleSolve(CoupleSetting setting, ILinearSolver solver) => (_setting, _solver) = (setting, solver);

    /// <returns>Nothing where there is no couple, or the solver gave up.</returns>
    public static CoupleSolution? Of(DanceScore score, ILinearSolver solver, CoupleLimits? limits = null)
    {
        if (CoupleSetting.Of(score, limits ?? CoupleLimits.Usual) is not { } setting) return null;
        var solved = new CoupleSolve(setting, solver).Solve();
        // Hands are only asked about where both can be in place to each other; the lane is another matter.
        return solved is { InPlace: true } ? solved with { Hands = HandsSolve.Of(score, solved.Motion, solved.Moments, setting.Limits) } : solved;
    }

    private CoupleSolution? Solve()
    {
        var moments = _setting.Moments;
        var usual = _setting.Dance(Usual(_setting.LeadRoom), Usual(_setting.FollowRoom), moments[0].Where.Centre);
        // Nothing costs less than nothing: where usual steps will do there is nothing to solve.
        if (UsualWillDo(usual)) return new(usual, moments.ToValueList(), default, 0);
        if (Danced() is { } danced) return new(Dance(danced), moments.ToValueList(), default, danced.Price);
        if (Program(lane: true).Solve(_solver) is not { } kept) return null;
        var motion = Dance(kept);
        OutOfPlace? impossible = null;
        if (!kept.InPlace)
        {
            if (Program(lane: false).Solve(_solver) is not { } anywhere) return null;
            if (anywhere.InPlace)
            {
                var last = moments[^1].At;
                impossible = new(OutOfPlaceKind.Track, moments[1].At, last, last, Radial(motion), null);
            }
            else
            {
                (kept, motion) = (anywhere, Dance(anywhere));
                impossible = new Impossibility(_setting, _solver).Of();
            }
        }

        return new(motion, moments.ToValueList(), impossible is null ? default : [WithRepairs(impossible)], kept.Price);
    }

    // Where every hold can be kept, and nobody is in the partner's way; nothing where holds cannot be kept.
    private CouplePlaces? Danced()
    {
        var program = Program(lane: true, strict: true);
        program.LeaveRoom(Places);
        using var run = program.Begin(_solver);
        return program.Solve(run) is { } kept ? RoundEachOther(kept, program, run) : null;
    }

    private OutOfPlace WithRepairs(OutOfPlace place) => place with
    {
        Shortfall = place.Kind is OutOfPlaceKind.Hold or OutOfPlaceKind.Reach ? Shortfalls.Of(_setting, _solver, place.From, place.Worst) : null,
        Repairs = new Repairs(_setting, _solver, place).Find(),
    };

    // Whoever would go through the partner goes past, or stays on the own side, whichever costs less.
    private CouplePlaces RoundEachOther(CouplePlaces kept, CoupleProgram program, ILinearRun run)
    {
        var crowding = new Crowding(_setting);
        var (past, pastPrice) = Cleared(kept, crowding, program, run);
        if (!crowding.Through) return past;
        program.ComeNear();
        var (stayed, stayedPrice) = Cleared(kept, new Crowding(_setting, stay: true), program, run);
        return stayedPrice < pastPrice - CouplePlaces.Rounding ? stayed : past;
    }

    // Each time what is too near now is kept apart as well; what stays too near at the end has its price.
    private static (CouplePlaces Places, double Price) Cleared(CouplePlaces kept, Crowding crowding, CoupleProgram program, ILinearRun run)
    {
        for (var round = 0; ; round++)
        {
            var near = crowding.In(kept);
            if (near.Count == 0) return (kept, kept.Price);
            near.ForEach(program.KeepApart);
            if (round == Rounds || program.Solve(run) is not { InPlace: true } better) return (kept, kept.Price + (near.Sum(n => n.Missing) * Apart.Price));
            kept = better;
        }
    }

    private CoupleProgram Program(bool lane, bool strict = false)
    {
        var program = new CoupleProgram(_setting, strict: strict);
        program.BeginInTheMiddle();
        program.Keep(0, _setting.Moments.Count - 1);
        program.ComeBack();
        if (lane) program.KeepTheLane();
        return program;
    }

    private static (double[] Lengths, double[] Asides) Usual(StepLength[] room)
    {
        var lengths = new double[room.Length];
        for (var i = 0; i < lengths.Length; i++) lengths[i] = room[i].Usual;
        return (lengths, new double[lengths.Length]);
    }

    private DanceMotion Dance(CouplePlaces places) => _setting.Dance(places.Lead, places.Follow, places.FollowStart);

    private bool UsualWillDo(DanceMotion usual)
    {
        var moments = _setting.Moments;
        var (lead, follow) = (usual.Of(Role.Lead)!.Stances, usual.Of(Role.Follow)!.Stances);
        for (var m = 0; m < moments.Count; m++)
        {
            var moment = moments[m];
            var way = follow[moment.FollowStance].Middle - lead[moment.LeadStance].Middle;
            var seen = Spot.Origin.Moved(new(-moment.Lead.Eighths), way.X, way.Y);
            if (!RegionRows.Costless(moment.Where, seen, _setting.Scale)) return false;
            if (m == moments.Count - 1 && (moment.Lead != moments[0].Lead || moment.Follow != moments[0].Follow || !RegionRows.Costless(moments[0].Where, seen, _setting.Scale))) return false;
        }

        if (_setting.Lane is { } give && Radial(usual) > give) return false;
        var places = new CouplePlaces(Usual(_setting.LeadRoom), Usual(_setting.FollowRoom), moments[0].Where.Centre, 0, 0);
        return new Crowding(_setting).In(places).Count == 0;
    }

    // By how much the lead ends further in or out than he began.
    private static double Radial(DanceMotion motion) => Math.Abs(motion.Of(Role.Lead)!.Travel.Y);
}
