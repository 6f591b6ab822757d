using Bunit;
using Surefoot.Library;
using Surefoot.Transcribe;
using Surefoot.Web.Components.Parts;
using Surefoot.Web.Pasting;

namespace Surefoot.Tests.Web.Parts;

/// <summary>A sheet that was read, line by line, and what has to be looked at.</summary>
public class SheetsRead : Part
{
    private static LineRead Line(int number, string text, LineKind kind, double sure = 1, string[]? became = null, string[]? assumed = null, string[]? unknown = null) =>
        new(number, text, kind, new(became ?? []), sure, new(assumed ?? []), new(unknown ?? []), 1, unknown is null ? 1 : 0);

    private static Transcript Read(LineRead[] lines, params Doubt[] doubts) => new("Gate Post\n", new(lines), new(doubts));

    private static List<string> Beside(Transcript read, NotebookSettings? settings = null) =>
        [.. read.Lines.Select(l => string.Join(" | ", LineSayings.Of(l, read.Doubts, settings ?? new()).Select(s => $"{s.Sign}: {s.Says}")))];

    [Fact]
    public void Every_line_says_how_sure_it_is_in_words()
    {
        var read = Read(
        [
            Line(1, "Gate Post", LineKind.Title),
            Line(2, "32 counts, couples", LineKind.Fact),
            Line(3, "", LineKind.Blank),
            Line(4, "SECTION 1", LineKind.Heading),
            Line(5, "1-4 Vine right, touch", LineKind.Steps),
            Line(6, "5-8 Walk, frobble", LineKind.Steps, 0.35, assumed: ["the left foot begins"], unknown: ["frobble"]),
            Line(7, "Smile!", LineKind.Remark),
        ]);
        Assert.Equal(
            [
                "clean: the title", "hint: read for facts of the dance, and kept as a note", "", "clean: a heading", "clean: sure",
                "error: not understood: frobble | warning: assumed: the left foot begins", "hint: kept as a note",
            ],
            Beside(read));
    }

    [Fact]
    public void What_a_line_says_itself_is_not_said_twice_and_what_does_not_work_is_said_beside_it()
    {
        var read = Read(
            [Line(1, "1-4 Walk, frobble", LineKind.Steps, 0.1, assumed: ["the left foot begins"], unknown: ["frobble"]), Line(2, "5-8 Step left", LineKind.Steps, 0.7)],
            new Doubt(DoubtKind.NotUnderstood, 1, "Not understood in \"frobble\": frobble."),
            new Doubt(DoubtKind.DoesNotWork, 2, "The lead's weight is on the left foot already."),
            new Doubt(DoubtKind.Assumed, 1, "Assumed: the left foot begins."));
        Assert.Equal(
            ["error: not understood: frobble | warning: assumed: the left foot begins", "error: The man's weight is on the left foot already."],
            Beside(read, new() { LeadWord = "Man" }));
    }

    [Fact]
    public void The_sheet_stands_as_it_stood_with_what_became_of_it()
    {
        var lines = Render<SheetLines>(p => p.Add(l => l.Read, Read([Line(1, "  1-4   Vine  right", LineKind.Steps, became: ["1-4  Vine right, touch L together"]), Line(2, Harm, LineKind.Remark)])));
        Assert.Equal(["  1-4   Vine  right", Harm], lines.FindAll(".stood").Select(s => s.TextContent));
        Assert.Equal("1-4  Vine right, touch L together", lines.Find("#line-1 .led-to").TextContent);
        NothingActs(lines);
    }

    [Fact]
    public void Each_thing_to_look_at_leads_to_its_line_and_what_is_unknown_is_asked_once()
    {
        var list = Drawn(Read(
            [Line(1, "1-4 Walk, frobble the gate", LineKind.Steps, 0.5, unknown: ["frobble", "gate"]), Line(2, "5-8 Frobble the Gate", LineKind.Steps, 0.5, unknown: ["Frobble", "Gate"])],
            new Doubt(DoubtKind.NotUnderstood, 1, "Not understood in \"frobble the gate\": frobble, gate.") { Phrase = "frobble the gate" },
            new Doubt(DoubtKind.NotUnderstood, 2, "Not understood in \"Frobble the Gate\": Frobble, Gate.") { Phrase = "Frobble the Gate" },
            new Doubt(DoubtKind.Assumed, 0, "The sheet names no hold. None was taken.")));
        Assert.Equal(["heading There are 3 things to look at", "link Line 1", "link Line 2", "text field “frobble the gate” (2 times) means", "button Read it again so"], Heard(list).Where(h => h != "text field"));
        Assert.Equal("/paste/abc#line-1", list.Find("a").GetAttribute("href"));
        Assert.Equal(["error", "error", "warning"], list.FindAll(".state").Select(s => s.ClassList[1]));
    }

    [Fact]
    public void Many_things_are_folded_away_after_the_gravest()
    {
        var list = Drawn(Read([], [.. Enumerable.Range(1, 9).Select(n => new Doubt(DoubtKind.Assumed, n, $"Thing {n}."))]));
        Assert.Equal(6, list.FindAll(".doubts > ul > li").Count);
        Assert.Equal(["disclosure and 3 more"], Heard(list).Where(h => h.StartsWith("disclosure", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_sheet_that_was_understood_says_so_and_asks_nothing()
    {
        Assert.Equal(["heading Everything was understood, and the feet come out"], Heard(Drawn(Read([Line(1, "1-4 Vine right", LineKind.Steps)]))));
    }

    [Fact]
    public void Other_words_are_taken_only_where_they_were_not_understood_and_stand_as_words()
    {
        var read = Read(
            [Line(1, "The Hop", LineKind.Title), Line(2, "1-2 hop, shop; HOP", LineKind.Steps, unknown: ["hop"]), Line(3, "3-4 hop", LineKind.Steps), Line(4, "5-6 hop!", LineKind.Steps, unknown: ["hop"])]);
        Assert.Equal(["hop"], OtherWords.Unknown(read));
        Assert.Equal(3, OtherWords.Count(read, "hop"));
        Assert.Equal("The Hop\n1-2 $1, shop; $1\n3-4 hop\n5-6 hop, changed", OtherWords.Replaced("The Hop\n1-2 hop, shop; HOP\n3-4 hop\n5-6 hop, changed", read, "hop", "$1"));
        Assert.Equal(0, OtherWords.Count(read, ""));
    }

    private IRenderedComponent<DoubtList> Drawn(Transcript read) => Render<DoubtList>(p => p.Add(d => d.Read, read).Add(d => d.Here, "/paste/abc"));
}
