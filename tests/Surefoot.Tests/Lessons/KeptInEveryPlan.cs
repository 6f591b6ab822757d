using CsCheck;
using Surefoot.Lessons;
using Surefoot.Lessons.Planning;

namespace Surefoot.Tests.Lessons;

/// <summary>What has to hold holds in every plan, checked by <see cref="PlanChecker"/>, which knows nothing of how plans are made.</summary>
public class KeptInEveryPlan
{
    private static readonly string[] Levels = ["beginners", "improvers", "intermediates", "everybody"];
    private static readonly string[] Kinds = ["line dances", "couples", "line dances and couples"];
    private static readonly string[] Days = ["Monday", "Tuesday", "Thursday"];

    /// <summary>A term with one to three evenings a week, a few dances for them, wish dates, orders and known dances, some of them too much.</summary>
    private static readonly Gen<string> SomeTerm =
        from weeks in Gen.Int[3, 8]
        from slots in Gen.Select(Gen.Int[0, 2], Gen.Int[18, 21], Gen.Int[2, 4].Select(n => n * 15), Gen.Int[0, 3], Gen.Int[0, 2]).Array[1, 3]
        from dances in Gen.Select(Gen.Int[0, 20], Gen.Int[0, 9], Gen.Int[0, 6]).Array[1, 6]
        from known in Gen.Select(Gen.Int[0, 20], Gen.Int[1, 60]).Array[0, 3]
        from closed in Gen.Int[0, 40]
        select Written(weeks, slots, dances, known, closed);

    private static string Written(int weeks, (int Day, int Hour, int Minutes, int Level, int Kind)[] slots, (int Dance, int By, int After)[] dances, (int Dance, int Ago)[] known, int closed)
    {
        var from = new DateOnly(2027, 1, 11);
        var text = $"Some term\nFrom: {DayWords.Full(from)}\nUntil: {DayWords.Full(from.AddDays((7 * weeks) - 1))}\n";
        if (closed < 7 * weeks) text += $"Closed: {DayWords.Full(from.AddDays(closed))}\n";
        text += "Evenings\n" + string.Concat(slots.DistinctBy(s => (s.Day, s.Hour)).Select(s => $"{Days[s.Day]} {s.Hour}:00, {s.Minutes} minutes, {Levels[s.Level]}, {Kinds[s.Kind]}\n"));
        var levels = slots.Select(s => Levels[s.Level]).ToList();
        var named = new List<string>();
        text += "Dances\n";
        foreach (var (dance, by, after) in dances.DistinctBy(d => d.Dance))
        {
            var title = Terms.Dances[dance].Title;
            text += $"{title}, for {levels[dance % levels.Count]}{(by < weeks ? $", by {DayWords.Full(from.AddDays((7 * by) + 4))}" : "")}{(after < named.Count ? $", after {named[after]}" : "")}\n";
            named.Add(title);
        }

        var learned = dances.Select(d => d.Dance).ToHashSet();
        return text + "Known\n" + string.Concat(known.DistinctBy(k => k.Dance).Where(k => !learned.Contains(k.Dance))
            .Select(k => $"{Terms.Dances[k.Dance].Title}, {levels[0]}{(k.Ago < 50 ? $", danced {DayWords.Full(from.AddDays(-k.Ago))}" : "")}\n"));
    }

    [Fact]
    public void Every_plan_of_a_random_term_keeps_what_it_has_to() => SomeTerm.Sample(text => PlanChecker.Check(Terms.Plan(text)), iter: 40, threads: 1, print: t => t);

    [Fact]
    public void The_demo_term_keeps_what_it_has_to()
    {
        var plan = Terms.Plan(Terms.Demo);
        Assert.Empty(plan.Collisions);
        Assert.Empty(plan.LeftOut);
        PlanChecker.Check(plan);
    }

    [Fact]
    public void What_is_new_of_a_dance_is_evened_out_over_the_lessons_it_takes()
    {
        // Forty counts, eight in a bite: more than is comfortable in one lesson.
        var plan = Terms.Plan("Short\nFrom: 12 January 2027\nUntil: 30 March 2027\nEvenings\nTuesday 20:00, 60 minutes, improvers, couples\nDances\nFive Barns\n");
        PlanChecker.Check(plan);
        Assert.Equal([2, 3], plan.Lessons.Select(l => l.Items.Count(i => i.Kind == ItemKind.Teach)).Where(n => n > 0).Order());
    }

    [Fact]
    public void A_term_that_is_under_way_keeps_what_it_has_to()
    {
        var plan = Terms.Plan(Terms.Demo + "\nReached\n12 January 19:00: Second Gatepost again went 2, Dinner Bell Six bites 1-3 went well\n12 January 20:00: Five Barns bites 1-2 went 3, Five Barns bite 3 went badly\n19 January 19:00: Dinner Bell Six bite 4 went 5\n");
        Assert.Empty(plan.Case.Problems);
        PlanChecker.Check(plan);
        // What did not pass is taught again, what passed is not.
        var barns = plan.Case.Course("Five Barns");
        Assert.Equal([true, true, false, false, false], barns.Progress.Done);
        Assert.Equal([2, 3, 4], plan.Lessons.SelectMany(l => l.Items).Where(i => i.Course == barns.Index && i.Kind == ItemKind.Teach).Select(i => i.Bite!.Value));
        Assert.Equal(new DateOnly(2027, 1, 19), plan.Case.Course("Dinner Bell Six").Progress.Last);
    }

    [Fact]
    public void The_same_term_gives_the_same_plan_every_time()
    {
        var first = Terms.Plan(Terms.Demo);
        for (var i = 0; i < 3; i++) Assert.Equal(first.Lessons, Terms.Plan(Terms.Demo).Lessons);
    }
}
