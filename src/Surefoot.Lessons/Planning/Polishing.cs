namespace Surefoot.Lessons.Planning;

/// <summary>
/// Makes a good plan better: a few dances that follow each other are planned anew together while the others stay,
/// then the next few, until nothing gets better. The whole at once takes the solver far longer.
/// </summary>
internal sealed class Polishing(IWholeSolver solver)
{
    /// <summary>Dances that are planned anew together, rounds at most, and the work of one try. Working values.</summary>
    private const int Together = 4, Rounds = 3;

    private const double TryWork = 0.04;

    /// <param name="work">Work for all of it.</param>
    public WholeSolution Polish(ClassProgram asked, WholeSolution solution, double work)
    {
        if (solution.Outcome != Outcome.Good) return solution;
        var left = (int)(work / TryWork);
        for (var round = 0; round < Rounds; round++)
        {
            var better = false;
            var dances = asked.InOrder(solution);
            for (var first = 0; first == 0 || first + Together <= dances.Count; first++)
            {
                if (left-- <= 0) return solution;
                var others = dances.Where((_, d) => d < first || d >= first + Together).SelectMany(columns => columns);
                var tried = solver.Solve(asked.Program.Holding(others, solution.Values), TryWork);
                if (!tried.Found || asked.Program.CostOf(tried.Values) >= asked.Program.CostOf(solution.Values)) continue;
                solution = new(dances.Count <= Together ? tried.Outcome : Outcome.Good, tried.Values);
                better = true;
            }

            if (!better) break;
        }

        return solution;
    }
}
