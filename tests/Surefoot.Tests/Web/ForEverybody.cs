using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Both pages can be used by everybody, in every light and on every screen.</summary>
public class ForEverybody(Studio studio) : IClassFixture<Studio>
{
    public static TheoryData<string, string, int, int> Everywhere
    {
        get
        {
            var all = new TheoryData<string, string, int, int>();
            foreach (var path in (string[])["/", "/dance/kettle-lid-shuffle"])
            {
                foreach (var look in (string[])["light", "dark", "dim"])
                {
                    foreach (var (width, height) in ((int, int)[])[(1280, 800), (1080, 810), (810, 1080), (390, 800)]) all.Add(path, look, width, height);
                }
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Nothing_stands_in_anybodys_way(string path, string look, int width, int height)
    {
        await using var opened = await studio.OpenAsync(path, width, height, look);
        if (path != "/")
        {
            // With problems and suggestions on the page.
            if (width < 640) await opened.Page.Locator(".panes [data-to=text]").ClickAsync();
            await opened.WriteAsync("Lane\nKind: partner, circle\nHold: sweetheart\nFeet: same, left free\n\nPart A (4 counts)\n1-2 Rock forward L, recover R\n3-4 Walk forward R, frobble\n");
            await Expect(opened.Page.Locator(".problem").First).ToBeAttachedAsync();
            if (width < 640) await opened.Page.Locator(".panes [data-to=floor]").ClickAsync();
        }

        // Nothing runs inside the sheet's frame, the rules neither; the sheet is looked at below.
        Fine(await opened.Page.RunAxe(new AxeRunOptions { Iframes = false }));
        Assert.True(await opened.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), "it must be scrolled sideways");
    }

    [Theory]
    [InlineData("light")]
    [InlineData("dark")]
    [InlineData("dim")]
    public async Task The_sheet_can_be_read_in_every_light(string look)
    {
        var text = await File.ReadAllTextAsync(Root.At("demo", "dances", "circle", "kettle-lid-shuffle.dance"));
        using var read = await studio.Http.PostAsync($"{studio.Address}/live/tests-of-sheets?number=1", new StringContent(text));
        // By itself: inside the studio nothing may run in it, and the rules have to.
        await using var opened = new Opened(await studio.BlankAsync());
        await opened.Page.SetContentAsync(await studio.Http.GetStringAsync($"{studio.Address}/live/tests-of-sheets/sheet?look={look}"));
        Assert.Equal(look == "light" ? "light" : "dark", await opened.Page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).colorScheme"));
        Fine(await opened.Page.RunAxe());
    }

    private static void Fine(AxeResult result) => Assert.True(
        result.Violations.Length == 0,
        string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html} {v.Nodes.FirstOrDefault()?.Any.FirstOrDefault()?.Message}")));

    [Fact]
    public async Task On_a_telephone_one_part_is_seen_at_a_time_the_sheet_first()
    {
        await using var opened = await studio.OpenCopyAsync("kettle-lid-shuffle", 390, 800);
        await Expect(opened.Page.Locator(".pane.sheet")).ToBeVisibleAsync();
        foreach (var pane in (string[])["text", "floor", "problems", "sheet"])
        {
            await opened.Page.Locator($".panes [data-to={pane}]").ClickAsync();
            await Expect(opened.Page.Locator(".pane:visible")).ToHaveCountAsync(1);
            await Expect(opened.Page.Locator($".pane.{pane}")).ToBeVisibleAsync();
        }

        // How many problems there are is seen also by who looks at something else.
        var tab = opened.Page.Locator(".panes [data-to=problems]");
        await Expect(tab).Not.ToContainTextAsync("1");
        await opened.Page.Locator(".panes [data-to=text]").ClickAsync();
        await opened.WriteAsync("Lane\nKind: line, 1 wall\nPhrase: any\nFeet: right free\n\n1-2 Step side R, frobble together L\n");
        await Expect(tab).ToHaveTextAsync("Problems 1");
    }

    [Fact]
    public async Task A_look_that_was_chosen_is_kept()
    {
        await using var opened = await studio.OpenAsync("/", look: "dim");
        await opened.Page.ReloadAsync();
        Assert.Equal("dim", await opened.Page.GetAttributeAsync("html", "data-look"));
        Assert.Equal("dim", await opened.Page.Locator("[data-look-chooser]").InputValueAsync());
    }

    [Fact]
    public async Task The_keyboard_alone_reaches_every_part()
    {
        await using var opened = await studio.OpenAsync("/dance/kettle-lid-shuffle");
        var reached = new HashSet<string>();
        var all = new HashSet<string> { "text", "floor", "sheet" };
        // The sheet comes when it has been made; whoever waits longer comes round again.
        for (var i = 0; i < 160 && !reached.IsSupersetOf(all); i++)
        {
            await opened.Page.Keyboard.PressAsync("Tab");
            reached.Add(await opened.Page.EvaluateAsync<string>("() => document.activeElement?.closest('.pane')?.dataset.name ?? ''"));
        }

        Assert.Superset(all, reached);
    }
}
