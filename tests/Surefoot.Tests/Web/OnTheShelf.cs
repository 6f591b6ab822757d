using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Dances are found, sorted, begun, copied and put away.</summary>
public class OnTheShelf(Studio studio) : IClassFixture<Studio>
{
    private static ILocator Titles(Opened opened) => opened.Page.Locator(".dance .called > a");

    private static ILocator Row(Opened opened, string title) => opened.Page.Locator(".dance").Filter(new() { Has = opened.Page.GetByRole(AriaRole.Link, new() { Name = title, Exact = true }) });

    [Fact]
    public async Task A_search_with_slips_finds_the_dance_while_it_is_typed()
    {
        await using var opened = await studio.OpenAsync("/");
        var all = await Titles(opened).CountAsync();
        await opened.Page.GetByLabel("Find a dance").PressSequentiallyAsync("ketle lidd shufle");
        await Expect(Titles(opened).First).ToHaveTextAsync("Kettle Lid Shuffle");
        await Expect(opened.Page.Locator("[data-part=heard]")).ToContainTextAsync("found");
        await Expect(opened.Page.Locator("select[name=sort] option:checked")).ToHaveTextAsync("what fits best");
        Assert.Contains("q=ketle", opened.Page.Url);

        // What is in the address is found again.
        await opened.Page.ReloadAsync();
        await Expect(Titles(opened).First).ToHaveTextAsync("Kettle Lid Shuffle");
        await opened.Page.GetByLabel("Find a dance").FillAsync("");
        await Expect(Titles(opened)).ToHaveCountAsync(all);
        await Expect(opened.Page.Locator("select[name=sort] option:checked")).ToHaveTextAsync("title");
        // What a row does not show is said: where the words stand.
        await opened.Page.GetByLabel("Find a dance").FillAsync("five threshing");
        await Expect(Row(opened, "Five Barns").Locator(".also").Last).ToHaveTextAsync("found in the figure threshing turn");
        await opened.Page.GetByLabel("Find a dance").FillAsync("zzyzx qqqq");
        await Expect(opened.Page.Locator(".empty")).ToContainTextAsync("Nothing here comes near “zzyzx qqqq”");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task What_is_typed_before_the_page_can_listen_is_looked_for_all_the_same()
    {
        await using var opened = await studio.OpenAsync("/");
        var listening = new TaskCompletionSource();
        await opened.Page.RouteAsync("**/rooms*.js", async route =>
        {
            await listening.Task;
            await route.ContinueAsync();
        });
        await opened.Page.ReloadAsync(new() { WaitUntil = WaitUntilState.Commit });
        await opened.Page.GetByLabel("Find a dance").FillAsync("kettle lid");
        listening.SetResult();
        await Expect(Titles(opened).First).ToHaveTextAsync("Kettle Lid Shuffle");
        await Expect(opened.Page.Locator("[data-part=heard]")).ToContainTextAsync("found");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_keyboard_alone_sorts_and_narrows_the_list_down()
    {
        await using var opened = await studio.OpenAsync("/?notebook=1");
        var keys = opened.Page.Keyboard;
        await opened.Page.GetByLabel("Sorted by").FocusAsync();
        await keys.TypeAsync("counts");
        await Expect(opened.Page.Locator(".dance .size").First).ToHaveTextAsync("16 counts, 4/4");
        await keys.PressAsync("Tab");
        await keys.PressAsync("Space");
        await Expect(opened.Page.Locator(".dance .size").First).ToHaveTextAsync("80 counts, 4/4");
        await keys.PressAsync("Tab"); // "Narrow down", open already
        await keys.PressAsync("Tab");
        await keys.TypeAsync("in lines");
        await Expect(opened.Page.Locator(".dance .kind").Filter(new() { HasText = "Couples" })).ToHaveCountAsync(0);
        await keys.PressAsync("Tab");
        await keys.TypeAsync("improver");
        await Expect(opened.Page.Locator(".dance .level").Filter(new() { HasNotText = "improver" })).ToHaveCountAsync(0);
        Assert.True(await Titles(opened).CountAsync() > 1);
        await Expect(opened.Page.Locator("[data-part=narrowing]")).ToHaveTextAsync(" (3)");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_tempo_range_asks_for_dances_that_can_be_danced_within_it()
    {
        await using var opened = await studio.OpenAsync("/?notebook=1&from=60&to=80");
        await Expect(Titles(opened)).ToHaveTextAsync(["Ferry Lamp", "Folded Quilt"]); // 54 to 62 and 76 to 84
        await using var clean = await studio.OpenAsync("/?notebook=1&state=broken");
        await Expect(clean.Page.Locator(".empty")).ToContainTextAsync("None of the");
    }

    [Fact]
    public async Task A_new_dance_is_a_clean_page_to_write_over()
    {
        foreach (var kind in (string[])["by couples", "in lines"])
        {
            await using var opened = await studio.OpenAsync("/?notebook=1");
            await opened.Page.GetByText("New dance").First.ClickAsync();
            await opened.Page.Locator(".new input[name=title]").FillAsync($"Porch Light {kind}");
            await opened.Page.GetByRole(AriaRole.Radio, new() { Name = kind }).CheckAsync();
            await opened.Page.GetByText("Write it").ClickAsync();
            await opened.Page.WaitForSelectorAsync("html[data-ready] .cm-content");
            await Expect(opened.Page.Locator("h1").First).ToHaveTextAsync($"Porch Light {kind}");
            await Expect(opened.Page.Locator("[data-part=tally]")).ToHaveTextAsync("none");
        }

        await using var shelf = await studio.OpenAsync("/?q=porch+light");
        await Expect(Titles(shelf)).ToHaveCountAsync(2);
        await Expect(shelf.Page.Locator(".dance .state.clean")).ToHaveCountAsync(2);
    }

    [Fact]
    public async Task What_is_put_into_the_bin_comes_back_with_one_press()
    {
        await using var opened = await studio.OpenAsync("/?q=odd+corner");
        await Row(opened, "Odd Corner").GetByLabel("More to do with Odd Corner").ClickAsync();
        await Row(opened, "Odd Corner").GetByText("Move to the bin").ClickAsync();
        await Expect(opened.Page.Locator(".note")).ToContainTextAsync("“Odd Corner” is in the bin.");
        await Expect(Row(opened, "Odd Corner")).ToHaveCountAsync(0);
        Assert.Equal("odd corner", await opened.Page.GetByLabel("Find a dance").InputValueAsync());
        await opened.Page.GetByText("Undo").ClickAsync();
        await Expect(Row(opened, "Odd Corner")).ToHaveCountAsync(1);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Whoever_looks_in_vain_is_told_that_something_lies_in_the_bin()
    {
        using (var library = await studio.LookAsync()) await library.Bin.PutAsync(await studio.AddAsync("Quartz Quarrel\nKind: line, 1 wall\n\n1-2 Walk forward L, R\n"));
        await using var opened = await studio.OpenAsync("/?q=zzyzx");
        await Expect(opened.Page.Locator(".empty")).ToContainTextAsync("which is not searched");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "In the bin" }).ClickAsync();
        await Expect(opened.Page.Locator(".things")).ToContainTextAsync("Quartz Quarrel");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_copy_is_thrown_away_for_good_only_after_a_question()
    {
        await using var opened = await studio.OpenAsync("/?q=salt+lick");
        await Row(opened, "Salt Lick Cha-Cha").GetByLabel("More to do with").ClickAsync();
        await Row(opened, "Salt Lick Cha-Cha").GetByText("Copy", new() { Exact = true }).ClickAsync();
        await Expect(opened.Page.Locator(".note")).ToContainTextAsync("“Salt Lick Cha-Cha, copy” stands on the shelf");
        await opened.Page.GetByText("Undo").ClickAsync();
        await opened.Page.GotoAsync(studio.Address + "/bin");
        await opened.Page.GetByLabel("Throw away Salt Lick Cha-Cha, copy for good").ClickAsync();
        await Expect(opened.Page.Locator(".question")).ToContainTextAsync("cannot be brought back");
        await opened.Page.GetByText("Leave everything here").ClickAsync();
        await Expect(opened.Page.Locator(".things")).ToContainTextAsync("Salt Lick Cha-Cha, copy");
        await opened.Page.GetByLabel("Throw away Salt Lick Cha-Cha, copy for good").ClickAsync();
        await opened.Page.GetByText("Throw away for good", new() { Exact = true }).ClickAsync();
        await Expect(opened.Page.Locator(".note")).ToContainTextAsync("gone for good");
        // Another test's dance may lie in the bin beside it.
        await Expect(opened.Page.GetByLabel("Throw away Salt Lick Cha-Cha, copy for good")).ToHaveCountAsync(0);
        await using var shelf = await studio.OpenAsync("/?q=salt+lick");
        await Expect(Row(shelf, "Salt Lick Cha-Cha")).ToHaveCountAsync(1);
    }

    [Fact]
    public async Task Details_are_found_and_never_become_markup()
    {
        const string evil = "<b onclick=x>Old \"Lantern\"</b>";
        await using var opened = await studio.OpenAsync("/?q=steeple+clock");
        await Row(opened, "Steeple Clock").GetByLabel("More to do with").ClickAsync();
        await Row(opened, "Steeple Clock").GetByText("Names, songs, files").ClickAsync();
        await opened.Page.GetByLabel("It is also called").FillAsync(evil);
        await opened.Page.Locator("#names").GetByText("Add").ClickAsync();
        await Expect(opened.Page.Locator("#names li")).ToContainTextAsync(evil);
        await opened.Page.GetByLabel("A tag").FillAsync("Tuesdays & <i>more</i>");
        await opened.Page.Locator("#tags").GetByText("Add").ClickAsync();
        await opened.Page.GetByLabel("A film’s address").EvaluateAsync("field => field.type = 'text'");
        await opened.Page.GetByLabel("A film’s address").FillAsync("javascript:alert(1)");
        await opened.Page.GetByText("Add the film").ClickAsync();
        await Expect(opened.Page.Locator(".note.bad")).ToContainTextAsync("begins with https://");
        await opened.Page.Locator("input[name=file]").SetInputFilesAsync(new FilePayload { Name = "../../scan.html", MimeType = "text/html", Buffer = "<script>document.title='gone'</script>"u8.ToArray() });
        await opened.Page.GetByText("Add the file").ClickAsync();
        await Expect(opened.Page.Locator("#films a")).ToContainTextAsync("scan.html");
        var download = await opened.Page.RunAndWaitForDownloadAsync(() => opened.Page.Locator("#films a").ClickAsync());
        Assert.Equal("scan.html", download.SuggestedFilename);

        await using var shelf = await studio.OpenAsync("/?q=old+lanterm");
        await Expect(Row(shelf, "Steeple Clock")).ToContainTextAsync(evil);
        await Row(shelf, "Steeple Clock").GetByText("Tuesdays & <i>more</i>").ClickAsync();
        await Expect(Titles(shelf)).ToHaveTextAsync(["Steeple Clock"]);
        Assert.Equal(0, await shelf.Page.Locator(".dance b, .dance i").CountAsync());
        Assert.Empty(opened.Faults);
        Assert.Empty(shelf.Faults);
    }

    [Fact]
    public async Task A_new_title_is_the_first_line_of_a_new_version()
    {
        await using var opened = await studio.OpenAsync("/?q=hen+house");
        await Row(opened, "Hen House Hurry").GetByLabel("More to do with").ClickAsync();
        await Row(opened, "Hen House Hurry").GetByText("Names, songs, files").ClickAsync();
        await opened.Page.GetByLabel("Title", new() { Exact = true }).FillAsync("Hen House Calm");
        await opened.Page.GetByText("Change the title").ClickAsync();
        await Expect(opened.Page.Locator("h1")).ToHaveTextAsync("Hen House Calm");
        await opened.Page.GetByText("Open its page").ClickAsync();
        await opened.Page.WaitForSelectorAsync("html[data-ready] .cm-content");
        Assert.StartsWith("Hen House Calm\n", await opened.TextAsync());
        // A line that would not be a title is refused.
        await opened.Page.GotoAsync(opened.Page.Url.Replace("/dance/", "/details/"));
        await opened.Page.GetByLabel("Title", new() { Exact = true }).FillAsync("> a note");
        await opened.Page.GetByText("Change the title").ClickAsync();
        await Expect(opened.Page.Locator(".note.bad")).ToContainTextAsync("not read as a title");
    }

    [Fact]
    public async Task However_much_is_in_the_bin_all_of_it_can_be_reached()
    {
        var put = new List<string>();
        using (var library = await studio.LookAsync())
        {
            for (var i = 0; i < 51; i++)
            {
                var title = $"Put Away {i:00}";
                var page = (await library.Pages.AddAsync((await library.Notebooks.AllAsync())[0].Id, Dances.Plain.Replace("Bent Nail", title))).Page!.Id;
                await library.Bin.PutAsync(page);
                put.Add(title);
            }
        }

        await using var opened = await studio.OpenAsync("/bin");
        var seen = new List<string>(await opened.Page.Locator(".things strong").AllTextContentsAsync());
        Assert.Equal(50, seen.Count);
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "Next" }).ClickAsync();
        await Expect(opened.Page.Locator(".things strong").First).Not.ToHaveTextAsync(seen[0]);
        await Expect(opened.Page.GetByRole(AriaRole.Link, new() { Name = "Next" })).ToHaveCountAsync(0);
        seen.AddRange(await opened.Page.Locator(".things strong").AllTextContentsAsync());
        Assert.Superset(put.ToHashSet(), seen.ToHashSet());
        Assert.Equal(seen.Count, seen.Distinct().Count());
        using (var library = await studio.LookAsync()) await library.Bin.EmptyAsync(DateTimeOffset.MaxValue);
    }
}
