using Microsoft.Playwright;

namespace Surefoot.Tests.Support;

/// <summary>One Chromium for all tests that need to see a page as people will. "./test" installs it.</summary>
public sealed class Browser : IAsyncLifetime
{
    private IPlaywright? _playwright;
    private IBrowser? _browser;

    public async ValueTask InitializeAsync()
    {
        var chromium = Environment.GetEnvironmentVariable("SUREFOOT_CHROMIUM") is { Length: > 0 } set ? set : "/usr/bin/chromium";
        Assert.True(File.Exists(chromium), "These tests look at pages in Chromium, which ./test installs; or say where it is in SUREFOOT_CHROMIUM.");
        _playwright = await Playwright.CreateAsync();
        // Long enough for two cores on which everything else is tested at the same time; who waits for what never comes waits so long.
        Assertions.SetDefaultExpectTimeout(30_000);
        _browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = chromium,
            Args = ["--no-sandbox", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });
    }

    public Task<IPage> PageAsync(BrowserNewPageOptions? options = null) => _browser!.NewPageAsync(options);

    /// <summary>A page in a browser of its own, in which more tabs can be opened.</summary>
    public async Task<IPage> FirstTabAsync(BrowserNewContextOptions options) => await (await _browser!.NewContextAsync(options)).NewPageAsync();

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
    }
}
