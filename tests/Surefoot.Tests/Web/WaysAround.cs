using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>From every page the rooms are one press away, and from a dance everything that belongs to it.</summary>
public class WaysAround(Studio studio) : IClassFixture<Studio>
{
    [Theory]
    [InlineData(1280, 800)]
    [InlineData(820, 1180)]
    [InlineData(1180, 820)]
    public async Task The_rooms_stand_in_one_row_of_every_page(int width, int height)
    {
        var dance = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync("/", width, height);
        foreach (var path in Pages(dance))
        {
            await opened.Page.GotoAsync(studio.Address + path);
            var links = opened.Page.GetByRole(AriaRole.Navigation, new() { Name = "Pages of the studio" }).GetByRole(AriaRole.Link);
            await Expect(links).ToHaveTextAsync(["Dances", "Terms", "Bring in", "Save as files", "Bin", "Settings"]);
            // Beside the studio's name and the choice of room, and in nobody's way.
            Assert.Single(await opened.Page.EvaluateAsync<int[]>("() => [...new Set([...document.querySelectorAll('.top > *, .rooms a')].filter(e => e.offsetHeight > 0).map(e => { const r = e.getBoundingClientRect(); return Math.round((r.top + r.bottom) / 8); }))]"));
            Assert.True(await opened.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), path + " must be scrolled sideways");
        }
    }

    [Fact]
    public async Task On_a_telephone_they_are_folded_away_and_the_keyboard_unfolds_them()
    {
        var dance = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{dance}/history", 390, 844);
        var link = opened.Page.GetByRole(AriaRole.Link, new() { Name = "Bring in" });
        await Expect(link).ToBeHiddenAsync();
        await opened.Page.GetByRole(AriaRole.Button, new() { Name = "Go to" }).FocusAsync();
        await opened.Page.Keyboard.PressAsync("Enter");
        await Expect(link).ToBeVisibleAsync();
        await opened.Page.Keyboard.PressAsync("Escape");
        await Expect(link).ToBeHiddenAsync();
        await opened.Page.Keyboard.PressAsync("Enter");
        await link.ClickAsync();
        await Expect(opened.Page.Locator("h1")).ToHaveTextAsync("Bring pages in");
    }

    [Fact]
    public async Task A_dance_leads_to_all_that_belongs_to_it()
    {
        var dance = await studio.AddAsync(Dances.Plain);
        foreach (var (name, says) in new[] { ("Details", "Bent Nail"), ("History", "History of Bent Nail"), ("Compare", "Compare Bent Nail"), ("Print", "Bent Nail"), ("Film", "Bent Nail, on film") })
        {
            await using var opened = await studio.OpenAsync($"/dance/{dance}");
            await opened.Page.GetByRole(AriaRole.Navigation, new() { Name = "This dance" }).GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync();
            await Expect(opened.Page.Locator("h1").First).ToContainTextAsync(says);
        }
    }

    private static string[] Pages(long dance) => ["/", "/bin", $"/dance/{dance}", $"/dance/{dance}/history", $"/compare?a={dance}", $"/dance/{dance}/film", $"/details/{dance}", "/nowhere"];
}
