using Google.OrTools.Sat;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Solver;

/// <summary>
/// Whole-number programs by CP-SAT, on one thread with a fixed seed and a limit of counted work, so that the same
/// program gets the same answer on every run and every machine.
/// </summary>
public sealed class CpSatSolver : IWholeSolver
{
    /// <summary>Seconds after which a search ends even if the count of its work says otherwise. Only there so that a fault in the library cannot hang the program.</summary>
    private const double ClockLimit = 120;

    /// <inheritdoc/>
    /// <exception cref="ArgumentException">The program is not one: numbers too large to be added up.</exception>
    public WholeSolution Solve(WholeProgram program, double work)
    {
        ArgumentNullException.ThrowIfNull(program);
        var model = new CpModel();
        Fill(model.Model, program);
        var solver = new CpSolver
        {
            StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"num_workers:1 random_seed:1 max_deterministic_time:{work} max_time_in_seconds:{ClockLimit} cp_model_probing_level:0 symmetry_level:0 log_search_progress:false"),
        };
        var status = solver.Solve(model);
        return status switch
        {
            CpSolverStatus.Optimal => new(Outcome.Best, Values(solver, program.Columns)),
            CpSolverStatus.Feasible => new(Outcome.Good, Values(solver, program.Columns)),
            CpSolverStatus.Infeasible => new(Outcome.Impossible, []),
            CpSolverStatus.Unknown => new(Outcome.Unknown, []),
            _ => throw new ArgumentException("The program cannot be solved: its numbers are too large."),
        };
    }

    private static Dance.Basics.ValueList<int> Values(CpSolver solver, int columns)
    {
        var values = new int[columns];
        var solution = solver.Response!.Solution;
        for (var column = 0; column < columns; column++) values[column] = (int)solution[column];
        return new(values);
    }

    // The library's own modelling classes build expression trees; this is what they come to underneath.
    private static void Fill(CpModelProto model, WholeProgram program)
    {
        var costs = new CpObjectiveProto();
        for (var column = 0; column < program.Columns; column++)
        {
            model.Variables.Add(new IntegerVariableProto { Domain = { program.Lower[column], program.Upper[column] } });
            if (program.Cost[column] == 0) continue;
            costs.Vars.Add(column);
            costs.Coeffs.Add(program.Cost[column]);
        }

        if (costs.Vars.Count > 0) model.Objective = costs;
        foreach (var row in program.Rows)
        {
            var linear = new LinearConstraintProto { Domain = { Bound(row.Lower), Bound(row.Upper) } };
            foreach (var (column, times) in row.Terms)
            {
                linear.Vars.Add(column);
                linear.Coeffs.Add(times);
            }

            model.Constraints.Add(new ConstraintProto { Linear = linear });
        }

        if (program.Hints.Count == 0) return;
        model.SolutionHint = new PartialVariableAssignment();
        foreach (var (column, value) in program.Hints.OrderBy(h => h.Key))
        {
            model.SolutionHint.Vars.Add(column);
            model.SolutionHint.Values.Add(value);
        }
    }

    private static long Bound(int bound) => bound switch
    {
        WholeRow.Open => long.MaxValue,
        -WholeRow.Open => long.MinValue,
        _ => bound,
    };
}
