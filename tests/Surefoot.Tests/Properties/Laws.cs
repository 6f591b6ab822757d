using System.Text.RegularExpressions;
using CsCheck;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Properties;

/// <summary>What must hold of every page, whoever wrote it.</summary>
public class Laws
{
    [Fact]
    public void Reading_a_tidy_page_gives_the_same_dance() => RandomPages.Any.Each(page => SameAfterTidy(page));

    [Fact]
    public void Every_page_of_the_demo_and_the_corpus_survives_tidying()
    {
        var pages = Root.Pages("demo").Concat(Root.Pages("corpus")).ToList();
        Assert.NotEmpty(pages);
        Assert.All(pages, file => SameAfterTidy(File.ReadAllText(file)));
    }

    [Fact]
    public void Tidying_twice_changes_nothing_more() => RandomPages.Any.Each(page =>
    {
        var once = Tidied(page);
        Assert.Equal(once, Tidied(once));
    });

    [Fact]
    public void Mirroring_a_page_mirrors_every_foot_and_turn() => RandomPages.Any.Each(page =>
    {
        var mirror = Swapped(page);
        var (here, there) = (DanceReader.Read(page).Score, DanceReader.Read(mirror).Score);
        for (var r = 0; r < here.Roles.Count; r++)
        {
            Assert.Equal(here.Roles[r].Steps.Count, there.Roles[r].Steps.Count);
            for (var i = 0; i < here.Roles[r].Steps.Count; i++)
            {
                var (a, b) = (here.Roles[r].Steps[i], there.Roles[r].Steps[i]);
                // Where nobody can tell which foot goes, one is taken, and that one is no mirror image.
                if (a.Conflict is not Conflict.None || (i > 0 && here.Roles[r].Steps[i - 1].Weight == Weight.Both && !a.FootNamed)) break;
                Assert.Equal((a.At, a.Kind, a.Direction, a.Conflict), (b.At, b.Kind, b.Direction, b.Conflict));
                Assert.Equal(a.Foot, b.Foot.Mirrored());
                Assert.Equal(a.Weight, b.Weight.Mirrored());
                Assert.Equal(a.Turn, b.Turn.Mirrored);
                Assert.Equal((8 - a.Facing.Eighths) % 8, b.Facing.Eighths);
            }
        }
    });

    [Fact]
    public void Turning_the_start_turns_every_facing() => Gen.Select(RandomPages.LineDance, Gen.Int[0, 3]).Each((page, quarter) =>
    {
        var clock = ((string[])["12:00", "9:00", "6:00", "3:00"])[quarter];
        var turned = page.Replace("Kind: line\n", $"Kind: line\nFacing: {clock}\n");
        var (here, there) = (DanceReader.Read(page).Score.Roles[0], DanceReader.Read(turned).Score.Roles[0]);
        Assert.Equal(here.Steps.Count, there.Steps.Count);
        for (var i = 0; i < here.Steps.Count; i++)
        {
            Assert.Equal(here.Steps[i].Turn, there.Steps[i].Turn);
            Assert.Equal(here.Steps[i].Facing + new Turn(quarter * 2), there.Steps[i].Facing);
        }
    });

    [Fact]
    public void Repeat_is_the_same_as_writing_it_twice() => RandomPages.Eight.Each(eight =>
    {
        var head = "Twice\nKind: line\nFeet: left free\n\n";
        var repeated = head + string.Join('\n', eight) + "\nRepeat 1-8\n";
        var written = head + string.Join('\n', eight) + "\n" + string.Join('\n', eight.Select(Later)) + "\n";
        Assert.Equal(Listing.Steps(DanceReader.Read(written).Score), Listing.Steps(DanceReader.Read(repeated).Score));
    });

    [Fact]
    public void Repeating_a_part_is_the_same_as_ordering_it_again() => RandomPages.Eight.Array[2].Each(eights =>
    {
        var parts = RandomPages.Parts(eights);
        var ordered = "Twice\nKind: line\nFeet: left free\nOrder: A B A\n\n" + parts;
        var repeated = "Twice\nKind: line\nFeet: left free\n\n" + parts + "Part C\nRepeat Part A\n";
        Assert.Equal(Listing.Steps(DanceReader.Read(ordered).Score), Listing.Steps(DanceReader.Read(repeated).Score));
    });

