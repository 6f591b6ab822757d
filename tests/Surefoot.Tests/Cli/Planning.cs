using System.Text.Json;
using Json.Schema;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Cli;

/// <summary>surefoot term, as somebody types it.</summary>
public class Planning
{
    private static string Demo => Root.At("demo", "winter-at-the-lantern-hall.term");

    private const string Small = "Small\nFrom: 12 January 2027\nUntil: 26 January 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\nDinner Bell Six, by 26 January\n";

    private static Asked Ask(string text, params string[] more)
    {
        using var notebook = new Asked.Notebook();
        return Asked.For(["term", notebook.Write("small.term", text), "--dances", Root.At("demo", "dances", "line"), .. more]);
    }

    [Fact]
    public void The_plan_follows_its_schema()
    {
        var asked = Asked.For("term", Demo, "--json");
        Assert.Equal(0, asked.Exit);
        using var json = JsonDocument.Parse(asked.Out);
        var result = JsonSchema.FromFile(Root.At("docs", "term.schema.json")).Evaluate(json.RootElement, new() { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join("\n", (result.Details ?? []).Where(d => d.HasErrors).SelectMany(d => d.Errors!.Values)));
        Assert.Equal(28, json.RootElement.GetProperty("lessons").GetArrayLength());
        // The dances lie in folders below the term.
        Assert.Contains("Five Barns", asked.Out);
    }

    [Fact]
    public void The_plan_is_told_lesson_by_lesson_with_its_minutes_and_reasons()
    {
        var asked = Ask(Small);
        Assert.Equal((0, ""), (asked.Exit, asked.Err));
        Assert.Contains("Tuesday 12 January, 19:00: beginners, line dances, 45 minutes\n  19:00   5 min  warm up\n", asked.Out);
        Assert.Contains("bite 1: A, 6 new counts", asked.Out);
        Assert.Contains("by the review rule (SM-2) it is due 1 day later", asked.Out);
    }

    [Fact]
    public void What_is_wrong_is_told_with_its_line_and_place()
    {
        var asked = Ask(Small + "Diner Bell Six\n");
        Assert.Equal(1, asked.Exit);
        Assert.Contains("error  dance-missing   ", asked.Err);
        Assert.Contains("small.term, line 8\n  Diner Bell Six\n  ^^^^^^^^^^^^^^\n", asked.Err);
        Assert.Contains("Did you mean: Dinner Bell Six?", asked.Err);
    }

    [Fact]
    public void A_term_that_does_not_say_when_it_is_cannot_be_planned()
    {
        var asked = Ask("Small\n");
        Assert.Equal((2, ""), (asked.Exit, asked.Out));
        Assert.Contains("The term does not say when it begins and ends.", asked.Err);
    }

    [Fact]
    public void Lesson_sheets_the_overview_and_the_calendar_come_out_as_what_they_are()
    {
        Assert.StartsWith("Tuesday 12 January, beginners\n====", Ask(Small, "--evening", "12 January", "--text").Out);
        Assert.StartsWith("<!DOCTYPE html>", Ask(Small, "--evening", "2027-01-12").Out);
        Assert.StartsWith("<!DOCTYPE html>", Ask(Small, "--overview").Out);
        Assert.StartsWith("BEGIN:VCALENDAR", Ask(Small, "--ics").Out);
    }

    [Fact]
    public void A_day_without_a_lesson_says_when_the_next_one_is()
    {
        var asked = Ask(Small, "--evening", "13 January");
        Assert.Equal((2, "No lesson is to come on Wednesday 13 January. The next one is on Tuesday 19 January.\n"), (asked.Exit, asked.Err));
    }

    [Fact]
    public void What_people_are_told_is_written_into_the_file_and_nothing_else_changes()
    {
        using var notebook = new Asked.Notebook();
        var file = notebook.Write("small.term", Small);
        Assert.Equal(0, Asked.For("term", file, "--dances", Root.At("demo", "dances", "line"), "--tell").Exit);
        var text = File.ReadAllText(file);
        Assert.StartsWith(Small + "\nTold\n12 January 2027 19:00: ", text);
        Assert.Equal(0, Asked.For("term", file, "--dances", Root.At("demo", "dances", "line"), "--tell").Exit);
        Assert.Equal(text, File.ReadAllText(file));
    }

    [Fact]
    public void Only_one_thing_can_be_asked_for_at_once() =>
        Assert.Equal("Choose one of --evening, --overview, --ics, --json and --tell.\n", Ask(Small, "--ics", "--json").Err);
}
