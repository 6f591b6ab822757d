using Surefoot.Dance.Couple;

namespace Surefoot.Solver;

/// <summary>A program solved several times, quickly where that is proven to be right and by the library where it is not.</summary>
internal sealed class ProvenRun(LinearProgram program, GlopSolver library) : ILinearRun
{
    /// <summary>
    /// From so many rows on, some 350 counts of a couple, the library is quicker: the steps of the inverse, which are never
    /// sorted anew, become too many. Measured (docs/performance.md).
    /// </summary>
    private const int MostRows = 2000;

    private DualSimplex? _simplex;

    public LinearSolution Solve() => Quickly() ?? library.Solve(program);

    public void Dispose()
    {
    }

    private LinearSolution? Quickly()
    {
        if (program.Rows.Count > MostRows) return null;
        if (_simplex is not null && Proven(_simplex) is { } found) return found;
        // The first time, or it cannot go on from where it stood.
        _simplex = new(program);
        if (Proven(_simplex) is { } anew) return anew;
        _simplex = null;
        return null;
    }

    private LinearSolution? Proven(DualSimplex simplex) => simplex.Solve() switch
    {
        DualSimplex.End.Found when simplex.Values() is var values && Proof.IsLeast(program, values, simplex.Weights(), out var cost) => new(true, cost, values),
        DualSimplex.End.Impossible when Proof.IsImpossible(program, simplex.Weights()) => new(false, 0, []),
        _ => null,
    };
}
