using System.Diagnostics;
using Microsoft.Playwright;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Web;

/// <summary>The studio as people start it, on a free port on a library of its own that begins with the demo notebook, with a browser in front of it.</summary>
public sealed class Studio : IAsyncLifetime
{
    private readonly Browser _browser = new();
    private readonly string _folder = Directory.CreateTempSubdirectory("surefoot-studio-").FullName;
    private Process? _program;

    public string Address { get; private set; } = "";

    public HttpClient Http { get; } = new();

    public async ValueTask InitializeAsync()
    {
        // Built beside the tests, in the same configuration.
        var program = Path.Combine(AppContext.BaseDirectory.Replace(Path.Combine("tests", "Surefoot.Tests"), Path.Combine("src", "Surefoot.Web")), "Surefoot.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program]) { WorkingDirectory = Root.Folder, UseShellExecute = false, RedirectStandardOutput = true };
        start.Environment["SUREFOOT_PORT"] = "0";
        start.Environment["SUREFOOT_LIBRARY"] = Path.Combine(_folder, "library.db");
        _program = Process.Start(start)!;
        var before = _program.StandardOutput;
        while (await before.ReadLineAsync() is { } line)
        {
            if (line.IndexOf("http://", StringComparison.Ordinal) is var at and >= 0)
            {
                Address = line[at..].Trim();
                break;
            }
        }

        Assert.StartsWith("http://127.0.0.1:", Address);
        await _browser.InitializeAsync();
    }

    /// <summary>A page, once it can be used. Anything the browser complains about, and any request to elsewhere, is kept in <see cref="Opened.Faults"/>.</summary>
    internal async Task<Opened> OpenAsync(string path, int width = 1280, int height = 800, string look = "light", bool lessMotion = false)
    {
        var page = await _browser.PageAsync(new()
        {
            ViewportSize = new() { Width = width, Height = height },
            ReducedMotion = lessMotion ? ReducedMotion.Reduce : ReducedMotion.NoPreference,
            ColorScheme = ColorScheme.Light,
        });
        var opened = new Opened(page);
        page.Console += (_, said) =>
        {
            if (said.Type is "error" or "warning") opened.Faults.Add(said.Text);
        };
        page.PageError += (_, fault) => opened.Faults.Add(fault);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(Address, StringComparison.Ordinal) && !request.Url.StartsWith("data:image/", StringComparison.Ordinal)) opened.Faults.Add("asked for " + request.Url);
        };
        await page.GotoAsync(Address + path);
        if (look != "light") await page.SelectOptionAsync("[data-look-chooser]", look);
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        return opened;
    }

    internal Task<IPage> BlankAsync() => _browser.PageAsync();

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        Http.Dispose();
        if (_program is null) return;
        _program.Kill();
        await _program.WaitForExitAsync();
        _program.Dispose();
        Directory.Delete(_folder, recursive: true);
    }
}

/// <summary>An open page of the studio.</summary>
internal sealed record Opened(IPage Page) : IAsyncDisposable
{
    public List<string> Faults { get; } = [];

    public ILocator Count => Page.Locator(".floor-player .count");

    public ILocator Line(string words) => Page.Locator(".cm-line", new() { HasText = words }).First;

    public Task<string> TextAsync() => Page.EvaluateAsync<string>("() => [...document.querySelectorAll('.cm-line')].map(l => l.textContent).join('\\n')");

    /// <summary>Writes a whole new page over the old one, as pasting does.</summary>
    public async Task WriteAsync(string text)
    {
        await Page.Locator(".cm-content").FocusAsync();
        await Page.Keyboard.PressAsync("Control+a");
        await Page.EvaluateAsync("""
            text => {
              const held = new DataTransfer();
              held.setData("text/plain", text);
              document.querySelector(".cm-content").dispatchEvent(new ClipboardEvent("paste", { clipboardData: held, bubbles: true, cancelable: true }));
            }
            """, text);
    }

    public async ValueTask DisposeAsync() => await Page.CloseAsync();
}
