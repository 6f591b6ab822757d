using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Sheets;

/// <summary>A lesson, a collision or a change in a sentence.</summary>
public static class LessonWords
{
    /// <summary>"Dinner Bell Six again; Lamp Room Supper 1 2 3 (finished)."</summary>
    public static string InShort(TermCase term, LessonPlan lesson)
    {
        var parts = new List<string>();
        var again = lesson.Items.Where(i => i.Kind == ItemKind.Review).Select(i => term.Courses[i.Course!.Value].Dance.Title).ToList();
        foreach (var dance in lesson.Items.Where(i => i.Kind == ItemKind.Teach).GroupBy(i => i.Course!.Value))
        {
            var course = term.Courses[dance.Key];
            var done = lesson.Items.Any(i => i.Course == dance.Key && i.Kind == ItemKind.ToMusic);
            var whole = dance.Count() == course.Bites.Count;
            parts.Add($"{course.Dance.Title}{(whole ? ", all of it" : " " + string.Join(' ', dance.Select(i => course.Bites[i.Bite!.Value].Name)))}{(done && !whole ? ", finished" : "")}");
        }

        if (again.Count > 0) parts.Add($"again: {string.Join(", ", again)}");
        if (parts.Count == 0 && lesson.Items.Where(i => i.Kind == ItemKind.Practice).Select(i => term.Courses[i.Course!.Value].Dance.Title).ToList() is { Count: > 0 } practised) return $"For practice: {string.Join(", ", practised)}.";
        return parts.Count == 0 ? (term.Past[lesson.Lesson.Index] ? "Nothing is ticked." : "Nothing planned.") : $"{string.Join("; ", parts)}.";
    }

    /// <summary>What collides, and what was given up for it.</summary>
    public static string Of(TermCase term, Collision collision)
    {
        var course = term.Courses[collision.GivenUp];
        var wish = Wish(course);
        var others = collision.With.Select(w => Wish(term.Courses[w])).ToList();
        var head = others.Count == 0 ? $"This cannot be kept even by itself: {wish}." : $"These cannot all be kept: {wish}; {string.Join("; ", others)}. Without any one of them the others can.";
        var way = course.Finished ? $"The plan gives up the reviews of {course.Dance.Title}."
            : collision.Instead is { } day ? $"The plan gives up the first: {course.Dance.Title} is finished on {DayWords.Short(day)} instead."
            : $"The plan gives up the first and leaves {course.Dance.Title} out.";
        return $"{head} {collision.Why} {(others.Count == 0 ? way.Replace("the first", "that wish", StringComparison.Ordinal) : way)}";
    }

    public static string Of(TermCase term, LeftOut left) =>
        $"There is no room for {term.Courses[left.Course].Dance.Title} ({term.Courses[left.Course].Class.Words}). It has no wish date, so it was left out.";

    /// <summary>What people were told, and what is now: a sentence for each day that is gone, for each day with something new, and for each thing that moves.</summary>
    public static IEnumerable<string> Changes(TermPlan plan)
    {
        foreach (var same in plan.Changes.GroupBy(Together)) yield return Of(plan.Case, [.. same]);

        static (Change? Alone, DateOnly Day, ChangeCause Cause) Together(Change change) => change.Cause switch
        {
            ChangeCause.Moved or ChangeCause.NotReached => (change, change.Day, change.Cause),
            ChangeCause.TaughtAgain => (null, change.Day, ChangeCause.ComesIn),
            var cause => (null, change.Day, cause),
        };
    }

    private static string Of(TermCase term, List<Change> changes)
    {
        var first = changes[0];
        var day = DayWords.Short(first.Day);
        return first.Cause switch
        {
            ChangeCause.Closed => $"{day} is closed now: {string.Join(", ", changes.Select(c => Goes(term, c)))}.",
            ChangeCause.NoLesson => $"The lesson of {day} is not in the term any more: {string.Join(", ", changes.Select(c => Goes(term, c)))}.",
            ChangeCause.ComesIn or ChangeCause.TaughtAgain => $"New on {day}, and not told: {string.Join("; ", changes.Select(c => $"{What(term, c)}{(c.Cause == ChangeCause.TaughtAgain ? $" taught again{NotStayed(term, c)}" : "")}"))}.",
            _ => $"{What(term, first)}: told for {day}{(first.Cause == ChangeCause.NotReached ? " and not reached" : "")}, {Now(term, first)}.",
        };
    }

    /// <summary>"Five Barns A B", or the dance "again".</summary>
    private static string What(TermCase term, Change change)
    {
        var course = term.Courses[change.Course];
        return change.Bites.Count == 0 ? $"{course.Dance.Title} again" : $"{course.Dance.Title} {string.Join(' ', change.Bites.Select(b => course.Bites[b].Name))}";
    }

    private static string Now(TermCase term, Change change) => change.To is not { } to ? "now not in the term"
        : IsAsTold(term, change) ? $"now not before {DayWords.Short(term.Lessons[to].Day)}, as told for then" : $"now on {DayWords.Short(term.Lessons[to].Day)}";

    private static string Goes(TermCase term, Change change) => change.To is not { } to ? $"{What(term, change)} has no other place"
        : IsAsTold(term, change) ? $"{What(term, change)} falls away until {DayWords.Short(term.Lessons[to].Day)}" : $"{What(term, change)} goes to {DayWords.Short(term.Lessons[to].Day)}";

    /// <summary>True where a dance is danced again only when that was told as well.</summary>
    private static bool IsAsTold(TermCase term, Change change) => change.Bites.Count == 0 && term.Told.Any(t => t.Lesson == change.To && t.Course == change.Course && t.Bites.Count == 0);

    private static string NotStayed(TermCase term, Change change) =>
        term.Reached.LastOrDefault(r => r.Course == change.Course && r.Bites.Any(b => change.Bites.Contains(b))) is { } tried ? $", because on {DayWords.Short(term.Lessons[tried.Lesson].Day)} it did not stay" : "";

    private static string Wish(Course course) => course.Finished ? $"{course.Dance.Title} danced again in time"
        : $"{course.Dance.Title}{(course.By is { } by ? $" by {DayWords.Short(by)}" : "")}";
}
