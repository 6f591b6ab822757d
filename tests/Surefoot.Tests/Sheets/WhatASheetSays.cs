using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Sheets;

/// <summary>Words on the sheet that an instructor found wrong once, and how they have to stand.</summary>
public class WhatASheetSays
{
    private const string Head = "Plank Road\nKind: partner, circle\nHold: sweetheart\nFeet: same, left free\nPhrase: any\n\n";

    // Said as a hold, in its mirror image, or by the figure that leads into it; and not where none is danced.
    [Theory]
    [InlineData("Hold: left hammerlock", "1-4  Step in place L R L R", 1)]
    [InlineData("Hold: two hands", "1-4  Hammerlock full right, starting left", 1)]
    [InlineData("Hold: two hands", "1-4  Step in place L R L R", 0)]
    public void A_hammerlock_comes_with_one_word_of_caution_for_the_shoulder(string hold, string steps, int times)
    {
        var text = TextSheet.Write(Read($"Wagon Latch\nKind: partner, circle\n{hold}\nFacing: lead LOD, follow RLOD\nFeet: same, left free\n\n{steps}\n").Score, new()).ReplaceLineEndings(" ");
        Assert.Equal(times, System.Text.RegularExpressions.Regex.Count(text, "Go gently into the hammerlock"));
    }

