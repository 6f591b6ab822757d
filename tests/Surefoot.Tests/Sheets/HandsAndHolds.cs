using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Steps;
using Surefoot.Draw;
using Surefoot.Tests.Support;
using static Surefoot.Tests.Couple.CouplePages;

namespace Surefoot.Tests.Sheets;

/// <summary>What Surefoot adds about hands and holds, apart from what the author wrote, in all three forms of the sheet.</summary>
public class HandsAndHolds(Browser browser) : IClassFixture<Browser>
{
    private const string Whose = "worked out by Surefoot, not written by the author";

    // She turns half right with both pairs kept: her left arm would wind behind her own back, so the left pair goes over (holds every teacher knows, common practice).
    private static string Silent(string said = "") => Page("sweetheart", "same, left free",
        $"Part A (8 counts)\n1&2 Lead: triple in place L R L{said}. Follow: triple ½ right L R L\n3-4 Rock forward R, recover L\n5&6 Lead: triple in place R L R. Follow: triple ½ left R L R\n7-8 Walk forward L, R");

    private static readonly string Walks = Page("sweetheart", "same, left free", "Part A (8 counts)\n1-4 Walk forward L, R, L, R\n5-8 Walk forward L, R, L, R");

    public static TheoryData<string> Dances => DemoNotebook.Dances;

    [Fact]
    public void What_the_page_leaves_unsaid_stands_under_its_row_behind_a_mark()
    {
        var reading = Read(Silent());
        var text = Text(reading).Split('\n');
        var at = Array.FindIndex(text, l => l.EndsWith("  + raise left hands", StringComparison.Ordinal));
        Assert.Contains(" 1&2 ", text[at - 1]);
        Assert.Equal("→ follow on lead’s right,", text[at + 1].Trim());
        Assert.Contains(" 3-4 ", text[at + 3]);

        var rows = Markdown(reading).Split('\n');
        at = Array.FindIndex(rows, r => r.Contains("| + *raise left hands* → *follow on lead’s right, facing opposite ways* |", StringComparison.Ordinal));
        Assert.Contains("**1&2**", rows[at - 1]);

        var ours = Html(reading).QuerySelector("tr.ours")!;
        Assert.Equal(["+ raise left hands", "→ follow on lead’s right, facing opposite ways"], ours.QuerySelectorAll("td:last-child > span").Select(s => s.TextContent));
        Assert.Equal("1&2", ours.PreviousElementSibling!.QuerySelector("th")!.TextContent);
    }

    [Fact]
    public async Task On_paper_it_is_smaller_and_slanted_and_not_told_by_colour_alone()
    {
        var page = await browser.PageAsync();
        var reading = Read(Silent());
        await page.SetContentAsync(HtmlSheet.Write(reading.Score, reading.Motion, new(), reading.Couple));
        await page.EmulateMediaAsync(new() { Media = Microsoft.Playwright.Media.Print });
        var (ours, theirs) = (await Look(".ours td:last-child span"), await Look("tr.apart td:last-child"));
        Assert.Equal(("italic", "normal"), (ours.Style, theirs.Style));
        Assert.InRange(ours.Size / theirs.Size, 0.75, 0.92);
        // Nine points of the author's words shrink to no less than seven and a half.
        Assert.True(ours.Size * 0.75 >= 7.5, $"{ours.Size} px");
        await page.CloseAsync();

        async Task<(string Style, double Size)> Look(string which) =>
            (await page.EvaluateAsync<string>($"() => getComputedStyle(document.querySelector('{which}')).fontStyle"),
                await page.EvaluateAsync<double>($"() => parseFloat(getComputedStyle(document.querySelector('{which}')).fontSize)"));
    }

    [Theory]
    [InlineData("line/odd-corner.dance")]
    [InlineData("circle/nine-buckets-cha-cha.dance")]
    public void A_page_that_says_everything_gets_nothing_added(string dance)
    {
        var reading = DemoNotebook.Read(Path.Combine(dance.Split('/')));
        Assert.Empty(Html(reading).QuerySelectorAll(".ours"));
        Assert.DoesNotContain(Whose, Text(reading));
        Assert.DoesNotContain(Whose, Markdown(reading));
    }

