using AngleSharp.Html.Parser;
using Surefoot.Dance.Insight;
using Surefoot.Draw;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Sheets;
using Surefoot.Lessons.Stumbling;
using Surefoot.Lessons.Text;

namespace Surefoot.Tests.Lessons;

/// <summary>What stands on a lesson's sheet and on the overview.</summary>
public class SheetsOfALesson
{
    private static readonly Lazy<TermPlan> Demo = new(() => Terms.Plan(Terms.Demo));

    private static List<LessonSheet> Sheets => [.. Demo.Value.Lessons.Select(l => LessonSheet.Of(Demo.Value, l, new()))];

    [Fact]
    public void A_sheet_has_everything_of_its_lesson_in_order_with_its_minutes()
    {
        foreach (var (sheet, lesson) in Sheets.Zip(Demo.Value.Lessons))
        {
            Assert.Equal(lesson.Items.Select(i => (i.Kind, i.Minutes)), sheet.Stations.Select(s => (s.Kind, s.Minutes)));
            Assert.Equal(Surefoot.Lessons.DayWords.Time(lesson.Lesson.At), sheet.Stations[0].Clock);
            Assert.Contains("Warm up", sheet.Care);
        }
    }

    [Fact]
    public void Every_bite_has_its_counts_in_words_and_says_how_to_show_and_add_it()
    {
        var taught = Sheets.SelectMany(s => s.Stations).Where(s => s.Kind == ItemKind.Teach).ToList();
        Assert.NotEmpty(taught);
        foreach (var station in taught)
        {
            Assert.NotEmpty(station.Rows);
            Assert.Contains(station.Advice, a => a.Word == "Put together");
            Assert.Contains(station.Advice, a => a.Word == "Show it");
        }

        // Somewhere the roles have words of their own.
        Assert.Contains(taught, s => s.Rows.Any(r => r.Both is null && r.Lead.Length > 0 && r.Follow.Length > 0));
    }

    [Fact]
    public void A_bite_has_its_name_behind_its_counts_where_its_part_has_several()
    {
        var headings = Sheets.SelectMany(s => s.Stations).Where(s => s.Kind == ItemKind.Teach).Select(s => s.Heading).ToList();
        Assert.Contains("Hen House Hurry: Part A, counts 1 to 8 (A1)", headings);
        Assert.Contains("Five Barns: Part A, counts 1 to 8", headings);
    }

    [Fact]
    public void Bites_are_added_on_one_by_one()
    {
        var plan = Demo.Value;
        var barns = plan.Case.Course("Five Barns");
        var lines = plan.Lessons.SelectMany(l => LessonSheet.Of(plan, l, new()).Stations.Zip(l.Items)).Where(p => p.Second.Course == barns.Index && p.Second.Kind == ItemKind.Teach)
            .Select(p => p.First.Advice.First(a => a.Word == "Put together").Items[0]).ToList();
        Assert.Equal(["A until it goes by itself.", "B, then A B.", "C, then B C, then A B C.", "D, then C D, then A B C D.", "E, then D E, then A B C D E."], lines);
    }

    [Fact]
    public void Learners_stumble_at_joints_half_counts_turns_and_hand_changes()
    {
        // Kettle Lid Shuffle, part B, counts 1 to 8: "1&2 Triple ½ right under right hands, release left hands".
        var score = Terms.Dances.First(d => d.Title == "Kettle Lid Shuffle").Score;
        var bite = TeachingBite.Of(score, []).First(b => b.Name == "B");
        var said = Stumbles.Of(score, bite).Select(s => $"{s.Counts}: {s.Says}").ToList();
        Assert.Contains("1&2: half-counts", said);
        Assert.Contains("1: the hands change", said);
        Assert.Contains("5: the hands change", said);
        Assert.Contains(said, s => s.EndsWith("follow: the turn, ½ right", StringComparison.Ordinal));
        Assert.Contains(said, s => s.StartsWith("into 1: ", StringComparison.Ordinal));
        Assert.DoesNotContain(said, s => s.Contains("lead: the turn", StringComparison.Ordinal));
    }

