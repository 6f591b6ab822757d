using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Sheets;
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
            // Practice is no promise.
            Assert.Subset(now.Items.Select(i => i.Course).ToHashSet(), before.Items.Where(i => i.Kind != ItemKind.Practice).Select(i => i.Course).ToHashSet());
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
    public void What_was_ticked_can_be_taken_back_and_leaves_no_trace()
    {
        var (text, plan) = Told.Value;
        var once = Ticked(text, plan, 1, _ => 4);
        var twice = Ticked(text, plan, 2, _ => 4);
        var term = Terms.Case(twice);
        Assert.Equal([plan.Lessons[1].Lesson, plan.Lessons[0].Lesson], term.Over);
        Assert.Equal(once, TermWriting.NotReached(twice, term, plan.Lessons[1].Lesson));
        Assert.Equal(text, TermWriting.NotReached(once, Terms.Case(once), plan.Lessons[0].Lesson));
        // Also where nothing was told, and with a note under the heading, which stays.
        Assert.Equal(Terms.Demo, TermWriting.NotReached(TermWriting.Reached(Terms.Demo, Terms.Case(Terms.Demo), plan.Lessons[0].Lesson, []), Terms.Case(Terms.Demo + "\nReached\n12 January 2027 19:00: nothing\n"), plan.Lessons[0].Lesson));
        var noted = Terms.Demo + "\nReached\n> It snowed.\n12 January 19:00: nothing\n";
        Assert.Equal(Terms.Demo + "\nReached\n> It snowed.\n", TermWriting.NotReached(noted, Terms.Case(noted), plan.Lessons[0].Lesson));
    }

    private const string Weeks = "Short\nFrom: 12 January 2027\nUntil: 30 March 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\nHen House Hurry\nWet Meadow Waltz\n"
        + "Told\n12 January: Hen House Hurry bites 1-3\n19 January: Hen House Hurry bites 4-6\n26 January: Hen House Hurry again, Wet Meadow Waltz bites 1-2\n2 February: Hen House Hurry again, Wet Meadow Waltz bites 3-4\n";

    [Fact]
    public void After_a_missed_evening_a_dance_that_is_begun_goes_on_in_the_next_and_what_was_told_for_it_stays()
    {
        var plan = Terms.Plan(Weeks + "Reached\n12 January: Hen House Hurry bites 1-3 went well\n19 January: nothing\n");
        PlanChecker.Check(plan);
        var (hurry, waltz) = (plan.Case.Course("Hen House Hurry").Index, plan.Case.Course("Wet Meadow Waltz").Index);
        // Bites 1 and 2 of the waltz leave room for one bite more, though not for a comfortable one.
        Assert.Equal([3], Bites(plan, hurry, new(2027, 1, 26)));
        Assert.Equal([0, 1], Bites(plan, waltz, new(2027, 1, 26)));
        Assert.Equal([2, 3], Bites(plan, waltz, new(2027, 2, 2)));
    }

    [Fact]
    public void What_was_told_of_a_missed_evening_and_not_reached_is_named_among_the_changes()
    {
        var plan = Terms.Plan(Weeks + "Reached\n12 January: Hen House Hurry bites 1-3 went well\n19 January: Hen House Hurry bite 4 went well\n");
        var says = plan.Changes.Select(c => LessonWords.Of(plan.Case, c)).ToList();
        Assert.StartsWith("Hen House Hurry C1", says[0]);
        Assert.Contains("told for 19 January and not reached, now on ", says[0]);
        // What was reached, or is told anew, is no change.
        Assert.DoesNotContain(says, s => s.Contains(" B2", StringComparison.Ordinal));
        var anew = TermWriting.Told(Weeks, plan);
        Assert.Empty(Terms.Plan(anew + "Reached\n12 January: Hen House Hurry bites 1-3 went well\n19 January: Hen House Hurry bite 4 went well\n").Changes);
    }

    private static List<int> Bites(TermPlan plan, int course, DateOnly day) =>
        [.. plan.Lessons.Where(l => l.Lesson.Day == day).SelectMany(l => l.Items).Where(i => i.Course == course && i.Kind == ItemKind.Teach).Select(i => i.Bite!.Value)];

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
