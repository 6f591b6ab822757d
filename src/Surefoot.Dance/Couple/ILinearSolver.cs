namespace Surefoot.Dance.Couple;

/// <summary>Finds the cheapest values. The same program gives the same values, bit for bit, on every run.</summary>
public interface ILinearSolver
{
    LinearSolution Solve(LinearProgram program);

    /// <summary>Begins with a program that will be solved again with more rows.</summary>
    ILinearRun Begin(LinearProgram program) => new Anew(this, program);

    // Solvers that have nothing to go on from solve the whole again.
    private sealed class Anew(ILinearSolver solver, LinearProgram program) : ILinearRun
    {
        public LinearSolution Solve() => solver.Solve(program);

        public void Dispose()
        {
        }
    }
}
