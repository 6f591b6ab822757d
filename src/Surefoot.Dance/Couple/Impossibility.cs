using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Finds why no step lengths will do. Slack goes where it is cheapest, which need not be where the fault is;
/// the proof is the smallest stretch of counts that is impossible by itself.
/// </summary>
internal sealed class Impossibility(CoupleSetting setting, ILinearSolver solver)
{
    /// <summary>How many actions after the proof are looked at for the place where they are furthest out.</summary>
    private const int LookAhead = 12;

    private readonly List<Moment> _moments = setting.Moments;

    public OutOfPlace Of()
    {
        var to = First(1, _moments.Count - 1, until => Out(0, until));
        if (Out(0, to) <= CouplePlaces.Rounding)
        {
            // Every stretch is possible; only the way back to the start is not.
            var end = _moments.Count - 1;
            return new(OutOfPlaceKind.Loop, _moments[1].At, _moments[end].At, _moments[end].At, Out(0, end, back: true), _moments[0].Where.Hold);
        }

        var from = to - First(1, to, back => Out(to - back, to));
        var (worst, metres) = Worst(from, to);
        var where = _moments[to].Where;
        var give = where.Wide ? 0 : where.Give;
        return new(where.Wide ? OutOfPlaceKind.Reach : OutOfPlaceKind.Hold, _moments[Math.Min(from + 1, to)].At, _moments[to].At, _moments[worst].At, metres + give, where.Hold);
    }

    // How far out they are grows for a while as the same trouble goes on.
    private (int Moment, double Metres) Worst(int from, int to)
    {
        var (worst, most) = (to, Ends(from, to));
        for (var m = to + 1; m < _moments.Count && m <= to + LookAhead; m++)
        {
            if (_moments[m].Where.Wide != _moments[to].Where.Wide || _moments[m].Where.Hold != _moments[to].Where.Hold) break;
            var metres = Ends(from, m);
            if (metres <= most + CouplePlaces.Rounding) break;
            (worst, most) = (m, metres);
        }

        return (worst, most);
    }

    private double Ends(int from, int to)
    {
        var one = new CoupleProgram(setting, to);
        one.Keep(from);
        one.Keep(to);
        return Slack(one);
    }

    private double Out(int from, int to, bool back = false)
    {
        var one = new CoupleProgram(setting, to);
        one.Keep(from, to);
        if (back) one.ComeBack();
        return Slack(one);
    }

    private double Slack(CoupleProgram one) => one.Solve(solver)?.Slack ?? 0;

    // The first number in a range for which something is out of place; the last where there is none.
    private static int First(int low, int high, Func<int, double> out_)
    {
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (out_(middle) > CouplePlaces.Rounding) high = middle;
            else low = middle + 1;
        }

        return low;
    }
}
