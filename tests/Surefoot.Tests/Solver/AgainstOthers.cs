using CsCheck;
using Surefoot.Dance.Couple;
using Surefoot.Solver;
using Surefoot.Tests.Properties;

namespace Surefoot.Tests.Solver;

/// <summary>Two others solve the same programs: one from a textbook, one with another method and interface.</summary>
public abstract class AgainstOthers
{
    private readonly ILinearSolver _solver;

    private AgainstOthers(ILinearSolver solver) => _solver = solver;

    public class Quickly() : AgainstOthers(new ProvenSolver());

    public class ByTheLibrary() : AgainstOthers(new GlopSolver());

    [Fact]
    public void Small_programs_come_out_as_in_the_textbook() => Same(Programs.Small, TextbookSimplex.Least, 500);

    [Fact]
    public void Open_bounds_come_out_as_in_the_textbook() => Same(Programs.SmallWithOpenBounds, TextbookSimplex.Least, 500);

    /// <remarks>With bounds on every unknown: without, the other engine sometimes calls a cost without a least solved.</remarks>
    [Fact]
    public void Small_programs_come_out_as_from_another_engine() => Same(Programs.Small, AnotherEngine.Least, 500);

    [Fact]
    public void Programs_as_large_as_a_couple_come_out_as_from_another_engine() => Same(Programs.Couples, AnotherEngine.Least, 100);

    private void Same(Gen<LinearProgram> programs, Func<LinearProgram, double?> other, int count)
    {
        var (solved, impossible) = (0, 0);
        programs.Each(
            program =>
            {
                var solution = _solver.Solve(program);
                var least = other(program);
                Assert.Equal(least is not null, solution.Solved);
                Interlocked.Increment(ref least is null ? ref impossible : ref solved);
                if (least is null) return;
                Assert.Equal(least.Value, solution.Objective, 1e-7);
                Holds(program, solution);
            },
            iter: count,
            print: Programs.Written);
        // Chance must have made enough of both, or nothing was compared.
        Assert.True(solved > count / 10 && impossible > count / 10, $"{solved} solved, {impossible} impossible");
    }

    /// <summary>The values do what the program asks and cost what the solution says.</summary>
    private static void Holds(LinearProgram program, LinearSolution solution)
    {
        const double Slack = 1e-8;
        for (var i = 0; i < program.Columns; i++) Assert.InRange(solution.Values[i], program.Lower[i] - Slack, program.Upper[i] + Slack);
        Assert.All(program.Rows, row => Assert.InRange(
            row.Columns.Select((c, i) => row.Values[i] * solution.Values[c]).Sum(), row.Lower - Slack, row.Upper + Slack));
        Assert.Equal(solution.Objective, program.Cost.Select((c, i) => c * solution.Values[i]).Sum(), Slack);
    }
}
