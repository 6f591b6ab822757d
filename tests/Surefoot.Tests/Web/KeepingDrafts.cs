using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>What is written and not kept yet is never lost: not with the tab, not with the line, not with the studio.</summary>
public class KeepingDrafts(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task What_was_written_is_there_after_the_tab_was_closed()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using (var opened = await studio.OpenAsync($"/dance/{page}"))
        {
            await Expect(opened.Standing).ToContainTextAsync("Kept as version 1");
            await opened.WriteOnAsync(" the bridge");
            await Expect(opened.Standing).ToContainTextAsync("Kept as a draft");
            Assert.Empty(opened.Faults);
        }

        await using var again = await studio.OpenAsync($"/dance/{page}");
        Assert.Contains("> over\n the bridge", await again.TextAsync());
        await Expect(again.Notice("draft")).ToContainTextAsync("not kept as a version");
        // The kept version is one press away, and the draft one step back.
        await again.Notice("draft").GetByText("Go back to the kept version").ClickAsync();
        await Expect(again.Standing).ToContainTextAsync("version 1");
        Assert.Equal(Dances.Plain, await again.TextAsync());
        await Expect(again.Notice("draft")).ToHaveCountAsync(0);
        await Until(async () => (await DraftsAsync(page)).Count == 0);
        await again.Page.Locator(".cm-content").FocusAsync();
        await again.Page.Keyboard.PressAsync("Control+z");
        await Expect(again.Standing).ToContainTextAsync("Kept as a draft");
        Assert.Contains("the bridge", Assert.Single(await DraftsAsync(page)));
        Assert.Empty(again.Faults);
    }

    [Fact]
    public async Task What_is_undone_leaves_no_draft()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await opened.WriteOnAsync("x");
        await Expect(opened.Standing).ToContainTextAsync("Kept as a draft");
        await opened.Page.Keyboard.PressAsync("Backspace");
        await Expect(opened.Standing).ToContainTextAsync("As kept in version 1");
        Assert.Empty(await DraftsAsync(page));
    }

    [Fact]
    public async Task What_is_written_while_the_studio_is_gone_arrives_when_it_is_back()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await studio.KillAsync();
        await opened.WriteOnAsync(" one");
        await Expect(opened.Standing).ToContainTextAsync("does not answer");
        await opened.Page.Locator(".keep button").ClickAsync();
        await Expect(opened.Notice("trouble")).ToContainTextAsync("Nothing is lost");
        await studio.StartAsync();
        await Expect(opened.Standing).ToContainTextAsync("Kept as a draft");
        Assert.Contains(" one", Assert.Single(await DraftsAsync(page)));
        await opened.Page.Locator(".keep button").ClickAsync();
        await Expect(opened.Standing).ToContainTextAsync("Kept as version 2");
        await Expect(opened.Notice("trouble")).ToHaveCountAsync(0);
        Assert.Empty(await DraftsAsync(page));
    }

    [Fact]
    public async Task One_line_says_that_the_studio_is_away_and_goes_when_it_is_back()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await studio.KillAsync();
        // Nothing was typed: the window finds out by itself.
        await Expect(opened.Standing).ToContainTextAsync("The studio does not answer. Is it still running?");
        await Expect(opened.Page.Locator("[data-part=heard]")).ToHaveTextAsync("The studio does not answer.");
        await opened.WriteOnAsync(" one");
        await Expect(opened.Standing).ToContainTextAsync("Not kept yet: the studio does not answer.");
        await opened.Page.WaitForTimeoutAsync(2500);
        // What is only heard is not counted.
        Assert.Equal(1, await opened.Page.EvaluateAsync<int>("""
            () => {
              const told = (words) => (words.match(/does not answer/g) ?? []).length;
              return told(document.body.innerText) - told(document.querySelector('[data-part=heard]').textContent);
            }
            """));
        await studio.StartAsync();
        await Expect(opened.Standing).ToContainTextAsync("Kept as a draft");
        await opened.Page.WaitForTimeoutAsync(3500);
        await Expect(opened.Standing).ToContainTextAsync("Kept as a draft");
        Assert.DoesNotContain("does not answer", await opened.Page.InnerTextAsync("body"));
    }

    [Fact]
    public async Task A_tab_that_is_closed_while_the_studio_is_gone_leaves_its_words_in_the_browser()
    {
        var page = await studio.AddAsync(Dances.Plain);
        var opened = await studio.OpenAsync($"/dance/{page}");
        var beside = await studio.TabAsync(opened, "/");
        await studio.KillAsync();
        await opened.WriteOnAsync(" last words");
        await Expect(opened.Standing).ToContainTextAsync("does not answer");
        await opened.DisposeAsync();
        await studio.StartAsync();
        await using var again = await studio.TabAsync(beside, $"/dance/{page}");
        Assert.Contains(" last words", await again.TextAsync());
        await Until(async () => (await DraftsAsync(page)).Exists(d => d.Contains(" last words")));
        // What the studio has is needed nowhere else.
        await Until(async () => await again.Page.EvaluateAsync<int>("() => Object.keys(localStorage).filter(k => k.startsWith('surefoot.draft')).length") == 0);
        await beside.DisposeAsync();
    }

    [Fact]
    public async Task A_draft_from_before_the_page_was_kept_is_offered_and_not_shown()
    {
        var page = await studio.AddAsync(Dances.Plain);
        using (var library = await studio.LookAsync())
        {
            await library.Drafts.SaveAsync(page, "last-week", 1, 1, Dances.Plain + "> an old thought\n");
            await Task.Delay(20);
            await library.Pages.KeepAsync(page, 1, Dances.Plain + "> kept since\n");
        }

        await using var opened = await studio.OpenAsync($"/dance/{page}");
        Assert.Contains("kept since", await opened.TextAsync());
        await opened.Notice("older").GetByText("Go on with the draft").ClickAsync();
        await Expect(opened.Line("an old thought")).ToBeVisibleAsync();
        await Expect(opened.Notice("moved")).ToContainTextAsync("neither is lost");
        await opened.Page.Keyboard.PressAsync("Control+s");
        await Expect(opened.Notice("beside")).ToContainTextAsync("kept beside it as version 3");
        Assert.Empty(await DraftsAsync(page));
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_page_written_elsewhere_with_other_ends_of_lines_is_not_taken_for_changed()
    {
        var page = await studio.AddAsync(Dances.Plain.Replace("\n", "\r\n"));
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await Expect(opened.Page.Locator(".facts")).ToContainTextAsync("8 counts");
        await opened.WriteOnAsync("x");
        await opened.Page.Keyboard.PressAsync("Backspace");
        await Expect(opened.Standing).ToContainTextAsync("version 1");
        Assert.Empty(await DraftsAsync(page));
    }

    private async Task<List<string>> DraftsAsync(long page)
    {
        using var library = await studio.LookAsync();
        return [.. (await library.Drafts.OfAsync(page)).Select(d => d.Text)];
    }

    private static async Task Until(Func<Task<bool>> holds)
    {
        for (var tries = 0; tries < 600; tries++)
        {
            if (await holds()) return;
            await Task.Delay(50);
        }

        Assert.Fail("It did not come about in half a minute.");
    }
}
