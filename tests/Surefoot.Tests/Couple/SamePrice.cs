using System.Text;
using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Couple;
using Surefoot.Tests.Properties;
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
        pages.Each(
            page =>
            {
                var heard = new Recorded();
                var couple = DanceReader.Read(page, null, heard).Couple!;
                if (heard.Solved.Count == 0) return;
                Interlocked.Increment(ref couple.Impossible.Count == 0 ? ref possible : ref not);
                foreach (var (program, found) in couple.Impossible.Count == 0 ? heard.Solved : heard.Solved.Take(2))
                {
                    var least = other(program);
                    Assert.Equal(found.Solved, least is not null);
                    if (least is { } price) Assert.Equal(1, (1 + found.Objective) / (1 + price), 1e-6);
                }
            },
            iter: count);
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

    /// <summary>
    /// Keeps every program as it stood when it was solved, with the answer: that which asks for all holds, the same
    /// again with more rows where the two are in each other's way, and that which tells how far out of place they are.
    /// </summary>
}
