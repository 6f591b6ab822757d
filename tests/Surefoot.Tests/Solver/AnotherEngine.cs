using Google.OrTools.LinearSolver;
using Surefoot.Dance.Couple;
using Other = Google.OrTools.LinearSolver.Solver;

namespace Surefoot.Tests.Solver;

/// <summary>CLP, another project's simplex method, asked through another interface.</summary>
internal static class AnotherEngine
{
    /// <returns>The least cost, or null when no values satisfy the rows or the cost has no least.</returns>
    public static double? Least(LinearProgram program)
    {
        using var solver = Other.CreateSolver("CLP");
        solver.SetTimeLimit(10_000);
        using var objective = solver.Objective();
        var unknowns = new List<Variable>();
        for (var i = 0; i < program.Columns; i++)
        {
            unknowns.Add(solver.MakeNumVar(program.Lower[i], program.Upper[i], ""));
            objective.SetCoefficient(unknowns[i], program.Cost[i]);
        }

        foreach (var row in program.Rows)
        {
            using var constraint = solver.MakeConstraint(row.Lower, row.Upper, "");
            for (var i = 0; i < row.Columns.Length; i++) constraint.SetCoefficient(unknowns[row.Columns[i]], row.Values[i]);
        }

        // It gives up on a program without rows; one that asks for nothing helps.
        if (program.Rows.Count == 0) solver.MakeConstraint(-1, 1, "");
        // Its usual tolerance of 1e-7 is as wide as the difference that is looked for.
        using var narrow = new MPSolverParameters();
        narrow.SetDoubleParam(MPSolverParameters.DoubleParam.PRIMAL_TOLERANCE, 1e-9);
        narrow.SetDoubleParam(MPSolverParameters.DoubleParam.DUAL_TOLERANCE, 1e-9);
        var status = solver.Solve(narrow);
        Assert.True(status is Other.ResultStatus.OPTIMAL or Other.ResultStatus.INFEASIBLE or Other.ResultStatus.UNBOUNDED, $"{status}");
        return status == Other.ResultStatus.OPTIMAL ? objective.Value() : null;
    }
}
