using Surefoot.Dance;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Film;

/// <summary>Which line of the page a film shows when.</summary>
public class LinesShown
{
    private static readonly string Page = File.ReadAllText(Root.At("demo", "dances", "circle", "nine-buckets-cha-cha.dance"));

    private static readonly Surefoot.Film.Notes.FilmNotes Notes = FilmCases.Notes(File.ReadAllText(Root.At("corpus", "films", "buckets-run.srt")));

    private static int Line(string words) => Array.FindIndex(Page.Split('\n'), l => l.Contains(words, StringComparison.Ordinal)) + 1;

    [Fact]
    public void A_line_that_is_walked_through_is_shown_from_its_first_word_to_the_next_lines_first()
    {
        // As the captions have it: "triple forward left right left" at 8.2 s, "rock back right" at 11.5 s.
        var shown = Notes.Lines.First(l => l.Line == Line("Triple back L R L"));
        Assert.Equal((8.2, 11.5), (shown.From.Seconds, shown.To.Seconds));
    }

    [Fact]
    public void In_a_run_at_tempo_each_line_has_its_counts()
    {
        // 108 counts a minute from 48.222 s on: part C is counts 17 to 24, its second line counts 19 and 20.
        var beat = 60 / 108.0;
        var shown = Notes.Lines.Last(l => l.Line == Line("Triple forward L R L (facing RLOD)"));
        Assert.InRange(shown.From.Seconds, 48.222 + (18 * beat) - 0.15, 48.222 + (18 * beat) + 0.15);
        Assert.InRange(shown.To.Seconds - shown.From.Seconds, 1.95 * beat, 2.05 * beat);
    }

    [Fact]
    public void Every_line_with_steps_is_shown_and_nothing_else_within_the_film()
    {
        var steps = Page.Split('\n').Select((l, i) => (Text: l, Number: i + 1)).Where(l => l.Text.Length > 0 && char.IsAsciiDigit(l.Text[0])).Select(l => l.Number).ToList();
        Assert.Equal(steps, Notes.Lines.Select(l => l.Line).Distinct().Order());
        Assert.All(Notes.Lines, l => Assert.True(l.From < l.To && l.To <= Notes.End));
        // A line is not shown twice at once.
        Assert.All(Notes.Lines.GroupBy(l => l.Line), g => Assert.All(g.Zip(g.Skip(1)), pair => Assert.True(pair.First.To <= pair.Second.From)));
    }

    [Fact]
    public void Talk_shows_no_line()
    {
        Assert.Empty(FilmCases.Notes("WEBVTT\n\n00:01.000 --> 00:09.000\nhello and welcome it rained all week\n").Lines);
    }
}
