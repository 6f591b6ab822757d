using System.Globalization;
using Microsoft.Playwright;

namespace Surefoot.Bench;

/// <summary>
/// The moving figures: how long until the first picture, and pictures a second while they dance, one couple large and
/// a full floor at half the size. Needs a studio that is open, and Chromium; without a graphics card it draws in software.
/// </summary>
internal static class WatchTimes
{
    private const int Opened = 7, Seconds = 8;

    private const string Whole = "() => new Promise(done => { const look = () => document.documentElement.dataset.watching === undefined ? setTimeout(look, 5) : requestAnimationFrame(() => requestAnimationFrame(() => done(performance.now()))); look(); })";

    public static async Task Run(string address, string chromium)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await Chromium.OpenAsync(playwright, chromium);
        var page = await browser.NewPageAsync(new() { ViewportSize = new() { Width = 1400, Height = 1000 } });
        var opened = new double[Opened];
        for (var i = 0; i < Opened; i++)
        {
            await page.GotoAsync(address + "/dance/split-rail-cha-cha/watch", new() { WaitUntil = WaitUntilState.Commit });
            opened[i] = await page.EvaluateAsync<double>(Whole);
        }

        Console.WriteLine($"page to first picture    {StudioTimes.Spread(opened)}");
        await Play(page, 1280, 720, crowd: false);
        await Play(page, 640, 360, crowd: true);
    }

    private static async Task Play(IPage page, int width, int height, bool crowd)
    {
        await page.EvaluateAsync("""
            async ([width, height, crowd]) => {
              const viewer = window.surefootViewer, picture = document.querySelector(".viewer-picture");
              Object.assign(picture.style, { flex: "none", width: width + "px", height: height + "px" });
              viewer.watching.view.crowd = crowd;
              viewer.watching.seek(0);
              await new Promise(done => setTimeout(done, 500));
              await viewer.watching.play();
              // What a slow machine learns first is not what is measured.
              await new Promise(done => setTimeout(done, 4000));
            }
            """, new object[] { width, height, crowd });
        var gaps = await page.EvaluateAsync<double[]>(StudioTimes.Frames, Seconds);
        var share = await page.EvaluateAsync<double>("(width) => document.querySelector('.viewer-picture canvas').width / width", width);
        Console.WriteLine($"{(crowd ? "full floor" : "one couple")} at {width} by {height}  {(gaps.Length / gaps.Sum() * 1000).ToString("0.0", CultureInfo.InvariantCulture)} pictures a second, {share.ToString("0.00", CultureInfo.InvariantCulture)} of the points each way, between two {StudioTimes.Spread(gaps)}");
    }
}