    [Fact]
    public void The_foot_of_the_sheet_says_what_the_marks_mean()
    {
        var reading = Read(Silent());
        Assert.Contains($"+ what the hands have to do, → the hold from there on: {Whose}.", Text(reading).ReplaceLineEndings(" "));
        Assert.Contains($"*+ what the hands have to do, → the hold from there on: {Whose}.*", Markdown(reading));
        Assert.Equal($"+ what the hands have to do, → the hold from there on: {Whose}.", Html(reading).QuerySelector("p.key")!.TextContent);
        Assert.Contains($"\n+ what the hands have to do: {Whose}.", Text(With(Read(Walks), (1, Pairs.RightRight, HandVerb.Raise))).Replace("written by the\nauthor", "written by the author", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(", raise left hands")]
    [InlineData(", left hands over her head")]
    public void What_the_author_says_is_not_said_again(string said)
    {
        Assert.DoesNotContain("+ ", Text(Read(Silent(said))));
        Assert.Contains("+ ", Text(Read(Silent())));
    }

    [Fact]
    public void Words_that_come_later_in_the_row_count_as_said()
    {
        var reading = DemoNotebook.Read(Path.Combine("circle", "loose-hinge-two-step.dance"));
        Assert.NotEmpty(reading.Couple!.Hands!.Suggestions);
        Assert.DoesNotContain("+ ", Text(reading));
    }

    [Fact]
    public void Inside_a_row_the_count_is_named() =>
        Assert.Contains("+ on 1& raise lead’s left and follow’s right hand", Text(DemoNotebook.Read(Path.Combine("circle", "folded-quilt.dance"))));

    [Fact]
    public void What_both_pairs_do_is_said_once_and_each_pair_has_one_phrase()
    {
        var both = With(Read(Walks), (2, Pairs.RightRight, HandVerb.Release), (2, Pairs.LeftLeft, HandVerb.Release), (4, Pairs.RightRight, HandVerb.Take), (4, Pairs.LeftLeft, HandVerb.Take));
        Assert.Contains("+ on 2 let go both hands, on 4 take them again\n", Text(both));
        var each = With(Read(Walks), (1, Pairs.RightRight, HandVerb.Raise), (3, Pairs.LeftLeft, HandVerb.Release), (5, Pairs.LeftLeft, HandVerb.Take));
        Assert.Contains("+ raise right hands; on 3 let go left hands\n", Text(each));
        Assert.Contains("+ take left hands again\n", Text(each));
    }

    [Fact]
    public void Nothing_added_denies_the_words_beside_it()
    {
        var page = Walks.Replace("5-8 Walk forward L, R, L, R", "5-8 Walk forward L, R, L, R, keep left hands", StringComparison.Ordinal);
        Assert.DoesNotContain("+ ", Text(With(Read(page), (6, Pairs.LeftLeft, HandVerb.Release))));
        Assert.Contains("+ on 6 let go right hands", Text(With(Read(page), (6, Pairs.RightRight, HandVerb.Release))));
        Assert.Contains("+ on 2 let go left hands", Text(With(Read(page), (2, Pairs.LeftLeft, HandVerb.Release))));
    }

    [Fact]
    public void Advice_that_would_twist_the_arms_is_left_to_the_check()
    {
        var reading = Read(Page("two hands", "opposite, lead left free", "Part A (4 counts)\n1-2 Lead: step in place L, step in place R. Follow: step in place R ½ right, step in place L ½ right, keep both hands\n3-4 Step in place, step in place", "lead outside, follow inside"));
        Assert.Contains(reading.Problems, p => p.Name == "hands-twisted");
        Assert.NotEmpty(reading.Couple!.Hands!.Suggestions);
        Assert.DoesNotContain("+ ", Text(reading));
    }

    [Fact]
    public void A_repeat_says_nothing_that_was_said_above_it()
    {
        var reading = Read(Walks.Replace("5-8 Walk forward L, R, L, R", "Repeat 1-4", StringComparison.Ordinal));
        var twice = Text(With(reading, (2, Pairs.LeftLeft, HandVerb.Raise), (6, Pairs.LeftLeft, HandVerb.Raise)));
        Assert.Single(twice.Split('\n'), l => l.Contains("raise left", StringComparison.Ordinal));
        Assert.Contains("+ on 2 raise left hands", twice);
        Assert.Contains("Repeat 1-4\n             + on 6 raise left hands", Text(With(reading, (6, Pairs.LeftLeft, HandVerb.Raise))));
    }

    [Fact]
    public void Where_the_times_a_part_is_danced_differ_each_says_which_it_is()
    {
        var page = Page("sweetheart", "same, left free", "Order: A A\n\nPart A (4 counts)\n1-4 Walk forward L, R, L, R").Replace("\n\nOrder", "\nOrder", StringComparison.Ordinal);
        Assert.Contains("+ the second time on 2 raise left hands", Text(With(Read(page), (6, Pairs.LeftLeft, HandVerb.Raise))));
        Assert.Contains("+ on 2 raise left hands", Text(With(Read(page), (2, Pairs.LeftLeft, HandVerb.Raise), (6, Pairs.LeftLeft, HandVerb.Raise))));
    }

    [Fact]
    public void A_hold_the_author_does_not_name_stands_where_it_begins()
    {
        var text = Text(Read(Page("sweetheart", "same, left free", "Part A (8 counts)\n1-2 Step forward L, pivot ½ right\n3-4 Walk forward L, R\n5-6 Step forward L, pivot ½ left\n7-8 Walk forward L, R"))).Split('\n');
        Assert.Equal("→ left sweetheart", text[Array.FindIndex(text, l => l.Contains("1-2 ", StringComparison.Ordinal)) + 1].Trim());
        Assert.Equal("→ sweetheart", text[Array.FindIndex(text, l => l.Contains("5-6 ", StringComparison.Ordinal)) + 1].Trim());
        Assert.Equal(2, text.Count(l => l.Trim().StartsWith('→') && !l.Contains(Whose[..10], StringComparison.Ordinal)));
    }

    [Fact]
    public void A_hold_without_a_name_is_described()
    {
        var row = Html(Read(Silent(", release left hands").Replace("triple in place R L R", "triple in place R L R, take left hands", StringComparison.Ordinal).Replace("½ right L R L", "¼ right L R L", StringComparison.Ordinal).Replace("½ left R L R", "¼ left R L R", StringComparison.Ordinal)))
            .QuerySelector("tr.ours")!;
        Assert.StartsWith("→ right hands joined, follow on lead’s right, at an angle", row.LastElementChild!.TextContent);
    }

    [Fact]
    public void A_part_begins_in_the_hold_the_couple_has_reached()
    {
        var reading = Read(Page("sweetheart", "same, left free", "Part A (2 counts)\n1-2 Step forward L, pivot ½ right\n\nPart B (2 counts)\n1-2 Step forward L, pivot ½ left"));
        Assert.Contains("In left sweetheart, both facing against the line of dance (RLOD)", Text(reading));
    }

    [Fact]
    public void In_feet_only_holds_are_told_and_hands_are_not()
    {
        var text = TextSheet.Write(Read(Silent()).Score, new() { FeetOnly = true }, Read(Silent()).Couple);
        Assert.Contains("→ sweetheart", text);
        Assert.DoesNotContain("+ ", text);
    }

    [Fact]
    public void The_halls_words_for_the_roles_are_used_and_their_marks_are_only_letters()
    {
        var reading = DemoNotebook.Read(Path.Combine("circle", "folded-quilt.dance"));
        Assert.Contains("man’s left and lady’s right hand", TextSheet.Write(reading.Score, new() { LeadWord = "Man", FollowWord = "Lady" }, reading.Couple));
        var odd = new SheetOptions { LeadWord = "<i>a|b*", FollowWord = "&amp;" };
        var page = new HtmlParser().ParseDocument(HtmlSheet.Write(reading.Score, reading.Motion, odd, reading.Couple));
        Assert.Equal("+ on 1& raise <i>a|b*’s left and &amp;’s right hand", page.QuerySelector(".ours td:last-child")!.TextContent.Replace('\u00A0', ' '));
        Assert.Empty(page.QuerySelectorAll(".ours i"));
        Assert.Contains("raise \\<i\\>a\\|b\\*’s left and \\&amp;’s right hand", MarkdownSheet.Write(reading.Score, odd, reading.Couple));
    }

    [Theory]
    [MemberData(nameof(Dances))]
    public void Every_moment_has_a_hold_in_words_and_a_name_only_with_its_hands(string dance)
    {
        if (DemoNotebook.Read(dance).Couple is not { } couple) return;
        var all = HoldInForce.All(couple);
        Assert.Equal(couple.Moments.Count, all.Count);
        foreach (var hold in all)
        {
            Assert.NotEmpty(hold.Words);
            Assert.Equal(hold.Joined, hold.Hands.Aggregate(Pairs.None, (p, h) => p | h.Pair));
            if (hold.Name is not null) Assert.Equal(Holds.Named(hold.Name)!.Joined, hold.Joined);
            Assert.False(hold.Name is not null && hold.OnTheWay);
        }
    }

    private static string Text(Reading reading) => TextSheet.Write(reading.Score, new(), reading.Couple);

    private static string Markdown(Reading reading) => MarkdownSheet.Write(reading.Score, new(), reading.Couple);

    private static IDocument Html(Reading reading) => new HtmlParser().ParseDocument(HtmlSheet.Write(reading.Score, reading.Motion, new(), reading.Couple));

    /// <summary>The same reading with suggestions of our choosing, to see what becomes of them.</summary>
    private static Reading With(Reading reading, params (int At, Pairs Pair, HandVerb Verb)[] ours)
    {
        var suggestions = ours.Select(o => new HandSuggestion(Count.At(o.At), o.Pair, o.Verb)).OrderBy(s => s.At).ToValueList();
        return reading with { Couple = reading.Couple! with { Hands = reading.Couple.Hands! with { Suggestions = suggestions } } };
    }
}
