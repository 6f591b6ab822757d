using Surefoot.Dance.Insight;
using Surefoot.Lessons;
using Surefoot.Lessons.Planning;

namespace Surefoot.Tests.Lessons;

/// <summary>
/// Checks a plan against what has to hold, from the term's own words: lessons are counted out on the calendar anew, minutes
/// and new counts are added up anew, and reviews are followed by SM-2 written here a second time.
/// </summary>
internal static class PlanChecker
{
    public static void Check(TermPlan plan)
    {
        var term = plan.Case;
        Lessons(plan);
        foreach (var lesson in plan.Lessons) Lesson(term, lesson);
        foreach (var lesson in plan.Lessons) Used(plan, lesson);
        foreach (var course in term.Courses) Course(plan, course);
        foreach (var collision in plan.Collisions) ReasonChecker.Check(plan, collision);
    }

    /// <summary>Time is free only where the class has nothing it could dance: what it has finished is danced, and what it has half.</summary>
    private static void Used(TermPlan plan, LessonPlan lesson)
    {
        var free = lesson.Items.Where(i => i.Kind == ItemKind.Spare).Sum(i => i.Minutes);
        foreach (var course in plan.Case.Courses.Where(c => c.Lessons.Contains(lesson.Lesson.Index)))
        {
            var before = plan.Lessons.Where(l => l.Lesson.Index < lesson.Lesson.Index).SelectMany(l => l.Items).Where(i => i.Course == course.Index && i.Kind == ItemKind.Teach).Select(i => i.Bite!.Value);
            var has = Enumerable.Range(0, course.Bites.Count).Count(b => course.Progress.Done[b] || before.Contains(b));
            var here = lesson.Items.Where(i => i.Course == course.Index).ToList();
            // Half a dance takes three minutes, a whole one four.
            if (has > 0 && free >= (has < course.Bites.Count ? 3 : 4)) Assert.NotEmpty(here);
            if (here.Exists(i => i.Kind == ItemKind.Practice)) Assert.True(has > 0 && here.Count == 1, "practised is what they have, and once");
            if (here.Exists(i => i.Kind == ItemKind.OnceMore)) Assert.Contains(here, i => i.Kind == ItemKind.Teach);
        }
    }

    private static void Lessons(TermPlan plan)
    {
        var term = plan.Case.Term;
        var days = Enumerable.Range(0, term.Until.DayNumber - term.From.DayNumber + 1).Select(term.From.AddDays).Where(d => !term.Closed.Any(c => d >= c.From && d <= c.Until));
        var all = days.SelectMany(d => term.Slots.Where(s => s.Day == d.DayOfWeek).OrderBy(s => s.At).Select(s => (d, s))).ToList();
        Assert.Equal(all, plan.Case.Lessons.Select(l => (l.Day, l.Slot)));
        Assert.Equal(all.Where((_, i) => !plan.Case.Past[i]), plan.Lessons.Select(l => (l.Lesson.Day, l.Lesson.Slot)));
    }

    private static void Lesson(TermCase term, LessonPlan lesson)
    {
        var slot = lesson.Lesson.Slot;
        Assert.Equal(slot.Minutes, lesson.Items.Sum(i => i.Minutes));
        var at = 0;
        foreach (var item in lesson.Items)
        {
            Assert.Equal(at, item.At);
            Assert.True(item.Minutes > 0);
            at += item.Minutes;
            if (item.Course is not { } index) continue;
            var dance = term.Courses[index].Dance.Score;
            Assert.Equal(slot.For, term.Courses[index].Class);
            Assert.True(slot.Kinds.HasFlag(dance.Facts.ForCouples ? DanceKinds.Couples : DanceKinds.Line), "a couples' dance is taught to couples only, a line dance where there are line dances");
        }

        var taught = lesson.Items.Where(i => i.Kind == ItemKind.Teach).Select(i => term.Courses[i.Course!.Value].Bites[i.Bite!.Value]).ToList();
        var most = slot.MostNew ?? slot.For.Level switch { Level.AbsoluteBeginner => 24, Level.Improver => 48, Level.Intermediate or Level.Advanced => 64, _ => 32 };
        Assert.True(taught.Sum(b => b.New + (b.Mirrored / 2.0)) <= most, "there is room for the new counts");
    }

