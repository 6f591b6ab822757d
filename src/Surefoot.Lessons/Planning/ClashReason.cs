using System.Globalization;

namespace Surefoot.Lessons.Planning;

/// <summary>
/// Why wishes cannot all be kept, in figures that show it: the first of these that is so. No lesson before the day; more new
/// counts, or more minutes, than there is room for; one dance alone, or one after the other, takes more lessons than there are. Where
/// all of that would do, the solver has tried what stands in the way.
/// </summary>
/// <param name="needed">The wishes, and what comes before them.</param>
/// <param name="wished">The wishes among them: only their days are asked for.</param>
/// <param name="possibleWith">Whether all can be kept where something is not asked for.</param>
internal sealed class ClashReason(TermCase term, List<Course> needed, HashSet<int> wished, Func<Eased, bool> possibleWith)
{
    private readonly Dictionary<int, DateOnly> _until = [];

    public string Says()
    {
        var taught = needed.Where(c => !c.Finished).ToList();
        foreach (var course in taught) _until[course.Index] = Until(course);
        var days = _until.Values.Distinct().Order().ToList();
        return taught.Select(NoLesson).FirstOrDefault(s => s is not null)
            ?? days.Select(NewCounts).FirstOrDefault(s => s is not null)
            ?? days.Select(Minutes).FirstOrDefault(s => s is not null)
            ?? taught.Select(Alone).FirstOrDefault(s => s is not null)
            ?? taught.Select(OneAfterTheOther).FirstOrDefault(s => s is not null)
            ?? AsItFalls();
    }

    /// <summary>The day by which a course has to be finished, for itself or for what comes after it.</summary>
    private DateOnly Until(Course course)
    {
        var day = (wished.Contains(course.Index) ? course.By : null) ?? term.Term.Until;
        foreach (var next in needed.Where(c => c.After.Contains(course.Index)).Select(Until)) day = next < day ? next : day;
        return day;
    }

    private List<Lesson> Open(Course course) => [.. course.Lessons.Where(l => !term.Past[l]).Select(l => term.Lessons[l])];

    /// <summary>The courses that have to be finished by a day, and the lessons there are for them until then.</summary>
    private (List<Course> Courses, List<Lesson> Lessons) By(DateOnly day)
    {
        var courses = needed.Where(c => !c.Finished && _until[c.Index] <= day).ToList();
        return (courses, [.. term.Lessons.Where(l => l.Day <= day && !term.Past[l.Index] && courses.Exists(c => c.Lessons.Contains(l.Index)))]);
    }

    private string? NoLesson(Course course)
    {
        var first = Open(course).Select(l => (DateOnly?)l.Day).FirstOrDefault();
        if (first <= _until[course.Index]) return null;
        return $"{course.Dance.Title} is {(course.Dance.Kind == DanceKinds.Couples ? "a couples' dance" : "a line dance")}, and until {DayWords.Full(_until[course.Index])} there is no lesson {(first is null ? "left " : "")}for {course.Class.Words} in which it could be taught{(first is { } day ? $"; the first is on {DayWords.Full(day)}" : "")}.";
    }

    private string? NewCounts(DateOnly day)
    {
        var (courses, lessons) = By(day);
        var (halves, room) = (courses.Sum(Halves), lessons.Sum(l => l.MostNew));
        return halves <= 2 * room ? null : $"{It(courses)} {(courses.Count == 1 ? "has" : "have")} {Half(halves)} new counts to learn{(courses.Exists(Mirrors) ? " (those from the other foot counted half)" : "")}; until {DayWords.Full(day)} there {Lessons(lessons)}, with room for {room} new counts.";
    }

    private string? Minutes(DateOnly day)
    {
        var (courses, lessons) = By(day);
        var again = needed.Count(c => c.Finished && LastReview(c) is { } last && last <= day);
        var (minutes, room) = (courses.Sum(MinutesOf) + (again * LessonMinutes.Review), lessons.Sum(Room));
        return minutes <= room ? null : $"{It(courses)} {(courses.Count == 1 ? "takes" : "take")} at least {minutes} minutes{(again > 0 ? $", with {again} dance{(again == 1 ? "" : "s")} to be danced again" : "")}; until {DayWords.Full(day)} there {Lessons(lessons)}, with {room} minutes after warming up.";
    }

    private string? Alone(Course course)
    {
        var (until, open) = (_until[course.Index], Open(course));
        if (Takes(course, open) is var (count, last) && last.Day <= until) return null;
        var lessons = open.Where(l => l.Day <= until).ToList();
        return $"{course.Dance.Title} by itself takes {(Takes(course, open) is var (needs, _) ? $"at least {needs} lessons" : "more lessons than are left")}, as its bites fit into them ({Each(lessons)}); until {DayWords.Full(until)} there {Lessons(lessons)}.";
    }

    private string? OneAfterTheOther(Course course)
    {
        if (Earliest(course) is not var (lesson, chain) || chain.Count < 2 || lesson.Day <= _until[course.Index]) return null;
        var steps = chain.Select(c => $"{c.Course.Dance.Title} takes {(c.Lessons == 1 ? "one lesson" : $"{c.Lessons} lessons")} and is finished on {DayWords.Short(c.Last.Day)} at the earliest");
        return $"One comes after the other, in later lessons: {string.Join(", ", steps)}. Until {DayWords.Full(_until[course.Index])} that cannot be.";
    }

