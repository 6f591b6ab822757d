namespace Surefoot.Tests.Library;

/// <summary>A notebook goes into the bin with its pages, and comes back with them.</summary>
public class NotebooksPutAway
{
    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task What_went_with_a_notebook_comes_back_with_it_and_nothing_else(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var before = await home.AddAsync(ManyDances.Page(1));
        await home.Library.Bin.PutAsync(before);
        home.Clock.Now += TimeSpan.FromMinutes(1);
        var (kept, other) = (await home.AddAsync(ManyDances.Page(2)), await home.AddAsync(ManyDances.Page(3)));
        var elsewhere = (await home.Library.Pages.AddAsync((await home.Library.Notebooks.AddAsync("Elsewhere")).Notebook!.Id, ManyDances.Page(4))).Page!.Id;

        Assert.Null(await home.Library.NotebookBin.PutAsync(home.Notebook));
        Assert.NotNull(await home.Library.NotebookBin.PutAsync(home.Notebook));
        Assert.Equal("Elsewhere", Assert.Single(await home.Library.Notebooks.AllAsync()).Name);
        Assert.Null(await home.Library.Notebooks.OneAsync(home.Notebook));
        Assert.Equal(elsewhere, Assert.Single((await home.Library.Catalogue.ListAsync(new())).Dances).Page);
        Assert.DoesNotContain(await home.Library.Catalogue.SearchAsync(ManyDances.Title(2)), f => f.Dance.Page == kept);
        Assert.NotNull((await home.Library.Pages.AddAsync(home.Notebook, ManyDances.Page(5))).Refusal);
        Assert.NotNull(await home.Library.Notebooks.RenameAsync(home.Notebook, "Ghost"));
        var lying = Assert.Single(await home.Library.NotebookBin.LookAsync());
        Assert.Equal(("The hall", 2, home.Clock.Now), (lying.Notebook.Name, lying.Pages, lying.Deleted));
        Assert.Equal(3, (await home.Library.Bin.LookAsync(0, 50)).Total);

        // Somebody began another one of its name.
        Assert.Null((await home.Library.Notebooks.AddAsync("The Hall")).Refusal);
        Assert.Null(await home.Library.NotebookBin.TakeOutAsync(home.Notebook));
        Assert.Equal("The hall 2", (await home.Library.Notebooks.OneAsync(home.Notebook))!.Name);
        Assert.Equal([kept, other], (await home.Library.Catalogue.ListAsync(new() { Notebook = home.Notebook })).Dances.Select(d => d.Page).Order());
        Assert.Equal(before, Assert.Single((await home.Library.Bin.LookAsync(0, 50)).Pages).Page.Id);
        Assert.Empty(await home.Library.NotebookBin.LookAsync());
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task One_page_taken_out_brings_its_notebook_along(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var (one, other) = (await home.AddAsync(ManyDances.Page(1)), await home.AddAsync(ManyDances.Page(2)));
        await home.Library.NotebookBin.PutAsync(home.Notebook);
        Assert.Null(await home.Library.Bin.TakeOutAsync(one));
        Assert.Equal(home.Notebook, Assert.Single(await home.Library.Notebooks.AllAsync()).Id);
        Assert.Equal(one, Assert.Single((await home.Library.Catalogue.ListAsync(new())).Dances).Page);
        Assert.Equal(other, Assert.Single((await home.Library.Bin.LookAsync(0, 50)).Pages).Page.Id);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_notebook_is_gone_for_good_only_with_the_last_of_its_pages(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await home.AddAsync(ManyDances.Page(1));
        await home.Library.NotebookBin.PutAsync(home.Notebook);
        Assert.Equal(0, await home.Library.Bin.EmptyAsync(home.Clock.Now));
        Assert.Single(await home.Library.NotebookBin.LookAsync());
        Assert.Equal(1, await home.Library.Bin.EmptyAsync(home.Clock.Now + TimeSpan.FromMilliseconds(1)));
        Assert.Empty(await home.Library.NotebookBin.LookAsync());
        Assert.NotNull(await home.Library.NotebookBin.TakeOutAsync(home.Notebook));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task The_bin_is_looked_at_in_stretches_that_miss_nothing(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var put = new List<long>();
        for (var i = 0; i < 7; i++)
        {
            put.Insert(0, await home.AddAsync(ManyDances.Page(i)));
            await home.Library.Bin.PutAsync(put[0]);
            home.Clock.Now += TimeSpan.FromSeconds(1);
        }

        var seen = new List<long>();
        for (var skip = 0; skip < 9; skip += 3) seen.AddRange((await home.Library.Bin.LookAsync(skip, 3)).Pages.Select(p => p.Page.Id));
        Assert.Equal(put, seen);
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task An_export_keeps_it_apart_from_one_of_its_name(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await home.AddAsync(ManyDances.Page(1));
        await home.Library.NotebookBin.PutAsync(home.Notebook);
        var again = (await home.Library.Notebooks.AddAsync("The hall")).Notebook!.Id;
        Assert.Null((await home.Library.Pages.AddAsync(again, ManyDances.Page(2))).Refusal);
        Assert.Null(await home.Library.Exchange.GiveFolderAsync(home.At("out")));
        await using var other = await Home.OpenAsync(place, empty: true);
        for (var time = 0; time < 2; time++)
        {
            await other.Library.Exchange.TakeFolderAsync(home.At("out"), other.Notebook);
            Assert.Equal(ManyDances.Title(2), Assert.Single((await other.Library.Catalogue.ListAsync(new())).Dances).Title);
            Assert.Equal(1, Assert.Single(await other.Library.NotebookBin.LookAsync()).Pages);
        }
    }
}
