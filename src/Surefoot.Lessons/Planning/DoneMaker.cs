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
            // What was told of lessons that are over is only kept for whoever reads the file; and a day that is closed since is no slip of the pen.
            if (IsGone(line) || Find(line.Day, TimeOf(line), [.. line.Dances.Select(d => d.Dance)], line.Span) is not { } lesson || _past[lesson.Index]) continue;
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
                if (Owed(course, dance, lesson.Day, reached, toCome) is { } bites) all.Add(new(lesson.Index, course.Index, bites));
            }
        }

        return all.ToValueList();
    }

    /// <summary>What was told of lessons that are not there any more, because the day is closed now or the evening another, and is still owed.</summary>
    public ValueList<FallenCourse> Fallen(ValueList<ReachedCourse> reached, ValueList<ToldCourse> toCome)
    {
        var all = new List<FallenCourse>();
        foreach (var line in term.Told.Where(IsGone))
        {
            foreach (var dance in line.Dances)
            {
                if (FallenOf(line, dance.Dance) is { } course && Owed(course, dance, line.Day, reached, toCome) is { } bites) all.Add(new(line.Day, course.Index, bites));
            }
        }

        return all.ToValueList();
    }

    /// <summary>Of what was told for a day, what was neither reached then or since nor is told for another; null where nothing is owed.</summary>
    private ValueList<int>? Owed(Course course, ToldDance told, DateOnly day, ValueList<ReachedCourse> reached, ValueList<ToldCourse> toCome)
    {
        var since = reached.Where(r => r.Course == course.Index && lessons[r.Lesson].Day >= day).ToList();
        if (told.Bites.Count == 0) return since.Count == 0 && (course.Finished || day > LastOver(course.Class)) ? [] : null;
        var bites = told.Bites.Select(b => b - 1)
            .Where(b => b < course.Bites.Count && !course.Progress.Done[b] && !since.Exists(r => r.Bites.Contains(b)) && !toCome.Any(t => t.Course == course.Index && t.Bites.Contains(b))).ToValueList();
        return bites.Count > 0 ? bites : null;
    }

    /// <summary>The day of a class's last lesson that is over.</summary>
    private DateOnly LastOver(DanceClass who) => lessons.Where(l => l.Slot.For == who && _past[l.Index]).Select(l => l.Day).DefaultIfEmpty(DateOnly.MinValue).Max();

    /// <summary>True where the day or the time has no lesson, so that whoever wrote the line did it before the term was changed.</summary>
    private bool IsGone(ToldLesson line) => !lessons.Any(l => l.Day == line.Day && (TimeOf(line) is not { } at || l.At == at));

    /// <summary>The time at which a lesson was told to be; where the day has one lesson only, that one is meant whatever hour it has now.</summary>
    private TimeOnly? TimeOf(ToldLesson line)
    {
        var today = lessons.Where(l => l.Day == line.Day).ToList();
        return today is [var only] && line.Dances.All(d => courses.Exists(c => Is(c, d.Dance) && c.Lessons.Contains(only.Index))) ? only.At : line.At;
    }

    /// <summary>The course of a lesson that is gone: its class is the one whose evening it was, or else the only one that learns the dance.</summary>
    private Course? FallenOf(ToldLesson line, string dance)
    {
        var all = courses.FindAll(c => Is(c, dance));
        var classes = term.Slots.Where(s => s.Day == line.Day.DayOfWeek && (line.At is null || s.At == line.At)).Select(s => s.For).ToHashSet();
        var fitting = all.FindAll(c => classes.Contains(c.Class));
        return fitting is [var one] ? one : all is [var only] ? only : null;
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
