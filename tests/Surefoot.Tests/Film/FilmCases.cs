using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;
using Surefoot.Film;
using Surefoot.Film.Notes;
using Surefoot.Tests.Cli;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Film;

/// <summary>Films written by hand in corpus/films with what is expected of them beside. ./test --accept takes over what was seen.</summary>
public class FilmCases
{
    private static string Folder => Root.At("corpus", "films");

    public static TheoryData<string> Films => [.. Directory.GetFiles(Folder, "*.notes").Select(f => Path.GetFileNameWithoutExtension(f)!).Order(StringComparer.Ordinal)];

    private static string Captions(string name) => Directory.GetFiles(Folder, name + ".*").Single(f => f.EndsWith(".vtt", StringComparison.Ordinal) || f.EndsWith(".srt", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Films))]
    public void Is_understood_as_expected(string name)
    {
        var (file, left) = (Path.Combine(Folder, name + ".notes"), Path.Combine(Folder, name + ".notes.seen"));
        var expected = File.ReadAllText(file).ReplaceLineEndings("\n");
        var page = expected.Split('\n')[0];
        var asked = Asked.For("film", Root.At("demo", "dances", page), Captions(name));
        Assert.Equal(0, asked.Exit);
        var seen = page + "\n" + asked.Out;
        if (expected == seen) File.Delete(left);
        else File.WriteAllText(left, seen);
        Assert.Equal(expected, seen);
    }

    [Fact]
    public void A_part_put_right_in_the_same_breath_is_the_right_one()
    {
        var notes = Notes("WEBVTT\n\n00:01.000 --> 00:04.000\npart c no sorry part b rock side left\n\n00:04.000 --> 00:08.000\nrecover right cross shuffle left right left\n\n00:08.000 --> 00:12.000\nrock side right recover left cross shuffle right left right\n");
        Assert.Equal("B", notes.Chapters.Single(c => c.Part is not null).Part);
        Assert.Empty(notes.Differences);
        var wrong = Notes("WEBVTT\n\n00:01.000 --> 00:04.000\npart c rock side left\n\n00:04.000 --> 00:08.000\nrecover right cross shuffle left right left\n\n00:08.000 --> 00:12.000\nrock side right recover left cross shuffle right left right\n");
        Assert.Equal(wrong.Differences.Count(d => d.Part == "Part B"), wrong.Differences.Count);
    }

    [Theory]
    [InlineData("part b out and across rock side left")]
    [InlineData("part b is called out and across rock side left")]
    [InlineData("and now out and across rock side left")]
    public void The_name_of_a_part_is_its_name_and_no_step(string begins)
    {
        var notes = Notes($"WEBVTT\n\n00:01.000 --> 00:05.000\n{begins}\n\n00:05.000 --> 00:09.000\nrecover right cross shuffle left right left\n\n00:09.000 --> 00:13.000\nrock side right recover left cross shuffle right left right\n");
        Assert.Equal("B", notes.Chapters.Single(c => c.Part is not null).Part);
        Assert.Empty(notes.Differences.Select(d => d.Says));
    }

    [Fact]
    public void A_call_of_the_page_stands_in_captions_before_the_name_of_its_step()
    {
        var page = File.ReadAllText(Root.At("demo", "dances", "circle", "nine-buckets-cha-cha.dance"));
        var (bare, called) = (DanceReader.Read(page), DanceReader.Read(page.Replace("Part B  ", "Call 7-8: big smile\n\nPart B  ", StringComparison.Ordinal)));
        var its = Assert.Single(called.Calls.Calls, c => c.Words == "big smile").Step;
        var steps = called.Score.Roles[0].Steps;
        for (var i = 0; i < steps.Count; i++)
        {
            var (plain, own) = (new SheetCalls(bare.Calls).Of(Role.Lead, [bare.Score.Roles[0].Steps[i]]), new SheetCalls(called.Calls).Of(Role.Lead, [steps[i]]));
            Assert.Equal(steps[i].At == its ? $"big smile ({plain})" : plain, own);
        }
    }

    [Fact]
    public void Talk_alone_shows_no_part()
    {
        var notes = Notes("WEBVTT\n\n00:01.000 --> 00:09.000\nhello and welcome it rained all week and the roof held thank you\n");
        Assert.DoesNotContain(notes.Chapters, c => c.Part is not null);
        Assert.Empty(notes.Differences);
    }

    [Fact]
    public void Left_and_right_changed_over_from_beginning_to_end_is_told_once()
    {
        var right = File.ReadAllText(Captions("gatepost-right"));
        var changed = string.Join("right", right.Split("left").Select(s => s.Replace("right", "left", StringComparison.Ordinal)));
        Assert.Empty(Gatepost(right).Differences);
        Assert.StartsWith("You say left for right", Assert.Single(Gatepost(changed).Differences).Says, StringComparison.Ordinal);
        // One wrong foot among right ones stays one wrong foot.
        var one = Assert.Single(Gatepost(right.Replace("kick left", "kick right", StringComparison.Ordinal)).Differences);
        Assert.Equal(("Part B", "4"), (one.Part, one.Counts));
    }

    [Fact]
    public void What_is_broken_off_and_begun_again_is_no_difference()
    {
        var film = File.ReadAllText(Captions("gatepost-start-over"));
        Assert.Empty(Gatepost(film).Differences);
        Assert.Equal(["A", "B"], Gatepost(film).Chapters.Where(c => c.Part is not null).Select(c => c.Part));
        // The end of a part that is not begun again is left out.
        Assert.NotEmpty(Gatepost(film[..film.IndexOf("8\n", StringComparison.Ordinal)]).Differences);
    }

    [Fact]
    public void Chapters_and_captions_call_the_dancers_what_the_hall_calls_them()
    {
        var page = DanceReader.Read(File.ReadAllText(Root.At("demo", "dances", File.ReadLines(Path.Combine(Folder, "lid-both-roles.notes")).First())));
        var film = File.ReadAllText(Captions("lid-both-roles"));
        var (usual, hall) = (FilmReader.Read(film, page), FilmReader.Read(film, page, called: RolesCalled.Of("Gent", "Lady")));
        var said = usual.AllChapters.Select(c => c.Text).Concat(usual.Captions.Select(c => c.Text)).ToList();
        Assert.Contains(said, t => t.Contains("lead", StringComparison.OrdinalIgnoreCase));
        Assert.Contains(said, t => t.Contains("follow", StringComparison.OrdinalIgnoreCase));
        Assert.Equal(said.Select(InTheHall), hall.AllChapters.Select(c => c.Text).Concat(hall.Captions.Select(c => c.Text)));

        static string InTheHall(string said) => said.Replace("Lead", "Gent", StringComparison.Ordinal).Replace("lead", "gent", StringComparison.Ordinal).Replace("Follow", "Lady", StringComparison.Ordinal).Replace("follow", "lady", StringComparison.Ordinal);
    }

    private static Surefoot.Film.Notes.FilmNotes Gatepost(string captions) =>
        FilmReader.Read(captions, DanceReader.Read(File.ReadAllText(Root.At("demo", "dances", "line", "second-gatepost.dance"))));

    internal static Surefoot.Film.Notes.FilmNotes Notes(string captions)
    {
        var page = File.ReadAllText(Root.At("demo", "dances", "circle", "nine-buckets-cha-cha.dance"));
        var book = FigureBook.Shipped.With(new SourceText(File.ReadAllText(Root.At("demo", "dances", "figures.dance"))));
        return FilmReader.Read(captions, DanceReader.Read(page, book), book);
    }
}
