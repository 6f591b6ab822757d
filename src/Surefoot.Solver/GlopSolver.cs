using Google.OrTools.ModelBuilder;
using Google.OrTools.Sat;
using Surefoot.Dance.Couple;

namespace Surefoot.Solver;

/// <summary>
/// Linear programs by the simplex method of GLOP, on one thread: any program, and the answer where
/// <see cref="ProvenSolver"/> has none of its own. One solver serves any number of threads at
/// once: everything native is made for one call and freed at its end. The native library is loaded by the
/// first call of <see cref="Solve"/>, not before, so that a dance which needs no solving does not wait for it.
/// </summary>
/// <param name="workLimit">
/// Work after which a solve is given up, in the library's own count of operations: roughly a second each.
/// Counted work is the same on every machine, which a clock is not. 1000 steps (3000 unknowns) take less than
/// 0.03; the usual 10 leaves room for programs a hundred times as heavy.
/// </param>
internal sealed class GlopSolver(double workLimit = 10) : ILinearSolver
{
    /// <summary>
    /// Seconds after which a solve is given up even if the count of its work says otherwise. Only there so
    /// that a fault in the library cannot hang the program; far above the usual limit of work, so that slow
    /// machines get the same answers.
    /// </summary>
    private const double ClockLimit = 60;

    /// <summary>
    /// How far rows and bounds may be overstepped, in the program's own unit. Places are in metres, so this is
    /// a nanometre: far below anything a check compares, far above what rounding does to them.
    /// </summary>
    private const string Tolerances =
        "primal_feasibility_tolerance: 1e-9 dual_feasibility_tolerance: 1e-9 solution_feasibility_tolerance: 1e-9";

    /// <summary>The library's own way, for programs where the fast one lost too many digits.</summary>
    private readonly string _careful = $"{Tolerances} num_omp_threads: 1 max_deterministic_time: {workLimit}";

    /// <summary>
    /// Deviations cost at least nothing, so leaving every unknown at its bound is a start the dual simplex
    /// likes: five times faster than the library's own way on 300 unknowns. Simplifying first costs more than
    /// it saves at this size, and scaling has nothing to do: all is in metres already.
    /// </summary>
    private string Fast => $"use_dual_simplex: true use_preprocessing: false use_scaling: false {_careful}";

    /// <summary>
    /// Until its log is set up the library prints every remark to standard error; afterwards it keeps remarks
    /// and warnings to itself. It ends the program when this is done twice, and its CP-SAT, which plans terms in the
    /// same process, does it by itself: so CP-SAT is given nothing to solve, whether it was used before or not.
    /// </summary>
    private static readonly Lazy<bool> Quiet = new(() =>
    {
        new CpSolver().Solve(new CpModel());
        return true;
    });

    /// <exception cref="ArgumentException">The program is not one: a column named twice in a row, no number.</exception>
    /// <exception cref="TimeoutException">Given up; whether the program has a solution is not known.</exception>
    /// <exception cref="ArithmeticException">Neither way kept enough digits.</exception>
    public LinearSolution Solve(LinearProgram program)
    {
        ArgumentNullException.ThrowIfNull(program);
        _ = Quiet.Value;
        using var model = new ModelBuilderHelper();
        Fill(model, program);
        return Solve(model, program.Columns, Fast)
            ?? Solve(model, program.Columns, _careful)
            ?? throw new ArithmeticException("The numbers of this linear program are too far apart to be solved reliably.");
    }

    /// <remarks>
    /// The library's own modelling classes build expression trees, which takes longer than solving. This is
    /// what they call underneath: rows and columns by number.
    /// </remarks>
    private static void Fill(ModelBuilderHelper model, LinearProgram program)
    {
        for (var column = 0; column < program.Columns; column++)
        {
            model.AddVar();
            model.SetVarLowerBound(column, Bound(program.Lower[column]));
            model.SetVarUpperBound(column, Bound(program.Upper[column]));
            model.SetVarObjectiveCoefficient(column, program.Cost[column]);
        }

        for (var r = 0; r < program.Rows.Count; r++)
        {
            var row = program.Rows[r];
            model.AddLinearConstraint();
            model.SetConstraintLowerBound(r, Bound(row.Lower));
            model.SetConstraintUpperBound(r, Bound(row.Upper));
            for (var i = 0; i < row.Columns.Length; i++) model.AddConstraintTerm(r, row.Columns[i], row.Values[i]);
        }
    }

    /// <summary>The library takes a bound that is no number for one that cannot be met, which hides the fault.</summary>
    private static double Bound(double value) =>
        double.IsNaN(value) ? throw new ArgumentException("A bound of the linear program is not a number.") : value;

    /// <returns>Nothing when too many digits were lost to tell.</returns>
    private static LinearSolution? Solve(ModelBuilderHelper model, int columns, string parameters)
    {
        using var solver = new ModelSolverHelper("GLOP");
        solver.EnableOutput(false);
        solver.SetTimeLimitInSeconds(ClockLimit);
        solver.SetSolverSpecificParameters(parameters);
        solver.Solve(model);
        switch (solver.Status())
        {
            case SolveStatus.OPTIMAL:
                var values = new double[columns];
                for (var column = 0; column < columns; column++) values[column] = solver.VariableValue(column);
                return new(true, solver.ObjectiveValue(), values);
            case SolveStatus.INFEASIBLE or SolveStatus.UNBOUNDED:
                return new(false, 0, []);
            case SolveStatus.ABNORMAL:
                return null;
            case SolveStatus.FEASIBLE or SolveStatus.NOT_SOLVED:
                throw new TimeoutException("The linear program took too long to solve.");
            default:
                throw new ArgumentException($"The linear program cannot be read: {solver.StatusString()}");
        }
    }
}
