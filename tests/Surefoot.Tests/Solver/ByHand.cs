using Surefoot.Dance.Couple;
using Surefoot.Solver;

namespace Surefoot.Tests.Solver;

/// <summary>Programs small enough to be worked out on paper.</summary>
public abstract class ByHand
{
    private const double NoBound = double.PositiveInfinity;

    private readonly ILinearSolver _solver;

    private ByHand(ILinearSolver solver) => _solver = solver;

    public class Quickly() : ByHand(new ProvenSolver());

    public class ByTheLibrary() : ByHand(new GlopSolver());

    [Fact]
    public void The_cheapest_corner_is_found()
    {
        // Most of 3x + 5y with x ≤ 4, 2y ≤ 12, 3x + 2y ≤ 18 lies at (2, 6).
        var program = new LinearProgram();
        program.AddColumn(0, 4, -3);
        program.AddColumn(0, NoBound, -5);
        program.AddRow(-NoBound, 12, [1], [2]);
        program.AddRow(-NoBound, 18, [0, 1], [3, 2]);
        Is(program, -36, 2, 6);
    }

    [Fact]
    public void A_step_too_long_is_shortened_as_little_as_may_be()
    {
        // Two steps of 0.6 m end no further than 1 m away; shortening the second costs half as much.
        var program = new LinearProgram();
        for (var i = 0; i < 2; i++) program.AddColumn(-NoBound, NoBound, 0);
        program.AddColumn(0, NoBound, 1);
        program.AddColumn(0, NoBound, 0.5);
        program.AddRow(0.6, 0.6, [0, 2], [1, 1]);
        program.AddRow(0.6, 0.6, [1, 0, 3], [1, -1, 1]);
        program.AddRow(-1, 1, [1], [1]);
        Is(program, 0.1, 0.6, 1, 0, 0.2);
    }

    [Fact]
    public void Unknowns_without_rows_go_to_their_cheaper_bound()
    {
        var program = new LinearProgram();
        program.AddColumn(-3, 1, 1);
        program.AddColumn(-3, 1, -1);
        program.AddColumn(-NoBound, NoBound, 0);
        Is(program, -4, -3, 1, 0);
    }

    [Fact]
    public void A_fixed_unknown_stays() => Is(One(2.5, 2.5, 2), 5, 2.5);

    [Fact]
    public void Nothing_asked_is_nothing_to_solve()
    {
        var program = new LinearProgram();
        Is(program, 0);
        program.AddRow(-1, 1, [], []);
        Is(program, 0);
    }

    [Theory]
    [MemberData(nameof(Programs.Impossible), MemberType = typeof(Programs))]
    public void What_has_no_answer_is_said_to_have_none(string name)
    {
        var solution = _solver.Solve(Programs.Named(name));
        Assert.False(solution.Solved);
        Assert.Empty(solution.Values);
    }

    [Fact]
    public void What_is_no_program_is_refused()
    {
        Refused(p => p.AddRow(0, 1, [0, 0], [1, 1]));
        Refused(p => p.AddRow(0, 1, [7], [1]));
        Refused(p => p.AddRow(0, 1, [-1], [1]));
        Refused(p => p.AddRow(double.NaN, 1, [0], [1]));
        Refused(p => p.AddRow(0, 1, [0], [double.NaN]));
        Refused(p => p.AddColumn(0, double.NaN, 1));
        Refused(p => p.AddColumn(0, 1, NoBound));
    }

    [Fact]
    public void What_takes_too_long_is_given_up_rather_than_called_impossible() =>
        Assert.Throws<TimeoutException>(() => new GlopSolver(workLimit: 1e-6).Solve(Programs.Long));

    private void Refused(Action<LinearProgram> spoil)
    {
        var program = One(0, 1, 1);
        spoil(program);
        Assert.Throws<ArgumentException>(() => _solver.Solve(program));
    }

    private static LinearProgram One(double lower, double upper, double cost)
    {
        var program = new LinearProgram();
        program.AddColumn(lower, upper, cost);
        return program;
    }

    private void Is(LinearProgram program, double objective, params double[] values)
    {
        var solution = _solver.Solve(program);
        Assert.True(solution.Solved);
        Assert.Equal(objective, solution.Objective, 1e-9);
        Assert.Equal(values.Length, solution.Values.Length);
        for (var i = 0; i < values.Length; i++) Assert.Equal(values[i], solution.Values[i], 1e-9);
    }
}
