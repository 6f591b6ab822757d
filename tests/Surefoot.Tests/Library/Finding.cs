using Surefoot.Dance.Basics;
using Surefoot.Library;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Library;

/// <summary>Searching the demo notebook by what is remembered of a dance; alike in both databases.</summary>
public class Finding
{
    public static TheoryData<Place> Both => Home.Both;

    /// <summary>What is typed, and which dance of the demo notebook is meant; it must come first, or among the first where many fit.</summary>
    public static readonly (string Typed, string Dance, int Among)[] Remembered =
    [
        ("five barns", "Five Barns", 1),
        ("FIVE BARN", "Five Barns", 1),
        ("fiev brans", "Five Barns", 1),
        ("barns", "Five Barns", 1),
        ("the steeple", "Steeple Clock", 1),
        ("weather vane", "Weathervane", 1),
        ("weathervain", "Weathervane", 1),
        ("vane", "Weathervane", 1),
        ("splitrail", "Split Rail Cha-Cha", 1),
        ("that bucket cha cha", "Nine Buckets Cha-Cha", 1),
        ("80 counts", "Five Barns", 1),
        ("about 80 counts", "Five Barns", 1),
        ("dorothy steps", "Steeple Clock", 2),
        ("mill wheel", "Weathervane", 3),
        ("partner cha cha split", "Split Rail Cha-Cha", 1),
        ("vine then threshing turn", "Five Barns", 20),
        ("threshing turn then walks", "Five Barns", 1),
        ("red barn", "Five Barns", 1),
        ("forty to learn", "Five Barns", 1),
        // What hands do, and a part by its name.
        ("under right hands", "Kettle Lid Shuffle", 4),
        ("release left hands", "Five Barns", 12),
        ("wrapped and out again", "Split Rail Cha-Cha", 1),
    ];

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_dance_is_found_by_whatever_is_remembered_of_it(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await DemoAsync(home);
        foreach (var (typed, dance, among) in Remembered)
        {
            var found = await home.Library.Catalogue.SearchAsync(typed);
            Assert.True(found.Take(among).Any(f => f.Dance.Title == dance), $"\"{typed}\" found {string.Join(", ", found.Take(5).Select(f => $"{f.Dance.Title} {f.Score:0.0}"))}");
        }

        Assert.Empty(await home.Library.Catalogue.SearchAsync("xyzzyplugh"));
        Assert.Empty(await home.Library.Catalogue.SearchAsync(" \t "));
        Assert.NotEmpty(await home.Library.Catalogue.SearchAsync("%'; DROP TABLE shelf; -- barns"));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task It_is_told_where_words_were_found_that_a_row_does_not_show(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await DemoAsync(home);
        Assert.Empty(await WhyAsync("fiev brans", "Five Barns"));
        Assert.Empty(await WhyAsync("barns circle", "Five Barns"));
        Assert.Equal(["the figure threshing turn"], await WhyAsync("five threshing", "Five Barns"));
        // Another name of a figure stands nowhere on the page.
        Assert.All(await WhyAsync("dorothy steps", "Steeple Clock"), w => Assert.StartsWith("the figure ", w, StringComparison.Ordinal));
        Assert.NotEmpty(await WhyAsync("dorothy steps", "Steeple Clock"));
        // For things danced one after the other the row has the count.
        Assert.Empty(await WhyAsync("threshing turn then walks", "Five Barns"));

        async Task<IReadOnlyList<string>> WhyAsync(string typed, string dance) =>
            (await home.Library.Catalogue.SearchAsync(typed)).Single(f => f.Dance.Title == dance).Why;
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Facts_asked_for_hold_for_every_dance_found(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await DemoAsync(home);
        var catalogue = home.Library.Catalogue;
        await AllAsync("3/4", d => d.Meter.Beats == 3);
        await AllAsync("about 112 bpm", d => d.TempoFrom <= 120 && d.TempoTo >= 104);
        await AllAsync("100 to 116 bpm", d => d.TempoFrom <= 116 && d.TempoTo >= 100);
        await AllAsync("two walls", d => d.Walls == 2);
        await AllAsync("32 counts", d => d.Counts == 32);
        await AllAsync("line intermediate", d => d.Floor == Floor.Walls && d.Level == "intermediate");
        await AllAsync("partner sweetheart", d => d.ForCouples && d.Holds.Any(h => h.Contains("sweetheart")));

        async Task AllAsync(string typed, Func<ShelfItem, bool> holds)
        {
            var found = await catalogue.SearchAsync(typed);
            Assert.NotEmpty(found);
            Assert.All(found, f => Assert.True(f.Whole && holds(f.Dance), $"{typed}: {f.Dance.Title}"));
            // And none is missing that it holds for.
            Assert.Equal((await catalogue.ListAsync(new())).Dances.Count(holds), found.Count);
        }
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Her_turn_is_not_his(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        const string head = "Kind: partner, circle\nHold: sweetheart\nFacing: line of dance\nFeet: same, left free\nPhrase: any\n\n";
        await home.AddAsync("Hers\n" + head + "1-2  Lead: walk L, R. Follow: full turn right, starting left, under right hands\n3-6  Walk L, R, L, R\n");
        await home.AddAsync("His\n" + head + "1-2  Follow: walk L, R. Lead: full turn right, starting left, under right hands\n3-6  Walk L, R, L, R\n");
        await home.AddAsync("Other way round\n" + head + "1-4  Walk L, R, L, R\n5-6  Lead: walk L, R. Follow: full turn right, starting left, under right hands\n");
        Assert.Equal(["Hers"], (await home.Library.Catalogue.SearchAsync("her turn then walks")).Select(f => f.Dance.Title));
        Assert.Equal(["His"], (await home.Library.Catalogue.SearchAsync("man's turn then walk")).Select(f => f.Dance.Title));
        Assert.Equal("Other way round", (await home.Library.Catalogue.SearchAsync("walks then lady turns"))[0].Dance.Title);
        Assert.Equal(1, (await home.Library.Catalogue.SearchAsync("her turn then walks"))[0].At);
        Assert.Equal(["Hers", "Other way round"], (await home.Library.Catalogue.SearchAsync("her turn")).Select(f => f.Dance.Title).Order());
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Hands_and_what_is_danced_under_them_are_told_with_one_count(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await home.AddAsync("Late Turn\nKind: partner, circle\nHold: sweetheart\nFacing: line of dance\nFeet: same, left free\nPhrase: any\n\n1-2  Walk L, R\n3&4  Shuffle forward L R L\n5-6  Lead: walk R, L. Follow: full turn right, starting right, under right hands\n7-8  Walk R, L\n");
        Assert.Equal(["the follow’s steps on count 5"], await WhyAsync("turn under right hands"));
        Assert.Equal(["the follow’s steps on count 5"], await WhyAsync("right turn hands late"));

        async Task<IReadOnlyList<string>> WhyAsync(string typed) => (await home.Library.Catalogue.SearchAsync(typed)).Single(f => f.Dance.Title == "Late Turn").Why;
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task What_changes_is_found_at_once_here_and_in_another_program(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await DemoAsync(home);
        var other = (await home.AgainAsync()).Catalogue;
        Assert.Empty(await other.SearchAsync("zanzibar"));
        var page = await home.AddAsync("Zanzibar Stroll\nKind: line\n\n1-4  Vine right, touch L\n");
        Assert.Single(await other.SearchAsync("zanzibar"));
        await home.Library.Details.AddAliasAsync(page, "Clove Island");
        await home.Library.Details.AddTagAsync(page, "Tuesday");
        await home.Library.Details.AddSongAsync(page, "Nutmeg Moon", "The Spoons");
        foreach (var typed in (string[])["clove", "tuesday", "nutmeg", "the spoons", "Clöve ISLAND"]) Assert.Equal(page, (await other.SearchAsync(typed))[0].Dance.Page);
        await home.Library.Pages.KeepAsync(page, 1, "Madagascar Stroll\nKind: line\n\n1-4  Vine right, touch L\n");
        Assert.Null(await home.Library.Pages.RenameAsync(page, "Madagascar stroll"));
        Assert.DoesNotContain(await other.SearchAsync("zanzibar stroll"), f => f.Whole);
        Assert.Equal(page, (await other.SearchAsync("madagascar"))[0].Dance.Page);
        Assert.Equal(["Clove Island"], (await other.SearchAsync("madagascar"))[0].Dance.Aliases);
        await home.Library.Bin.PutAsync(page);
        Assert.Empty(await other.SearchAsync("madagascar"));
        await home.Library.Bin.TakeOutAsync(page);
        Assert.Single(await other.SearchAsync("madagascar"));
        await home.Library.Bin.PutAsync(page);
        await home.Library.Bin.EmptyAsync(home.Notebook, home.Clock.Now + TimeSpan.FromDays(1));
        Assert.Empty(await other.SearchAsync("madagascar"));
        Assert.DoesNotContain((await other.ListAsync(new())).Dances, d => d.Page == page);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Lists_are_sorted_and_picked_alike(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await DemoAsync(home);
        await home.AddAsync("élan\nKind: line\n\n1-4  Vine right, touch L\n");
        await home.AddAsync("Elbow\nKind: line\n\n1-4  Vine right, touch L\n");
        var catalogue = home.Library.Catalogue;
        var all = (await catalogue.ListAsync(new())).Dances;
        Assert.DoesNotContain(all, d => d.IsFigures);
        Assert.Equal(23, all.Count);
        Assert.Equal("élan", all[all.ToList().FindIndex(d => d.Title == "Elbow") - 1].Title);
        Assert.Equal(all.Reverse(), (await catalogue.ListAsync(new() { Descending = true })).Dances);
        var counts = (await catalogue.ListAsync(new() { Sort = SortBy.Counts, Descending = true, Take = 3 })).Dances;
        Assert.Equal(all.Select(d => d.Counts).OrderDescending().Take(3), counts.Select(d => d.Counts));
        var page = await catalogue.ListAsync(new() { Skip = 20, Take = 10 });
        Assert.Equal((23, 3), (page.Total, page.Dances.Count));
        Assert.All((await catalogue.ListAsync(new() { ForCouples = true, Hold = "sweetheart" })).Dances, d => Assert.Contains("sweetheart", d.Holds));
        Assert.All((await catalogue.ListAsync(new() { Tempo = 112 })).Dances, d => Assert.InRange(112, d.TempoFrom!.Value, d.TempoTo!.Value));
        Assert.Equal(all.Count(d => d.Level == "improver"), (await catalogue.ListAsync(new() { Level = "Improver" })).Total);
    }

    [Fact]
    public async Task Ten_thousand_dances_are_found_by_name_with_slips_and_by_facts()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        await Filling.ManyAsync(home.Store, home.Notebook, 10_000);
        var catalogue = home.Library.Catalogue;
        Assert.Equal(10_000, (await catalogue.ListAsync(new())).Total);
        for (var number = 3; number < 4000; number += 397)
        {
            var title = ManyDances.Title(number);
            var found = await catalogue.SearchAsync(title);
            Assert.Equal(title, found[0].Dance.Title);
            // Two neighbours exchanged in the middle of the first word.
            var slip = title[..2] + title[3] + title[2] + title[4..];
            found = await catalogue.SearchAsync(slip);
            Assert.True(found.Take(3).Any(f => f.Dance.Title == title), $"{slip}: {string.Join(", ", found.Take(3).Select(f => f.Dance.Title))}");
        }

        var expected = (await catalogue.ListAsync(new() { Counts = 40 })).Dances.Count(d => d is { ForCouples: true, Meter.Beats: 3 });
        Assert.Equal(expected, (await catalogue.SearchAsync("partner 40 counts 3/4", most: 10_000)).Count);
        Assert.True(expected > 50);
        var turning = await catalogue.SearchAsync("her turn then walks", most: 10_000);
        Assert.All(turning, f => Assert.Contains("full turn", f.Dance.Figures));
        Assert.Equal((await catalogue.ListAsync(new() { ForCouples = true, Figure = "full turn" })).Total, turning.Count);
    }

    private static async Task DemoAsync(Home home)
    {
        await home.AddAsync(await File.ReadAllTextAsync(Root.At("demo", "dances", "figures.dance")), "figures");
        foreach (var page in Root.Pages("demo", "dances").Where(p => Path.GetFileName(p) != "figures.dance")) await home.AddAsync(await File.ReadAllTextAsync(page));
    }
}
