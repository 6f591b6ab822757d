using Microsoft.Playwright;

namespace Surefoot.Bench;

/// <summary>The machine's own Chromium, as the tests open it.</summary>
internal static class Chromium
{
    public static Task<IBrowser> OpenAsync(IPlaywright playwright, string chromium) => playwright.Chromium.LaunchAsync(new()
    {
        ExecutablePath = chromium,
        Args = ["--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
    });
}
