using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Text;

namespace Surefoot.Tests.Lessons;

/// <summary>After an evening the rest is planned anew, and what people were told stays as far as it can.</summary>
public class PlannedAnew
{
    private static readonly Lazy<(string Text, TermPlan Plan)> Told = new(() =>
    {
        var plan = Terms.Plan(Terms.Demo);
        return (TermWriting.Told(Terms.Demo, plan), plan);
    });

    private static string Ticked(string text, TermPlan plan, int lessons, Func<LessonItem, int> went)
    {
        foreach (var lesson in plan.Lessons.Take(lessons))
        {
            var dances = lesson.Items.Where(i => i.Kind is ItemKind.Review or ItemKind.Teach).GroupBy(i => i.Course!.Value)
                .Select(g => (plan.Case.Courses[g.Key], (IReadOnlyList<int>)[.. g.Where(i => i.Bite is not null).Select(i => i.Bite!.Value)], went(g.First()))).ToList();
            text = TermWriting.Reached(text, Terms.Case(text), lesson.Lesson, dances);
        }

        return text;
    }

    [Fact]
    public void What_is_told_reads_back_as_the_plan()
    {
        var (text, plan) = Told.Value;
        var term = Terms.Case(text);
        Assert.Empty(term.Problems);
        foreach (var lesson in plan.Lessons)
        {
            foreach (var dance in lesson.Items.Where(i => i.Kind == ItemKind.Teach).GroupBy(i => i.Course!.Value)) Assert.Contains(new(lesson.Lesson.Index, dance.Key, [.. dance.Select(i => i.Bite!.Value)]), term.Told);
        }

        // Told twice is told once; every other line stays.
        Assert.Equal(text, TermWriting.Told(text, plan));
        Assert.StartsWith(Terms.Demo, text);
    }

    [Fact]
    public void Nothing_changes_when_everything_went_as_planned()
    {
        var (text, plan) = Told.Value;
        var anew = Terms.Plan(Ticked(text, plan, 6, _ => 4));
        Assert.Empty(anew.Changes);
        foreach (var (before, now) in plan.Lessons.Skip(6).Zip(anew.Lessons))
        {
            // Where there was time left, a dance that is only known may come in besides.
            Assert.Equal(Taught(before), Taught(now));
            Assert.Subset(now.Items.Select(i => i.Course).ToHashSet(), before.Items.Select(i => i.Course).ToHashSet());
        }
    }

    [Fact]
    public void One_dance_that_did_not_stay_moves_little_else()
    {
        var (text, plan) = Told.Value;
        var first = plan.Lessons.SelectMany(l => l.Items).First(i => i.Kind == ItemKind.Teach);
        var missed = text;
        var lessons = plan.Lessons.TakeWhile(l => !l.Items.Any(i => i.Course == first.Course && i.Kind == ItemKind.ToMusic)).Count() + 1;
        missed = Ticked(text, plan, lessons, i => i.Course == first.Course && i.Kind == ItemKind.Teach ? 1 : 4);
        var anew = Terms.Plan(missed);
        PlanChecker.Check(anew);
        Assert.Empty(anew.Collisions);
        var told = anew.Case.Told.Count;
        Assert.InRange(anew.Changes.Select(c => (c.Course, c.Lesson)).Distinct().Count(), 1, told / 4);
        Assert.True(anew.Changes.Count(c => c.Course != first.Course && c.Bites.Count > 0) <= 3, "other dances stay where they were told");
    }

    [Fact]
    public void A_lesson_that_is_ticked_again_replaces_its_line_and_other_lines_stay()
    {
        var text = Terms.Demo + "\n> kept\nReached\n12 January 19:00: Second Gatepost again\n> kept too\n";
        var term = Terms.Case(text);
        var again = TermWriting.Reached(text, term, term.Lessons[0], [(term.Course("Dinner Bell Six"), [0, 1, 3], 3)]);
        Assert.Contains("Dinner Bell Six bites 1-2+4 went with help", again);
        Assert.DoesNotContain("Second Gatepost again", again);
        Assert.Equal(2, again.Split("> kept").Length - 1);
        Assert.Empty(Terms.Case(again).Problems);
        Assert.Equal([0, 1, 3], Assert.Single(Terms.Case(again).Reached).Bites);
    }

    private static string Taught(LessonPlan lesson) => $"{lesson.Lesson.Index}: {string.Join(" ", lesson.Items.Where(i => i.Kind == ItemKind.Teach).Select(i => $"{i.Course}.{i.Bite}"))}";
}
