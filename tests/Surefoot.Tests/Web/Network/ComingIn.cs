using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web.Network;

/// <summary>The door in a browser: on a telephone, in every light, and in the middle of writing.</summary>
public class ComingIn
{
    [Fact]
    public async Task A_telephone_comes_in_by_the_network()
    {
        await using var studio = new OpenStudio();
        await studio.InitializeAsync();
        await using var browser = new Browser();
        await browser.InitializeAsync();
        var (page, faults) = await PhoneAsync(browser);
        await page.GotoAsync(studio.There + "/dance/kettle-lid-shuffle");
        foreach (var look in (string[])["light", "dark", "dim"])
        {
            await page.SelectOptionAsync("[data-look-chooser]", look);
            await FineAsync(page);
        }

        Assert.Equal("password", await page.GetByLabel("The hall’s passphrase").GetAttributeAsync("type"));
        await page.GetByLabel("Show what I write").CheckAsync();
        Assert.Equal("text", await page.GetByLabel("The hall’s passphrase").GetAttributeAsync("type"));
        await page.GetByLabel("The hall’s passphrase").FillAsync("three slow green pails");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".note.bad")).ToContainTextAsync("That is not the passphrase");
        await FineAsync(page);
        await page.GetByLabel("The hall’s passphrase").FillAsync(OpenStudio.Passphrase);
        await page.GetByText("Sign in", new() { Exact = true }).ClickAsync();
        // Where it wanted to go, in touch with the studio.
        await page.WaitForSelectorAsync("html[data-ready] .cm-content", new() { State = WaitForSelectorState.Attached });
        await Expect(page.Locator("h1").First).ToHaveTextAsync("Kettle Lid Shuffle");
        await page.GotoAsync(studio.There + "/settings");
        await page.GetByText("When a tablet warns").ClickAsync();
        await FineAsync(page);
        await Expect(page.Locator(".hall-door")).ToContainTextAsync(studio.There);
        // What the screen for the dance floor keeps on a device goes when the device is signed out.
        await page.EvaluateAsync("async () => (await caches.open('surefoot-on-the-floor')).put('/on-the-floor/1', new Response('a dance'))");
        await page.GetByText("Sign out on this device").ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Come in");
        await page.WaitForFunctionAsync("async () => !(await caches.has('surefoot-on-the-floor'))");
        await page.GoBackAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Come in");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task The_first_passphrase_is_chosen_in_the_browser_at_the_machine()
    {
        await using var studio = new UnopenedStudio();
        await studio.InitializeAsync();
        await using var browser = new Browser();
        await browser.InitializeAsync();
        var (page, faults) = await PhoneAsync(browser);
        await page.GotoAsync(studio.Here);
        foreach (var look in (string[])["light", "dark", "dim"])
        {
            await page.SelectOptionAsync("[data-look-chooser]", look);
            await FineAsync(page);
        }

        await page.GetByLabel("New passphrase").FillAsync(OpenStudio.Passphrase);
        await page.GetByLabel("Once more").FillAsync(OpenStudio.Passphrase);
        await page.GetByText("Keep it and open").ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("Others in the hall can come in");
        Assert.Empty(faults);
    }

    [Fact]
    public async Task Whoever_is_signed_out_while_writing_loses_nothing()
    {
        await using var studio = new OpenStudio();
        await studio.InitializeAsync();
        await using var browser = new Browser();
        await browser.InitializeAsync();
        var page = await (await browser.FirstTabAsync(new() { IgnoreHTTPSErrors = true })).Context.NewPageAsync();
        await page.GotoAsync(studio.There + "/dance/kettle-lid-shuffle");
        await SignInAsync(page, OpenStudio.Passphrase);
        await page.WaitForSelectorAsync("html[data-ready] .cm-content");
        await studio.ChooseAsync("five tall red ladders");
        await page.Locator(".cm-content").FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        await page.Keyboard.TypeAsync("\n# written in between");
        await Expect(page.Locator(".standing")).ToContainTextAsync("not signed in any more");
        var beside = await page.Context.RunAndWaitForPageAsync(() => page.Locator(".standing a").ClickAsync());
        await SignInAsync(beside, "five tall red ladders");
        await Expect(page.Locator(".standing")).ToContainTextAsync("Kept as a draft", new() { Timeout = 15_000 });
        Assert.Contains("# written in between", await page.Locator(".cm-content").InnerTextAsync());
    }

    private static async Task SignInAsync(IPage page, string passphrase)
    {
        await page.GetByLabel("The hall’s passphrase").FillAsync(passphrase);
        await page.GetByText("Sign in", new() { Exact = true }).ClickAsync();
    }

    private static async Task<(IPage Page, List<string> Faults)> PhoneAsync(Browser browser)
    {
        var page = await browser.FirstTabAsync(new() { IgnoreHTTPSErrors = true, ViewportSize = new() { Width = 390, Height = 800 }, ColorScheme = ColorScheme.Light });
        var faults = new List<string>();
        page.Console += (_, said) =>
        {
            if (said.Type is "error" or "warning") faults.Add(said.Text);
        };
        page.PageError += (_, fault) => faults.Add(fault);
        return (page, faults);
    }

    private static async Task FineAsync(IPage page)
    {
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        var result = await page.RunAxe();
        Assert.True(result.Violations.Length == 0, string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html} {v.Nodes.FirstOrDefault()?.Any.FirstOrDefault()?.Message}")));
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), "it must be scrolled sideways");
    }
}
