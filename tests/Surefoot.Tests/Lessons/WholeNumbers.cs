using CsCheck;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Solver;

namespace Surefoot.Tests.Lessons;

/// <summary>The solver against trying everything, on programs small enough for that.</summary>
public class WholeNumbers
{
    private static readonly Gen<(int[] Costs, (int Lower, int[] Times)[] Rows)> Small =
        Gen.Select(Gen.Int[-5, 5].Array[4], Gen.Select(Gen.Int[-3, 4], Gen.Int[-3, 3].Array[4]).Array[1, 5]);

    [Fact]
    public void Small_programs_cost_what_trying_everything_costs() => Small.Sample(all =>
    {
        var program = new WholeProgram();
        for (var c = 0; c < 4; c++) program.AddCost(program.AddColumn(0, 2), all.Costs[c]);
        foreach (var (lower, times) in all.Rows) program.AddRow(lower, lower + 3, times.Select((t, c) => (c, t)));
        long? best = null;
        for (var n = 0; n < 81; n++)
        {
            int[] values = [n % 3, n / 3 % 3, n / 9 % 3, n / 27];
            if (all.Rows.All(r => r.Times.Select((t, c) => t * values[c]).Sum() is var sum && sum >= r.Lower && sum <= r.Lower + 3)) best = Math.Min(best ?? long.MaxValue, all.Costs.Select((c, i) => (long)c * values[i]).Sum());
        }

        var solution = new CpSatSolver().Solve(program, 1);
        Assert.Equal(best is null ? Outcome.Impossible : Outcome.Best, solution.Outcome);
        if (best is { } cost) Assert.Equal(cost, program.CostOf(solution.Values));
    }, iter: 150, threads: 1);

    [Fact]
    public void A_row_without_columns_that_cannot_hold_makes_the_program_impossible()
    {
        var program = new WholeProgram();
        program.AddColumn(0, 1);
        program.AddRow(1, 1, []);
        Assert.Equal(Outcome.Impossible, new CpSatSolver().Solve(program, 1).Outcome);
    }
}
