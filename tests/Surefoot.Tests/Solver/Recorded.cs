using Surefoot.Dance.Couple;
using Surefoot.Solver;

namespace Surefoot.Tests.Solver;

/// <summary>The solver, with all it was asked and what it answered kept in order.</summary>
internal sealed class Recorded : ILinearSolver
{
    private readonly ProvenSolver _solver = new();

    public List<(LinearProgram Program, LinearSolution Found)> Solved { get; } = [];

    public LinearSolution Solve(LinearProgram program) => Keep(program, _solver.Solve(program));

    public ILinearRun Begin(LinearProgram program) => new Run(this, program, _solver.Begin(program));

    private LinearSolution Keep(LinearProgram program, LinearSolution found)
    {
        Solved.Add((Programs.Copy(program), found));
        return found;
    }

    private sealed class Run(Recorded all, LinearProgram program, ILinearRun run) : ILinearRun
    {
        public LinearSolution Solve() => all.Keep(program, run.Solve());

        public void Dispose() => run.Dispose();
    }
}