    [Fact]
    public void The_same_page_always_gives_the_same_answer() => RandomPages.Any.Each(page =>
    {
        var (one, two) = (DanceReader.Read(page), DanceReader.Read(page));
        Assert.Equal(Listing.Steps(one.Score), Listing.Steps(two.Score));
        Assert.Equal(one.Problems, two.Problems);
        Assert.Equal(one.Motion, two.Motion);
    });

    [Fact]
    public void Any_text_is_read_to_the_last_character() => Gen.String[Gen.Char[" \n\r\tab&-–½1234567890.,;:()[]>LRlr¼/’\uFEFF\u00A0xyzé'\"*+"], 0, 300].Each(AllAccountedFor, iter: 3000);

    [Fact]
    public void Any_letters_are_read_to_the_last_character() => Gen.String.Each(AllAccountedFor, iter: 3000);

    [Fact]
    public void Good_pages_with_random_edits_are_read_to_the_last_character()
    {
        var pages = Root.Pages("demo").Concat(Root.Pages("corpus")).Select(File.ReadAllText).ToArray();
        Assert.NotEmpty(pages);
        Gen.Select(Gen.Int[0, pages.Length - 1].Select(i => pages[i]), Gen.Select(Gen.Double[0, 1], Gen.Int[0, 12], Gen.String[Gen.Char["\n &-½19LR.,:()[]>abcdefgt"], 0, 9]).Array[1, 6])
            .Each((page, edits) => AllAccountedFor(edits.Aggregate(page, Edited)), iter: 3000);
    }

    private static string Edited(string page, (double Where, int Length, string Text) edit)
    {
        var at = (int)(edit.Where * page.Length);
        var length = Math.Min(edit.Length, page.Length - at);
        return page[..at] + edit.Text + page[(at + length)..];
    }

    private static void AllAccountedFor(string text)
    {
        var reading = DanceReader.Read(text);
        Assert.Equal(text, reading.Page.Source.Text);
        var missed = Account.Missed(reading.Page);
        Assert.True(missed.Count == 0, $"nobody answers for: {string.Join(" | ", missed.Select(reading.Page.Source.Words))} in\n{text}");
        foreach (var problem in reading.Problems)
        {
            Assert.InRange(problem.Span.Start, 0, text.Length);
            Assert.InRange(problem.Span.End, problem.Span.Start, text.Length);
            Assert.True(problem.Span.Length > 0 || text.Length == 0, $"{problem.Name} points at nothing");
            Assert.NotEmpty(problem.Message);
            foreach (var edit in problem.Fixes.SelectMany(f => f.Edits)) Assert.InRange(edit.Span.End, edit.Span.Start, text.Length);
        }

        _ = TidyPage.Print(reading.Page, FigureBook.Shipped);
    }

    private static string Tidied(string page)
    {
        var (read, book) = PageReader.Read(page, FigureBook.Shipped);
        return TidyPage.Print(read, book);
    }

    private static void SameAfterTidy(string page)
    {
        var tidy = Tidied(page);
        var (before, after) = (DanceReader.Read(page), DanceReader.Read(tidy));
        Assert.Equal(Listing.Steps(before.Score), Listing.Steps(after.Score));
        Assert.Equal(before.Score.Calls.Select(c => c with { Span = default, Unread = null }), after.Score.Calls.Select(c => c with { Span = default, Unread = null }));
        Assert.Equal(CallListing.Of(before.Calls, before.Score), CallListing.Of(after.Calls, after.Score));
        Assert.Equal(before.Score.Title, after.Score.Title);
        Assert.Equal(before.Score.Notes.Select(n => Plain(n.Text)), after.Score.Notes.Select(n => Plain(n.Text)));
        // Lines that were run together are parted, which is the one problem that tidying mends.
        Assert.Equal(before.Problems.Select(p => p.Name).Where(name => name != "lines-joined"), after.Problems.Select(p => p.Name));
    }

    private static string Plain(string text) => Regex.Replace(text, @"[\s\-\u2010-\u2015\u2018\u2019\u201C\u201D'""½¼¾/0-9]+", " ").Trim().ToLowerInvariant();

    private static string Swapped(string page) => Regex.Replace(page, @"\b(L|R|left|right)\b", m => m.Value switch { "L" => "R", "R" => "L", "left" => "right", _ => "left" });

    private static string Later(string line)
    {
        var gap = line.IndexOf("  ", StringComparison.Ordinal);
        return Regex.Replace(line[..gap], "[0-9]+", m => (int.Parse(m.Value) + 8).ToString()) + line[gap..];
    }
}
