using System.IO.Compression;
using Surefoot.Library;
using Surefoot.Transcribe;

namespace Surefoot.Tests.Library;

/// <summary>The hall's own words in both databases, and on their way out and in.</summary>
public class WordsOfTheHall
{
    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_word_is_kept_given_another_meaning_and_taken_back(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var words = home.Library.Words;
        Assert.Empty(await words.AllAsync());
        var (kept, refusal) = await words.KeepAsync("  Frobble   the gate ", "hitch R");
        Assert.Null(refusal);
        Assert.Equal(("Frobble the gate", "hitch R", home.Clock.Now), (kept!.Said, kept.Means, kept.Added));
        await words.KeepAsync("barn door", "step side R");
        // The same words, however they are written, are one word.
        Assert.Equal(kept.Id, (await words.KeepAsync("FROBBLE the\u00A0gate", "kick R")).Word!.Id);
        using (var again = await home.AgainAsync()) Assert.Equal(["barn door", "FROBBLE the gate"], (await again.Words.AllAsync()).Select(w => w.Said));
        Assert.Equal(new SheetWord("FROBBLE the gate", "kick R") { OfTheHall = true }, (await words.AllAsync())[1].ForSheets);
        Assert.Null(await words.TakeBackAsync(kept.Id));
        Assert.NotNull(await words.TakeBackAsync(kept.Id));
        Assert.Equal(["barn door"], (await words.AllAsync()).Select(w => w.Said));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task What_cannot_be_a_word_is_refused_in_a_sentence_and_changes_nothing(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        foreach (var (said, means) in ((string, string)[])[("", "hitch"), (" ! ", "hitch"), ("a => b", "hitch"), ("> note", "hitch"), (new('x', 201), "hitch"), ("a\0b", "hitch"), ("frobble", "\ud800")])
        {
            Assert.NotEmpty((await home.Library.Words.KeepAsync(said, means)).Refusal!.Why);
        }

        Assert.Empty(await home.Library.Words.AllAsync());
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task They_go_out_as_a_plain_file_and_come_in_beside_those_that_are_there(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await home.Library.Words.KeepAsync("frobble", "hitch");
        await home.Library.Words.KeepAsync("barn door", "step side R");
        Assert.Null(await home.Library.Exchange.GiveFolderAsync(home.At("out")));
        var (told, troubles) = SheetWords.Read(await File.ReadAllTextAsync(home.At("out/hall-words.rules")));
        Assert.Empty(troubles);
        Assert.Equal([("barn door", "step side R"), ("frobble", "hitch")], told.Select(w => (w.Said, w.Means)));

        await using var other = await Home.OpenAsync(place);
        await other.Library.Words.KeepAsync("Frobble", "kick");
        var line = Assert.Single((await other.Library.Exchange.TakeFolderAsync(home.At("out"), other.Notebook)).Lines, l => l.File == "hall-words.rules");
        Assert.Equal((Taken.New, "One word of the hall. “frobble” stays “kick” here, though the file says “hitch”."), (line.Taken, line.Says));
        Assert.Equal([("barn door", "step side R"), ("Frobble", "kick")], (await other.Library.Words.AllAsync()).Select(w => (w.Said, w.Means)));

        // One notebook's pages go out without them.
        using var zip = new MemoryStream();
        await home.Library.Exchange.GiveZipAsync(zip, home.Notebook);
        using var archive = new ZipArchive(zip);
        Assert.DoesNotContain(archive.Entries, e => e.Name == "hall-words.rules");
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_file_of_words_beside_plain_pages_is_taken_and_what_is_wrong_in_it_is_told(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        Directory.CreateDirectory(home.At("in/deeper"));
        await File.WriteAllTextAsync(home.At("in/hall-words.rules"), "> ours\nfrobble => hitch\nno arrow\n");
        await File.WriteAllTextAsync(home.At("in/deeper/hall-words.rules"), "never => hitch\n");
        var report = await home.Library.Exchange.TakeFolderAsync(home.At("in"), home.Notebook);
        Assert.Equal([(Taken.New, true), (Taken.NotRead, true)], report.Lines.OrderBy(l => l.Taken).Select(l => (l.Taken, l.File == "hall-words.rules")));
        Assert.Contains(report.Lines, l => l.Says.StartsWith("line 3:", StringComparison.Ordinal));
        Assert.Equal(["frobble"], (await home.Library.Words.AllAsync()).Select(w => w.Said));
        Assert.Equal(1, report.OtherFiles);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_copy_brings_back_the_words_there_were(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await home.Library.Words.KeepAsync("frobble", "hitch");
        Assert.Null(await home.Library.Copies.MakeAsync(home.At("copy")));
        await home.Library.Words.KeepAsync("frobble", "kick");
        await home.Library.Words.KeepAsync("later", "kick");
        Assert.Null(await home.Library.Copies.BringBackAsync(home.At("copy")));
        Assert.Equal([("frobble", "hitch")], (await home.Library.Words.AllAsync()).Select(w => (w.Said, w.Means)));
    }
}
