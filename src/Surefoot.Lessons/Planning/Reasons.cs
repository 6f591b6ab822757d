using Surefoot.Dance.Insight;
using Surefoot.Lessons.Reviewing;

namespace Surefoot.Lessons.Planning;

/// <summary>Why something is where it is in a plan, in sentences.</summary>
internal sealed class Reasons(TermCase term, List<(int Lesson, int Course, int Bite)> bites, List<(int Lesson, int Course)> reviews)
{
    private readonly LessonLoad _load = new(term, bites, reviews);

    public string Begun(Lesson lesson, Course course)
    {
        var takes = bites.Where(b => b.Course == course.Index).Select(b => b.Lesson).Distinct().Count();
        var size = $"{Number(course.Bites.Count, "bite")}, {Number(course.NewCounts, "new count")} to teach{OtherFigure(course)}, in {(takes == 1 ? "this one lesson" : $"{takes} lessons")}";
        var wish = course.By is { } by ? $"; it is wished by {DayWords.Short(by)}" : "";
        var before = course.After.Count == 0 ? "" : $" It comes after {And([.. course.After.Select(a => term.Courses[a].Dance.Title)])}, which the class has by then.";
        return $"Begun here: {size}{wish}.{before}";
    }

    /// <summary>
    /// A dance's page says what a dancer has to learn of it; what a class is taught may be more or less, and then both figures
    /// stand on one sheet. Empty where they are the same.
    /// </summary>
    private static string OtherFigure(Course course)
    {
        var score = course.Dance.Score;
        var page = score.Roles.Where(r => r.Steps.Count > 0).Select(r => LearningLoad.Of(score, r.Role).New).DefaultIfEmpty(0).Max();
        if (page == course.NewCounts) return "";
        var why = new List<string>();
        var all = TeachingBite.Of(score, []);
        var outside = all.Where(b => b.Stretches[0].Section is null).Sum(b => b.New);
        if (outside > 0) why.Add("what is danced outside the repeat counts too");
        if (all.Sum(b => b.New) - outside > page) why.Add("in each bite the dancer counts who has more to learn");
        if (all.Sum(b => b.New) != course.NewCounts) why.Add("what they know from other dances is reckoned with");
        return $" (its page has {page} for one dancer{(why.Count > 0 ? $"; here {And(why)}" : "")})";
    }

    public string GoesOn(Lesson lesson, Course course)
    {
        var planned = bites.Where(b => b.Course == course.Index && b.Lesson < lesson.Index).Select(b => b.Lesson).ToList();
        if (planned.Count > 0) return $"Goes on from {DayWords.Short(term.Lessons[planned.Max()].Day)}.";
        var last = term.Reached.Where(r => r.Course == course.Index && r.Bites.Count > 0).Select(r => r.Lesson).LastOrDefault(-1);
        return last < 0 ? "Goes on." : $"Goes on from {DayWords.Short(term.Lessons[last].Day)}.";
    }

    public string Bite(Course course, int bite)
    {
        var tried = term.Reached.LastOrDefault(r => r.Course == course.Index && r.Bites.Contains(bite));
        return tried is null ? "" : $"Taught again: on {DayWords.Short(term.Lessons[tried.Lesson].Day)} it did not stay.";
    }

    public static string Finished(Lesson lesson, Course course)
    {
        if (course.By is not { } by) return "The dance is finished: to slow music, then at tempo.";
        var days = by.DayNumber - lesson.Day.DayNumber;
        return days < 0 ? $"The dance is finished, after {DayWords.Short(by)}, when it was wished: to slow music, then at tempo."
            : $"The dance is finished, {(days == 0 ? "on the day" : $"{Number(days, "day")} before the day")} it was wished by: to slow music, then at tempo.";
    }

    /// <summary>Which review it is and when it was due, followed from the last time it was danced.</summary>
    public string Review(Lesson lesson, int index)
    {
        var course = term.Courses[index];
        var (stands, last) = (course.Progress.Review ?? Sm2.New.After(Sm2.Expected), course.Progress.Last);
        if (!course.Finished) last = term.Lessons[bites.Where(b => b.Course == index).Max(b => b.Lesson)].Day;
        foreach (var (before, _) in reviews.Where(r => r.Course == index && r.Lesson < lesson.Index))
        {
            (stands, last) = (stands.After(Sm2.Expected), term.Lessons[before].Day);
        }

        if (last is not { } day) return "The class knows it; when it was danced last is not said.";
        var due = day.AddDays(stands.Interval);
        var early = course.Lessons.Where(l => !term.Past[l] && l < lesson.Index && term.Lessons[l].Day >= due).Select(l => (int?)l).LastOrDefault();
        var late = early is not { } first ? "" : $", a lesson later {Late(first, lesson.Index, index)}";
        return $"Danced last on {DayWords.Short(day)}; by the review rule (SM-2) it is due {Number(stands.Interval, "day")} later, from {DayWords.Short(due)} on{late}.";
    }

    /// <summary>Why a review is not in the first lesson after it is due.</summary>
    private string Late(int first, int lesson, int course) => _load.Free(first) < LessonMinutes.Review ? "because the one before is full"
        : term.Told.Any(t => t.Lesson == lesson && t.Course == course && t.Bites.Count == 0) ? "because people were told so" : "so that those after it find time";

    private static string Number(int count, string one) => $"{count} {one}{(count == 1 ? "" : "s")}";

    private static string And(IReadOnlyList<string> items) => items.Count == 1 ? items[0] : $"{string.Join(", ", items.Take(items.Count - 1))} and {items[^1]}";
}
