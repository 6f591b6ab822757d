using Surefoot.Lessons.Reviewing;

namespace Surefoot.Lessons.Planning;

/// <summary>
/// A plan as somebody makes it who goes through the term once: what is wished first is begun first, what is begun is
/// finished before something else is begun. The solver begins its search there; the guess need not keep anything.
/// </summary>
internal sealed class FirstGuess(TermCase term)
{
    private readonly Dictionary<int, (int Minutes, int Halves)> _left = [];

    /// <returns>For each bite of an unfinished course the lesson in which it is taught.</returns>
    public Dictionary<(int Course, int Bite), int> Of(DanceClass who, IReadOnlyList<Course> courses)
    {
        foreach (var lesson in term.Lessons.Where(l => l.Slot.For == who && !term.Past[l.Index])) _left[lesson.Index] = (lesson.Slot.Minutes - LessonMinutes.WarmUp, 2 * lesson.MostNew);
        foreach (var course in courses.Where(c => c.Finished && c.Progress.Last is not null)) Reviews(course, course.Progress.Review!.Value, course.Progress.Last!.Value);
        var guess = new Dictionary<(int, int), int>();
        var finished = new Dictionary<int, int>();
        var waiting = courses.Where(c => !c.Finished).OrderByDescending(c => c.Progress.Begun).ThenBy(c => c.By ?? DateOnly.MaxValue).ThenBy(c => c.Index).ToList();
        while (waiting.Find(c => c.After.All(a => finished.ContainsKey(a) || !waiting.Exists(w => w.Index == a))) is { } next)
        {
            waiting.Remove(next);
            var after = next.After.Select(a => finished.GetValueOrDefault(a, -1)).DefaultIfEmpty(-1).Max();
            if (Place(next, after + 1, guess) is not { } last) continue;
            finished[next.Index] = last;
            Reviews(next, Sm2.New.After(Sm2.Expected), term.Lessons[last].Day);
        }

        return guess;
    }

    private int? Place(Course course, int earliest, Dictionary<(int, int), int> guess)
    {
        var bites = Enumerable.Range(0, course.Bites.Count).Where(b => !course.Progress.Done[b]).ToList();
        var at = 0;
        int? last = null;
        foreach (var lesson in course.Lessons.Where(l => l >= earliest && _left.ContainsKey(l)))
        {
            var (minutes, halves) = _left[lesson];
            // The rest of the room is for what is not comfortable any more, and taken only where it ends the dance.
            var most = halves - (2 * term.Lessons[lesson].MostNew / 3);
            minutes -= last is null && !course.Progress.Begun ? LessonMinutes.Show : LessonMinutes.Recap;
            var rest = bites.Skip(at).ToList();
            if (rest.Sum(b => course.Minutes[b]) + LessonMinutes.ToMusic <= minutes && rest.Sum(b => LessonMinutes.HalfCounts(course.Bites[b])) <= halves) most = halves;
            var before = at;
            while (at < bites.Count && course.Minutes[bites[at]] + (at == bites.Count - 1 ? LessonMinutes.ToMusic : 0) <= minutes && LessonMinutes.HalfCounts(course.Bites[bites[at]]) <= most)
            {
                minutes -= course.Minutes[bites[at]];
                (most, halves) = (most - LessonMinutes.HalfCounts(course.Bites[bites[at]]), halves - LessonMinutes.HalfCounts(course.Bites[bites[at]]));
                guess[(course.Index, bites[at])] = lesson;
                at++;
            }

            if (at == before) continue;
            last = lesson;
            _left[lesson] = (at == bites.Count ? minutes - LessonMinutes.ToMusic : minutes, halves);
            if (at == bites.Count) return last;
        }

        // There is no room to finish it, so it is not begun.
        foreach (var bite in bites) guess.Remove((course.Index, bite));
        return null;
    }

    private void Reviews(Course course, Sm2 stands, DateOnly last)
    {
        var open = course.Lessons.Where(_left.ContainsKey).ToList();
        while (ReviewPaths.Due(term.Lessons, open, last, stands.Interval) is [var due, ..])
        {
            _left[due] = (_left[due].Minutes - LessonMinutes.Review, _left[due].Halves);
            (stands, last) = (stands.After(Sm2.Expected), term.Lessons[due].Day);
        }
    }
}
