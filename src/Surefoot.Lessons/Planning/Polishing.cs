namespace Surefoot.Lessons.Planning;

/// <summary>
/// Makes a good plan better: one dance is planned anew while the others stay, then the next, then two and four that
/// follow each other together, until nothing gets better. The whole at once takes the solver far longer.
/// </summary>
internal sealed class Polishing(IWholeSolver solver)
{
    /// <summary>Rounds at most, how many dances are planned anew together in each, and the work of one try. Working values.</summary>
    private const int Rounds = 3;

    private static readonly int[] Sizes = [1, 2, 4];

    private const double TryWork = 0.03;

    /// <param name="work">Work for all of it.</param>
    public WholeSolution Polish(ClassProgram asked, WholeSolution solution, double work)
    {
        if (solution.Outcome != Outcome.Good) return solution;
        var left = (int)(work / TryWork);
        for (var round = 0; round < Rounds; round++)
        {
            var better = false;
            foreach (var together in Sizes)
            {
                var dances = asked.InOrder(solution);
                for (var first = 0; first == 0 || first + together <= dances.Count; first++)
                {
                    if (left-- <= 0) return solution;
                    var others = dances.Where((_, d) => d < first || d >= first + together).SelectMany(columns => columns);
                    var tried = solver.Solve(asked.Program.Holding(others, solution.Values), TryWork);
                    if (!tried.Found || asked.Program.CostOf(tried.Values) >= asked.Program.CostOf(solution.Values)) continue;
                    solution = new(dances.Count <= together ? tried.Outcome : Outcome.Good, tried.Values);
                    better = true;
                }
            }

            if (!better) break;
        }

        return solution;
    }
}
