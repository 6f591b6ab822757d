using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Library.Differing;

namespace Surefoot.Tests.Library;

/// <summary>What changed between two versions, in dancers' words and line by line.</summary>
public class Differing
{
    private const string Page = """
        Chalk Line
        Kind: partner, circle
        Tempo: 100-110
        Hold: sweetheart
        Facing: line of dance
        Feet: same, left free
        Phrase: any

        Part A  (8 counts)
        1-2    Rock forward L, recover R
        3&4    Shuffle back L R L
        5-8    Walk back R, L, R, touch L

        Part B  (4 counts)
        1-4    Lead: walk L, R, L, R. Follow: walk L, R, L, R

        """;

    [Fact]
    public void Other_words_for_the_same_dancing_are_no_change_of_the_dance()
    {
        var difference = Differences.Between(Page, Page.Replace("Walk back R, L, R, touch L", "step back R, step back L, step back R, touch L"));
        Assert.True(difference.DancesTheSame, string.Join('\n', difference.Steps));
        Assert.Equal([LineFate.Went, LineFate.Came], difference.Lines.Where(l => l.Fate != LineFate.Stayed).Select(l => l.Fate));
    }

    [Fact]
    public void A_change_names_part_count_and_whose_it_is()
    {
        var difference = Differences.Between(Page, Page.Replace("Lead: walk L, R, L, R.", "Lead: walk L, R, rock forward L, recover R."));
        Assert.Equal([(Role.Lead, "3"), (Role.Lead, "4")], difference.Steps.Select(s => (s.Role!.Value, s.Count.Name)));
        Assert.All(difference.Steps, s => Assert.Equal("Part B", s.Part));
        Assert.Equal("Part B, count 3, lead: was L forward, now L rock forward", difference.Steps[0].ToString());
    }

    [Fact]
    public void What_changes_for_both_is_told_once()
    {
        var step = Assert.Single(Differences.Between(Page, Page.Replace("touch L", "kick L")).Steps);
        Assert.Equal(("Part A", "8", (Role?)null), (step.Part, step.Count.Name, step.Role));
    }

    [Fact]
    public void Counts_put_in_do_not_change_what_follows_them()
    {
        var difference = Differences.Between(Page, Page
            .Replace("Part A  (8 counts)\n", "Part A  (10 counts)\n1-2    Stomp L, stomp R\n").Replace("1-2    Rock", "3-4    Rock").Replace("3&4    Sh", "5&6    Sh").Replace("5-8    Walk", "7-10   Walk"));
        Assert.Equal(["1", "2"], difference.Steps.Select(s => s.Count.Name));
        Assert.All(difference.Steps, s => Assert.Null(s.Before));
        Assert.Equal(["counts: 12, now 14"], difference.Facts.Select(f => f.ToString()));
    }

    [Fact]
    public void Parts_and_facts_that_come_and_go_are_told()
    {
        var difference = Differences.Between(Page, Page.Replace("100-110", "104-110").Replace("sweetheart", "skaters").Replace("Part B", "Part C"));
        Assert.Equal(["tempo", "hold", "order"], difference.Facts.Select(f => f.What));
        Assert.Equal(4, difference.Steps.Count(s => s is { Part: "Part C", Before: null }));
        Assert.Equal(4, difference.Steps.Count(s => s is { Part: "Part B", After: null }));
    }

    [Fact]
    public void A_part_that_is_new_is_named_and_words_further_apart_are_the_same_line()
    {
        const string One = "Gate Post\nKind: line, 1 wall\nFeet: right free\n\nPart A (4 counts)\n1-2  Step side R, touch together L\n3-4  Step side L, touch together R\n";
        const string Two = "Gate Post\nKind:   line, 1 wall\nFeet:   right free\n\nPart A (4 counts)\n1-2 Step side R, touch together L\n3-4 Step side L, touch together R\n\nPart B (2 counts)\n1-2 Step forward R, touch together L\n";
        var came = Differences.Between(One, Two);
        Assert.Equal(["Part B"], came.WholeParts);
        Assert.Equal(["Part B", "Part B"], came.Steps.Select(s => s.Part));
        Assert.Equal(3, came.Lines.Count(l => l.Fate != LineFate.Stayed));
        Assert.Equal("1-2 Step side R, touch together L", came.Lines[5].Text);
        Assert.Equal(["Part B"], Differences.Between(Two, One).WholeParts);
        Assert.Empty(Differences.Between(One, One).WholeParts);
    }

    [Fact]
    public void Lines_keep_their_numbers_in_both_texts()
    {
        var lines = Differences.Between("a\nb\nc\n", "a\nx\ny\nc\n").Lines;
        Assert.Equal(
            [(LineFate.Stayed, 1, 1, "a"), (LineFate.Went, 2, 0, "b"), (LineFate.Came, 0, 2, "x"), (LineFate.Came, 0, 3, "y"), (LineFate.Stayed, 3, 4, "c")],
            lines.Take(5).Select(l => (l.Fate, l.Before, l.After, l.Text)));
    }

    [Fact]
    public async Task Versions_are_read_with_the_halls_own_figures()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        await home.AddAsync("Ours\nPage: figures\n\nFigure: gravel rake (4 counts)\nMeans: four walks\nSource: our own hall\nFree after: the same foot\n1-4  Walk forward, walk forward, walk forward, walk forward\n", "figures");
        var page = await home.AddAsync("Rake\nKind: line\nFeet: left free\n\n1-4  Gravel rake L\n");
        await home.Library.Pages.KeepAsync(page, 1, "Rake\nKind: line\nFeet: left free\n\n1-4  Walk forward L, R, L, R\n");
        Assert.True((await home.Library.Differences.OfAsync(page, 1, 2))!.DancesTheSame);
        Assert.Null(await home.Library.Differences.OfAsync(page, 1, 7));
    }
}
