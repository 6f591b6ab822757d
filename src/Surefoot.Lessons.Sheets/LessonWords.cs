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
        return parts.Count == 0 ? "Nothing planned." : $"{string.Join("; ", parts)}.";
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

    /// <summary>What people were told, and what is now.</summary>
    public static string Of(TermCase term, Change change)
    {
        var course = term.Courses[change.Course];
        var what = change.Bites.Count == 0 ? $"{course.Dance.Title} again" : $"{course.Dance.Title} {string.Join(' ', change.Bites.Select(b => course.Bites[b].Name))}";
        var told = term.Lessons[change.Lesson];
        var was = $"told for {DayWords.Short(told.Day)}{(term.Past[change.Lesson] ? " and not reached" : "")}";
        return change.To is { } to ? $"{what}: {was}, now on {DayWords.Short(term.Lessons[to].Day)}." : $"{what}: {was}, now not in the term.";
    }

    private static string Wish(Course course) => course.Finished ? $"{course.Dance.Title} danced again in time"
        : $"{course.Dance.Title}{(course.By is { } by ? $" by {DayWords.Short(by)}" : "")}";
}
