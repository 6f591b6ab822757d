using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Where a couple cannot be, however long or short their steps.</summary>
/// <param name="At">The first count at which it shows.</param>
/// <param name="From">The smallest stretch of counts that is impossible by itself begins here.</param>
/// <param name="Metres">How far they are from where they would have to be.</param>
/// <param name="Hold">The hold that asks for it, or null when it is only reach.</param>
public sealed record OutOfPlace(Count At, Count From, double Metres, string? Hold, bool Reach);

/// <summary>A couple's places, solved.</summary>
/// <param name="Effort">The price of all departures from usual steps; 0 when none is needed.</param>
public sealed record CoupleSolution(DanceMotion Motion, ValueList<Moment> Moments, ValueList<OutOfPlace> Impossible, double Effort);

/// <summary>Finds step lengths for both dancers with which the holds of the page can be kept.</summary>
public static class CoupleSolve
{
    /// <summary>Slack below this, in metres, is rounding and no fault.</summary>
    private const double Rounding = 1e-4;

    public static CoupleSolution? Of(DanceScore score, ILinearSolver solver)
    {
        if (score.Of(Role.Lead) is not { Steps.Count: > 0 } lead || score.Of(Role.Follow) is not { Steps.Count: > 0 } follow) return null;
        var statures = (Lead: OneDancer.StatureOf(score.Facts, Role.Lead), Follow: OneDancer.StatureOf(score.Facts, Role.Follow));
        var moments = HoldTrack.Of(score, (statures.Lead + statures.Follow) / 2 / Body.ReferenceStature);
        var (leadWork, followWork) = (Footwork.Of(lead, statures.Lead), Footwork.Of(follow, statures.Follow));
        var program = new CoupleProgram(leadWork, followWork, moments);
        program.Build(0, moments.Count - 1, loop: true);
        var solution = solver.Solve(program.Program);
        if (!solution.Solved) return null;
        var (leadLengths, leadAsides) = program.Steps(solution, 0);
        var (followLengths, followAsides) = program.Steps(solution, 1);
        var motion = new DanceMotion(
        [
            leadWork.Dance(Spot.Origin, leadLengths, leadAsides),
            followWork.Dance(program.FollowStart(solution), followLengths, followAsides),
        ]);
        var impossible = Impossible(program, solution, leadWork, followWork, moments, solver);
        return new(motion, moments.ToValueList(), impossible, solution.Objective);
    }

    private static ValueList<OutOfPlace> Impossible(
        CoupleProgram program, LinearSolution solution, Footwork lead, Footwork follow, List<Moment> moments, ILinearSolver solver)
    {
        var worst = new SortedDictionary<int, double>();
        foreach (var (column, moment) in program.Slacks)
        {
            var slack = solution.Values[column];
            if (slack > Rounding) worst[moment] = Math.Max(worst.GetValueOrDefault(moment), slack);
        }

        if (worst.Count == 0) return default;
        // Slack goes where it is cheapest; the proof is the shortest stretch that fails by itself.
        var (from, to, metres) = Shortest(lead, follow, moments, solver, worst.Keys.Max());
        return [new(moments[to].At, moments[Math.Min(from + 1, to)].At, metres, moments[to].Where.Hold, moments[to].Where.Wide)];
    }

    // The end is brought forward, then the beginning back, while the stretch still fails.
    private static (int From, int To, double Metres) Shortest(Footwork lead, Footwork follow, List<Moment> moments, ILinearSolver solver, int last)
    {
        var (low, high) = (1, Math.Max(1, last));
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (Fails(0, middle) > Rounding) high = middle;
            else low = middle + 1;
        }

        var to = high;
        if (Fails(0, to) <= Rounding)
        {
            // Every part is possible, and only the way back to the start is not.
            return (0, moments.Count - 1, Fails(0, moments.Count - 1, loop: true));
        }

        (low, high) = (0, to - 1);
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            if (Fails(middle, to) > Rounding) low = middle;
            else high = middle - 1;
        }

        return (low, to, Fails(low, to));

        double Fails(int from, int until, bool loop = false)
        {
            var program = new CoupleProgram(lead, follow, moments);
            program.Build(from, until, loop);
            var solution = solver.Solve(program.Program);
            return solution.Solved ? program.Slacks.Sum(s => solution.Values[s.Column]) : 0;
        }
    }
}
