using Surefoot.Dance;
using Surefoot.Dance.Couple;

namespace Surefoot.Tests.Couple;

public class GivingUp
{
    // He walks off while she rocks on the spot, so that usual steps will not do and the solver is asked.
    private const string Page = """
        Left Behind
        Kind: partner, circle
        Hold: sweetheart
        Feet: same, left free
        Phrase: any

        1-4  Lead: walk forward L R L R. Follow: rock forward L, recover R, rock back L, recover R
        """;

    [Fact]
    public void A_solver_that_runs_out_of_time_leaves_the_page_read_and_the_couple_unplaced()
    {
        var solver = new Tired();
        var reading = DanceReader.Read(Page, solver: solver);
        Assert.True(solver.Asked);
        Assert.Null(reading.Couple);
        Assert.NotEmpty(reading.Score.Roles[0].Steps);
        Assert.Equal(2, reading.Motion.Roles.Count);
    }

    private sealed class Tired : ILinearSolver
    {
        public bool Asked { get; private set; }

        public LinearSolution Solve(LinearProgram program)
        {
            Asked = true;
            throw new TimeoutException();
        }
    }
}
