using BenchmarkDotNet.Attributes;
using Surefoot.Dance.Couple;
using Surefoot.Solver;

namespace Surefoot.Bench;

/// <summary>
/// A program shaped like that of a couple: places one step apart, each step as near its usual length as may
/// be, places of nearby counts within reach of each other. Three unknowns and three rows a step.
/// </summary>
[MemoryDiagnoser]
public class SolverBench
{
    private readonly ProvenSolver _solver = new();
    private readonly GlopSolver _library = new();
    private LinearProgram _program = new();

    [Params(100, 300)]
    public int Unknowns { get; set; }

    [GlobalSetup]
    public void Setup() => _program = Steps(Unknowns / 3);

    [Benchmark]
    public LinearSolution Solve() => _solver.Solve(_program);

    [Benchmark]
    public LinearSolution ByTheLibrary() => _library.Solve(_program);

    private static LinearProgram Steps(int steps)
    {
        var program = new LinearProgram();
        for (var step = 0; step < steps; step++)
        {
            program.AddColumn(-10, 10, 0);
            // Later deviations cost a little more, so that one answer is the cheapest.
            program.AddColumn(0, double.PositiveInfinity, 1);
            program.AddColumn(0, double.PositiveInfinity, 1 + 0.01 * step / steps);
        }

        for (var step = 0; step < steps; step++)
        {
            // A usual length between 0.3 and 0.7 m, either way, in an order without a pattern.
            var usual = (0.3 + 0.4 * (step * 37 % 101) / 101.0) * (step * 53 % 97 < 48 ? -1 : 1);
            if (step == 0) program.AddRow(0, 0, [0], [1]);
            else program.AddRow(usual, usual, [3 * step, 3 * (step - 1), 3 * step + 1, 3 * step + 2], [1, -1, -1, 1]);
            Reach(program, step, step - 5, 0.8);
            Reach(program, step, step - 12, 1.2);
        }

        return program;
    }

    private static void Reach(LinearProgram program, int step, int other, double metres)
    {
        if (other < 0) program.AddRow(-metres, metres, [3 * step], [1]);
        else program.AddRow(-metres, metres, [3 * step, 3 * other], [1, -1]);
    }
}
