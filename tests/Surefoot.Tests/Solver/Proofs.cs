using CsCheck;
using Surefoot.Dance.Couple;
using Surefoot.Solver;
using Surefoot.Tests.Properties;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Solver;

/// <summary>What the quick way finds has to be proven, and what is not so is not proven.</summary>
public class Proofs
{
    /// <summary>Else everything would come from the library, and nobody would notice but by waiting.</summary>
    [Fact]
    public void Every_program_of_the_demo_notebook_is_answered_with_a_proof()
    {
        var heard = new Recorded();
        foreach (var dance in DemoNotebook.Dances) DemoNotebook.Read(dance, heard);
        foreach (var mistake in DemoNotebook.Mistakes) DemoNotebook.ReadMistake(mistake, heard);
        Assert.True(heard.Solved.Count > 50);
        Assert.All(heard.Solved, s => Assert.True(IsProven(s.Program)));
    }

    [Fact]
    public void Nearly_every_program_like_a_couples_is_answered_with_a_proof()
    {
        var (all, proven) = (0, 0);
        Programs.Couples.Each(
            program =>
            {
                Interlocked.Increment(ref all);
                if (IsProven(program)) Interlocked.Increment(ref proven);
            },
            iter: 200);
        Assert.True(proven > 0.95 * all, $"{proven} of {all}");
    }

    [Fact]
    public void A_dearer_answer_is_not_proven() => Programs.Couples.Each(
        program =>
        {
            var simplex = new DualSimplex(program);
            if (simplex.Solve() != DualSimplex.End.Found) return;
            var (values, weights) = (simplex.Values(), simplex.Weights());
            Assert.True(Proof.IsLeast(program, values, weights, out _));
            // Longer and shorter at once leaves every place where it was, and costs.
            values[1] += 1e-6;
            values[2] += 1e-6;
            values[4] += 1e-6;
            values[5] += 1e-6;
            Assert.False(Proof.IsLeast(program, values, weights, out _));
        },
        iter: 100);

    [Fact]
    public void An_answer_that_breaks_a_row_or_a_bound_is_not_proven()
    {
        var program = new LinearProgram();
        program.AddColumn(0, 1, 1);
        program.AddColumn(0, 1, 1);
        program.AddRow(1.5, 2, [0, 1], [1, 1]);
        Assert.True(Proof.IsLeast(program, [1, 0.5], [1], out var cost));
        Assert.Equal(1.5, cost, 1e-12);
        Assert.False(Proof.IsLeast(program, [1, 0.499], [1], out _));
        Assert.False(Proof.IsLeast(program, [1.001, 0.499], [1], out _));
        Assert.False(Proof.IsLeast(program, [1, double.NaN], [1], out _));
        // The right answer with weights that show nothing.
        Assert.False(Proof.IsLeast(program, [1, 0.5], [0], out _));
    }

    [Fact]
    public void What_can_be_done_is_never_proven_impossible() => Gen.Select(Programs.SmallWithOpenBounds, Gen.Double[-3, 3].Array[8]).Each(
        (program, weights) =>
        {
            if (new GlopSolver().Solve(program) is not { Solved: true }) return;
            Assert.False(Proof.IsImpossible(program, weights[..program.Rows.Count]));
        },
        iter: 500);

    [Fact]
    public void Two_rows_that_contradict_each_other_are_proven_to()
    {
        var program = Programs.Named("two rows apart");
        Assert.True(Proof.IsImpossible(program, [1, -1]));
        Assert.False(Proof.IsImpossible(program, [1, 1]));
    }

    private static bool IsProven(LinearProgram program)
    {
        var simplex = new DualSimplex(program);
        return simplex.Solve() switch
        {
            DualSimplex.End.Found => Proof.IsLeast(program, simplex.Values(), simplex.Weights(), out _),
            DualSimplex.End.Impossible => Proof.IsImpossible(program, simplex.Weights()),
            _ => false,
        };
    }
}
