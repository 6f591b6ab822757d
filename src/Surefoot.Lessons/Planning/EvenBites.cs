namespace Surefoot.Lessons.Planning;

/// <summary>
/// Evens out what is new of a dance over the lessons it takes: eight counts on one evening and thirty-two on the next become sixteen
/// and twenty-four. The lessons stay, and so does every promise; only what a lesson has room for moves.
/// </summary>
internal sealed class EvenBites(TermCase term, List<(int Lesson, int Course, int Bite)> bites, IReadOnlyCollection<(int Lesson, int Course)> reviews)
{
    private readonly LessonLoad _load = new(term, bites, reviews);

    public List<(int Lesson, int Course, int Bite)> Evened() => [.. bites.GroupBy(b => b.Course).OrderBy(g => g.Key).SelectMany(g => Of(term.Courses[g.Key], [.. g.OrderBy(b => b.Bite)]))];

    private List<(int Lesson, int Course, int Bite)> Of(Course course, List<(int Lesson, int Course, int Bite)> was)
    {
        var lessons = was.Select(b => b.Lesson).Distinct().Order().ToList();
        // What people were told stays.
        if (lessons.Count < 2 || term.Told.Any(t => t.Course == course.Index && t.Bites.Count > 0)) return was;
        foreach (var (lesson, _, bite) in was) Take(course, lesson, bite, -1);
        // What a lesson may take: its minutes, and of new counts what is comfortable, or what it had.
        var halves = lessons.ConvertAll(l => Math.Max(ClassProgram.Comfortable(term.Lessons[l]), _load.Halves(l) + was.Where(b => b.Lesson == l).Sum(b => LessonMinutes.HalfCounts(course.Bites[b.Bite]))) - _load.Halves(l));
        var minutes = lessons.ConvertAll(_load.Free);
        var even = Best(course, [.. was.Select(b => b.Bite)], halves, minutes);
        var now = even is null ? was : [.. was.Select((b, i) => (lessons[even[i]], b.Course, b.Bite))];
        foreach (var (lesson, _, bite) in now) Take(course, lesson, bite, 1);
        return now;
    }

    private void Take(Course course, int lesson, int bite, int times) => _load.Take(lesson, times * course.Minutes[bite], times * LessonMinutes.HalfCounts(course.Bites[bite]));

    /// <summary>For each bite which of the lessons it comes in, with the least sum of squares; in each lesson at least one. Null where nothing fits.</summary>
    private static List<int>? Best(Course course, List<int> left, List<int> halves, List<int> minutes)
    {
        // best[l][b]: the least cost of the first b bites in the first l lessons, and how many of them come in the last of these.
        var best = new (long Cost, int Last)?[halves.Count + 1, left.Count + 1];
        best[0, 0] = (0, 0);
        for (var l = 1; l <= halves.Count; l++)
        {
            for (var b = l; b <= left.Count; b++)
            {
                var (h, m) = (0, 0);
                for (var n = 1; n <= b - l + 1; n++)
                {
                    h += LessonMinutes.HalfCounts(course.Bites[left[b - n]]);
                    m += course.Minutes[left[b - n]];
                    if (h > halves[l - 1] || m > minutes[l - 1]) break;
                    // Where two ways cost the same, the later lesson has less: its dance goes to music as well.
                    if (best[l - 1, b - n] is var (cost, _) && (best[l, b] is not var (least, _) || cost + ((long)h * h) < least)) best[l, b] = (cost + ((long)h * h), n);
                }
            }
        }

        if (best[halves.Count, left.Count] is null) return null;
        var at = new int[left.Count];
        for (var (l, b) = (halves.Count, left.Count); l > 0; l--)
        {
            var n = best[l, b]!.Value.Last;
            for (var i = 1; i <= n; i++) at[b - i] = l - 1;
            b -= n;
        }

        return [.. at];
    }
}
