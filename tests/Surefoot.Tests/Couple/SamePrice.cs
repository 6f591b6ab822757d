using System.Text;
using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Couple;
using Surefoot.Tests.Solver;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>The programs that couples really make, solved by others: a textbook's simplex and another engine.</summary>
public class SamePrice
{
    private static readonly string[] Ways = ["forward", "forward", "back", "back", "side", "in place", "diagonal forward", "across"];

    /// <summary>Both dancers a step a count, each in a direction of their own.</summary>
    private static Gen<string> Small(int most) =>
        from ways in Gen.Select(Gen.Int[0, Ways.Length - 1], Gen.Int[0, Ways.Length - 1]).Array[2, most]
        from hold in Gen.Bool
        select Written(ways, hold ? "sweetheart" : "two hands");

    [Fact]
    public void Another_engine_finds_the_same_price() => Compare(Small(6), AnotherEngine.Least, 150, both: true);

    /// <remarks>Only two or three counts: a dense table with a line for every bound grows with the square of the steps.</remarks>
    [Fact]
    public void The_textbook_finds_the_same_price() => Compare(Small(3), TextbookSimplex.Least, 50, both: false);

    private static void Compare(Gen<string> pages, Func<LinearProgram, double?> other, int count, bool both)
    {
        var (possible, not) = (0, 0);
        pages.Sample(
            page =>
            {
                var heard = new Heard();
                var couple = DanceReader.Read(page, null, heard).Couple!;
                if (heard.First is not var (program, price)) return;
                Interlocked.Increment(ref couple.Impossible.Count == 0 ? ref possible : ref not);
                var least = other(program);
                Assert.NotNull(least);
                Assert.Equal(1, (1 + price) / (1 + least.Value), 1e-6);
            },
            iter: count,
            seed: "0000KDQTtjQ2");
        // So few counts are nearly always possible; among the longer pages there are some that are not.
        Assert.True(possible > count / 20 && (not > 0 || !both), $"{possible} possible, {not} not");
    }

    private static string Written((int Lead, int Follow)[] ways, string hold)
    {
        var lines = new StringBuilder();
        for (var i = 0; i < ways.Length; i++)
        {
            var (foot, other) = i % 2 == 0 ? ("L", "R") : ("R", "L");
            lines.Append($"{i + 1}  Lead: step {Ways[ways[i].Lead]} {foot}. Follow: step {Ways[ways[i].Follow]} {(hold == "two hands" ? other : foot)}\n");
        }

        return Page(hold, hold == "two hands" ? "opposite, lead left free" : "same, left free", lines.ToString());
    }

    /// <summary>Keeps the first program with what it costs: that of all moments together.</summary>
    private sealed class Heard : ILinearSolver
    {
        public (LinearProgram Program, double Price)? First { get; private set; }

        public LinearSolution Solve(LinearProgram program)
        {
            var solution = Glop.Solve(program);
            First ??= (program, solution.Objective);
            return solution;
        }
    }
}
