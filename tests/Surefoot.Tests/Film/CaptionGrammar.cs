using Surefoot.Film.Captions;
using Surefoot.Tests.Film.Speaking;

namespace Surefoot.Tests.Film;

/// <summary>
/// Caption files against the standard: the examples of the WebVTT specification (W3C, section "WebVTT file using only nested
/// cues" and the introduction) and its rules as the handbook lists them (published.md, 9); SRT as Matroska's codec
/// specification describes it.
/// </summary>
public class CaptionGrammar
{
    // The specification's own example of nested cues.
    private const string Nested = "WEBVTT\n\n00:00.000 --> 01:24.000\nIntroduction\n\n00:00.000 --> 00:44.000\nTopics\n\n00:44.000 --> 01:19.000\nPresenters\n\n01:24.000 --> 05:00.000\nScrolling Effects\n\n01:35.000 --> 03:00.000\nAchim’s Demo\n\n03:00.000 --> 05:00.000\nTimeline Panel\n";

    // And its example of cues that only overlap.
    private const string Overlapping = "WEBVTT\n\n00:00.000 --> 01:00.000\nThe First Minute\n\n00:30.000 --> 01:30.000\nThe Final Minute\n";

    private static List<TimedText> Cues(string file) => [.. CaptionReader.Read(file).Cues.Select(c => new TimedText(c.From, c.To, string.Join('\n', c.Text)))];

    [Fact]
    public void The_standards_nested_example_may_be_chapters_and_its_overlapping_one_may_not()
    {
        Assert.Empty(CaptionReader.Read(Nested).Troubles);
        Assert.Null(Nesting.Fault(Cues(Nested)));
        Assert.Equal(6, Cues(VttWriter.Chapters(Cues(Nested))).Count);
        Assert.Empty(CaptionReader.Read(Overlapping).Troubles);
        Assert.NotNull(Nesting.Fault(Cues(Overlapping)));
        Assert.Throws<ArgumentException>(() => VttWriter.Chapters(Cues(Overlapping)));
    }

    [Theory]
    [InlineData("WEBVTT")]
    [InlineData("\uFEFFWEBVTT a title\n\n00:01.000 --> 00:02.000\nhello")]
    [InlineData("WEBVTT\r\n\r\nNOTE a remark\r\nof two lines\r\n\r\n1\r\n100:00:01.000 --> 100:00:02.000 align:start position:0%\r\n<v Ann>hello</v>\r\n")]
    [InlineData("WEBVTT\n\nSTYLE\n::cue { color: white; }\n\n00:59:59.999\t-->\t01:00:00.000\n- one\n- two\n")]
    [InlineData("WEBVTT\nKind: captions\n\n00:00.000 --> 00:02.000\nThat's an L!\n\n00:01.000 --> 00:03.000\noverlaps\n")]
    public void What_the_standard_allows_is_no_trouble(string file) => Assert.DoesNotContain(CaptionReader.Read(file).Troubles, t => file.Length > 6 || t.Lost);

    [Theory]
    [InlineData("webvtt\n\n00:01.000 --> 00:02.000\nx", 1)]
    [InlineData("WEBVTT\n00:01.000 --> 00:02.000\nx", 2)]
    [InlineData("WEBVTT\n\n00:01,000 --> 00:02,000\nx", 3)]
    [InlineData("WEBVTT\n\n0:01.000 --> 00:02.000\nx", 3)]
    [InlineData("WEBVTT\n\n00:61.000 --> 00:62.000\nx", 3)]
    [InlineData("WEBVTT\n\n00:01.00 --> 00:02.000\nx", 3)]
    [InlineData("WEBVTT\n\n00:01.000-->00:02.000\nx", 3)]
    [InlineData("WEBVTT\n\n00:02.000 --> 00:01.000\nx", 3)]
    [InlineData("WEBVTT\n\n00:02.000 --> 00:03.000\nx\n\n00:01.000 --> 00:04.000\ny", 6)]
    [InlineData("WEBVTT\n\none\n00:01.000 --> 00:02.000\nx\n\none\n00:03.000 --> 00:04.000\ny", 7)]
    [InlineData("WEBVTT\n\n00:01.000 --> 00:02.000\nx\n00:03.000 --> 00:04.000\ny", 5)]
    [InlineData("WEBVTT\n\nwords that nobody timed\n\n00:01.000 --> 00:02.000\nx", 3)]
    [InlineData("1\n00:00:01.000 --> 00:00:02,000\nx", 2)]
    [InlineData("00:00:01,000 --> 00:00:02,000\nx", 1)]
    public void What_it_does_not_allow_is_told_at_its_line_and_the_words_are_kept(string file, int line)
    {
        var read = CaptionReader.Read(file);
        Assert.Contains(read.Troubles, t => t.Line == line);
        Assert.Contains(SpokenWords.Of(read), w => w.Text == "x");
    }

    [Fact]
    public void What_is_written_is_read_back_without_trouble_and_the_same()
    {
        var random = new Chance(7);
        for (var round = 0; round < 200; round++)
        {
            var captions = Enumerable.Range(0, random.Next(1, 12)).Select(_ => random.Next(0, 5_000_000)).Order()
                .Select(from => new TimedText(new(from), new(from + random.Next(1, 9000)), new[] { "rock & roll", "a --> b", "<left>", "one\n\ntwo", " ", "½ left" }[random.Next(6)])).ToList();
            var read = CaptionReader.Read(VttWriter.Captions(captions));
            Assert.Empty(read.Troubles);
            Assert.Equal(captions.OrderBy(c => c.From).Select(c => c.From), read.Cues.Select(c => c.From));
            Assert.DoesNotContain(read.Cues, c => c.Text.Any(t => t.Contains("-->", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void Rolling_captions_say_each_word_once_and_counts_that_come_twice_stay_twice()
    {
        var rolling = CaptionReader.Read("WEBVTT\n\n00:01.000 --> 00:02.000\n \none<00:01.500><c> two</c>\n\n00:02.000 --> 00:02.010\none two\n \n\n00:02.010 --> 00:04.000\none two\nthree<00:03.000><c> four</c>\n\n00:04.000 --> 00:04.010\nthree four\n \n");
        var words = SpokenWords.Of(rolling);
        Assert.Equal(["one", "two", "three", "four"], words.Select(w => w.Text));
        Assert.Equal([1, 1.5, 2.01, 3], words.Select(w => w.From));
        var twice = CaptionReader.Read("WEBVTT\n\n00:01.000 --> 00:03.000\none two three four\n\n00:03.000 --> 00:05.000\none two three four\n");
        Assert.Equal(8, SpokenWords.Of(twice).Count);
    }

    [Fact]
    public void Nobody_can_make_reading_fail()
    {
        var random = new Chance(11);
        const string pieces = "WEBVTT\n\n-->00:01.000 :,.<c>[&;1\r\t\uFEFFnote";
        for (var round = 0; round < 3000; round++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(60)).Select(_ => pieces.Substring(random.Next(pieces.Length - 3), random.Next(1, 4))));
            var words = SpokenWords.Of(CaptionReader.Read(random.Next(2) == 0 ? "WEBVTT\n\n" + text : text));
            Assert.All(words, w => Assert.True(w.To >= w.From));
        }
    }
}