    private static void Course(TermPlan plan, Course course)
    {
        var items = plan.Lessons.SelectMany(l => l.Items.Select(i => (l.Lesson, Item: i))).Where(i => i.Item.Course == course.Index).ToList();
        var taught = items.Where(i => i.Item.Kind == ItemKind.Teach).ToList();
        var bites = Enumerable.Range(0, course.Bites.Count).Where(b => !course.Progress.Done[b]).ToList();
        var givenUp = plan.Collisions.Any(c => c.GivenUp == course.Index);
        // All that is left or nothing, each once and in order.
        if (taught.Count > 0) Assert.Equal(bites, taught.Select(i => i.Item.Bite!.Value));
        DateOnly? finished = bites.Count == 0 ? null : taught.Count == 0 ? null : taught[^1].Lesson.Day;
        if (course.By is { } by && bites.Count > 0 && !givenUp) Assert.True(finished <= by, $"{course.Dance.Title} is finished before its wish date");
        if (bites.Count > 0 && taught.Count == 0) Assert.True(givenUp || plan.LeftOut.Any(l => l.Course == course.Index), "what is not taught is told");
        foreach (var before in course.After.Select(a => plan.Case.Courses[a]).Where(b => b.Progress.Done.Any(d => !d)))
        {
            if (taught.Count == 0) continue;
            var last = plan.Lessons.Where(l => l.Items.Any(i => i.Kind == ItemKind.Teach && i.Course == before.Index)).Select(l => l.Lesson.Index).ToList();
            Assert.True(last.Count > 0 && last.Max() < taught[0].Lesson.Index, "what comes before is finished in an earlier lesson");
        }

        foreach (var (lesson, _) in items.Where(i => i.Item.Kind == ItemKind.Review && i.Item.Reason.Contains("because the one before is full", StringComparison.Ordinal)))
        {
            var before = plan.Lessons.Last(l => l.Lesson.Index < lesson.Index && course.Lessons.Contains(l.Lesson.Index));
            Assert.InRange(before.Items.Where(i => i.Kind is ItemKind.Practice or ItemKind.OnceMore or ItemKind.Spare).Sum(i => i.Minutes), 0, 3);
        }

        Reviews(plan, course, finished, [.. items.Where(i => i.Item.Kind == ItemKind.Review).Select(i => i.Lesson)], givenUp);
        foreach (var (lesson, _) in taught.DistinctBy(t => t.Lesson.Index)) Framed(items.Where(i => i.Lesson == lesson && i.Item.Kind != ItemKind.OnceMore).Select(i => i.Item.Kind).ToList(), lesson.Index == taught[0].Lesson.Index && !course.Progress.Begun, lesson.Index == taught[^1].Lesson.Index);
    }

    /// <summary>A dance is shown when it is begun, gone through when it goes on, and danced to music when it is finished.</summary>
    private static void Framed(List<ItemKind> kinds, bool begun, bool finished)
    {
        Assert.Equal(begun ? ItemKind.Show : ItemKind.Recap, kinds[0]);
        Assert.Equal(finished, kinds[^1] == ItemKind.ToMusic);
    }

    private static void Reviews(TermPlan plan, Course course, DateOnly? finished, List<Lesson> reviews, bool givenUp)
    {
        var open = course.Lessons.Select(l => plan.Case.Lessons[l]).Where(l => !plan.Case.Past[l.Index]).ToList();
        (int Times, double Factor, double Interval) stands;
        DateOnly last;
        var at = 0;
        if (finished is { } day) (stands, last) = (Next((0, 2.5, 0)), day);
        else if (course.Progress.Review is { } kept && course.Progress.Last is { } known) (stands, last) = ((kept.Times, kept.Factor / 100.0, kept.Interval), known);
        else if (course.Progress.Review is { } state && reviews.Count > 0)
        {
            // Nobody knows when it was danced last: the first time may be any, and the rest follows from it.
            (stands, last, at) = (Next((state.Times, state.Factor / 100.0, state.Interval)), reviews[0].Day, 1);
        }
        else
        {
            Assert.Empty(reviews);
            return;
        }

        if (givenUp && course.Finished) return;
        while (true)
        {
            var due = open.Where(l => l.Day.DayNumber >= last.DayNumber + (int)stands.Interval).Take(2).ToList();
            if (due.Count == 0) break;
            Assert.True(at < reviews.Count, $"{course.Dance.Title} is danced again from {due[0].Day} on");
            Assert.Contains(reviews[at], due);
            (stands, last) = (Next(stands), reviews[at].Day);
            at++;
        }

        Assert.Equal(reviews.Count, at);
    }

    // Woźniak's rule for a mark of 4, in floating point, as his text has it.
    private static (int Times, double Factor, double Interval) Next((int Times, double Factor, double Interval) was)
    {
        var factor = Math.Max(1.3, was.Factor + (0.1 - ((5 - 4) * (0.08 + ((5 - 4) * 0.02)))));
        return (was.Times + 1, factor, was.Times switch { 0 => 1, 1 => 6, _ => Math.Ceiling(Math.Round(was.Interval * factor, 6)) });
    }
}
