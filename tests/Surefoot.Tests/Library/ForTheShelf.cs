using Surefoot.Library;

namespace Surefoot.Tests.Library;

/// <summary>What the studio's shelf asks of a library.</summary>
public class ForTheShelf
{
    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_search_keeps_to_what_a_list_is_narrowed_down_to(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        foreach (var number in Enumerable.Range(0, 60)) await home.AddAsync(ManyDances.Page(number));
        var catalogue = home.Library.Catalogue;
        var within = new ListQuestion { ForCouples = true, TempoAtLeast = 100, TempoAtMost = 120, Sort = SortBy.Counts };
        var (total, found) = await catalogue.SearchAsync("shuffle", within);
        Assert.Equal(total, found.Count);
        Assert.True(total > 2);
        Assert.All(found, f => Assert.True(f.Dance.ForCouples && f.Dance.TempoTo >= 100 && f.Dance.TempoFrom <= 120));
        Assert.Equal(found.Select(f => f.Dance.Counts).Order(), found.Select(f => f.Dance.Counts));
        var (same, second) = await catalogue.SearchAsync("shuffle", within with { Skip = 1, Take = 1 });
        Assert.Equal(total, same);
        Assert.Equal(found[1].Dance.Page, Assert.Single(second).Dance.Page);
        var clean = (await catalogue.ListAsync(new() { Clean = true })).Total;
        Assert.Equal(60, clean + (await catalogue.ListAsync(new() { Clean = false })).Total);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task One_page_is_thrown_away_and_only_from_the_bin(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var (first, second) = (await home.AddAsync(ManyDances.Page(1)), await home.AddAsync(ManyDances.Page(2)));
        Assert.NotNull(await home.Library.Bin.ThrowAwayAsync(first));
        await home.Library.Bin.PutAsync(first);
        await home.Library.Bin.PutAsync(second);
        Assert.Equal(2, (await home.Library.Bin.LookAsync(0, 50)).Total);
        Assert.Null(await home.Library.Bin.ThrowAwayAsync(first));
        var (page, title) = Assert.Single((await home.Library.Bin.LookAsync(0, 50)).Pages);
        Assert.Equal((second, ManyDances.Title(2)), (page.Id, title));
        Assert.Null(await home.Library.Pages.TextAsync(first));
    }

    [Fact]
    public async Task One_notebook_goes_out_alone_and_its_import_says_how_far_it_is()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        foreach (var number in Enumerable.Range(0, 120)) await home.AddAsync(ManyDances.Page(number));
        var other = (await home.Library.Notebooks.AddAsync("The other hall")).Notebook!.Id;
        await home.Library.Pages.AddAsync(other, ManyDances.Page(500));
        using var zip = new MemoryStream();
        await home.Library.Exchange.GiveZipAsync(zip, home.Notebook);

        await using var empty = await Home.OpenAsync(Place.Sqlite, empty: true);
        zip.Position = 0;
        var heard = new Hearing();
        await empty.Library.Exchange.TakeZipAsync(zip, 0, progress: heard);
        Assert.Equal("The hall", Assert.Single(await empty.Library.Notebooks.AllAsync()).Name);
        Assert.Equal(120, (await empty.Library.Catalogue.ListAsync(new())).Total);
        Assert.Equal([50, 100, 120], heard.All.Select(p => p.Done));
        Assert.All(heard.All, p => Assert.Equal(120, p.Pages));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_notebooks_heights_hold_for_every_page_that_names_none(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await home.Library.Notebooks.SetAsync(home.Notebook, new() { LeadStature = 1.95 });
        Assert.Null(await home.Library.Notebooks.SetAsync(home.Notebook, new() { LeadStature = 1.95, FollowStature = 1.50 }));
        var heights = (await home.Library.Notebooks.OneAsync(home.Notebook))!.Settings.Heights;
        var told = Surefoot.Dance.DanceReader.Read(ManyDances.Page(1), heights: heights).Score.Facts;
        Assert.Equal((1.95, 1.50), (told.LeadStature, told.FollowStature));
        // What the page says counts more.
        var said = Surefoot.Dance.DanceReader.Read(ManyDances.Page(1).Replace("Phrase: any", "Stature: lead 1.60\nPhrase: any"), heights: heights).Score.Facts;
        Assert.Equal((1.60, 1.50), (said.LeadStature, said.FollowStature));
    }

    private sealed class Hearing : IProgress<ImportProgress>
    {
        public List<ImportProgress> All { get; } = [];

        public void Report(ImportProgress value) => All.Add(value);
    }
}
