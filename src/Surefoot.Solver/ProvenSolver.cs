using Surefoot.Dance.Couple;

namespace Surefoot.Solver;

/// <summary>
/// Solves quickly what needs little, as the programs of most couples do, by <see cref="DualSimplex"/>. Only answers
/// that are proven are given; all others come from the library (<see cref="GlopSolver"/>), which takes some times as
/// long for programs of this size: most of its time goes into getting ready. One solver serves any number of threads.
/// </summary>
public sealed class ProvenSolver : ILinearSolver
{
    private readonly GlopSolver _library = new();

    /// <exception cref="ArgumentException">The program is not one: a column named twice in a row, no number.</exception>
    /// <exception cref="TimeoutException">Given up; whether the program has a solution is not known.</exception>
    /// <exception cref="ArithmeticException">No way kept enough digits.</exception>
    public LinearSolution Solve(LinearProgram program)
    {
        ArgumentNullException.ThrowIfNull(program);
        using var run = new ProvenRun(program, _library);
        return run.Solve();
    }

    /// <inheritdoc/>
    public ILinearRun Begin(LinearProgram program)
    {
        ArgumentNullException.ThrowIfNull(program);
        return new ProvenRun(program, _library);
    }
}
