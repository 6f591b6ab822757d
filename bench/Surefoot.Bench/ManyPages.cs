using BenchmarkDotNet.Attributes;
using BenchmarkDotNet.Engines;
using Surefoot.Dance;

namespace Surefoot.Bench;

/// <summary>Ten thousand different pages of 64 counts, one after the other on one core.</summary>
[SimpleJob(RunStrategy.Monitoring, warmupCount: 1, iterationCount: 3)]
public class ManyPages
{
    private string[] _pages = [];

    [GlobalSetup]
    public void Setup() => _pages = [.. Enumerable.Range(0, 10_000).Select(n => Pages.Of(64, n))];

    [Benchmark]
    public int TenThousandPages()
    {
        var problems = 0;
        foreach (var page in _pages) problems += DanceReader.Read(page).Problems.Count;
        return problems;
    }
}
