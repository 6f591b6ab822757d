using System.Collections.Concurrent;
using System.Diagnostics;
using Microsoft.Playwright;
using Surefoot.Library;
using Surefoot.Library.Sqlite;
using Surefoot.Tests.Support;

namespace Surefoot.Tests.Web;

/// <summary>The studio as people start it, on a free port on a library of its own that begins with the demo notebook, with a browser in front of it.</summary>
public sealed class Studio : IAsyncLifetime
{
    private readonly Browser _browser = new();
    private readonly string _folder = Directory.CreateTempSubdirectory("surefoot-studio-").FullName;
    private Process? _program;
    private int _port;

    public string Address { get; private set; } = "";

    /// <summary>Where the studio's library lies.</summary>
    public string Library
    {
        get => field ?? Path.Combine(_folder, "library.db");
        init;
    }

    public HttpClient Http { get; } = new();

    /// <summary>What the program wrote since it was started: nothing, as long as nothing goes wrong in it.</summary>
    internal string Said => string.Join('\n', _said);

    private readonly ConcurrentQueue<string> _said = new();

    public async ValueTask InitializeAsync()
    {
        await StartAsync();
        await _browser.InitializeAsync();
    }

    /// <summary>Starts the program; again on the same port when it ran before, so that open pages find it.</summary>
    internal async Task StartAsync()
    {
        // Built beside the tests, in the same configuration.
        var program = Path.Combine(AppContext.BaseDirectory.Replace(Path.Combine("tests", "Surefoot.Tests"), Path.Combine("src", "Surefoot.Web")), "Surefoot.Web.dll");
        var start = new ProcessStartInfo("dotnet", [program]) { WorkingDirectory = Root.Folder, UseShellExecute = false, RedirectStandardOutput = true };
        start.Environment["SUREFOOT_PORT"] = $"{_port}";
        start.Environment["SUREFOOT_LIBRARY"] = Library;
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
        _ = Task.Run(async () =>
        {
            while (await before.ReadLineAsync() is { } line) _said.Enqueue(line);
        });
        _port = new Uri(Address).Port;
    }

    /// <summary>Kills the program as the power would: it is told nothing.</summary>
    internal async Task KillAsync()
    {
        _program!.Kill();
        await _program.WaitForExitAsync();
        _program.Dispose();
        _program = null;
    }

    /// <summary>The studio's library, opened beside it.</summary>
    internal Task<DanceLibrary> LookAsync() => DanceLibrary.OpenAsync(new SqliteStore(Library));

    /// <summary>A dance of a test's own; its number.</summary>
    internal async Task<long> AddAsync(string text)
    {
        using var library = await LookAsync();
        var (page, refusal) = await library.Pages.AddAsync((await library.Notebooks.AllAsync())[0].Id, text);
        Assert.Null(refusal);
        return page!.Id;
    }

    /// <summary>A page in a browser of its own, once it can be used. Anything the browser complains about, and any request to elsewhere (a blob never leaves the browser), is kept in <see cref="Opened.Faults"/>.</summary>
    internal async Task<Opened> OpenAsync(string path, int width = 1280, int height = 800, string look = "light", bool lessMotion = false)
    {
        await AsKeptAsync(path);
        return await GoAsync(
            await _browser.FirstTabAsync(new()
            {
                ViewportSize = new() { Width = width, Height = height },
                ReducedMotion = lessMotion ? ReducedMotion.Reduce : ReducedMotion.NoPreference,
                ColorScheme = ColorScheme.Light,
            }),
            path,
            look);
    }

    /// <summary>A copy of a demo dance that no other test writes on: a tab that was just closed may still leave its draft a moment later.</summary>
    internal async Task<Opened> OpenCopyAsync(string name, int width = 1280, int height = 800) =>
        await OpenAsync($"/dance/{await AddAsync(await File.ReadAllTextAsync(Root.Pages("demo", "dances").Single(p => Path.GetFileNameWithoutExtension(p) == name)))}", width, height);

    // Tests that only look at the demo's dances name them; what one left there is not the next one's.
    private async Task AsKeptAsync(string path)
    {
        if (!path.StartsWith("/dance/", StringComparison.Ordinal) || path.Split('?')[0].Split('/')[2] is not [not (>= '0' and <= '9'), ..] name) return;
        using var library = await LookAsync();
        var dance = (await library.Catalogue.ListAsync(new())).Dances.Single(d => d.Name.EndsWith("/" + name, StringComparison.Ordinal));
        foreach (var draft in await library.Drafts.OfAsync(dance.Page)) await library.Drafts.ForgetAsync(dance.Page, draft.Session);
    }

    /// <summary>The same in a new tab of a browser that is open.</summary>
    internal async Task<Opened> TabAsync(Opened beside, string path) => await GoAsync(await beside.Page.Context.NewPageAsync(), path, "light");

    private async Task<Opened> GoAsync(IPage page, string path, string look)
    {
        var opened = new Opened(page);
        page.Console += (_, said) =>
        {
            // Without a graphics card the driver remarks on its own speed, and nothing is wrong.
            if (said.Type is "error" or "warning" && !said.Text.Contains("GL Driver Message (OpenGL, Performance", StringComparison.Ordinal)) opened.Faults.Add(said.Text);
        };
        page.PageError += (_, fault) => opened.Faults.Add(fault);
        page.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(Address, StringComparison.Ordinal) && !request.Url.StartsWith("data:image/", StringComparison.Ordinal) && !request.Url.StartsWith("blob:" + Address, StringComparison.Ordinal)) opened.Faults.Add("asked for " + request.Url);
        };
        try
        {
            await page.GotoAsync(Address + path);
        }
        catch (PlaywrightException fault) when (!_said.IsEmpty)
        {
            throw new InvalidOperationException($"{path} did not open. The studio said: {Said}", fault);
        }

        if (look != "light") await page.SelectOptionAsync("[data-look-chooser]", look);
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        return opened;
    }

    internal Task<IPage> BlankAsync() => _browser.PageAsync();

    public async ValueTask DisposeAsync()
    {
        await _browser.DisposeAsync();
        Http.Dispose();
        if (_program is not null) await KillAsync();
        await TestFolder.RemoveAsync(_folder);
    }
}

/// <summary>An open page of the studio.</summary>
internal sealed record Opened(IPage Page) : IAsyncDisposable
{
    public List<string> Faults { get; } = [];

    public ILocator Count => Page.Locator(".floor-player .count");

    public ILocator Line(string words) => Page.Locator(".cm-line", new() { HasText = words }).First;

    /// <summary>How it stands with what is in the window.</summary>
    public ILocator Standing => Page.Locator(".standing");

    public ILocator Notice(string kind) => Page.Locator($".notice[data-kind={kind}]");

    /// <summary>Writes at the very end of the page.</summary>
    public async Task WriteOnAsync(string words)
    {
        await Page.Locator(".cm-content").FocusAsync();
        await Page.Keyboard.PressAsync("Control+End");
        await Page.Keyboard.TypeAsync(words);
    }

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

    public async ValueTask DisposeAsync()
    {
        await Page.CloseAsync();
        // The last tab closes its browser.
        if (Page.Context.Pages.Count == 0) await Page.Context.CloseAsync();
    }
}
