using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Every room can be used by everybody, in every light and on every screen.</summary>
public class RoomsForEverybody(Studio studio) : IClassFixture<Studio>
{
    /// <summary>A laptop, a tablet both ways and a telephone, in pixels.</summary>
    public static readonly (int Width, int Height)[] Sizes = [(1280, 800), (1080, 810), (810, 1080), (390, 800)];

    public static TheoryData<string, int, int> Everywhere
    {
        get
        {
            var all = new TheoryData<string, int, int>();
            foreach (var look in (string[])["light", "dark", "dim"])
            {
                foreach (var (width, height) in ((int, int)[])Sizes) all.Add(look, width, height);
            }

            return all;
        }
    }

    [Theory]
    [MemberData(nameof(Everywhere))]
    public async Task Nothing_stands_in_anybodys_way_in_any_room(string look, int width, int height)
    {
        var (bad, report, copy, refused, sheet) = await FilledAsync();
        await using var opened = await studio.OpenAsync("/", width, height, look);
        var page = opened.Page;
        foreach (var address in Screens.Rooms.Values.SelectMany(a => a))
        {
            var path = address switch { "{report}" => report, "{bad}" => bad, "{copy}" => copy, "{refused}" => refused, "{sheet}" => sheet, _ => address };
            await page.GotoAsync(studio.Address + path);
            await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
            Assert.Equal(look, await page.GetAttributeAsync("html", "data-look"));
            if (path == "/?q=shufle") await page.Locator(".more summary").First.ClickAsync();
            var result = await page.RunAxe();
            Assert.True(result.Violations.Length == 0, path + ": " + string.Join("; ", result.Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html} {v.Nodes.FirstOrDefault()?.Any.FirstOrDefault()?.Message}")));
            Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), path + " must be scrolled sideways");
        }

        // The browser itself says of a page that is not there that it is not.
        Assert.DoesNotContain(opened.Faults, f => !f.Contains("404", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_keyboard_alone_opens_a_menu_and_closes_it_again()
    {
        await using var opened = await studio.OpenAsync("/?q=kettle+lid");
        var keys = opened.Page.Keyboard;
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "Kettle Lid Shuffle" }).FocusAsync();
        await keys.PressAsync("Tab");
        await keys.PressAsync("Enter");
        await Expect(opened.Page.Locator(".more[open]")).ToHaveCountAsync(1);
        await keys.PressAsync("Tab");
        Assert.Equal("Names, songs, files", await opened.Page.EvaluateAsync<string>("() => document.activeElement.textContent"));
        await keys.PressAsync("Escape");
        await Expect(opened.Page.Locator(".more[open]")).ToHaveCountAsync(0);
        Assert.Equal("SUMMARY", await opened.Page.EvaluateAsync<string>("() => document.activeElement.tagName"));
    }

    // A dance in the bin, tags and songs on another, two reports, a copy that waits, a form that was refused, and a sheet that was read.
    private async Task<(string Bad, string Report, string Copy, string Refused, string Sheet)> FilledAsync()
    {
        using var forms = new Forms(studio);
        MultipartFormDataContent Fields(params (string, string)[] fields)
        {
            var form = new MultipartFormDataContent();
            foreach (var (name, value) in fields) form.Add(new StringContent(value), name);
            return form;
        }

        await forms.SendAsync("/shelf/bin/4", "/", Fields());
        await forms.SendAsync("/details/3/tags/add", "/", Fields(("tag", "Tuesdays")));
        await forms.SendAsync("/details/3/songs/add", "/", Fields(("title", "Slow Train"), ("artist", "The Gate Posts"), ("tempo", "112.5")));
        await forms.SendAsync("/details/3/films/add", "/", Fields(("address", "https://films.example/three"), ("title", "From the side")));
        var bad = await forms.LeadAsync("/bring/zip", "/bring", new() { { new ByteArrayContent("no zip"u8.ToArray()), "zip", "no.zip" } });
        var report = await forms.LeadAsync("/bring/folder", "/bring", new()
        {
            { new ByteArrayContent("Lane\n\nPart A (4 counts)\n1-2 frobble\n"u8.ToArray()), "files", "lane.dance" },
            { new ByteArrayContent([0x50, 0x00]), "files", "broken.dance" },
        });
        var copy = await forms.LeadAsync("/take/back", "/take", new() { { new ByteArrayContent("no copy"u8.ToArray()), "copy", "copy.db" } });
        var refused = await forms.LeadAsync("/details/3/songs/add", "/", Fields(("title", "Slow Train"), ("tempo", "fast")));
        await forms.SendAsync("/settings/words/keep", "/settings", Fields(("said", "frobble the fence"), ("means", "hitch R")));
        var sheet = await forms.LeadAsync("/paste/text", "/paste", Fields(("text", Pasting.Sheet)));
        return (bad, report, copy, refused, sheet);
    }
}