    [Fact]
    public void What_the_call_sheet_says_of_a_bite_stands_with_it()
    {
        foreach (var lesson in Demo.Value.Lessons)
        {
            foreach (var (item, station) in lesson.Items.Zip(LessonSheet.Of(Demo.Value, lesson, new()).Stations))
            {
                if (item.Kind != ItemKind.Teach) continue;
                var taught = Demo.Value.Case.Courses[item.Course!.Value];
                var stretch = taught.Bites[item.Bite!.Value].Stretches[0];
                if (stretch.Section is not { } section) continue;
                var from = taught.Dance.Score.Sections[section].Start.Whole + stretch.From;
                var calls = taught.Dance.Calls;
                var wanted = calls.Calls.Count(c => c.Step.Whole >= from && c.Step.Whole < from + stretch.Counts) + (from == 1 ? calls.Opening.Count : 0);
                Assert.Equal(wanted, station.Advice.FirstOrDefault(a => a.Word == "Call")?.Items.Count ?? 0);
            }
        }
    }

    [Fact]
    public void A_call_for_one_dancer_says_for_whom_it_is_and_one_for_both_does_not()
    {
        var calls = Demo.Value.Lessons.SelectMany(l => LessonSheet.Of(Demo.Value, l, new() { LeadWord = "Man", FollowWord = "Lady" }).Stations).SelectMany(s => s.Advice).Where(a => a.Word == "Call").SelectMany(a => a.Items).ToList();
        Assert.Contains(calls, c => c.StartsWith("Man: ", StringComparison.Ordinal));
        Assert.Contains(calls, c => c.StartsWith("Lady: ", StringComparison.Ordinal));
        Assert.Contains(calls, c => !c.Contains(": ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_minutes_of_a_sheet_add_up_to_its_lesson_and_little_of_it_is_free()
    {
        foreach (var (sheet, lesson) in Sheets.Zip(Demo.Value.Lessons)) Assert.Equal(lesson.Lesson.Slot.Minutes, sheet.Stations.Sum(s => s.Minutes));
        var free = Sheets.SelectMany(s => s.Stations).Where(s => s.Kind == ItemKind.Spare).ToList();
        Assert.All(free, s => Assert.StartsWith($"{s.Minutes} minute", s.Heading));
        // Of the minutes that reviews and teaching leave more than half are danced.
        var used = Sheets.SelectMany(s => s.Stations).Where(s => s.Kind is ItemKind.OnceMore or ItemKind.Practice).Sum(s => s.Minutes);
        Assert.True(used > free.Sum(s => s.Minutes), $"{used} minutes are used, {free.Sum(s => s.Minutes)} are free");
    }

    [Fact]
    public void A_lesson_that_is_over_has_a_sheet_of_what_was_done()
    {
        var plan = Terms.Plan(Terms.Demo + "\nReached\n12 January 19:00: Second Gatepost again went badly, Dinner Bell Six bites 1-2 went well\n19 January 19:00: Dinner Bell Six bites 3-4 went perfectly\n26 January 19:00: nothing\n");
        var first = LessonSheet.Of(plan, plan.On(new(2027, 1, 12))[0], new());
        Assert.Equal("Tuesday 12 January, beginners: what was done", first.Title);
        Assert.StartsWith("12 January 2027 from 19:00 to 19:45: Second Gatepost again; Dinner Bell Six was begun; ", first.Opening);
        Assert.Equal([ItemKind.WarmUp, ItemKind.Review, ItemKind.Show, ItemKind.Teach, ItemKind.Teach], first.Stations.Select(s => s.Kind));
        Assert.Contains("It went badly.", first.Stations[1].Says);
        var second = LessonSheet.Of(plan, plan.On(new(2027, 1, 19))[0], new());
        Assert.Equal([ItemKind.WarmUp, ItemKind.Recap, ItemKind.Teach, ItemKind.Teach, ItemKind.ToMusic], second.Stations.Select(s => s.Kind));
        // What they had then, and not what they have since.
        var names = plan.Case.Course("Dinner Bell Six").Bites.Select(b => b.Name).ToList();
        Assert.Contains(second.Stations[1].Advice, a => a.Items.Contains($"{names[0]} {names[1]}: once counted slowly, once to music."));
        Assert.Contains("nothing is ticked", LessonSheet.Of(plan, plan.On(new(2027, 1, 26))[0], new()).Opening);
    }

    [Fact]
    public void Two_figures_for_the_same_dance_on_one_sheet_say_why_they_differ()
    {
        var plan = Demo.Value;
        foreach (var (lesson, sheet) in plan.Lessons.Zip(Sheets))
        {
            foreach (var (item, station) in lesson.Items.Zip(sheet.Stations).Where(p => p.First.Kind == ItemKind.Show))
            {
                var course = plan.Case.Courses[item.Course!.Value];
                var page = course.Dance.Score.Roles.Max(r => LearningLoad.Of(course.Dance.Score, r.Role).New);
                var says = string.Join(' ', station.Says);
                Assert.Contains($"{course.NewCounts} new counts to teach", says);
                Assert.Equal(page != course.NewCounts, says.Contains($"(its page has {page} for one dancer", StringComparison.Ordinal));
            }
        }

        // Somewhere they do differ.
        Assert.Contains(Sheets.SelectMany(s => s.Stations).SelectMany(s => s.Says), s => s.Contains("its page has", StringComparison.Ordinal));
    }

    [Fact]
    public void The_songs_that_are_kept_with_a_dance_stand_where_it_is_danced_to_music()
    {
        var dances = Terms.Dances.Select(d => d with { Songs = [new($"Old Porch Reel of {d.Title}", "", null), new("Second Song", "", null), new("Third", "", null), new("Fourth", "", null)] }).ToList();
        var plan = Terms.Plan(TermCase.Of(TermPage.Read(Terms.Demo), dances)!);
        var music = plan.Lessons.SelectMany(l => LessonSheet.Of(plan, l, new()).Stations.Where(s => s.Kind is ItemKind.Review or ItemKind.Show)).ToList();
        Assert.NotEmpty(music);
        Assert.All(music, s => Assert.Contains(s.Advice, a => a.Word == "Music" && a.Items[0].Contains("Old Porch Reel of", StringComparison.Ordinal) && !a.Items[0].Contains("Fourth", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_song_has_its_own_tempo_and_slow_music_is_a_share_of_it()
    {
        var dances = Terms.Dances.Select(d => d with { Songs = [new("Porch Light Reel", "", 110), new("Low Bridge", "The Lanterns", 104.5)] }).ToList();
        var plan = Terms.Plan(TermCase.Of(TermPage.Read(Terms.Demo), dances)!);
        var stations = plan.Lessons.SelectMany(l => LessonSheet.Of(plan, l, new()).Stations).ToList();
        Assert.Contains(stations, s => s.Kind == ItemKind.Show && s.Advice.Any(a => a.Word == "Music" && a.Items[0].EndsWith("Porch Light Reel (110) or Low Bridge (The Lanterns, 104.5)", StringComparison.Ordinal)));
        Assert.All(stations.Where(s => s.Kind == ItemKind.ToMusic), s => Assert.Contains(s.Advice, a => a.Word == "Tempo" && a.Items[0] == "First Porch Light Reel slowed to 80 to 90 % of its tempo (88 to 99 counts a minute), then as it is (110)."));
    }

    [Fact]
    public void A_tag_says_what_is_called_for_it_and_what_it_goes_on_to()
    {
        var tag = Sheets.SelectMany(s => s.Stations).First(s => s.Heading.StartsWith("Both Footbridges: Tag", StringComparison.Ordinal));
        Assert.Equal(["tag (just before)", "lock forward (on 3)"], tag.Advice.First(a => a.Word == "Call").Items);
    }

    [Fact]
    public void On_the_screen_a_bite_leads_to_its_counts_on_the_floor_and_a_dance_to_its_page()
    {
        var plan = Terms.Plan(TermCase.Of(TermPage.Read(Terms.Demo), [.. Terms.Dances.Select((d, i) => d with { Page = 100 + i })])!);
        var page = plan.Case.Course("Weathervane").Dance.Page;
        var stations = plan.Lessons.SelectMany(l => LessonSheet.Of(plan, l, new()).Stations).ToList();
        Assert.All(stations.Where(s => s.Kind == ItemKind.Teach), s => Assert.Equal(2, s.Ways.Count));
        Assert.Equal([$"/on-the-floor/{page}#1-4", $"/dance/{page}"], stations.First(s => s.Heading.StartsWith("Weathervane: Part A", StringComparison.Ordinal)).Ways.Select(w => w.Address));
        // A tag is counted on behind the repeat.
        Assert.EndsWith("#33-36", stations.First(s => s.Heading.StartsWith("Both Footbridges: Tag", StringComparison.Ordinal)).Ways[0].Address);
        Assert.Contains("@media print{.ways{display:none}}", LessonHtml.Write([LessonSheet.Of(plan, plan.Lessons[0], new())], new()));
        // In a folder there is no studio to lead to.
        Assert.All(Sheets.SelectMany(s => s.Stations), s => Assert.Empty(s.Ways));
    }

    [Fact]
    public void What_was_done_stands_in_the_overview_as_what_is_to_come_does_and_says_so()
    {
        var plan = Terms.Plan(Terms.Demo + "\nReached\n12 January 20:00: Kettle Lid Shuffle bites 1-5 went well\n");
        var html = new HtmlParser().ParseDocument(OverviewHtml.Write(plan, new()));
        var cell = html.QuerySelectorAll("tbody tr").First(r => r.TextContent.StartsWith("Kettle Lid", StringComparison.Ordinal)).QuerySelector("td")!;
        Assert.Equal(("past on end", "A1–C2"), (cell.ClassName, cell.TextContent));
        Assert.Contains("grey what was done", html.QuerySelector(".key")!.TextContent);
        Assert.Equal(plan.Case.Lessons.Count, html.QuerySelectorAll(".days p").Length);
        Assert.Contains("Kettle Lid Shuffle, all of it", html.QuerySelector(".days li")!.TextContent);
        // Before anything is done there is nothing to explain.
        Assert.DoesNotContain("grey", new HtmlParser().ParseDocument(OverviewHtml.Write(Demo.Value, new())).QuerySelector(".key")!.TextContent);
    }

    [Fact]
    public void A_bite_of_a_dance_has_the_counts_that_are_to_learn_as_the_dance_itself_has_them()
    {
        // The sum over the bites is what the dance has to learn by the role that has more; a bite's rest of a mirror may cost either role.
        foreach (var dance in Terms.Dances)
        {
            var bites = TeachingBite.Of(dance.Score, []);
            var loads = dance.Score.Roles.Select(r => LearningLoad.Of(dance.Score, r.Role).New).ToList();
            var extras = dance.Score.Extras.DistinctBy(e => e.Part).Sum(e => dance.Score.Parts[e.Part].Length.Ceiling);
            Assert.InRange(bites.Sum(b => b.New) - extras, loads.Max(), loads.Sum());
            // Every count of the repeat is in one bite.
            Assert.Equal(dance.Score.Counts.Ceiling + extras, bites.Sum(b => b.Counts));
        }
    }

    [Fact]
    public void The_pages_for_the_printer_say_what_the_text_says()
    {
        var html = new HtmlParser().ParseDocument(LessonHtml.Write(Sheets, new()));
        var text = LessonText.Write(Sheets);
        Assert.Equal(Sheets.Count, html.QuerySelectorAll("section.lesson").Length);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 78));
        var words = System.Text.RegularExpressions.Regex.Replace(text, @"\s+", " ");
        foreach (var heading in html.QuerySelectorAll(".run h2")) Assert.Contains(heading.TextContent, words);
    }

    [Fact]
    public void The_overview_has_every_dance_and_every_lesson()
    {
        var plan = Demo.Value;
        var html = new HtmlParser().ParseDocument(OverviewHtml.Write(plan, new()));
        Assert.Equal(plan.Case.Courses.Select(c => c.Dance.Title).Order(), html.QuerySelectorAll("tbody th").Select(t => t.FirstChild!.TextContent.Trim()).Order());
        Assert.Equal(plan.Lessons.Count, html.QuerySelectorAll(".days p").Length);
        Assert.Equal(plan.Lessons.Sum(l => l.Items.Count(i => i.Kind == ItemKind.Review)), html.QuerySelectorAll("td.again").Length);
        Assert.Equal(plan.Lessons.Sum(l => l.Items.Count(i => i.Kind == ItemKind.ToMusic)), html.QuerySelectorAll("td.end").Length);
    }
}
