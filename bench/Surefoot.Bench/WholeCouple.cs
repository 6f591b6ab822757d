using BenchmarkDotNet.Attributes;
using Surefoot.Dance;
using Surefoot.Solver;

namespace Surefoot.Bench;

/// <summary>From text to problems with the couple solved: one 64-count page for two roles, warm.</summary>
[MemoryDiagnoser]
public class WholeCouple
{
    // He walks off while she rocks on the spot: no step lengths will do, and the shortest proof has to be found.
    private const string Impossible = """
        Left Behind
        Kind: partner, circle
        Hold: sweetheart
        Facing: line of dance
        Feet: same, left free
        Phrase: any

        1-4  Lead: walk forward L R L R. Follow: rock forward L, recover R, rock back L, recover R
        5-8  Lead: rock forward L, recover R, rock back L, recover R. Follow: walk forward L R L R
        """;

    private readonly ProvenSolver _solver = new();
    private string _page = "";

    [GlobalSetup]
    public void Setup() => _page = Pages.Couple(64);

    [Benchmark]
    public Reading ReadCheckAndSolve() => DanceReader.Read(_page, solver: _solver);

    [Benchmark]
    public Reading ProveImpossible() => DanceReader.Read(Impossible, solver: _solver);
}
