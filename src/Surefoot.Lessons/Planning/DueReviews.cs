using Surefoot.Lessons.Reviewing;

namespace Surefoot.Lessons.Planning;

/// <summary>
/// Brings reviews forward into lessons that have time for them: where a dance is due and there are minutes, it would be danced for
/// practice, and that is its review. Those after it follow by the rule, and stay where people were told as far as they can.
/// </summary>
internal sealed class DueReviews(TermCase term, IReadOnlyCollection<(int Lesson, int Course, int Bite)> bites, List<(int Lesson, int Course)> reviews)
{
    private readonly LessonLoad _load = new(term, bites, reviews);

    public List<(int Lesson, int Course)> BroughtForward()
    {
        var all = reviews.GroupBy(r => r.Course).OrderBy(g => g.Key).SelectMany(g => Of(term.Courses[g.Key], [.. g.Select(r => r.Lesson).Order()]).Select(l => (l, g.Key)));
        return [.. all];
    }

    private List<int> Of(Course course, List<int> was)
    {
        var open = course.Lessons.Where(l => !term.Past[l]).ToList();
        var (stands, last) = (course.Progress.Review ?? Sm2.New.After(Sm2.Expected), course.Progress.Last);
        if (!course.Finished) last = term.Lessons[bites.Where(b => b.Course == course.Index).Max(b => b.Lesson)].Day;
        for (var at = 0; at < was.Count; at++)
        {
            // A dance that is known and nobody knows since when may be danced in any lesson.
            var due = last is { } day ? ReviewPaths.Due(term.Lessons, open, day, stands.Interval) : open;
            foreach (var lesson in due.Where(l => l < was[at] && _load.Free(l) >= LessonMinutes.Review))
            {
                if (Rest(course, open, stands, lesson, [.. was.Skip(at)]) is not { } rest) continue;
                foreach (var gone in was.Skip(at)) _load.Take(gone, -LessonMinutes.Review, 0);
                foreach (var now in rest) _load.Take(now, LessonMinutes.Review, 0);
                was = [.. was.Take(at), .. rest];
                break;
            }

            (stands, last) = (stands.After(Sm2.Expected), term.Lessons[was[at]].Day);
        }

        return was;
    }

    /// <summary>The reviews from one in a lesson on, each where it was told, where it was, or else where there is time; null where one finds none.</summary>
    private List<int>? Rest(Course course, List<int> open, Sm2 stands, int first, List<int> gives)
    {
        var rest = new List<int> { first };
        while (true)
        {
            stands = stands.After(Sm2.Expected);
            var due = ReviewPaths.Due(term.Lessons, open, term.Lessons[rest[^1]].Day, stands.Interval);
            if (due.Count == 0) return rest;
            var fitting = due.Where(l => _load.Free(l) + (gives.Contains(l) ? LessonMinutes.Review : 0) >= LessonMinutes.Review).ToList();
            if (fitting.Count == 0) return null;
            rest.Add(fitting.OrderByDescending(l => term.Told.Any(t => t.Lesson == l && t.Course == course.Index && t.Bites.Count == 0)).ThenBy(l => l).First());
        }
    }
}