    [Fact]
    public void Blocks_of_one_role_each_are_brought_side_by_side()
    {
        var lines = Lines(TextSheet.Write(DemoNotebook.Read(Path.Combine("circle", "beeskep-waltz.dance")).Score, new()), from: "Part C: ");
        Assert.Single(lines, l => l.Contains(" 1-3 ", StringComparison.Ordinal));
        var first = Assert.Single(lines, l => l.Contains("Step forward L, step forward R,", StringComparison.Ordinal));
        Assert.Contains("1-3     Step side R ¼ right, step", first);
        Assert.DoesNotContain(lines, l => l.Trim() is "-" or "–" || l.EndsWith(" –", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Rows_whose_counts_differ_stand_by_their_first_count(bool feetOnly)
    {
        var score = Read(Head + "Part A (8 counts)\nLead:\n1-4 Walk forward L, R, L, R\n5-8 Walk forward L, R, L, R\nFollow:\n1-2 Walk back L, R\n3-4 Walk forward L, R\n5-8 Walk back L, R, L, R\n").Score;
        var rows = Table(MarkdownSheet.Write(score, new() { FeetOnly = feetOnly }));
        Assert.Equal(["**1-4 / 1-2**", "**3-4**", "**5-8**"], rows.Select(r => r[1]));
        Assert.Equal("", rows[1][0]);
        Assert.All(rows, r => Assert.NotEqual("–", r[0]));
        Assert.All(rows, r => Assert.NotEmpty(r[2]));
    }

    [Fact]
    public void In_feet_no_row_stands_twice()
    {
        var rows = Table(MarkdownSheet.Write(Blocks().Score, new() { FeetOnly = true }));
        Assert.Equal(rows.Count, rows.Select(r => r[1]).Distinct().Count());
    }

    [Fact]
    public void A_repeat_among_one_roles_lines_is_that_roles()
    {
        var score = Read(Head + "Part A (8 counts)\nLead:\n1-4 Walk forward L, R, L, R\n5-8 Repeat 1-4\nFollow:\n1-4 Walk back L, R, L, R\n5-8 Walk forward L, R, L, R\n").Score;
        var rows = Table(MarkdownSheet.Write(score, new()));
        Assert.Equal(2, rows.Count);
        Assert.Contains("Repeat 1-4", rows[1][0]);
        Assert.Equal("Walk forward L, R, L, R", rows[1][2].Trim('*'));
    }

    [Fact]
    public void One_role_alone_has_no_empty_row_for_the_partners_lines()
    {
        var follow = TextSheet.Write(Blocks().Score, new() { Only = Role.Follow });
        Assert.Single(Lines(follow), l => l.TrimStart().StartsWith("1-4 ", StringComparison.Ordinal));
        Assert.DoesNotContain("–", follow);
    }

    [Fact]
    public void A_count_nobody_wrote_for_the_follow_still_shows_as_a_gap()
    {
        var score = Read(Head + "Part A (4 counts)\n1-2 Walk forward L, R\n3-4 Lead: walk forward L, R\n").Score;
        Assert.Equal("–", Table(MarkdownSheet.Write(score, new()))[1][2]);
    }

    [Fact]
    public void A_change_for_one_role_leaves_the_other_as_before()
    {
        var score = Read(Head + "Part A (8 counts)\n1-4 Walk forward L, R, L, R\nRepeat 1-4, but\n7-8 Follow: step ½ right L, step R\n").Score;
        Assert.Equal("as before", Table(MarkdownSheet.Write(score, new()))[^1][0]);
    }

    [Fact]
    public void The_same_words_for_each_role_on_opposite_feet_are_not_words_for_both()
    {
        var score = Read("Plank Road\nKind: partner, circle\nHold: two hands\nFacing: lead LOD, follow RLOD\nFeet: opposite, lead left free\n\nPart A (2 counts)\nLead:\n1-2 Step in place, step in place\nFollow:\n1-2 Step in place, step in place\n").Score;
        Assert.Equal("Step in place, step in place", Table(MarkdownSheet.Write(score, new()))[0][0]);
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Lines_of_a_note_are_one_paragraph(string end)
    {
        var page = (Head + "> Bend the knees,\n> but not the back; mind\n> the step.\n\n> Smile.\n\nPart A (2 counts)\n1-2 Walk forward L, R\n> Soft\n> and long\n").Replace("\n", end, StringComparison.Ordinal);
        var text = TextSheet.Write(Read(page).Score, new());
        Assert.Contains("\n\nBend the knees, but not the back; mind the step.\n\nSmile.\n", text);
        Assert.Contains("(Soft and long.)", text);
    }

    [Fact]
    public void Slows_and_quicks_stand_as_the_page_has_them_with_the_counts_they_fill()
    {
        var score = DemoNotebook.Read(Path.Combine("circle", "loose-hinge-two-step.dance")).Score;
        var text = TextSheet.Write(score, new());
        Assert.Contains(" QQSS 1-6 ", text);
        Assert.Contains("QQSS 7-12 ", text);
        Assert.DoesNotContain("1-2-3-5", text);
        Assert.Contains("**QQSS** 7-12", MarkdownSheet.Write(score, new()));
    }

    [Fact]
    public void A_slow_step_of_a_figure_is_drawn_like_one_written_out()
    {
        var reading = DemoNotebook.Read(Path.Combine("circle", "loose-hinge-two-step.dance"));
        Assert.DoesNotContain("hold", FootPicture.Svg(reading.Score, reading.Motion, 0));
    }

    [Theory]
    [InlineData("Intro: 16 counts\n", "Wait 16 counts, then start facing 12:00, right foot free.")]
    [InlineData("Intro: 32\nMusic: any slow swing\n", "It is danced to any slow swing. Wait 32 counts, then start facing 12:00")]
    [InlineData("Intro: on the vocals\n", "Introduction: on the vocals. Start facing 12:00, right foot free.")]
    [InlineData("", "Start facing 12:00, right foot free.")]
    public void Music_and_the_counts_to_wait_stand_in_the_opening(string head, string said)
    {
        var reading = Read($"Plank Road\nKind: line, 1 wall\nFeet: right free\n{head}\nPart A (4 counts)\n1-4 Rocking chair R\n");
        foreach (var sheet in (string[])[TextSheet.Write(reading.Score, new()), MarkdownSheet.Write(reading.Score, new()), HtmlSheet.Write(reading.Score, reading.Motion, new())])
        {
            Assert.Contains(said, string.Join(' ', sheet.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));
            Assert.DoesNotContain("0 counts)", sheet);
        }
    }

    [Theory]
    [InlineData(1, "This page has 1 place that cannot be danced as written; see surefoot check.")]
    [InlineData(3, "This page has 3 places that cannot be danced as written; see surefoot check.")]
    public void A_page_with_errors_says_so_at_its_top(int doubts, string said)
    {
        var reading = Blocks();
        var options = new SheetOptions { Doubts = doubts };
        foreach (var sheet in (string[])[TextSheet.Write(reading.Score, options), MarkdownSheet.Write(reading.Score, options), HtmlSheet.Write(reading.Score, reading.Motion, options)])
        {
            var at = sheet.IndexOf(said, StringComparison.Ordinal);
            Assert.True(at > 0 && at < sheet.IndexOf("A circle dance", StringComparison.Ordinal), sheet);
        }

        Assert.DoesNotContain("cannot be danced", TextSheet.Write(reading.Score, new()));
    }

    [Fact]
    public void A_sway_does_not_say_its_foot_twice()
    {
        var text = TextSheet.Write(DemoNotebook.Read(Path.Combine("line", "ferry-lamp.dance")).Score, new() { FeetOnly = true });
        Assert.Contains("L sway side, R sway side", text);
    }

    [Fact]
    public void Short_brackets_are_not_broken_over_lines()
    {
        var text = TextSheet.Write(DemoNotebook.Read(Path.Combine("circle", "beeskep-waltz.dance")).Score, new());
        Assert.Contains("(facing LOD)", text);
        Assert.Contains("(facing RLOD)", text);
    }

    [Theory]
    [InlineData("Full turn right L under right hands, step R", "Full turn right (L) under right hands, step R")]
    [InlineData("Triple ½ left L R L", "Triple ½ left (L R L)")]
    [InlineData("Vine right, touch L", "Vine right, touch L")]
    [InlineData("Step forward R, pivot ½ left", "Step forward R, pivot ½ left")]
    public void The_foot_of_a_turn_is_set_apart_from_its_way(string written, string said)
    {
        Assert.Contains(said + "\n", TextSheet.Write(Read($"Plank Road\nKind: line, 1 wall\nPhrase: any\n\n1-4 {written}\n").Score, new()));
    }

    [Fact]
    public void Both_is_said_where_the_words_are_everybodys_again_and_not_on_every_line()
    {
        var page = Head + "Part A (12 counts)\n1-2 Walk forward L, R\n3-4 Walk forward L, R\n5-6 Lead: walk forward L, R. Follow: walk back L, R\n7-8 Walk forward L, R\n9-10 Walk forward L, R\n11-12 Walk forward L, R\n";
        var rows = Table(MarkdownSheet.Write(Read(page).Score, new()));
        Assert.Equal(["*both*", "", "Walk forward L, R", "*both*", "", ""], rows.Select(r => r[0]));
        var html = HtmlSheet.Write(Read(page).Score, Read(page).Motion, new() { Pictures = false });
        Assert.Equal(2, html.Split("both</span>").Length - 1);
    }

    [Theory]
    [InlineData("Facing: LOD", "(facing LOD)", "both facing the line of dance (LOD), left foot free", "(facing LOD)")]
    [InlineData("Facing: RLOD", "(facing RLOD)", "both facing against the line of dance (RLOD), left foot free", "(facing RLOD)")]
    [InlineData("Facing: outside", "step in place L ¼ left (facing LOD)", "both facing the outside of the circle, left foot free", "(facing the line of dance, LOD)")]
    public void The_letters_for_the_line_of_dance_are_spelled_out_the_first_time(string facing, string step, string opening, string row)
    {
        var steps = step[0] == '(' ? $"1-2 Walk forward L, R {step}" : $"1-2 {step}, step in place R";
        var text = TextSheet.Write(Read($"Plank Road\nKind: partner, circle\nHold: sweetheart\n{facing}\nFeet: same, left free\nPhrase: any\n\nPart A (2 counts)\n{steps}\n").Score, new()).ReplaceLineEndings(" ");
        Assert.Contains(opening, text);
        Assert.Contains(row, text);
    }

    private static Reading Read(string page) => DanceReader.Read(page);

    private static Reading Blocks() => Read(Head + "Part A (8 counts)\nLead:\n1-4 Walk forward L, R, L, R\n5-8 Walk forward L, R, L, R\nFollow:\n1-4 Walk back L, R, L, R\n5-8 Walk forward L, R, L, R\n");

    private static List<string> Lines(string text, string from = "") =>
        [.. text[Math.Max(0, text.IndexOf(from, StringComparison.Ordinal))..].Split('\n')];

    /// <summary>The cells of the rows that name counts.</summary>
    private static List<string[]> Table(string markdown) =>
        [.. markdown.Split('\n').Where(l => l.StartsWith("| ", StringComparison.Ordinal) && l.Contains("**", StringComparison.Ordinal))
            .Select(l => l.Trim('|').Split('|').Select(c => c.Trim()).ToArray())];
}
