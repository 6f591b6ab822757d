namespace Surefoot.Lessons.Planning;

/// <summary>
/// What is danced in the minutes that a lesson has left: a dance they have half and that does not go on tonight, what they
/// learned tonight once more, and finished dances for practice, those first that were not danced for longest. Lessons are
/// asked in their order. Practice is no review: the days of the review rule stay as they are.
/// </summary>
internal sealed class SpareTime(TermCase term, List<(int Lesson, int Course, int Bite)> bites, List<(int Lesson, int Course)> reviews)
{
    /// <summary>When a finished dance was practised last, as far as this plan goes.</summary>
    private readonly Dictionary<int, DateOnly> _practised = [];

    /// <returns>What is danced, with its minutes; together at most those that are left.</returns>
    public List<(ItemKind Kind, int Minutes, int Course, string Reason)> Fill(Lesson lesson, int left)
    {
        var tonight = bites.Where(b => b.Lesson == lesson.Index).Select(b => b.Course).Distinct().ToList();
        var all = new List<(ItemKind Kind, int Minutes, int Course, string Reason)>();
        var mine = term.Courses.Where(c => c.Lessons.Contains(lesson.Index) && !tonight.Contains(c.Index)).ToList();
        foreach (var course in mine.Where(c => HasHalf(c, lesson))) Add(ItemKind.Practice, LessonMinutes.Recap, course.Index, Half(course, lesson));
        var first = all.Count;
        foreach (var course in tonight) Add(ItemKind.OnceMore, LessonMinutes.OnceMore, course, "");
        var learned = all.Count - first;
        var rested = mine.Where(c => Finished(c, lesson) && !reviews.Contains((lesson.Index, c.Index)))
            .OrderBy(c => DueNext(c, lesson)).ThenBy(c => Last(c, lesson) ?? DateOnly.MinValue).ThenBy(c => c.Index).ToList();
        foreach (var course in rested)
        {
            if (!Add(ItemKind.Practice, LessonMinutes.Review, course.Index, Last(course, lesson) is { } day ? $"Danced last on {DayWords.Short(day)}." : "The class knows it.")) break;
            _practised[course.Index] = lesson.Day;
        }

        // With nothing else to dance, what is new gets the time.
        for (var i = first; i < first + learned && left >= LessonMinutes.OnceMore; i++)
        {
            all[i] = all[i] with { Minutes = all[i].Minutes + LessonMinutes.OnceMore };
            left -= LessonMinutes.OnceMore;
        }

        return all;

        bool Add(ItemKind kind, int minutes, int course, string reason)
        {
            if (minutes > left) return false;
            all.Add((kind, minutes, course, reason));
            left -= minutes;
            return true;
        }
    }

    private bool HasHalf(Course course, Lesson lesson) =>
        !course.Finished && (course.Progress.Done.Any(d => d) || bites.Exists(b => b.Course == course.Index && b.Lesson < lesson.Index)) && !Finished(course, lesson);

    /// <summary>Whether a class has all of a dance before a lesson, if all goes as planned.</summary>
    private bool Finished(Course course, Lesson lesson)
    {
        if (course.Finished) return true;
        var taught = bites.Where(b => b.Course == course.Index).ToList();
        return taught.Count > 0 && taught.Max(b => b.Lesson) < lesson.Index;
    }

    private string Half(Course course, Lesson lesson)
    {
        var next = bites.Where(b => b.Course == course.Index && b.Lesson > lesson.Index).Select(b => (int?)b.Lesson).Min();
        return next is { } at ? $"What they have of it, so that it stays until it goes on, on {DayWords.Short(term.Lessons[at].Day)}." : "What they have of it, so that it stays.";
    }

    /// <summary>True where it is danced again in the class's next lesson anyway.</summary>
    private bool DueNext(Course course, Lesson lesson)
    {
        var next = course.Lessons.Where(l => l > lesson.Index).Select(l => (int?)l).FirstOrDefault();
        return next is { } at && reviews.Contains((at, course.Index));
    }

    private DateOnly? Last(Course course, Lesson lesson)
    {
        var days = bites.Where(b => b.Course == course.Index && b.Lesson < lesson.Index).Select(b => b.Lesson)
            .Concat(reviews.Where(r => r.Course == course.Index && r.Lesson < lesson.Index).Select(r => r.Lesson))
            .Select(l => (DateOnly?)term.Lessons[l].Day).Append(course.Progress.Last);
        if (_practised.TryGetValue(course.Index, out var practised)) days = days.Append(practised);
        return days.Max();
    }
}
