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
        Assert.InRange(anew.Changes.Select(c => (c.Course, c.Day)).Distinct().Count(), 1, told / 4);
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
        var says = LessonWords.Changes(plan).ToList();
        Assert.StartsWith("Hen House Hurry C1", says[0]);
        Assert.Contains("told for 19 January and not reached, now on ", says[0]);
        // What was reached, or is told anew, is no change.
        Assert.DoesNotContain(says, s => s.Contains(" B2", StringComparison.Ordinal));
        var anew = TermWriting.Told(Weeks, plan);
        Assert.Empty(Terms.Plan(anew + "Reached\n12 January: Hen House Hurry bites 1-3 went well\n19 January: Hen House Hurry bite 4 went well\n").Changes);
    }

    [Fact]
    public void A_day_that_is_closed_after_people_were_told_is_no_slip_and_says_where_everything_goes()
    {
        var plan = Terms.Plan(Weeks.Replace("Evenings", "Closed: 26 January\nEvenings", StringComparison.Ordinal));
        Assert.Empty(plan.Case.Problems);
        PlanChecker.Check(plan);
        var closed = Assert.Single(LessonWords.Changes(plan), s => s.StartsWith("26 January is closed now: ", StringComparison.Ordinal));
        Assert.Contains("Wet Meadow Waltz A B goes to 2 February", closed);
        Assert.Contains("Hen House Hurry again ", closed);
        // The same where the day lies before what was reached since.
        var later = Terms.Plan(Weeks.Replace("Evenings", "Closed: 19 January\nEvenings", StringComparison.Ordinal) + "Reached\n12 January: Hen House Hurry bites 1-3 went well\n26 January: Hen House Hurry bites 4-5 went well\n");
        Assert.Empty(later.Case.Problems);
        Assert.Contains(LessonWords.Changes(later), s => s.StartsWith("19 January is closed now: Hen House Hurry C2 goes to ", StringComparison.Ordinal));
    }

    [Fact]
    public void An_evening_at_another_hour_or_on_another_day_is_no_slip_either()
    {
        var told = Weeks.Replace("January:", "January 19:00:", StringComparison.Ordinal).Replace("February:", "February 19:00:", StringComparison.Ordinal);
        var hour = Terms.Plan(told.Replace("Tuesday 19:00", "Tuesday 19:30", StringComparison.Ordinal));
        Assert.Empty(hour.Case.Problems);
        Assert.DoesNotContain(hour.Changes, c => c.Cause != ChangeCause.ComesIn);
        var day = Terms.Plan(told.Replace("Tuesday 19:00", "Wednesday 19:00", StringComparison.Ordinal));
        Assert.Empty(day.Case.Problems);
        Assert.Contains(LessonWords.Changes(day), s => s.StartsWith("The lesson of 12 January is not in the term any more: Hen House Hurry A1 A2 B1 goes to ", StringComparison.Ordinal));
    }

    [Fact]
    public void A_dance_that_is_due_and_for_which_there_is_time_is_danced_again_and_not_for_practice()
    {
        // Told late, when it will have been finished late: the second of the two lessons, though the first has time.
        var plan = Terms.Plan("Short\nFrom: 12 January 2027\nUntil: 30 March 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nKnown\nSecond Gatepost\nDances\nDinner Bell Six\n"
            + "Told\n12 January: Second Gatepost again, Dinner Bell Six bites 1-4\n19 January: Dinner Bell Six again\n26 January: Dinner Bell Six again\n2 February: Dinner Bell Six again, Second Gatepost again\nReached\n12 January: nothing\n");
        PlanChecker.Check(plan);
        var bell = plan.Case.Course("Dinner Bell Six").Index;
        var finished = plan.Lessons.First(l => l.Items.Any(i => i.Course == bell && i.Kind == ItemKind.ToMusic));
        Assert.Contains(plan.Lessons[plan.Lessons.ToList().IndexOf(finished) + 1].Items, i => i.Course == bell && i.Kind == ItemKind.Review);
        // A known dance that was to be danced on the missed evening is danced in the next one with time, and its day is known from then on.
        var gatepost = plan.Case.Course("Second Gatepost").Index;
        var all = plan.Lessons.SelectMany(l => l.Items.Select(i => (l.Lesson.Day, Item: i))).Where(i => i.Item.Course == gatepost).ToList();
        Assert.Equal((new DateOnly(2027, 1, 19), ItemKind.Review), (all[0].Day, all[0].Item.Kind));
        Assert.DoesNotContain(all.Skip(1), i => i.Item.Reason.Contains("is not said", StringComparison.Ordinal));
        Assert.Contains("Second Gatepost again: told for 12 January and not reached, now on 19 January.", LessonWords.Changes(plan));
    }

    [Fact]
    public void What_comes_in_that_nobody_was_told_is_named()
    {
        var plan = Terms.Plan(Weeks + "Reached\n12 January: Hen House Hurry bites 1-2 went well, Hen House Hurry bite 3 went badly\n");
        PlanChecker.Check(plan);
        Assert.Contains("New on 19 January, and not told: Hen House Hurry B1 taught again, because on 12 January it did not stay.", LessonWords.Changes(plan));
        var known = Terms.Plan(Weeks.Replace("Dances\n", "Known\nSecond Gatepost, danced 11 January\nDances\n", StringComparison.Ordinal));
        Assert.Contains(LessonWords.Changes(known), s => s.StartsWith("New on 26 January, and not told: ", StringComparison.Ordinal) && s.Contains("Second Gatepost again", StringComparison.Ordinal));
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
