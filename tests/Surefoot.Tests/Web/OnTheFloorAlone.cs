using Microsoft.Playwright;
using Surefoot.Library;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>The screen for the dance floor when the studio is out of reach, and what a device keeps for that.</summary>
public class OnTheFloorAlone(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task Once_opened_it_runs_without_the_studio_and_after_it_is_loaded_again()
    {
        await using var opened = await KeptAsync("/on-the-floor/nine-buckets-cha-cha");
        var page = opened.Page;
        await page.GetByLabel("What is taught").SelectOptionAsync("Part B, 1 to 8");
        await studio.KillAsync();
        try
        {
            await page.Locator(".stage").ClickAsync();
            await Expect(page.Locator("[data-part=count]")).ToHaveTextAsync("2");
            await page.ReloadAsync();
            await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
            // Where she was, with everything that makes it.
            await Expect(page.GetByLabel("What is taught")).ToHaveValueAsync("1");
            await Expect(page.Locator("[data-part=danced]")).ToHaveTextAsync("rock left");
            Assert.Equal("rgb(7, 5, 4)", await page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor"));
            await page.Locator(".stage").ClickAsync();
            await Expect(page.Locator("[data-part=count]")).ToHaveTextAsync("2");
            // Nothing else of the studio is kept on the device.
            await Assert.ThrowsAsync<PlaywrightException>(() => page.GotoAsync(studio.Address + "/dance/nine-buckets-cha-cha"));
        }
        finally
        {
            await studio.StartAsync();
        }
    }

    [Fact]
    public async Task It_runs_in_a_hall_without_a_network()
    {
        await using var opened = await KeptAsync("/on-the-floor/five-barns");
        await opened.Page.Context.SetOfflineAsync(true);
        await opened.Page.ReloadAsync();
        await opened.Page.WaitForSelectorAsync("html[data-ready] .stage", new() { State = WaitForSelectorState.Attached });
        // It was loaded without the studio, so it cannot depend on staying open.
        await Expect(opened.Page.Locator("[data-part=kept]")).ToHaveTextAsync("From this device: the studio is out of reach, and it works without it.");
        await opened.Page.Locator(".stage").ClickAsync();
        await Expect(opened.Page.Locator("[data-part=count]")).ToHaveTextAsync("2");
    }

    [Fact]
    public async Task Only_the_screen_and_its_own_files_are_kept_and_only_under_its_own_address()
    {
        await using var opened = await KeptAsync("/on-the-floor/nine-buckets-cha-cha");
        // A page of the studio in the same browser goes its way as if there were no keeper.
        await using var other = await studio.TabAsync(opened, "/settings");
        Assert.False(await other.Page.EvaluateAsync<bool>("() => navigator.serviceWorker.controller !== null"));
        Assert.Equal("/on-the-floor/", await opened.Page.EvaluateAsync<string>("async () => new URL((await navigator.serviceWorker.ready).scope).pathname"));
        var kept = await opened.Page.EvaluateAsync<string[]>("async () => (await Promise.all((await caches.keys()).map(async n => (await (await caches.open(n)).keys()).map(r => new URL(r.url).pathname)))).flat().sort()");
        Assert.Equal(["/dist/on-the-floor.css", "/dist/on-the-floor.js", "/mark.svg", "/on-the-floor/nine-buckets-cha-cha"], kept);
    }

    [Fact]
    public async Task What_the_studio_says_comes_first()
    {
        var number = await studio.AddAsync("Short Lane\nKind: line\nFeet: right free\n\n1-4  Vine right, touch L\n5-8  Vine left, touch R\n");
        await using var opened = await KeptAsync($"/on-the-floor/{number}");
        await Expect(opened.Page.Locator("[data-part=danced]")).ToHaveTextAsync("vine right");
        using (var library = await studio.LookAsync())
        {
            Assert.IsType<Kept>(await library.Pages.KeepAsync(number, 1, "Short Lane\nKind: line\nFeet: right free\n\n1-4  Walk forward R L R L\n5-8  Walk back R L R L\n"));
        }

        await opened.Page.ReloadAsync();
        await Expect(opened.Page.Locator("[data-part=danced]")).ToHaveTextAsync("walk forward");
    }

    [Fact]
    public async Task A_dance_that_was_thrown_away_is_not_kept_either()
    {
        var number = await studio.AddAsync("Gone Lane\nKind: line\nFeet: right free\n\n1-4  Vine right, touch L\n5-8  Vine left, touch R\n");
        await using var opened = await KeptAsync($"/on-the-floor/{number}");
        using (var library = await studio.LookAsync()) Assert.Null(await library.Bin.PutAsync(number));
        await opened.Page.ReloadAsync();
        await Expect(opened.Page.Locator(".stage")).ToHaveCountAsync(0);
        Assert.False(await opened.Page.EvaluateAsync<bool>("async n => (await (await caches.open('surefoot-on-the-floor')).match(location.origin + '/on-the-floor/' + n)) !== undefined", number));
    }

    private async Task<Opened> KeptAsync(string path)
    {
        var opened = await studio.OpenAsync(path, 1024, 768);
        await opened.Page.WaitForSelectorAsync("html[data-kept=here]", new() { State = WaitForSelectorState.Attached });
        await Expect(opened.Page.Locator("[data-part=kept]")).ToHaveTextAsync("Kept on this device: it works without the studio.");
        return opened;
    }
}
