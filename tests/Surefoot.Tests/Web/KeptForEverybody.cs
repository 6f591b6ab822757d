using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Surefoot.Library;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>History, comparing and printing can be used by everybody, in every light and on every screen.</summary>
public class KeptForEverybody(Studio studio) : IClassFixture<Studio>
{
    public static TheoryData<string, int, int> Everywhere
    {
        get
        {
            var all = new TheoryData<string, int, int>();
            foreach (var look in (string[])["light", "dark", "dim"])
            {
                foreach (var (width, height) in RoomsForEverybody.Sizes) all.Add(look, width, height);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Nothing_stands_in_anybodys_way(string look, int width, int height)
    {
        var page = await WithHistoryAsync();
        await FilmRooms.WithCaptionsAsync(studio);
        await using var opened = await studio.OpenAsync($"/dance/{page}/history?version=2", width, height, look);
        foreach (var path in Screens.Kept.Values.SelectMany(a => a).Select(a => a.Replace("{page}", $"{page}", StringComparison.Ordinal)))
        {
            // The look that was chosen is kept in this browser.
            await opened.Page.GotoAsync(studio.Address + path);
            await opened.Page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
            Assert.Equal(look, await opened.Page.GetAttributeAsync("html", "data-look"));
            if (path == $"/dance/{page}") await Expect(opened.Notice("draft")).ToBeVisibleAsync();
            var result = await opened.Page.RunAxe(new Deque.AxeCore.Commons.AxeRunOptions { Iframes = false });
            Assert.True(result.Violations.Length == 0, path + " " + string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html} {v.Nodes.FirstOrDefault()?.Any.FirstOrDefault()?.Message}")));
            Assert.True(await opened.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), $"{path} must be scrolled sideways");
        }

        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_keyboard_alone_keeps_compares_and_brings_back()
    {
        var page = await WithHistoryAsync();
        await using var opened = await studio.OpenAsync($"/dance/{page}/history");
        await TabToAsync(opened, "[data-back='1']");
        await opened.Page.Keyboard.PressAsync("Enter");
        await Expect(opened.Page.Locator(".versions li").First).ToContainTextAsync("version 1 brought back");
        await TabToAsync(opened, "a[href$='version=2']");
        await opened.Page.Keyboard.PressAsync("Enter");
        await Expect(opened.Page.Locator("#shown-name")).ToHaveTextAsync("From version 1 to version 2");
        await TabToAsync(opened, "form[action=compare] > button");
        await opened.Page.Keyboard.PressAsync("Enter");
        await Expect(opened.Page.Locator("h1")).ToHaveTextAsync("Two versions compared");
        Assert.Empty(opened.Faults);
    }

    private static async Task TabToAsync(Opened opened, string selector)
    {
        for (var i = 0; i < 60; i++)
        {
            await opened.Page.Keyboard.PressAsync("Tab");
            if (await opened.Page.EvaluateAsync<bool>("s => document.activeElement?.matches(s) ?? false", selector)) return;
        }

        Assert.Fail($"The keyboard does not reach {selector}.");
    }

    private async Task<long> WithHistoryAsync()
    {
        var page = await studio.AddAsync(Dances.Plain);
        using var library = await studio.LookAsync();
        await library.Pages.KeepAsync(page, 1, Dances.Plain.Replace("touch R", "stomp R").Replace("108", "112"), new(Note: "a louder end", By: "Ann", Device: "Windows"));
        await library.Pages.KeepAsync(page, 1, Dances.Plain.Replace("over", "beside"));
        await library.Drafts.SaveAsync(page, "somebody", 1, 2, Dances.Plain + "> a draft\n");
        return page;
    }
}
