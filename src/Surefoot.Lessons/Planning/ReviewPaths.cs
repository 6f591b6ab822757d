using Surefoot.Lessons.Reviewing;

namespace Surefoot.Lessons.Planning;

/// <summary>
/// The reviews of one course as ways through its lessons: from the lesson in which it was danced last, one way to
/// each lesson in which the next review may be. Each way is a column that is 0 or 1; what comes into a lesson
/// goes out of it again, as long as a next review is due before the term ends.
/// </summary>
internal sealed class ReviewPaths
{
    /// <summary>A review is in the first lesson on or after the day it is due, or else in the next one. Working value.</summary>
    public const int Choices = 2;

    /// <summary>What a lesson later than due costs, and a lesson's waiting of a dance for which no day is known.</summary>
    private const int LateCost = 600, WaitingCost = 40;

    private readonly WholeProgram _program;
    private readonly ValueList<Lesson> _lessons;
    private readonly List<int> _open;
    private readonly SortedDictionary<(int Times, int Lesson), List<(int Column, int Times)>> _in = [];
    private readonly Dictionary<int, Sm2> _stands = [];

    private ReviewPaths(WholeProgram program, ValueList<Lesson> lessons, List<int> open) => (_program, _lessons, _open) = (program, lessons, open);

    /// <summary>The columns that bring a review into a lesson.</summary>
    public IEnumerable<(int Lesson, int Column)> Reviews => _in.SelectMany(i => i.Value.Where(_ => i.Key.Times > 0).Select(v => (i.Key.Lesson, v.Column)));

    /// <summary>The columns of the first review, one of which is 1 where the course is danced again at all; none where no review falls into the term.</summary>
    public List<(int Column, int Times)> First { get; private set; } = [];

    /// <summary>For a course that is not finished yet: it comes in with the lesson that finishes it.</summary>
    /// <param name="finishing">For each open lesson the sum that is 1 where the course is finished in it.</param>
    public static ReviewPaths AfterFinishing(WholeProgram program, ValueList<Lesson> lessons, List<int> open, Func<int, List<(int, int)>> finishing)
    {
        var paths = new ReviewPaths(program, lessons, open);
        paths._stands[0] = Sm2.New.After(Sm2.Expected);
        foreach (var lesson in open) paths._in[(0, lesson)] = finishing(lesson);
        paths.Lead();
        return paths;
    }

    /// <summary>For a course that is finished.</summary>
    /// <param name="last">When it was danced last; null where nobody knows, and the first review may be in any lesson.</param>
    public static ReviewPaths From(WholeProgram program, ValueList<Lesson> lessons, List<int> open, Sm2 stands, DateOnly? last)
    {
        var paths = new ReviewPaths(program, lessons, open);
        paths._stands[0] = stands;
        var first = last is { } day ? paths.Due(day, stands.Interval) : open;
        for (var choice = 0; choice < first.Count; choice++) paths.First.Add((paths.Way(1, first[choice], choice * (last is null ? WaitingCost : LateCost)), 1));
        paths.Lead();
        return paths;
    }

    /// <summary>Lessons in which a review may be that is due some days after another.</summary>
    public static List<int> Due(ValueList<Lesson> lessons, IReadOnlyList<int> open, DateOnly last, int days) =>
        [.. open.Where(l => lessons[l].Day.DayNumber >= last.DayNumber + days).Take(Choices)];

    private List<int> Due(DateOnly last, int days) => Due(_lessons, _open, last, days);

    private void Lead()
    {
        var seen = new HashSet<(int, int)>();
        // Ways only lead on: to later lessons, and to one review more.
        while (_in.Keys.Where(k => !seen.Contains(k)).OrderBy(k => k.Times).ThenBy(k => k.Lesson).Select(k => ((int Times, int Lesson)?)k).FirstOrDefault() is var (times, lesson))
        {
            seen.Add((times, lesson));
            var stands = Stands(times);
            var next = Due(_lessons[lesson].Day, stands.Interval);
            if (next.Count == 0) continue;
            var row = _in[(times, lesson)].Select(i => (i.Column, -i.Times)).ToList();
            for (var choice = 0; choice < next.Count; choice++) row.Add((Way(times + 1, next[choice], choice * LateCost), 1));
            _program.AddRow(0, 0, row);
        }
    }

    private int Way(int times, int lesson, int cost)
    {
        var column = _program.AddColumn(0, 1);
        if (cost > 0) _program.AddCost(column, cost);
        if (!_in.TryGetValue((times, lesson), out var all)) _in[(times, lesson)] = all = [];
        all.Add((column, 1));
        return column;
    }

    private Sm2 Stands(int times)
    {
        if (!_stands.TryGetValue(times, out var stands)) _stands[times] = stands = Stands(times - 1).After(Sm2.Expected);
        return stands;
    }
}
