using CsCheck;
using Surefoot.Dance.Couple;
using Surefoot.Solver;
using Surefoot.Tests.Properties;

namespace Surefoot.Tests.Solver;

/// <summary>The same program gives the same bits: again, from a new solver, and while another thread solves too.</summary>
public abstract class EveryRun
{
    private readonly Func<ILinearSolver> _another;

    private EveryRun(Func<ILinearSolver> another) => _another = another;

    public class Quickly() : EveryRun(() => new ProvenSolver());

    public class ByTheLibrary() : EveryRun(() => new GlopSolver());

    [Fact]
    public void The_same_program_gives_the_same_bits() => Programs.SmallWithOpenBounds.Each(
        program => Assert.Equal(Bits(_another().Solve(program)), Bits(_another().Solve(program))), iter: 200);

    [Fact]
    public void Two_threads_at_once_do_not_disturb_each_other() => Gen.OneOf(Programs.Couples, Programs.Small).Array[60].Each(
        programs =>
        {
            var solver = _another();
            var wrong = 0;
            var alone = programs.Select(p => Bits(solver.Solve(p))).ToList();
            // One from the front, one from the back, so that different programs meet.
            var forwards = new Thread(() => Compare(programs, alone));
            var backwards = new Thread(() => Compare(programs.Reverse(), Enumerable.Reverse(alone)));
            forwards.Start();
            backwards.Start();
            forwards.Join();
            backwards.Join();
            Assert.Equal(0, wrong);

            void Compare(IEnumerable<LinearProgram> order, IEnumerable<long[]> expected)
            {
                foreach (var (program, bits) in order.Zip(expected))
                {
                    if (!Bits(solver.Solve(program)).SequenceEqual(bits)) Interlocked.Increment(ref wrong);
                }
            }
        },
        iter: 10,
        threads: 1);

    [Fact]
    public void Numbers_far_apart_are_solved_or_refused_alike() => Programs.FarApart.Each(
        program => Assert.Equal(BitsOrRefusal(program), BitsOrRefusal(program)), iter: 500);

    private long[] BitsOrRefusal(LinearProgram program)
    {
        try
        {
            return Bits(_another().Solve(program));
        }
        catch (ArithmeticException)
        {
            return [];
        }
    }

    private static long[] Bits(LinearSolution solution) =>
        [solution.Solved ? 1 : 0, BitConverter.DoubleToInt64Bits(solution.Objective), .. solution.Values.Select(BitConverter.DoubleToInt64Bits)];
}
