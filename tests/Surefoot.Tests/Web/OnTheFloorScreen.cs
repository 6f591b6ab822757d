using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>The screen that lies in her hand while she teaches.</summary>
public class OnTheFloorScreen(Studio studio) : IClassFixture<Studio>
{
    private const string Dance = "/on-the-floor/nine-buckets-cha-cha";

    [Fact]
    public async Task A_touch_anywhere_goes_on_and_the_call_comes_before_its_step()
    {
        await using var opened = await studio.OpenAsync(Dance, 1024, 768);
        var page = opened.Page;
        await Expect(Count(page)).ToHaveTextAsync("1");
        await Expect(Danced(page)).ToHaveTextAsync("rock forward");
        // Called on counts 1 and 2, danced from 3 on.
        await Expect(Call(page)).ToHaveTextAsync("triple back");
        await Expect(Call(page)).ToHaveAttributeAsync("data-when", "call it now");
        await page.Mouse.ClickAsync(30, 30);
        await Expect(Count(page)).ToHaveTextAsync("2");
        await page.Mouse.ClickAsync(980, 400);
        await Expect(Count(page)).ToHaveTextAsync("3");
        await Expect(Danced(page)).ToHaveTextAsync("triple back");
        await Expect(Call(page)).ToHaveTextAsync("rock back");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_bite_is_danced_again_and_its_end_calls_its_own_start()
    {
        await using var opened = await studio.OpenAsync(Dance, 1024, 768);
        var page = opened.Page;
        await page.GetByLabel("What is taught").SelectOptionAsync("Part B, 1 to 8");
        await Expect(Danced(page)).ToHaveTextAsync("rock left");
        for (var i = 0; i < 6; i++) await page.Locator(".stage").ClickAsync();
        await Expect(Count(page)).ToHaveTextAsync("7");
        await Expect(Call(page)).ToHaveTextAsync("rock left");
        for (var i = 0; i < 2; i++) await page.Locator(".stage").ClickAsync();
        await Expect(Count(page)).ToHaveTextAsync("1");
        await Expect(page.GetByLabel("What is taught")).ToHaveValueAsync("1");
        // Once only: the end calls what the dance goes on to, and goes there.
        await page.GetByRole(AriaRole.Button, new() { Name = "Again and again" }).ClickAsync();
        for (var i = 0; i < 7; i++) await page.Locator(".stage").ClickAsync();
        await Expect(Call(page)).ToHaveTextAsync("pivot half");
        await page.Locator(".stage").ClickAsync();
        await Expect(page.GetByLabel("What is taught")).ToHaveValueAsync("2");
        await Expect(Danced(page)).ToHaveTextAsync("pivot half");
    }

    [Fact]
    public async Task Bites_are_called_as_on_a_lessons_sheet()
    {
        await using var opened = await studio.OpenAsync("/on-the-floor/hen-house-hurry", 1024, 768);
        var names = await opened.Page.GetByLabel("What is taught").Locator("option").AllTextContentsAsync();
        Assert.Contains("Part A, 1 to 8 (A1)", names);
        Assert.Contains("Part A, 9 to 16 (A2)", names);
    }

    [Fact]
    public async Task Bites_that_are_no_8_are_there_as_well_and_a_lessons_sheet_leads_to_them()
    {
        await using var opened = await studio.OpenAsync("/on-the-floor/weathervane#1-4", 1024, 768);
        var bites = opened.Page.GetByLabel("What is taught");
        Assert.Equal(["Part A, 1 to 8", "Part A, 1 to 4 (A1)", "Part A, 5 to 8 (A2)", "Part A, 9 to 16"], (await bites.Locator("option").AllTextContentsAsync()).Take(4));
        await Expect(bites).ToHaveValueAsync("1");
    }

    [Fact]
    public async Task A_tag_is_shown_and_called_and_leads_back_into_the_dance()
    {
        await using var opened = await studio.OpenAsync("/on-the-floor/both-footbridges", 1024, 768);
        var page = opened.Page;
        await page.GetByLabel("What is taught").SelectOptionAsync("Tag");
        await Expect(Count(page)).ToHaveTextAsync("1");
        await Expect(Danced(page)).ToHaveTextAsync("rocking chair");
        await page.GetByRole(AriaRole.Button, new() { Name = "Again and again" }).ClickAsync();
        for (var i = 0; i < 3; i++) await page.Locator(".stage").ClickAsync();
        await Expect(Count(page)).ToHaveTextAsync("4");
        await Expect(Call(page)).ToHaveTextAsync("lock forward");
        await page.Locator(".stage").ClickAsync();
        await Expect(page.GetByLabel("What is taught")).ToHaveValueAsync("0");
        await Expect(Danced(page)).ToHaveTextAsync("lock forward");
        Assert.Empty(opened.Faults);
    }

    [Theory]
    [InlineData(1024, 768)]
    [InlineData(390, 800)]
    [InlineData(800, 390)]
    public async Task A_long_call_of_her_own_leaves_the_count_whole(int width, int height)
    {
        var number = await studio.AddAsync("Long Call Lane\nKind: line\nFeet: right free\n\n1-4  Vine right, touch L\nCall 1-4: and now everybody to the left and clap your hands twice\n5-8  Vine left, touch R\n");
        await using var opened = await studio.OpenAsync($"/on-the-floor/{number}", width, height);
        await Expect(Call(opened.Page)).ToHaveTextAsync("and now everybody to the left and clap your hands twice");
        Assert.True(await opened.Page.EvaluateAsync<bool>("""
            () => { const box = (p) => document.querySelector(`[data-part=${p}]`).getBoundingClientRect(), count = box("count"), room = document.querySelector(".stage").getBoundingClientRect();
              return count.top >= room.top && count.bottom <= box("danced").top + 1 && count.height > 0.2 * innerHeight && box("call").bottom <= room.bottom; }
            """));
    }

    [Fact]
    public async Task At_tempo_it_counts_in_goes_round_and_goes_on_when_it_is_touched()
    {
        await using var opened = await studio.OpenAsync(Dance, 1024, 768);
        var page = opened.Page;
        await page.EvaluateAsync("""
            () => {
              window.seen = [];
              new MutationObserver(() => window.seen.push([performance.now(), document.querySelector("[data-part=count]").textContent])).observe(document.querySelector("[data-part=count]"), { childList: true, characterData: true, subtree: true });
              // What comes next stands for two seconds at most: seen from within, a busy machine cannot miss it.
              window.promised = [];
              const stage = document.querySelector(".stage");
              new MutationObserver(() => stage.dataset.then && window.promised.push(stage.dataset.then)).observe(stage, { attributeFilter: ["data-then"] });
            }
            """);
        // 240 counts a minute, a quarter of a second each.
        for (var i = 0; i < 40; i++) await page.GetByRole(AriaRole.Button, new() { Name = "Faster" }).ClickAsync();
        await Expect(page.Locator(".tempo")).ToHaveTextAsync("240");
        await page.GetByRole(AriaRole.Button, new() { Name = "Count", Exact = true }).ClickAsync();
        await page.WaitForFunctionAsync("() => window.seen.length >= 20");
        await page.Locator(".stage").ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('[data-part=tools] select').value === '1'");
        Assert.Contains("Part B, 1 to 8", await page.EvaluateAsync<string[]>("() => window.promised"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        var seen = await page.EvaluateAsync<string[]>("() => window.seen.map(s => s[1])");
        Assert.Equal(["5", "6", "7", "8", "1", "2", "3", "4", "5", "6", "7", "8", "1", "2"], seen.Take(14));
        var times = await page.EvaluateAsync<double[]>("() => window.seen.map(s => s[0])");
        // Told from the clock and never added up: after sixteen counts it is as late as after one.
        // One picture may be late on a busy machine; sixteen times the lateness of a timer would be more.
        Assert.InRange(times[16] - times[0], 16 * 250 - 300, 16 * 250 + 400);
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Count", Exact = true })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task The_keyboard_and_a_presenters_clicker_do_all_that_a_finger_does()
    {
        await using var opened = await studio.OpenAsync(Dance, 1024, 768);
        var (page, keys) = (opened.Page, opened.Page.Keyboard);
        foreach (var key in (string[])["ArrowRight", "Space", "Enter", "PageDown"]) await keys.PressAsync(key);
        await Expect(Count(page)).ToHaveTextAsync("5");
        await keys.PressAsync("ArrowLeft");
        await keys.PressAsync("PageUp");
        await Expect(Count(page)).ToHaveTextAsync("3");
        await keys.PressAsync("ArrowDown");
        await Expect(page.GetByLabel("What is taught")).ToHaveValueAsync("1");
        await keys.PressAsync("ArrowUp");
        await keys.PressAsync("l");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Again and again" })).ToHaveAttributeAsync("aria-pressed", "false");
        var tempo = int.Parse(await page.Locator(".tempo").InnerTextAsync());
        await keys.PressAsync("-");
        await Expect(page.Locator(".tempo")).ToHaveTextAsync($"{tempo - 4}");
        await keys.PressAsync("p");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Stop" })).ToBeVisibleAsync();
        await keys.PressAsync("p");
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Count", Exact = true })).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Whoever_cannot_see_it_hears_count_call_and_what_is_danced()
    {
        await using var opened = await studio.OpenAsync(Dance, 1024, 768);
        var page = opened.Page;
        await Expect(page.Locator(".stage")).ToHaveAccessibleNameAsync("Count 1 rock forward Call: triple back Go on");
        for (var i = 0; i < 3; i++) await page.Locator(".stage").ClickAsync();
        await Expect(page.Locator("[data-part=heard]")).ToHaveTextAsync("Count 4, triple back. Call: rock back");
    }

    [Fact]
    public async Task Where_the_roles_differ_it_says_for_whom_in_the_halls_words()
    {
        await using var opened = await studio.OpenAsync("/on-the-floor/split-rail-cha-cha", 1024, 768);
        var page = opened.Page;
        await page.GetByLabel("What is taught").SelectOptionAsync("Part B, 1 to 8");
        await Expect(Call(page)).ToHaveTextAsync("lead: triple follow: quarter left");
    }

    [Fact]
    public async Task A_page_without_counts_says_so()
    {
        var page = await studio.AddAsync("Nothing Yet\n");
        await using var opened = await studio.OpenAsync($"/on-the-floor/{page}");
        await Expect(opened.Page.Locator(".nothing").First).ToContainTextAsync("no counts on this page yet");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_dance_leads_there_and_back()
    {
        await using var opened = await studio.OpenAsync("/dance/nine-buckets-cha-cha");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "On the floor" }).ClickAsync();
        await opened.Page.WaitForSelectorAsync("html[data-ready] .stage", new() { State = WaitForSelectorState.Attached });
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "Back to the dance" }).ClickAsync();
        await Expect(opened.Page.Locator("h1").First).ToHaveTextAsync("Nine Buckets Cha-Cha");
    }

    public static TheoryData<int, int, ColorScheme, ForcedColors> Everywhere
    {
        get
        {
            var all = new TheoryData<int, int, ColorScheme, ForcedColors>();
            foreach (var (width, height) in ((int, int)[])[(1024, 768), (768, 1024), (390, 800), (800, 390)])
            {
                all.Add(width, height, ColorScheme.Light, ForcedColors.None);
                all.Add(width, height, ColorScheme.Dark, ForcedColors.None);
            }

            all.Add(1024, 768, ColorScheme.Dark, ForcedColors.Active);
            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Nothing_stands_in_anybodys_way_in_any_light_and_size(int width, int height, ColorScheme scheme, ForcedColors forced)
    {
        await using var opened = await studio.OpenAsync("/on-the-floor/split-rail-cha-cha", width, height, lessMotion: true);
        var page = opened.Page;
        await page.EmulateMediaAsync(new() { ColorScheme = scheme, ForcedColors = forced });
        // One look whatever the machine prefers: the hall is half dark for everybody.
        if (forced == ForcedColors.None) Assert.Equal("rgb(7, 5, 4)", await page.EvaluateAsync<string>("() => getComputedStyle(document.body).backgroundColor"));
        for (var i = 0; i < 3; i++)
        {
            var result = await page.RunAxe();
            Assert.True(result.Violations.Length == 0, string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html} {v.Nodes.FirstOrDefault()?.Any.FirstOrDefault()?.Message}")));
            Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth && document.documentElement.scrollHeight <= innerHeight"), "must be scrolled");
            // Count and call lie whole inside the picture, and above the line of buttons.
            Assert.True(await page.EvaluateAsync<bool>("""
                () => ["count", "danced", "call"].every(p => { const r = document.querySelector(`[data-part=${p}]`).getBoundingClientRect(), bar = document.querySelector(".bar").getBoundingClientRect();
                  return r.left >= 0 && r.right <= innerWidth && r.bottom <= bar.top + 1; })
                """), "something is cut off");
            await page.Locator(".stage").ClickAsync();
            await page.Locator(".stage").ClickAsync();
        }

        Assert.True(await page.EvaluateAsync<double>("() => document.querySelector('[data-part=count]').getBoundingClientRect().height / innerHeight") > 0.25, "the count is not huge");
        Assert.Equal("0s", await page.EvaluateAsync<string>("() => getComputedStyle(document.querySelector('[data-part=count]')).transitionDuration"));
        Assert.Empty(opened.Faults);
    }

    private static ILocator Count(IPage page) => page.Locator("[data-part=count]");

    private static ILocator Danced(IPage page) => page.Locator("[data-part=danced]");

    private static ILocator Call(IPage page) => page.Locator("[data-part=call]");
}
