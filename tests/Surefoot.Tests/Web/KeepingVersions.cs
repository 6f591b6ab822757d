using Microsoft.Playwright;
using Surefoot.Library;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Keeping a version, the history, and two people on one dance.</summary>
public class KeepingVersions(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task A_version_is_kept_seen_in_the_history_and_brought_back()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await opened.WriteAsync(Dances.Plain.Replace("3-4 Rock forward L, recover R", "3-4 Rock back L, recover R"));
        await opened.Page.Locator(".keep input").FillAsync("rocks back now");
        await opened.Page.Locator(".keep input").PressAsync("Control+s");
        await Expect(opened.Standing).ToContainTextAsync("Kept as version 2");
        await Expect(opened.Page.Locator(".keep input")).ToHaveValueAsync("");
        await Expect(opened.Page.Locator("[data-part=heard]")).ToHaveTextAsync("Kept as version 2.");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "History" }).ClickAsync();

        var versions = opened.Page.Locator(".versions li");
        await Expect(versions).ToHaveCountAsync(2);
        await Expect(versions.First).ToContainTextAsync("the page now");
        await Expect(versions.First.Locator(".note")).ToHaveTextAsync("rocks back now");
        // On which count, for whom, what it was and what it is.
        var changes = await opened.Page.Locator(".danced tbody tr").AllInnerTextsAsync();
        Assert.Contains(changes, c => c.StartsWith("3\t", StringComparison.Ordinal) && c.Contains("forward") && c.Contains("back"));
        Assert.Equal("3-4 Rock forward L, recover R", await opened.Page.Locator(".lines del").InnerTextAsync());
        Assert.Equal("3-4 Rock back L, recover R", await opened.Page.Locator(".lines ins").InnerTextAsync());
        // What is shown is also what would be compared: the version before with this one.
        await Expect(opened.Page.Locator("input[name=a]:checked")).ToHaveValueAsync($"{page}.1");
        await Expect(opened.Page.Locator("input[name=b]:checked")).ToHaveValueAsync($"{page}.2");
        await opened.Page.Locator("button[data-back='1']").ClickAsync();
        await Expect(versions).ToHaveCountAsync(3);
        await Expect(versions.First).ToContainTextAsync("version 1 brought back");
        await opened.Page.Locator("h1 a").ClickAsync();
        await opened.Page.WaitForSelectorAsync("html[data-ready] .cm-content");
        Assert.Equal(Dances.Plain, await opened.TextAsync());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Two_people_on_one_dance_lose_nothing_and_are_told()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var ann = await studio.OpenAsync($"/dance/{page}");
        await using var bo = await studio.OpenAsync($"/dance/{page}");
        await bo.WriteOnAsync(" by Bo");
        await Expect(bo.Standing).ToContainTextAsync("draft");
        await ann.WriteOnAsync(" by Ann");
        await ann.Page.Locator(".keep input").FillAsync("hers");
        await ann.Page.Keyboard.PressAsync("Control+s");
        await Expect(ann.Standing).ToContainTextAsync("Kept as version 2");

        // Bo is told, keeps all the same, and it stands beside.
        await Expect(bo.Notice("moved")).ToContainTextAsync("Somebody else kept version 2");
        await Expect(bo.Notice("moved")).ToContainTextAsync("hers");
        await bo.Page.Keyboard.PressAsync("Control+s");
        await Expect(bo.Notice("beside")).ToContainTextAsync("kept beside it as version 3. Nothing is lost.");
        await Expect(ann.Notice("other-beside")).ToContainTextAsync("version 3 was kept beside yours");
        Assert.Equal([" by Bo", " by Ann", ""], await EndsAsync(page));

        // What differs can be looked at, by both.
        var differs = await bo.Notice("beside").GetByText("See what is different").GetAttributeAsync("href");
        Assert.Equal(differs, await ann.Notice("other-beside").GetByText("See what is different").GetAttributeAsync("href"));
        await using var compare = await studio.OpenAsync(differs!);
        await Expect(compare.Page.Locator(".lines ins")).ToHaveTextAsync(" by Bo");
        await Expect(compare.Page.Locator(".lines del")).ToHaveTextAsync(" by Ann");
        await Expect(compare.Page.Locator(".same")).ToContainTextAsync("exactly the same is danced");

        // Bo's becomes the page; Ann hears of it, and goes over to it.
        await bo.Notice("beside").GetByText("Make mine the page").ClickAsync();
        await Expect(bo.Notice("beside")).ToHaveCountAsync(0);
        await Expect(ann.Notice("moved")).ToContainTextAsync("Somebody else kept version 4");
        await ann.Notice("moved").GetByText("Go over to theirs").ClickAsync();
        await Expect(ann.Standing).ToContainTextAsync("version 4");
        Assert.Contains(" by Bo", await ann.TextAsync());
        await ann.WriteOnAsync(" and Ann");
        await ann.Page.Keyboard.PressAsync("Control+s");
        await Expect(ann.Standing).ToContainTextAsync("Kept as version 5");
        Assert.Equal([" by Bo and Ann", " by Bo", " by Bo", " by Ann", ""], await EndsAsync(page));
        Assert.Empty(ann.Faults);
        Assert.Empty(bo.Faults);
    }

    [Fact]
    public async Task A_part_that_is_new_as_a_whole_is_one_row_that_unfolds()
    {
        var page = await studio.AddAsync(Dances.Plain);
        using (var library = await studio.LookAsync()) await library.Pages.KeepAsync(page, 1, Dances.Plain + "\nPart B (4 counts)\n1-4 Vine left, touch R\n", new());
        await using var opened = await studio.OpenAsync($"/compare?a={page}.1&b={page}.2");
        var whole = opened.Page.Locator(".danced details.whole");
        await Expect(whole.Locator("summary")).ToHaveTextAsync("Part B is new");
        await Expect(whole.Locator("tbody tr").First).ToBeHiddenAsync();
        await whole.Locator("summary").FocusAsync();
        await opened.Page.Keyboard.PressAsync("Enter");
        await Expect(whole.Locator("tbody tr")).ToHaveCountAsync(4);
        await Expect(whole.Locator("tbody tr").First).ToBeVisibleAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Two_dances_are_compared_in_the_same_words()
    {
        var one = await studio.AddAsync(Dances.Plain);
        var other = await studio.AddAsync(Dances.Plain.Replace("Bent Nail", "Straight Nail").Replace("touch R", "stomp R").Replace("108", "120"));
        await using var opened = await studio.OpenAsync($"/compare?a={one}");
        await opened.Page.GetByLabel("Compare with another dance").FillAsync("strait nail");
        await opened.Page.Keyboard.PressAsync("Enter");
        await opened.Page.Locator(".found").GetByRole(AriaRole.Link, new() { Name = "Straight Nail" }).ClickAsync();
        Assert.EndsWith($"&b={other}", opened.Page.Url);
        await Expect(opened.Page.Locator("h1")).ToHaveTextAsync("Two dances compared");
        await Expect(opened.Page.Locator(".danced li")).ToHaveTextAsync(["Title: Bent Nail, now Straight Nail", "Tempo: 108, now 120"]);
        await Expect(opened.Page.Locator(".danced tbody tr")).ToHaveCountAsync(1);
        await Expect(opened.Page.Locator(".danced tbody th")).ToHaveTextAsync("8");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_draft_stands_after_the_version_it_was_written_on_and_can_be_chosen_on_either_side()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await opened.WriteOnAsync(" and over");
        await Expect(opened.Standing).ToContainTextAsync("Kept as a draft");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "Compare", Exact = true }).ClickAsync();
        await Expect(opened.Page.Locator("#a-name")).ToContainTextAsync("Earlier: Bent Nail");
        await Expect(opened.Page.Locator("section[aria-labelledby=a-name] p").First).ToContainTextAsync("version 1");
        await Expect(opened.Page.Locator("section[aria-labelledby=b-name] p").First).ToContainTextAsync("a draft");
        await Expect(opened.Page.Locator(".lines ins")).ToHaveTextAsync(" and over");
        await Expect(opened.Page.Locator("select[name=a] option:checked")).ToHaveTextAsync("Bent Nail, version 1");
        await Expect(opened.Page.Locator("select[name=b] option:checked")).ToHaveTextAsync("Bent Nail, a draft");
        foreach (var side in (string[])["a", "b"]) Assert.Equal(["Bent Nail, a draft", "Bent Nail, version 1"], (await opened.Page.Locator($"select[name={side}] option").AllTextContentsAsync()).Order());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Words_of_pages_and_notes_never_become_markup()
    {
        const string evil = "<img src=x onerror=\"document.title='gone'\"></head><body>";
        var page = await studio.AddAsync(Dances.Plain.Replace("Bent Nail", evil));
        using (var library = await studio.LookAsync()) await library.Pages.KeepAsync(page, 1, Dances.Plain.Replace("Bent Nail", evil + "2").Replace("over", evil), new(Note: evil, By: evil, Device: evil));
        foreach (var path in (string[])[$"/dance/{page}/history", $"/compare?a={page}.1&b={page}.2", $"/dance/{page}/print", $"/dance/{page}"])
        {
            await using var opened = await studio.OpenAsync(path);
            await Expect(opened.Page.Locator("body")).ToContainTextAsync(evil);
            Assert.Equal(path.EndsWith("print", StringComparison.Ordinal) ? 0 : 1, await opened.Page.Locator("img").CountAsync());
            Assert.NotEqual("gone", await opened.Page.TitleAsync());
            Assert.Empty(opened.Faults);
        }
    }

    private async Task<List<string>> EndsAsync(long page)
    {
        using var library = await studio.LookAsync();
        var ends = new List<string>();
        foreach (var version in await library.Pages.HistoryAsync(page)) ends.Add((await library.Pages.TextAsync(page, version.Number))![Dances.Plain.Length..]);
        return ends;
    }
}
