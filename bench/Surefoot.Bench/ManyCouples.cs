using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using Surefoot.Dance;
using Surefoot.Solver;

namespace Surefoot.Bench;

/// <summary>A thousand different couple pages of 64 counts, places and hands solved, on two cores.</summary>
[SimpleJob(RunStrategy.Monitoring, warmupCount: 1, iterationCount: 3)]
public class ManyCouples
{
    private readonly ProvenSolver _solver = new();
    private string[] _pages = [];

    [GlobalSetup]
    public void Setup() => _pages = [.. Enumerable.Range(0, 1_000).Select(n => Pages.Of(64, n))];

    [Benchmark]
    public int ThousandCouplesOnTwoCores()
    {
        var problems = 0;
        Parallel.For(0, _pages.Length, new() { MaxDegreeOfParallelism = 2 }, n => Interlocked.Add(ref problems, DanceReader.Read(_pages[n], solver: _solver).Problems.Count));
        return problems;
    }
}
