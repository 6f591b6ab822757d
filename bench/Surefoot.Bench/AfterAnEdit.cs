using BenchmarkDotNet.Attributes;
using Surefoot.Dance;
using Surefoot.Solver;

namespace Surefoot.Bench;

/// <summary>
/// A page that has been read is read again after one of its lines was edited. Nothing is kept from the reading
/// before, so the answer is that of a page read for the first time.
/// </summary>
[MemoryDiagnoser]
public class AfterAnEdit
{
    private readonly GlopSolver _solver = new();
    private string[] _edited = [];
    private int _next;

    /// <summary>Which page; from small to large effort of solving.</summary>
    [Params(2, 37, 52, 99)]
    public int Page { get; set; }

    /// <summary>Every eighth line has a rock in place of a walk, or another note: eight edits of one page, in turn.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var page = Pages.Of(64, Page);
        _edited = [.. Enumerable.Range(0, 8).Select(n => n % 2 == 0 ? page + $"> Note {n}.\n" : Line(page, n))];
    }

    [Benchmark]
    public Reading ReadAgain() => DanceReader.Read(_edited[_next++ % _edited.Length], solver: _solver);

    private static string Line(string page, int part)
    {
        var at = page.IndexOf($"Part {part + 1} ", StringComparison.Ordinal);
        var line = page.IndexOf('\n', at) + 1;
        var end = page.IndexOf("  ", line, StringComparison.Ordinal);
        var next = page.IndexOf('\n', line);
        // The line's counts with steps on the spot, which end on the same foot for two counts and for four.
        return page[..end] + (page[line..end] == "1-2" ? "    Step in place L, R" : "    Step in place L, R, L, touch R together") + page[next..];
    }
}
