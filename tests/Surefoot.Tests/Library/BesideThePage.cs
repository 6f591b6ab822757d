using Surefoot.Dance.Basics;
using Surefoot.Library;

namespace Surefoot.Tests.Library;

/// <summary>Notebooks, the bin, names, tags, songs, films, the hall's own figures; alike in both databases.</summary>
public class BesideThePage
{
    private const string Page = "Lamp Black Shuffle\nKind: line\n\n1-4  Vine right, touch L\n";

    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Capitals_and_accents_make_no_other_name(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var notebooks = home.Library.Notebooks;
        Assert.Null((await notebooks.AddAsync("Élan  Hall")).Refusal);
        Assert.NotNull((await notebooks.AddAsync("ELAN hall")).Refusal);
        Assert.NotNull((await notebooks.AddAsync("e\u0301lan-hall")).Refusal);
        Assert.NotNull((await notebooks.AddAsync(" \t ")).Refusal);
        foreach (var name in (string[])["zebra", "Ängel", "apple", "Banjo", "ångström", "Œuvre", "oz"]) Assert.Null((await notebooks.AddAsync(name)).Refusal);
        Assert.Equal(["Ängel", "ångström", "apple", "Banjo", "Élan Hall", "Œuvre", "oz", "The hall", "zebra"], (await notebooks.AllAsync()).Select(n => n.Name));
        var page = await home.AddAsync(Page, "Café/ Waltz");
        Assert.Equal(page, (await home.Library.Pages.NamedAsync(home.Notebook, "cafe/ WALTZ"))?.Id);
        Assert.Equal("Café/Waltz", (await home.Library.Pages.OneAsync(page))!.Name);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Settings_come_back_as_they_were_set(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var settings = new NotebookSettings { LeadWord = "Man", FollowWord = "Lady", LeadStature = 1.85, FollowStature = 1.58, Units = Units.FeetAndInches, DecimalMark = DecimalMark.Comma, Paper = Paper.Letter, UsualTempo = 112, Theme = "dusk" };
        Assert.Null(await home.Library.Notebooks.SetAsync(home.Notebook, settings));
        Assert.Equal(settings, (await home.Library.Notebooks.OneAsync(home.Notebook))!.Settings);
        Assert.NotNull(await home.Library.Notebooks.SetAsync(home.Notebook, settings with { LeadStature = 185 }));
        Assert.NotNull(await home.Library.Notebooks.SetAsync(home.Notebook, settings with { UsualTempo = 0 }));
        Assert.NotNull(await home.Library.Notebooks.SetAsync(home.Notebook + 1000, settings));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_deleted_page_comes_back_with_everything(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(Page);
        await home.Library.Details.AddTagAsync(page, "beginners");
        await home.Library.Drafts.SaveAsync(page, "hall", 1, 1, "half");
        Assert.Null(await home.Library.Bin.PutAsync(page));
        Assert.Null(await home.Library.Bin.PutAsync(page));
        Assert.Equal(page, Assert.Single(await home.Library.Bin.LookAsync(home.Notebook)).Id);
        Assert.IsType<NotKept>(await home.Library.Pages.KeepAsync(page, 1, Page + "> more\n"));
        Assert.NotNull(await home.Library.Drafts.SaveAsync(page, "hall", 2, 1, "whole"));
        Assert.NotNull(await home.Library.Details.AddTagAsync(page, "x"));
        // Its name is free for another page meanwhile.
        var other = await home.AddAsync(Page);
        Assert.Equal("lamp-black-shuffle", (await home.Library.Pages.OneAsync(other))!.Name);
        Assert.Null(await home.Library.Bin.TakeOutAsync(page));
        var back = await home.Library.Pages.OneAsync(page);
        Assert.Equal(("lamp-black-shuffle-2", null), (back!.Name, back.Deleted));
        Assert.Equal(["beginners"], (await home.Library.Details.OfAsync(page))!.Tags);
        Assert.Equal("half", (await home.Library.Drafts.OfAsync(page))[0].Text);
        Assert.Equal(Page, await home.Library.Pages.TextAsync(page));

        await home.Library.Bin.PutAsync(page);
        Assert.Equal(0, await home.Library.Bin.EmptyAsync(home.Notebook, home.Clock.Now));
        Assert.Equal(1, await home.Library.Bin.EmptyAsync(home.Notebook, home.Clock.Now + TimeSpan.FromDays(30)));
        Assert.Null(await home.Library.Pages.OneAsync(page));
        Assert.NotNull(await home.Library.Bin.TakeOutAsync(page));
        Assert.NotNull(await home.Library.Pages.OneAsync(other));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Names_tags_songs_and_films_belong_to_the_page(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(Page);
        var details = home.Library.Details;
        Assert.Null(await details.SetLearnedAsync(page, "at the river hall,\nfrom Odd"));
        Assert.Null(await details.AddAliasAsync(page, "Black Lamp"));
        Assert.Null(await details.AddAliasAsync(page, "black LAMP"));
        Assert.Null(await details.AddTagAsync(page, "Fridays"));
        Assert.Null(await details.AddTagAsync(page, "beginners"));
        Assert.Null(await details.AddSongAsync(page, "Tin Roof", "The Invented Band", 112.5));
        Assert.Null(await details.AddFilmAsync(page, "https://films.example/lamp?x=1", "slow"));
        Assert.Null(await details.AddFileAsync(page, "..\\..\\steps.pdf", "application/pdf", [1, 2, 3, 0, 255]));
        var told = (await details.OfAsync(page))!;
        Assert.Equal("at the river hall,\nfrom Odd", told.Learned);
        Assert.Equal(["Black Lamp"], told.Aliases);
        Assert.Equal(["beginners", "Fridays"], told.Tags);
        var song = Assert.Single(told.Songs);
        Assert.Equal(("Tin Roof", "The Invented Band", 112.5), (song.Title, song.Artist, song.Tempo));
        Assert.Equal(["https://films.example/lamp?x=1", ""], told.Attachments.Select(a => a.Address));
        Assert.Equal(("steps.pdf", 5L, home.Clock.Now), (told.Attachments[1].FileName, told.Attachments[1].Size, told.Attachments[1].Added));
        Assert.Equal([1, 2, 3, 0, 255], await details.FileAsync(page, told.Attachments[1].Id));
        Assert.Null(await details.DropAliasAsync(page, "BLACK lamp"));
        Assert.Null(await details.DropTagAsync(page, "fridays"));
        Assert.Null(await details.DropSongAsync(page, song.Id));
        Assert.Null(await details.DropAttachmentAsync(page, told.Attachments[1].Id));
        told = (await details.OfAsync(page))!;
        Assert.Equal((0, 1, 0, 1), (told.Aliases.Count, told.Tags.Count, told.Songs.Count, told.Attachments.Count));
        await using var context = home.Store.Context();
        Assert.Empty(context.Files);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task What_would_be_too_much_or_would_run_is_refused(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync(Page);
        var small = (await home.AgainAsync(new() { PerPage = 2, FileBytes = 10 })).Details;
        Assert.NotNull(await small.AddFilmAsync(page, "javascript:alert(1)"));
        Assert.NotNull(await small.AddFilmAsync(page, "file:///etc/passwd"));
        Assert.NotNull(await small.AddFilmAsync(page, "films.example"));
        Assert.NotNull(await small.AddFileAsync(page, "a", "b", new byte[11]));
        Assert.NotNull(await small.AddSongAsync(page, "Tin Roof", tempo: -3));
        Assert.Null(await small.AddTagAsync(page, "one"));
        Assert.Null(await small.AddTagAsync(page, "two"));
        Assert.Null(await small.AddTagAsync(page, "Two"));
        Assert.NotNull(await small.AddTagAsync(page, "three"));
        Assert.Equal(["one", "two"], (await small.OfAsync(page))!.Tags);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task Moments_are_the_same_in_every_time_zone(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        home.Clock.Now = new(2026, 7, 1, 1, 30, 0, 250, TimeSpan.FromHours(5.5));
        var first = await home.AddAsync(Page);
        home.Clock.Now = new(2026, 6, 30, 20, 30, 0, TimeSpan.Zero);
        await home.Library.Drafts.SaveAsync(first, "later", 1, 1, "x");
        home.Clock.Now = new(2026, 6, 30, 13, 0, 0, TimeSpan.FromHours(-7));
        await home.Library.Drafts.SaveAsync(first, "earlier", 1, 1, "x");
        var saved = (await home.Library.Pages.OneAsync(first))!.Created;
        Assert.Equal((new DateTimeOffset(2026, 6, 30, 20, 0, 0, 250, TimeSpan.Zero), TimeSpan.Zero), (saved, saved.Offset));
        Assert.Equal(["later", "earlier"], (await home.Library.Drafts.OfAsync(first)).Select(d => d.Session));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_halls_own_figures_hold_for_every_page_at_once(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var page = await home.AddAsync("Mill Night\nKind: line\nFeet: left free\nPhrase: any\n\n1-4  Gravel rake L\n5-8  Walk back L, R, L, R\n");
        Assert.True(await ErrorsAsync() > 0);
        const string figures = "Our figures\nPage: figures\n\nFigure: gravel rake (4 counts)\nMeans: four walks\nSource: our own hall\nFree after: the same foot\n1-4  Walk forward, walk forward, walk forward, walk forward\n";
        var own = await home.AddAsync(figures, "figures");
        Assert.True((await home.Library.Pages.OneAsync(own))!.IsFigures);
        Assert.Equal(0, await ErrorsAsync());
        await home.Library.Bin.PutAsync(own);
        Assert.True(await ErrorsAsync() > 0);
        await home.Library.Bin.TakeOutAsync(own);
        Assert.Equal(0, await ErrorsAsync());
        await home.Library.Pages.KeepAsync(own, 1, figures.Replace("gravel", "garden"));
        Assert.True(await ErrorsAsync() > 0);

        async Task<int> ErrorsAsync()
        {
            await using var context = home.Store.Context();
            var row = context.Shelf.Single(s => s.PageId == page);
            return row.Errors + row.Warnings;
        }
    }
}
