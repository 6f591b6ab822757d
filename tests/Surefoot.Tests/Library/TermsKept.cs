namespace Surefoot.Tests.Library;

/// <summary>Terms of lessons in the library, alike in both databases.</summary>
public class TermsKept
{
    public static TheoryData<Place> Both => Home.Both;

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_term_comes_back_as_it_was_kept_and_nobody_writes_over_somebody_else(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        var terms = home.Library.Terms;
        var term = (await terms.AddAsync(home.Notebook, "Winter", "Winter\nFrom: 12 January 2027 ½\n")).Term!;
        Assert.Equal(term, await terms.OneAsync(term.Id));
        home.Clock.Now += TimeSpan.FromMinutes(1);
        Assert.Null(await terms.KeepAsync(term.Id, 1, "Spring", "Spring\n"));
        Assert.NotNull(await terms.KeepAsync(term.Id, 1, "Mine", "Mine\n"));
        var kept = (await terms.OneAsync(term.Id))!;
        Assert.Equal(("Spring", "Spring\n", 2, home.Clock.Now), (kept.Title, kept.Text, kept.Version, kept.Changed));
        var later = (await terms.AddAsync(home.Notebook, "Later", "Later\n")).Term!;
        Assert.Equal([kept.Id, later.Id], (await terms.AllAsync()).Select(t => t.Id).Order());
        await terms.ThrowAwayAsync(later.Id);
        Assert.Equal(kept, Assert.Single(await terms.AllAsync()));
    }

    [Theory]
    [MemberData(nameof(Both))]
    public async Task A_term_goes_into_the_bin_and_back_with_its_notebook(Place place)
    {
        await using var home = await Home.OpenAsync(place);
        await home.AddAsync(ManyDances.Page(1));
        await home.Library.Terms.AddAsync(home.Notebook, "Winter", "Winter\n");
        await home.Library.NotebookBin.PutAsync(home.Notebook);
        Assert.Empty(await home.Library.Terms.AllAsync());
        Assert.NotNull((await home.Library.Terms.AddAsync(home.Notebook, "Spring", "Spring\n")).Refusal);
        await home.Library.NotebookBin.TakeOutAsync(home.Notebook);
        Assert.Single(await home.Library.Terms.AllAsync());
    }

    [Fact]
    public async Task A_term_that_says_something_else_comes_in_beside_the_one_that_is_there()
    {
        await using var home = await Home.OpenAsync(Place.Sqlite);
        await home.AddAsync(ManyDances.Page(1));
        var term = (await home.Library.Terms.AddAsync(home.Notebook, "Winter", "Winter\n")).Term!;
        Assert.Null(await home.Library.Exchange.GiveFolderAsync(home.At("out")));
        Assert.Equal("Winter\n", await File.ReadAllTextAsync(home.At("out/the-hall/terms/winter.term")));
        await home.Library.Terms.KeepAsync(term.Id, 1, "Winter", "Winter, later\n");
        var report = await home.Library.Exchange.TakeFolderAsync(home.At("out"), home.Notebook);
        Assert.Contains("both are kept", Assert.Single(report.Lines, l => l.Taken == Surefoot.Library.Taken.New).Says);
        Assert.Equal(["Winter\n", "Winter, later\n"], (await home.Library.Terms.AllAsync()).Select(t => t.Text).Order(StringComparer.Ordinal));
        // A second time it is there.
        report = await home.Library.Exchange.TakeFolderAsync(home.At("out"), home.Notebook);
        Assert.All(report.Lines, l => Assert.Equal(Surefoot.Library.Taken.AlreadyThere, l.Taken));
    }
}