    /// <summary>Every sum would do, but not as it falls into lessons; what would help was tried.</summary>
    private string AsItFalls()
    {
        var day = _until.Count > 0 ? _until.Values.Max() : term.Term.Until;
        var (courses, lessons) = By(day);
        var sums = courses.Count == 0 ? "By the review rule each is due in one of two lessons, and those have not minutes enough for all of them." : $"Added up there would be room until {DayWords.Full(day)} ({Half(courses.Sum(Halves))} of {lessons.Sum(l => l.MostNew)} new counts, {courses.Sum(MinutesOf)} of {lessons.Sum(Room)} minutes), but not as it falls into lessons: a bite is not cut in two, what goes on is gone through first, and what is finished is danced again.";
        var helps = new List<string>();
        if (possibleWith(Eased.Minutes)) helps.Add("with longer lessons");
        if (possibleWith(Eased.NewCounts)) helps.Add("with more new counts in a lesson");
        if (needed.Exists(c => c.After.Count > 0) && possibleWith(Eased.Order)) helps.Add("in another order");
        if (possibleWith(Eased.Reviews)) helps.Add("with nothing danced again");
        return $"{sums}{(helps.Count == 0 ? "" : $" It could be done {string.Join(", or ", helps)}.")}".Trim();
    }

    /// <summary>How many lessons a course takes where nothing else is in them, and the last of them; null where they do not suffice.</summary>
    private static (int Count, Lesson Last)? Takes(Course course, List<Lesson> lessons)
    {
        var left = new Queue<int>(Enumerable.Range(0, course.Bites.Count).Where(b => !course.Progress.Done[b]));
        var used = 0;
        foreach (var lesson in lessons)
        {
            // To show it or to go through it takes the same.
            var (minutes, halves) = (Room(lesson) - LessonMinutes.Recap, 2 * lesson.MostNew);
            var before = left.Count;
            while (left.TryPeek(out var bite) && course.Minutes[bite] + (left.Count == 1 ? LessonMinutes.ToMusic : 0) <= minutes && LessonMinutes.HalfCounts(course.Bites[bite]) <= halves)
            {
                minutes -= course.Minutes[bite];
                halves -= LessonMinutes.HalfCounts(course.Bites[bite]);
                left.Dequeue();
            }

            if (left.Count < before) used++;
            if (left.Count == 0) return (used, lesson);
        }

        return null;
    }

    /// <summary>The lesson in which a course is finished at the earliest, where what comes before it is taught as early as can be; with the courses on the way.</summary>
    private (Lesson Last, List<(Course Course, int Lessons, Lesson Last)> Chain)? Earliest(Course course)
    {
        var (after, chain) = (-1, new List<(Course, int, Lesson)>());
        foreach (var before in course.After.Select(a => term.Courses[a]).Where(b => !b.Finished))
        {
            if (Earliest(before) is not var (last, way)) return null;
            if (last.Index <= after) continue;
            (after, chain) = (last.Index, way);
        }

        if (Takes(course, [.. Open(course).Where(l => l.Index > after)]) is not var (count, end)) return null;
        return (end, [.. chain, (course, count, end)]);
    }

    /// <summary>The last lesson in which the next review of a finished course may be, or null where none falls into the term.</summary>
    private DateOnly? LastReview(Course course) => course.Progress is { Last: { } last, Review: { } stands }
        && ReviewPaths.Due(term.Lessons, [.. course.Lessons.Where(l => !term.Past[l])], last, stands.Interval) is [.., var latest] ? term.Lessons[latest].Day : null;

    private static int Halves(Course course) => course.Bites.Where((_, b) => !course.Progress.Done[b]).Sum(LessonMinutes.HalfCounts);

    private static bool Mirrors(Course course) => course.Bites.Where((_, b) => !course.Progress.Done[b]).Any(b => b.Mirrored > 0);

    private static int MinutesOf(Course course) => course.Minutes.Where((_, b) => !course.Progress.Done[b]).Sum() + LessonMinutes.ToMusic + (course.Progress.Begun ? LessonMinutes.Recap : LessonMinutes.Show);

    private static int Room(Lesson lesson) => lesson.Slot.Minutes - LessonMinutes.WarmUp;

    private static string Each(List<Lesson> lessons) => string.Join(", ", lessons.Select(l => $"room for {l.MostNew} new counts and {Room(l)} minutes").Distinct());

    private string It(List<Course> courses) => courses.Count == 1 ? (needed.Count == 1 ? "It" : courses[0].Dance.Title) : courses.Count == needed.Count ? "Together they" : $"{string.Join(", ", courses.Select(c => c.Dance.Title))} together";

    private static string Lessons(List<Lesson> lessons) => lessons.Count == 1 ? "is one lesson" : $"are {lessons.Count} lessons";

    private static string Half(int halves) => (halves / 2).ToString(CultureInfo.InvariantCulture) + (halves % 2 == 0 ? "" : "½");
}
