using BenchmarkDotNet.Attributes;
using Surefoot.Dance;
using Surefoot.Solver;

namespace Surefoot.Bench;

/// <summary>A page that has been read is read again after one of its lines was edited, with what was read before.</summary>
[MemoryDiagnoser]
public class AfterAnEdit
{
    private readonly ProvenSolver _solver = new();
    private readonly List<string> _steps = [];
    private readonly List<string> _notes = [];
    private Reading? _before;
    private int _next;

    /// <summary>Which page; from small to large effort of solving.</summary>
    [Params(2, 37, 52, 99)]
    public int Page { get; set; }

    /// <summary>Eight edits of steps, each in another part, and eight of the note, in turn.</summary>
    [GlobalSetup]
    public void Setup()
    {
        var page = Pages.Of(64, Page);
        for (var n = 0; n < 8; n++)
        {
            _steps.Add(Line(page, n));
            _notes.Add(page + $"> Note {n}.\n");
        }

        _before = DanceReader.Read(page, solver: _solver);
    }

    [Benchmark]
    public Reading OtherSteps() => _before = DanceReader.Read(_steps[_next++ % _steps.Count], solver: _solver, before: _before);

    [Benchmark]
    public Reading AnotherNote() => _before = DanceReader.Read(_notes[_next++ % _notes.Count], solver: _solver, before: _before);

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
