namespace Surefoot.Lessons.Planning;

/// <summary>Holds a plan against what people were told: what moves, what falls away, and what comes in that nobody was told.</summary>
internal sealed class Changes(TermCase term, List<(int Lesson, int Course, int Bite)> bites, List<(int Lesson, int Course)> reviews)
{
    private readonly List<Change> _all = [];

    /// <summary>The lessons in which a review is that was told for another, so that none stands for two.</summary>
    private readonly HashSet<(int Lesson, int Course)> _taken = [];

    public ValueList<Change> All()
    {
        if (term.Told.Count + term.Missed.Count + term.Fallen.Count == 0) return [];
        foreach (var told in term.Told.Where(t => t.Bites.Count == 0 && reviews.Contains((t.Lesson, t.Course)))) _taken.Add((told.Lesson, told.Course));
        // What was told of an evening that is over and was not reached, or of one that is gone, has moved like all else.
        foreach (var told in term.Missed) Told(term.Lessons[told.Lesson].Day, told.Course, told.Bites, ChangeCause.NotReached);
        foreach (var told in term.Fallen) Told(told.Day, told.Course, told.Bites, term.Term.Closed.Any(c => c.Have(told.Day)) ? ChangeCause.Closed : ChangeCause.NoLesson);
        foreach (var told in term.Told)
        {
            if (told.Bites.Count == 0 && reviews.Contains((told.Lesson, told.Course))) continue;
            Told(term.Lessons[told.Lesson].Day, told.Course, [.. told.Bites.Where(b => !bites.Contains((told.Lesson, told.Course, b)))], ChangeCause.Moved, again: told.Bites.Count == 0);
        }

        ComesIn();
        return [.. _all.OrderBy(c => c.Day).ThenBy(c => c.Cause is ChangeCause.ComesIn or ChangeCause.TaughtAgain).ThenBy(c => c.Bites.Count == 0)];
    }

    /// <summary>The lessons to come that people were told of, those too of which they were told that nothing is planned.</summary>
    private IEnumerable<int> Spoken() => term.Lessons
        .Where(l => !term.Past[l.Index] && (term.Told.Any(t => t.Lesson == l.Index) || term.Term.Told.Any(t => t.Day == l.Day && t.At == l.At))).Select(l => l.Index);

    private void Told(DateOnly day, int course, ValueList<int> told, ChangeCause cause, bool? again = null)
    {
        if (again ?? told.Count == 0)
        {
            var near = Nearest(day, course, r => !_taken.Contains(r)) ?? Nearest(day, course, _ => true);
            if (near is { } at) _taken.Add((at, course));
            _all.Add(new(course, [], day, near, cause));
            return;
        }

        var owed = told.Where(b => !term.Courses[course].Progress.Done[b]);
        foreach (var group in owed.GroupBy(b => bites.Where(x => x.Course == course && x.Bite == b).Select(x => (int?)x.Lesson).FirstOrDefault())) _all.Add(new(course, group.ToValueList(), day, group.Key, cause));
    }

    private int? Nearest(DateOnly day, int course, Func<(int Lesson, int Course), bool> free) => reviews.Where(r => r.Course == course && free(r))
        .OrderBy(r => Math.Abs(term.Lessons[r.Lesson].Day.DayNumber - day.DayNumber)).ThenByDescending(r => r.Lesson).Select(r => (int?)r.Lesson).FirstOrDefault();

    /// <summary>In the lessons people were told of: what is there and was told for none.</summary>
    private void ComesIn()
    {
        foreach (var lesson in Spoken())
        {
            var day = term.Lessons[lesson].Day;
            foreach (var (_, course) in reviews.Where(r => r.Lesson == lesson))
            {
                if (!_taken.Contains((lesson, course))) _all.Add(new(course, [], day, lesson, ChangeCause.ComesIn));
            }

            foreach (var dance in bites.Where(b => b.Lesson == lesson && !term.Told.Any(t => t.Course == b.Course && t.Bites.Contains(b.Bite))).GroupBy(b => b.Course))
            {
                var fresh = dance.Select(b => b.Bite).Where(b => !_all.Exists(c => c.Course == dance.Key && c.To == lesson && c.Bites.Contains(b))).ToList();
                var again = fresh.Where(b => term.Reached.Any(r => r.Course == dance.Key && r.Bites.Contains(b))).ToValueList();
                if (again.Count > 0) _all.Add(new(dance.Key, again, day, lesson, ChangeCause.TaughtAgain));
                var comes = fresh.Where(b => !again.Contains(b)).ToValueList();
                if (comes.Count > 0) _all.Add(new(dance.Key, comes, day, lesson, ChangeCause.ComesIn));
            }
        }
    }
}
