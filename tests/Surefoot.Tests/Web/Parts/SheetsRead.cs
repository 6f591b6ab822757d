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
            [
                Line(1, "1-4 Walk, frobble the gate", LineKind.Steps, 0.5, unknown: ["frobble", "gate"]) with { Said = [Known("Walk", 1, "walk"), Unknown("frobble the gate", 1, 1)] },
                Line(2, "5-8 Frobble the Gate", LineKind.Steps, 0.5, unknown: ["Frobble", "Gate"]) with { Said = [Unknown("Frobble the Gate", 2, 1), Unknown("left foot wend", 2), Unknown("wend", 2) with { OneWord = true }] },
            ],
            new Doubt(DoubtKind.NotUnderstood, 1, "Not understood in \"frobble the gate\": frobble, gate.") { Phrase = "frobble the gate" },
            new Doubt(DoubtKind.NotUnderstood, 2, "Not understood in \"Frobble the Gate\": Frobble, Gate.") { Phrase = "Frobble the Gate" },
            new Doubt(DoubtKind.Assumed, 0, "The sheet names no hold. None was taken.")));
        Assert.Equal(
            [
                "heading There are 3 things to look at", "link Line 1", "link Line 2",
                "text field “frobble the gate” (2 times) means", "tick box on every sheet that says “frobble the gate” : the hall’s own word",
                "text field “wend” means", "tick box on every sheet that says “wend” : the hall’s own word", "button Read it again so",
            ],
            Heard(list).Where(h => h != "text field"));
        Assert.Equal("/paste/abc#line-1", list.Find("a").GetAttribute("href"));
        Assert.Equal(["error", "error", "warning"], list.FindAll(".state").Select(s => s.ClassList[1]));
    }

    [Fact]
    public void Every_phrase_of_a_line_says_what_it_was_read_as_and_has_a_box_for_what_it_should_be()
    {
        var line = Line(3, "1-4 touch, smile", LineKind.Steps) with { Said = [Known("touch", 3, "touch R") with { Elsewhere = 2 }, Known("smile", 3, ""), Known("touch, smile", 3, "touch R") with { WholeLine = true }] };
        var refused = new NotTaken(null, new Dictionary<string, string> { ["means-3-1"] = Harm, ["where-3-1"] = "always" }, new Dictionary<string, string> { ["means-3-1"] = "It names no step." });
        var boxes = Render<PhraseBoxes>(p => p.Add(b => b.Line, line).Add(b => b.Here, "/paste/abc").Add(b => b.Refused, refused));
        Assert.Equal(
            [
                "disclosure Correct line 3",
                "group “touch” reads as “touch R”", "text field should be", "choice taken so",
                "group “smile” was taken for no step", "text field should be", "choice taken so",
                "group The whole line reads as “touch R”", "text field should be", "choice taken so", "button Read it again so",
            ],
            Heard(boxes));
        Assert.Equal(["only here", "at all 3 places", "always: the hall’s own word"], boxes.FindAll("select")[0].Children.Select(o => o.TextContent));
        Assert.Equal(["all", "always", "here"], boxes.FindAll("option[selected]").Select(o => o.GetAttribute("value")));
        // What was not taken stands there still, with what is the matter.
        Assert.True(boxes.Find("details").HasAttribute("open"));
        Assert.Equal(Harm, boxes.Find("[aria-invalid=true]").GetAttribute("value"));
        Assert.Equal("It names no step.", boxes.Find("#" + boxes.Find("[aria-invalid=true]").GetAttribute("aria-describedby")).TextContent);
    }

    [Fact]
    public void Corrections_and_words_of_the_hall_are_listed_and_can_be_taken_back()
    {
        SheetWord own = new("frobble", "hitch"), hall = new("wend", "close") { OfTheHall = true };
        var read = Read([Line(1, "1-4 frobble, wend", LineKind.Steps), Line(2, "5-8 frobble", LineKind.Steps)]) with { Words = [new(1, "frobble", own), new(1, "wend", hall), new(2, "Frobble", own)] };
        var list = Render<CorrectionList>(p => p.Add(l => l.Read, read).Add(l => l.Said, [own, new("gone", SheetWord.NoStep)]).Add(l => l.Here, "/paste/abc"));
        Assert.Equal(["heading Your corrections", "button Take back “frobble”", "button Take back “gone”", "link The settings"], Heard(list));
        Assert.Equal(["“frobble” is “hitch”, on lines 1 and 2", "“gone” is no step, which stands on no line now"], list.FindAll("li > div").Select(s => s.TextContent));
        Assert.Contains("One of the hall’s own words was used: “wend”.", Words(list), StringComparison.Ordinal);
        Assert.Equal(["hint: assumed: \"frobble\" is \"hitch\", as you corrected it; \"wend\" is \"close\", the hall's own word"], [.. LineSayings.Of(read.Lines[0], [], new(), read.Words).Select(s => $"{s.Sign}: {s.Says}")]);
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
    public void The_latest_correction_of_the_same_words_holds_and_goes_where_its_line_goes()
    {
        var touch = Known("touch", 6, "touch R") with { Elsewhere = 1 };
        var once = Corrections.With([], touch, "kick R", Holds.Here);
        Assert.Equal([new SheetWord("touch", "kick R") { Only = new(6, 0) }], once);
        // For all places: what was said of this one gives way, what was said of another stays.
        var all = Corrections.With([.. once, new("Touch", "hold") { Only = new(7, 0) }], touch, "heel dig R", Holds.All);
        Assert.Equal([new SheetWord("Touch", "hold") { Only = new(7, 0) }, new SheetWord("touch", "heel dig R")], all);
        Assert.Equal([new SheetWord("Touch", "hold") { Only = new(7, 0) }], Corrections.Without(all, 1));
        Assert.Empty(Corrections.With(once, touch, "kick R", Holds.Always));
        // Where the words stand so that they are not found, the place is told by itself.
        Assert.Equal(new(6, 0), Corrections.With([], touch with { IsFound = false }, "kick R", Holds.Always)[0].Only);

        var moved = Corrections.Moved([.. once, new("hop", "kick R") { Only = new(2, 0) }], "a\nhop\nc\nd\ne\ntouch", "new\na\ngone\nc\nd\ne\ntouch", out var lost);
        Assert.Equal([new SheetWord("touch", "kick R") { Only = new(7, 0) }], moved);
        Assert.Equal(["hop"], lost);
    }

    private static PhraseSaid Known(string words, int line, string reads) => new(words, new(line, 0), reads, true, 0);

    private static PhraseSaid Unknown(string words, int line, int elsewhere = 0) => new(words, new(line, 0), "", false, elsewhere);

    private IRenderedComponent<DoubtList> Drawn(Transcript read) => Render<DoubtList>(p => p.Add(d => d.Read, read).Add(d => d.Here, "/paste/abc"));
}
