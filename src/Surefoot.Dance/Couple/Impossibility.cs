using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Finds why no step lengths will do. Slack goes where it is cheapest, which need not be where the fault is;
/// the proof is the smallest stretch of counts that is impossible by itself.
/// </summary>
internal sealed class Impossibility(IReadOnlyList<Moment> moments, ILinearSolver solver, Func<CoupleProgram> program)
{
    /// <summary>How many actions after the proof are looked at for the place where they are furthest out.</summary>
    private const int LookAhead = 12;

    public OutOfPlace Of()
    {
        var to = First(1, moments.Count - 1, until => Out(0, until));
        if (Out(0, to) <= CoupleSolve.Rounding)
        {
            // Every stretch is possible; only the way back to the start is not.
            var end = moments.Count - 1;
            return new(OutOfPlaceKind.Loop, moments[1].At, moments[end].At, moments[end].At, Out(0, end, back: true), moments[0].Where.Hold);
        }

        var from = to - First(1, to, back => Out(to - back, to));
        var (worst, metres) = Worst(from, to);
        var where = moments[to].Where;
        var give = where.Wide ? 0 : where.Give;
        return new(where.Wide ? OutOfPlaceKind.Reach : OutOfPlaceKind.Hold, moments[Math.Min(from + 1, to)].At, moments[to].At, moments[worst].At, metres + give, where.Hold);
    }

    // How far out they are grows for a while as the same trouble goes on.
    private (int Moment, double Metres) Worst(int from, int to)
    {
        var (worst, most) = (to, Ends(from, to));
        for (var m = to + 1; m < moments.Count && m <= to + LookAhead; m++)
        {
            if (moments[m].Where.Wide != moments[to].Where.Wide || moments[m].Where.Hold != moments[to].Where.Hold) break;
            var metres = Ends(from, m);
            if (metres <= most + CoupleSolve.Rounding) break;
            (worst, most) = (m, metres);
        }

        return (worst, most);
    }

    private double Ends(int from, int to)
    {
        var one = program();
        one.Keep(from);
        one.Keep(to);
        return Slack(one);
    }

    private double Out(int from, int to, bool back = false)
    {
        var one = program();
        for (var m = from; m <= to; m++) one.Keep(m);
        if (back) one.ComeBack();
        return Slack(one);
    }

    private double Slack(CoupleProgram one)
    {
        var solution = solver.Solve(one.Program);
        return solution.Solved ? one.Slacks.Sum(s => solution.Values[s.Column]) : 0;
    }

    // The first number in a range for which something is out of place; the last where there is none.
    private static int First(int low, int high, Func<int, double> out_)
    {
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (out_(middle) > CoupleSolve.Rounding) high = middle;
            else low = middle + 1;
        }

        return low;
    }
}
