using BenchmarkDotNet.Attributes;
using Surefoot.Dance;

namespace Surefoot.Bench;

/// <summary>From text to problems: reading, scoring and checking one page for two roles, warm.</summary>
[MemoryDiagnoser]
public class WholePage
{
    private string _page = "";

    [Params(64, 640)]
    public int Counts { get; set; }

    [GlobalSetup]
    public void Setup() => _page = Pages.Of(Counts, 3);

    [Benchmark]
    public Reading ReadScoreAndCheck() => DanceReader.Read(_page);
}
