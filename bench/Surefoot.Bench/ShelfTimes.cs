using Microsoft.Playwright;
using Surefoot.Library;
using Surefoot.Library.Sqlite;
using Surefoot.Tests.Library;

namespace Surefoot.Bench;

/// <summary>The shelf as somebody at the keyboard has it, with ten thousand dances on it.</summary>
internal static class ShelfTimes
{
    private const int Dances = 10_000, Opens = 25;

    private static readonly string[] Searches = ["amber bridg shufle", "her turn then walks", "sweetheart 40 counts", "about 112 bpm improver"];

    // From a key, as the page gets it, until the first frame with the list for it was drawn: a message posted in a
    // frame's own work comes when the frame is done.
    private const string Watch = """
        () => {
          const found = document.querySelector('[data-part=found]'), times = window.times = [];
          let pressed = 0;
          addEventListener('input', () => pressed = performance.now(), true);
          new MutationObserver(() => {
            const from = pressed;
            if (from) requestAnimationFrame(() => {
              const done = new MessageChannel();
              done.port1.onmessage = () => times.push(performance.now() - from);
              done.port2.postMessage(null);
            });
            pressed = 0;
          }).observe(found, { attributeFilter: ['data-answered'] });
        }
        """;

    // From asking for the page until the first frame with all of it was drawn, counted by the page itself.
    private const string Opening = """
        document.addEventListener("DOMContentLoaded", () => requestAnimationFrame(() => {
          const done = new MessageChannel();
          done.port1.onmessage = () => window.opened = performance.now();
          done.port2.postMessage(null);
        }));
        """;

    public static async Task Fill(string file)
    {
        var store = new SqliteStore(file);
        using var library = await DanceLibrary.OpenAsync(store);
        await Filling.ManyAsync(store, (await library.Notebooks.AddAsync("The hall")).Notebook!.Id, Dances);
        Console.WriteLine($"{Dances} dances are in {file}");
    }

    public static async Task Run(string address, string chromium)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.OpenAsync(playwright, chromium);
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 800 } });
        await page.AddInitScriptAsync(Opening);
        var opens = new List<double>();
        for (var i = 0; i < Opens; i++)
        {
            await page.GotoAsync(address);
            await page.WaitForFunctionAsync("() => window.opened");
            opens.Add(await page.EvaluateAsync<double>("() => window.opened"));
            if (i == 0) Console.WriteLine($"opened for the first time {opens[0]:0} ms");
        }

        Console.WriteLine($"opened                    {StudioTimes.Spread([.. opens.Skip(1)])}");
        foreach (var words in Searches)
        {
            await page.GotoAsync(address);
            await page.EvaluateAsync(Watch);
            await page.Locator("#q").PressSequentiallyAsync(words, new() { Delay = 200 });
            await page.WaitForTimeoutAsync(500);
            var times = await page.EvaluateAsync<double[]>("() => window.times");
            Console.WriteLine($"letter to list            {StudioTimes.Spread(times)}, {times.Length} of {words.Length} letters: {words} ({await page.Locator("[data-part=tally]").TextContentAsync()})");
        }
    }
}
