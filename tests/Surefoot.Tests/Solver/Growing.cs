using CsCheck;
using Surefoot.Dance.Couple;
using Surefoot.Solver;
using Surefoot.Tests.Properties;

namespace Surefoot.Tests.Solver;

/// <summary>A program that grows while it is solved has, each time, the least cost of the program as it then stands.</summary>
public class Growing
{
    private static readonly ProvenSolver Quick = new();
    private static readonly GlopSolver Library = new();

    [Fact]
    public void With_every_row_added_the_least_is_that_of_the_whole() => Programs.Small.Each(
        program => Grow(program, rows: 1), iter: 400);

    [Fact]
    public void Likewise_for_a_couples_programs_and_many_rows_at_once() => Programs.Couples.Each(
        program => Grow(program, rows: 40), iter: 30);

    [Fact]
    public void Without_bounds_too() => Programs.SmallWithOpenBounds.Each(program => Grow(program, rows: 2), iter: 200);

    [Fact]
    public void Rows_let_go_ask_nothing() => Programs.Small.Each(
        program =>
        {
            var grown = Programs.Copy(program);
            using var run = Quick.Begin(grown);
            run.Solve();
            for (var r = 0; r < grown.Rows.Count; r += 2) grown.LetGo(r);
            Same(run.Solve(), Library.Solve(Programs.Copy(grown)), grown);
            grown.AddRow(0, 0.5, [0], [1]);
            Same(run.Solve(), Library.Solve(Programs.Copy(grown)), grown);
        },
        iter: 300);

    [Fact]
    public void New_unknowns_are_taken_in() => Programs.Small.Each(
        program =>
        {
            var grown = Programs.Copy(program);
            using var run = Quick.Begin(grown);
            run.Solve();
            var column = grown.AddColumn(-1, 2, -1);
            grown.AddRow(-3, 1, [0, column], [1, 1]);
            Same(run.Solve(), Library.Solve(Programs.Copy(grown)), grown);
        },
        iter: 200);

    [Fact]
    public void The_same_growth_gives_the_same_bits() => Programs.Couples.Each(
        program => Assert.Equal(Grow(program, rows: 25), Grow(program, rows: 25)), iter: 20);

    // Solves after every so many rows; what each solution was, bit for bit.
    private static List<long> Grow(LinearProgram whole, int rows)
    {
        var grown = new LinearProgram();
        for (var i = 0; i < whole.Columns; i++) grown.AddColumn(whole.Lower[i], whole.Upper[i], whole.Cost[i]);
        using var run = Quick.Begin(grown);
        var bits = new List<long>();
        foreach (var some in whole.Rows.Chunk(rows))
        {
            foreach (var row in some) grown.AddRow(row.Lower, row.Upper, row.Columns, row.Values);
            var found = run.Solve();
            Same(found, Library.Solve(Programs.Copy(grown)), grown);
            bits.AddRange(found.Values.Select(BitConverter.DoubleToInt64Bits));
        }

        return bits;
    }

    private static void Same(LinearSolution found, LinearSolution whole, LinearProgram program)
    {
        Assert.True(found.Solved == whole.Solved, Programs.Written(program));
        if (found.Solved) Assert.True(Math.Abs(found.Objective - whole.Objective) < 1e-6 * (1 + Math.Abs(whole.Objective)), Programs.Written(program));
    }
}
