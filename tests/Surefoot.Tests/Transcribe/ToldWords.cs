using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Tests.Support;
using Surefoot.Transcribe;

namespace Surefoot.Tests.Transcribe;

/// <summary>What somebody told of a sheet's words is taken before anything that comes with Surefoot.</summary>
public class ToldWords
{
    private const string Sheet = "Gate Post\n2 wall line dance\n\n1-4 Walk right, left, right, frobble\n5-8 Walk left, right, left, Frobble\n9-12 Step side right, touch, step side left, touch\n13-16 Touch right beside left, hold, touch left, hold\n";

    [Fact]
    public void A_word_of_the_hall_is_read_as_it_says_and_told_as_assumed_and_is_no_doubt()
    {
        var without = SheetReader.Read(Sheet);
        Assert.Equal([4, 5], without.Doubts.Where(d => d.Kind == DoubtKind.NotUnderstood).Select(d => d.Line));
        var read = SheetReader.Read(Sheet, told: [new("frobble", "hitch") { OfTheHall = true }]);
        Assert.DoesNotContain(read.Doubts, d => d.Kind == DoubtKind.NotUnderstood);
        Assert.DoesNotContain(read.Doubts, d => d.Says.Contains("frobble", StringComparison.OrdinalIgnoreCase));
        Assert.Equal([(4, "frobble"), (5, "Frobble")], read.Words.Select(w => (w.Line, w.Said)));
        Assert.Equal("\"frobble\" is \"hitch\", the hall's own word", read.Words[0].Says);
        Assert.Equal("1-4  Walk right, left, right, hitch", read.Lines[3].Became[0]);
        Assert.Equal(1, read.Lines[3].Confidence);
        // The page is danced so: the weight stays where the walk left it.
        var steps = DanceReader.Read(read.Page).Score.Roles[0].Steps;
        Assert.Equal((ActionKind.Hitch, Foot.Left), (steps[3].Kind, steps[3].Foot.Single()));
    }

