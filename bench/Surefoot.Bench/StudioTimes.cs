using System.Globalization;
using Microsoft.Playwright;

namespace Surefoot.Bench;

/// <summary>
/// The studio as somebody at the keyboard has it: from a key press to fresh problems on the screen, and pictures a
/// second while the floor plays. Needs a studio that is open, and Chromium.
/// </summary>
internal static class StudioTimes
{
    private const int Keys = 200, Pause = 120, Seconds = 6;

    // From the key press, as the page gets it, to the first frame after the answer for the new text was put in.
    private const string Watch = """
        () => {
          const desk = document.querySelector('.desk'), times = window.times = [];
          let pressed = 0;
          addEventListener('keydown', () => pressed = performance.now(), true);
          new MutationObserver(() => {
            const from = pressed;
            if (from) requestAnimationFrame(() => times.push(performance.now() - from));
            pressed = 0;
          }).observe(desk, { attributeFilter: ['data-number'] });
        }
        """;

    internal const string Frames = """
        (seconds) => new Promise(done => {
          const gaps = []; let last = performance.now(); const end = last + seconds * 1000;
          const tick = now => { gaps.push(now - last); last = now; if (now < end) requestAnimationFrame(tick); else done(gaps.slice(1)); };
          requestAnimationFrame(tick);
        })
        """;

    public static async Task Run(string address, string chromium)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.OpenAsync(playwright, chromium);
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1280, Height = 800 } });
        var clock = System.Diagnostics.Stopwatch.StartNew();
        await page.GotoAsync(address + "/dance/split-rail-cha-cha");
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        Console.WriteLine($"page open and ready      {clock.ElapsedMilliseconds} ms");
        await page.Locator(".cm-content").FocusAsync();
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.InsertTextAsync(Pages.Couple(64));
        await page.WaitForTimeoutAsync(1500);
        await page.EvaluateAsync(Watch);
        // One letter of a remark at the end and away again: every key gives a new text with new problems.
        await page.Keyboard.PressAsync("Control+End");
        for (var i = 0; i < Keys; i++)
        {
            await page.Keyboard.PressAsync(i % 8 < 4 ? "q" : "Backspace");
            await page.WaitForTimeoutAsync(Pause);
        }

        var times = await page.EvaluateAsync<double[]>("() => window.times");
        Console.WriteLine($"key to problems          {Spread(times)}, {times.Length} of {Keys} keys");
        await page.Locator(".play").ClickAsync();
        var gaps = await page.EvaluateAsync<double[]>(Frames, Seconds);
        Console.WriteLine($"pictures while playing   {(gaps.Length / gaps.Sum() * 1000).ToString("0.0", CultureInfo.InvariantCulture)} a second, between two {Spread(gaps)}");
    }

    internal static string Spread(double[] times)
    {
        Array.Sort(times);
        string At(double share) => times[Math.Min(times.Length - 1, (int)(times.Length * share))].ToString("0.0", CultureInfo.InvariantCulture);
        return times.Length == 0 ? "none" : $"median {At(0.5)} ms, 95 of 100 within {At(0.95)} ms, slowest {At(1)} ms";
    }
}
