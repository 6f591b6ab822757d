using Surefoot.Lessons.Text;

namespace Surefoot.Lessons.Planning;

/// <summary>Finds the lessons and courses that the lines under "Reached" and "Told" speak of.</summary>
internal sealed class DoneMaker(Term term, ValueList<Lesson> lessons, List<Course> courses, TermProblems problems)
{
    private readonly bool[] _past = new bool[lessons.Count];

    public ValueList<ReachedCourse> Reached()
    {
        var all = new List<ReachedCourse>();
        foreach (var line in term.Reached)
        {
            if (Find(line.Day, line.At, [.. line.Dances.Select(d => d.Dance)], line.Span) is not { } lesson) continue;
            Over(lesson);
            foreach (var dance in line.Dances)
            {
                if (CourseOf(dance.Dance, lesson, dance.NameSpan) is { } course && Bites(course, dance.Bites, dance.Span) is { } bites) all.Add(new(lesson.Index, course.Index, bites, dance.Quality));
            }
        }

        return [.. all.OrderBy(r => r.Lesson)];
    }

    public ValueList<ToldCourse> Told()
    {
        var all = new List<ToldCourse>();
        foreach (var line in term.Told)
        {
            // What was told of lessons that are over is only kept for whoever reads the file.
            if (Find(line.Day, line.At, [.. line.Dances.Select(d => d.Dance)], line.Span) is not { } lesson || _past[lesson.Index]) continue;
            foreach (var dance in line.Dances)
            {
                if (CourseOf(dance.Dance, lesson, dance.NameSpan) is { } course && Bites(course, dance.Bites, dance.Span) is { } bites) all.Add(new(lesson.Index, course.Index, bites));
            }
        }

        return all.ToValueList();
    }

    /// <summary>What was told of lessons that are over, and neither reached there or later nor told anew. To be asked once the courses know how far they are.</summary>
    public ValueList<ToldCourse> Missed(ValueList<ReachedCourse> reached, ValueList<ToldCourse> toCome)
    {
        var all = new List<ToldCourse>();
        foreach (var line in term.Told)
        {
            // Nobody is asked to mend what was told of an evening that is over: what cannot be found is left out.
            var fitting = lessons.Where(l => l.Day == line.Day && (line.At is null || l.At == line.At)).ToList();
            if (fitting is not [var lesson] || !_past[lesson.Index]) continue;
            foreach (var dance in line.Dances)
            {
                if (courses.Find(c => Is(c, dance.Dance) && c.Class == lesson.Slot.For) is not { } course) continue;
                var since = reached.Where(r => r.Course == course.Index && r.Lesson >= lesson.Index).ToList();
                if (dance.Bites.Count == 0)
                {
                    if (since.Count == 0 && course.Finished) all.Add(new(lesson.Index, course.Index, []));
                    continue;
                }

                var missed = dance.Bites.Select(b => b - 1).Where(b => b < course.Bites.Count && !course.Progress.Done[b] && !since.Exists(r => r.Bites.Contains(b)) && !toCome.Any(t => t.Course == course.Index && t.Bites.Contains(b))).ToValueList();
                if (missed.Count > 0) all.Add(new(lesson.Index, course.Index, missed));
            }
        }

        return all.ToValueList();
    }

    /// <summary>To be asked after <see cref="Reached"/>.</summary>
    public ValueList<bool> Past() => _past.ToValueList();

    private void Over(Lesson lesson)
    {
        foreach (var before in lessons)
        {
            if (before.Index <= lesson.Index && before.Slot.For == lesson.Slot.For) _past[before.Index] = true;
        }
    }

    private Lesson? Find(DateOnly day, TimeOnly? at, IReadOnlyList<string> names, TextSpan span)
    {
        var today = lessons.Where(l => l.Day == day && (at is null || l.At == at)).ToList();
        if (today.Count > 1 && at is null)
        {
            var fitting = today.Where(l => names.Count > 0 && names.All(n => courses.Exists(c => Is(c, n) && c.Lessons.Contains(l.Index)))).ToList();
            if (fitting.Count == 1) return fitting[0];
            problems.Error("reached-which", span, $"On {DayWords.Full(day)} there are {today.Count} lessons.", $"Say which one by its time, as in: {DayWords.Short(day)} {DayWords.Time(today[0].At)}: …");
            return null;
        }

        if (today.Count > 0) return today[0];
        problems.Error("reached-lesson", span, at is { } time ? $"There is no lesson on {DayWords.Weekday(day)} at {DayWords.Time(time)}." : $"There is no lesson on {DayWords.Weekday(day)}.", "Lessons are on the days and times under the heading Evenings, from the first day of the term to its last, without the closed days.");
        return null;
    }

    private Course? CourseOf(string name, Lesson lesson, TextSpan at)
    {
        if (courses.Find(c => Is(c, name) && c.Class == lesson.Slot.For) is { } course) return course;
        problems.Error("reached-dance", at, $"\"{name}\" is neither taught to {lesson.Slot.For.Words} in this term nor known to them.", "Add it to the dances to teach or to those that are known.");
        return null;
    }

    private static bool Is(Course course, string name) => course.Dance.Names.Any(n => n.Equals(name, StringComparison.OrdinalIgnoreCase));

    private ValueList<int>? Bites(Course course, ValueList<int> named, TextSpan at)
    {
        if (named.All(b => b <= course.Bites.Count)) return named.Select(b => b - 1).ToValueList();
        problems.Error("reached-bites", at, $"\"{course.Dance.Title}\" has {course.Bites.Count} bite{(course.Bites.Count == 1 ? "" : "s")} to teach, numbered from 1.", $"They are: {string.Join(", ", course.Bites.Select((b, i) => $"{i + 1} ({b.Name})"))}.");
        return null;
    }
}