    [Fact]
    public void The_hall_s_word_wins_over_what_comes_with_Surefoot()
    {
        const string sheet = "Gate Post\n2 wall line dance\n\n1-4 Vine right, scuff left\n5-8 Vine left, scuff right\n";
        var read = SheetReader.Read(sheet, told: [new("vine right", "step side R, step together L, step side R")]);
        Assert.Contains("1-4    Step side R, step together L, step side R, scuff L", read.Page, StringComparison.Ordinal);
        Assert.Contains("5-8    Vine left, scuff R", read.Page, StringComparison.Ordinal);
        // And its weight is its own: no other reading is looked for where the feet would come out better.
        var close = SheetReader.Read("Gate Post\n\n1-2 Step side right, close left\n3-4 Step side left, touch right\n", told: [new("close left", "step together L")]);
        Assert.DoesNotContain(close.Doubts, d => d.Says.Contains("closed without weight", StringComparison.Ordinal));
        Assert.Contains("step together L", close.Page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_known_phrase_is_meant_where_it_is_the_whole_phrase_and_an_unknown_word_wherever_it_stands()
    {
        var touched = SheetReader.Read(Sheet, told: [new("touch", "heel dig")]);
        Assert.Equal([6, 6], touched.Words.Select(w => w.Line));
        Assert.Contains("Touch R beside left", touched.Page, StringComparison.Ordinal);
        var inside = SheetReader.Read("Gate Post\n\n1-2 Frobble left foot, frobbled\n", told: [new("frobble", "hitch")]);
        Assert.Equal("Frobble", Assert.Single(inside.Words).Said);
        Assert.Contains("Hitch L", inside.Page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void What_is_told_of_one_place_holds_there_alone_and_comes_first()
    {
        var read = SheetReader.Read(Sheet, told: [new("touch", "heel dig") { OfTheHall = true }, new SheetWord("touch", "kick") { Only = new(6, 1) }]);
        Assert.Equal("9-12  Step side right, heel dig, step side left, kick", read.Lines[5].Became[0], ignoreCase: true);
        Assert.Equal([true, false], read.Words.Select(w => w.Word.OfTheHall));
    }

    [Fact]
    public void What_is_no_step_becomes_a_note_and_no_doubt()
    {
        const string sheet = "Gate Post\n\n1-4 Vine right, touch left\n5-8 Vine left, touch right\n\nKick up your heels and smile!\n";
        Assert.Contains("Kick up your heels", Steps(SheetReader.Read(sheet)), StringComparison.Ordinal);
        var read = SheetReader.Read(sheet, told: [new("kick up your heels and smile", SheetWord.NoStep)]);
        Assert.DoesNotContain("heels", Steps(read), StringComparison.Ordinal);
        Assert.Contains("> Kick up your heels and smile!", read.Page, StringComparison.Ordinal);
        Assert.DoesNotContain(read.Doubts, d => d.Says.Contains("heels", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_phrase_that_speaks_of_steps_can_be_corrected_where_it_stands()
    {
        foreach (var file in Directory.GetFiles(Root.At("corpus", "sheets"), "*.txt").Order(StringComparer.Ordinal))
        {
            var sheet = File.ReadAllText(file);
            var read = SheetReader.Read(sheet);
            foreach (var line in read.Lines)
            {
                // As many as the reader found, or fewer where several are meant by the same words.
                if (line.Phrases > 0) Assert.True(line.Said.Count > 0, $"{Path.GetFileName(file)}, line {line.Number}: {line.Text}");
                foreach (var said in line.Said)
                {
                    var again = SheetReader.Read(sheet, told: [new(said.Words, "hold") { Only = said.Place }]);
                    Assert.True(again.Words.Count == 1, $"{Path.GetFileName(file)}, line {line.Number}: {said.Words}");
                    Assert.Equal((line.Number, said.Words), (again.Words[0].Line, again.Words[0].Said));
                }
            }
        }
    }

    [Fact]
    public void Phrases_say_how_many_more_places_say_the_same()
    {
        var said = SheetReader.Read(Sheet).Lines.SelectMany(l => l.Said).ToLookup(s => s.Words, s => s.Elsewhere);
        Assert.Equal([1], said["frobble"]);
        Assert.Equal([1, 1], said["touch"]);
        Assert.Equal([0], said["Walk right, left, right"]);
        Assert.Equal([0], said["Touch right beside left"]);
    }

    [Fact]
    public void One_unknown_word_of_a_phrase_can_be_told_by_itself()
    {
        const string sheet = "Ribbon Waltz\ncouples, closed position\n\nMan: 1-3 Left foot forward, right foot side, left foot wend\nLady: 1-3 Right foot back, left foot side, right foot wend\n";
        var said = SheetReader.Read(sheet).Lines.SelectMany(l => l.Said).Where(s => s.OneWord).ToList();
        Assert.Equal([("wend", 1), ("wend", 1)], said.Select(s => (s.Words, s.Elsewhere)));
        var twice = SheetReader.Read("Gate Post\n\n1-4 Wend left foot, hold, wend right foot, hold\n").Lines[2].Said.Select(s => s.Words).ToList();
        Assert.Equal(["Wend left foot", "Wend", "hold", "wend right foot", "wend", "hold"], twice.SkipLast(1));
        var read = SheetReader.Read(sheet, told: [new("wend", "close")]);
        Assert.Equal(2, read.Words.Count);
        Assert.DoesNotContain(read.Doubts, d => d.Kind == DoubtKind.NotUnderstood);
        Assert.Contains("step side R, close L", read.Page, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_that_are_told_change_nothing_where_they_do_not_stand_and_nothing_is_lost_where_they_do()
    {
        SheetWord[] told = [new("frobble", "hitch") { OfTheHall = true }, new("touch", "tap"), new("left", "left"), new("step", "walk") { Only = new(3, 0) }];
        foreach (var file in Directory.GetFiles(Root.At("corpus", "sheets"), "*.txt").Order(StringComparer.Ordinal))
        {
            var sheet = File.ReadAllText(file);
            Assert.Equal(SheetReader.Read(sheet).Page, SheetReader.Read(sheet, told: [new("zyzzle", "hitch")]).Page);
            var read = SheetReader.Read(sheet, told: told);
            Assert.Equal(sheet.ReplaceLineEndings("\n"), string.Join('\n', read.Lines.Select(l => l.Text)));
            // No sign that stood in for words is left anywhere.
            var all = read.Page + string.Concat(read.Doubts.Select(d => d.Says + d.Phrase)) + string.Concat(read.Lines.SelectMany(l => (string[])[.. l.Became, .. l.Assumed, .. l.NotUnderstood, .. l.Said.Select(s => s.Words + s.Reads)]));
            Assert.DoesNotContain(all, c => c is >= '\uE000' and <= '\uEFFF');
        }
    }

    [Theory]
    [InlineData("hitch", "hitch", null)]
    [InlineData(" rock back L,  recover R ", "rock back L, recover R", null)]
    [InlineData("rokc forward L", "rock forward L", null)]
    [InlineData("No Step", "no step", null)]
    [InlineData("flumble", null, "a page has no word for \"flumble\"")]
    [InlineData("smile", null, "it names no step")]
    [InlineData("hitch => kick", null, "\"=>\" has no place in it")]
    public void What_it_should_be_is_asked_for_in_a_page_s_words(string typed, string? page, string? fault) => Assert.Equal((page, fault), SheetWords.InPageWords(typed));

    [Fact]
    public void The_file_of_the_hall_s_words_is_read_and_written_again_as_it_was()
    {
        const string text = "> The hall's own words: what a sheet says, \"=>\", and what a page would write. One a line.\nbarn door => step side R, step together L\nfrobble the gate => hitch\nkick up your heels => no step\n";
        var (words, troubles) = SheetWords.Read(text.ReplaceLineEndings("\r\n"));
        Assert.Empty(troubles);
        Assert.All(words, w => Assert.True(w.OfTheHall));
        Assert.Equal(text, SheetWords.Write(words));
    }

    [Fact]
    public void Lines_of_that_file_that_make_no_sense_are_told_and_the_others_are_taken()
    {
        var (words, troubles) = SheetWords.Read("frobble => hitch\njust words\n => hitch\nFROBBLE  => kick\nfrobble => hitch\na => b => c\n\u201Cquoted\u201D => touch\nremark =>\n" + new string('x', 300) + " => hitch\n");
        Assert.Equal(["frobble", "\"quoted\"", "remark"], words.Select(w => w.Said));
        Assert.True(words[2].IsNoStep);
        Assert.Equal([2, 3, 4, 6, 9], troubles.Select(t => t.Line));
        Assert.Contains("told before as \"hitch\"", troubles[2].Says, StringComparison.Ordinal);
    }

    private static string Steps(Transcript read) => string.Join('\n', read.Page.Split('\n').Where(l => !l.StartsWith('>')));
}
