using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Tests.Properties;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Couple;

/// <summary>One way of dancing is the cheapest: the order in which a solver is asked does not matter.</summary>
public class OneAnswer
{
    [Fact]
    public void Asked_backwards_the_solver_has_them_dance_the_same() => RandomPages.CircleDance.Each(page =>
    {
        var (here, there) = (Read(page).Couple!, DanceReader.Read(page, null, new Backwards()).Couple!);
        // Where no lengths will do, slack may lie here or there.
        if (here.Impossible.Count > 0) return;
        Assert.Empty(there.Impossible);
        foreach (var role in (Role[])[Role.Lead, Role.Follow])
        {
            var (a, b) = (here.Motion.Of(role)!.Stances, there.Motion.Of(role)!.Stances);
            for (var i = 0; i < a.Count; i++) Assert.True((a[i].Middle - b[i].Middle).Length < 1e-6, $"{role} {a[i].At}: {a[i].Middle} against {b[i].Middle}");
        }
    }, iter: 150);

    /// <summary>Turns rows and unknowns round before solving, and the answer back.</summary>
    private sealed class Backwards : ILinearSolver
    {
        public LinearSolution Solve(LinearProgram program)
        {
            var turned = new LinearProgram();
            var last = program.Columns - 1;
            for (var i = last; i >= 0; i--) turned.AddColumn(program.Lower[i], program.Upper[i], program.Cost[i]);
            foreach (var row in program.Rows.Reverse()) turned.AddRow(row.Lower, row.Upper, [.. row.Columns.Select(c => last - c)], row.Values);
            var solution = Proven.Solve(turned);
            return solution with { Values = [.. solution.Values.Reverse()] };
        }
    }
}
