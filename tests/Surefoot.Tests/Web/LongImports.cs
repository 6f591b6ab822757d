using System.IO.Compression;
using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Surefoot.Tests.Library;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>A zip that takes a while says how far it is, may be left alone, and says in the end what became of every file.</summary>
public class LongImports(Studio studio) : IClassFixture<Studio>
{
    /// <summary>Pages that take several seconds on a quick machine: the studio waits one second before it shows how far it is.</summary>
    private const int Pages = 2500;

    private static readonly LocatorAssertionsToContainTextOptions Patiently = new() { Timeout = 180_000 };

    private static byte[] Zip()
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create))
        {
            void Put(string name, byte[] bytes)
            {
                using var entry = zip.CreateEntry(name, CompressionLevel.Fastest).Open();
                entry.Write(bytes);
            }

            for (var number = 0; number < Pages; number++) Put($"evenings/{number / 100}/dance-{number}.dance", Encoding.UTF8.GetBytes(ManyDances.Page(number)));
            // At the end, so that the report knows of them only when everything was looked at.
            Put("evenings/torn.dance", [0x50, 0x00, 0xFF]);
            Put("../stray.dance", Encoding.UTF8.GetBytes(Dances.Plain));
            Put("evenings/songs.txt", "no page"u8.ToArray());
        }

        return stream.ToArray();
    }

    [Fact]
    public async Task It_can_be_watched_left_and_come_back_to()
    {
        await using var opened = await studio.OpenAsync("/bring");
        var page = opened.Page;
        await page.Locator("input[name=zip]").SetInputFilesAsync(new FilePayload { Name = "evenings.zip", MimeType = "application/zip", Buffer = Zip() });
        await page.Locator("form[action='/bring/zip'] button").ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Taking in evenings.zip", new() { Timeout = 60_000 });
        var watched = page.Url;
        var howFar = page.Locator("[data-part=how-far]");
        await Expect(howFar).ToContainTextAsync(" pages", new() { Timeout = 60_000 });
        var first = await DoneAsync(page);
        Assert.InRange(first, 0, Pages - 1);
        Assert.Equal("Pages taken in", await page.GetByRole(AriaRole.Progressbar).GetAttributeAsync("aria-label"));
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help}"));
        // It moves by itself, without loading the page again.
        await page.EvaluateAsync("() => window.stayed = true");
        await Expect(howFar).Not.ToContainTextAsync($"{first} of", new() { Timeout = 60_000 });
        var second = await DoneAsync(page);
        Assert.True(second > first, $"{first}, then {second}");
        Assert.True(await page.EvaluateAsync<bool>("() => window.stayed"));

        // Meanwhile the rest of the studio answers, and leads back.
        await page.GetByRole(AriaRole.Link, new() { Name = "Dances", Exact = true }).ClickAsync();
        await page.GetByLabel("Find a dance").FillAsync("kettle lid");
        await Expect(page.GetByRole(AriaRole.Link, new() { Name = "Kettle Lid Shuffle" })).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await page.GotoAsync(studio.Address + "/bring");
        var back = page.Locator(".things li").Filter(new() { HasText = "evenings.zip" });
        await Expect(back).ToContainTextAsync("still coming in");
        await back.GetByRole(AriaRole.Link).ClickAsync();
        Assert.Equal(watched, page.Url);
        await Expect(page.Locator("h1")).ToHaveTextAsync("Taking in evenings.zip");
        Assert.True(await DoneAsync(page) >= second, "it is less far than it was");

        // The page becomes the report by itself.
        await Expect(page.Locator(".sums")).ToContainTextAsync($"{Pages} taken in", Patiently);
        await Expect(page.Locator(".sums li")).ToHaveTextAsync(["2 could not be read", $"{Pages} taken in", "1 other files, left alone"]);
        Assert.Equal(watched, page.Url);
        var bad = page.Locator("details").First;
        await Expect(bad).ToContainTextAsync("evenings/torn.dance");
        await Expect(bad).ToContainTextAsync("its name leads out of the folder");
        Assert.Equal("", await bad.GetAttributeAsync("open"));
        // A long list is folded, and says how much of it is not drawn.
        await page.GetByText($"Taken in ({Pages})").ClickAsync();
        await Expect(page.Locator("details").Nth(1)).ToContainTextAsync($"and {Pages - 500} more");
        await page.GetByRole(AriaRole.Link, new() { Name = "evenings/0/dance-7.dance", Exact = true }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync(ManyDances.Title(7));

        await page.GotoAsync(studio.Address + "/bring");
        await Expect(page.Locator(".things li").Filter(new() { HasText = "evenings.zip" })).ToContainTextAsync("what became of it");
        using var library = await studio.LookAsync();
        var home = (await library.Notebooks.AllAsync()).Single(n => n.Name == "My dances");
        Assert.Equal(Pages, (await library.Catalogue.ListAsync(new() { Notebook = home.Id, Take = 0 })).Total);
        Assert.Empty(opened.Faults);
    }

    private static async Task<int> DoneAsync(IPage page)
    {
        var words = await page.Locator("[data-part=how-far]").TextContentAsync() ?? "";
        return words.Contains(" of ", StringComparison.Ordinal) ? int.Parse(words.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture) : 0;
    }
}
