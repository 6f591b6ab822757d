using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;

namespace Surefoot.Bench;

/// <summary>The studio from its start to the first page in a browser that stands open, and the memory it keeps when nobody asks anything.</summary>
internal static class StartTimes
{
    private const int Times = 10;

    /// <summary>Seconds of quiet before its memory is read: several rounds of the runtime's own tidying. Working value.</summary>
    private const int Quiet = 60;

    public static async Task Run(string program, string? library, string chromium)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.OpenAsync(playwright, chromium);
        var folder = Directory.CreateTempSubdirectory("surefoot-start-").FullName;
        try
        {
            var file = library ?? Path.Combine(folder, "library.db");
            List<double> said = [], first = [], again = [];
            for (var time = 0; time < Times; time++)
            {
                var page = await browser.NewPageAsync();
                var clock = Stopwatch.StartNew();
                using var studio = await OpenStudio.StartAsync(program, file);
                await page.GotoAsync(studio.Address, new() { WaitUntil = WaitUntilState.DOMContentLoaded });
                var opened = clock.Elapsed.TotalMilliseconds;
                // The very first start makes the library and takes the demo notebook in.
                if (time == 0) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"start on {(library is null ? "no library" : "that library")} to first page   {opened:0} ms"));
                else
                {
                    said.Add(studio.Said);
                    first.Add(opened);
                    clock.Restart();
                    await page.ReloadAsync(new() { WaitUntil = WaitUntilState.DOMContentLoaded });
                    again.Add(clock.Elapsed.TotalMilliseconds);
                }

                await page.CloseAsync();
            }

            Console.WriteLine($"start to address               {StudioTimes.Spread([.. said])}");
            Console.WriteLine($"start to first page            {StudioTimes.Spread([.. first])}");
            Console.WriteLine($"the same page again            {StudioTimes.Spread([.. again])}");
            await MemoryAsync(program, file, browser);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task MemoryAsync(string program, string file, IBrowser browser)
    {
        using var studio = await OpenStudio.StartAsync(program, file);
        await Task.Delay(TimeSpan.FromSeconds(Quiet));
        Say("nobody came", studio.Memory());
        var page = await browser.NewPageAsync();
        foreach (var words in (string[])["", "/?q=her+turn+then+walks", "/settings", "/bin", "/bring"]) await page.GotoAsync(studio.Address + words);
        await page.GotoAsync(studio.Address + "/");
        // A dance at work, and its sheet.
        await page.Locator(".dance .called > a").First.ClickAsync();
        await page.WaitForSelectorAsync("html[data-ready] .cm-content");
        await page.GotoAsync(page.Url + "/print");
        await page.CloseAsync();
        Say("after a visit", studio.Memory());
        await Task.Delay(TimeSpan.FromSeconds(Quiet));
        Say($"{Quiet} s later", studio.Memory());

        static void Say(string when, double memory) => Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"memory, {when,-22} {memory:0} MiB"));
    }
}
