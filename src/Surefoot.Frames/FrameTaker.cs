using System.Text.Json;
using PuppeteerSharp;

namespace Surefoot.Frames;

/// <summary>
/// Takes pictures of a dance with the studio's own viewer, in a browser without a window. It takes a motion file
/// (docs/motion.md) and knows of nothing else. Nothing is asked of any network.
/// </summary>
public sealed class FrameTaker : IAsyncDisposable
{
    private readonly IBrowser _browser;
    private readonly IPage _page;

    private FrameTaker(IBrowser browser, IPage page) => (_browser, _page) = (browser, page);

    /// <param name="browser">The Chromium program.</param>
    /// <param name="motion">The text of a motion file.</param>
    /// <exception cref="NoPictureException">The browser cannot be started, or draws no spaces.</exception>
    public static async Task<FrameTaker> BeginAsync(string browser, string motion, FrameView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        IBrowser? started = null;
        try
        {
            started = await Puppeteer.LaunchAsync(new()
            {
                ExecutablePath = browser,
                Headless = true,
                // No graphics card is needed; as root, in a container say, Chromium only starts without its sandbox, and it shows nothing but our own page.
                Args = ["--no-sandbox", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--no-first-run", "--hide-scrollbars"],
                DefaultViewport = new() { Width = view.Width, Height = view.Height, DeviceScaleFactor = 1 },
            }).ConfigureAwait(false);
            var page = await started.NewPageAsync().ConfigureAwait(false);
            await page.SetContentAsync(Blank).ConfigureAwait(false);
            await page.AddScriptTagAsync(new AddTagOptions { Content = Script() }).ConfigureAwait(false);
            var asked = JsonSerializer.Serialize(new { cameras = view.Cameras, focus = view.Role ?? "both", look = view.Look, traces = view.Traces });
            await page.EvaluateExpressionAsync($"show({motion}, {asked})").ConfigureAwait(false);
            return new(started, page);
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            if (started is not null) await started.DisposeAsync().ConfigureAwait(false);
            throw new NoPictureException($"The browser {browser} could not draw the dance.", fault);
        }
    }

    /// <summary>The picture at a count of the repeat, as a PNG file.</summary>
    /// <exception cref="NoPictureException">The browser ended.</exception>
    public async Task<byte[]> AtAsync(double count)
    {
        try
        {
            var address = await _page.EvaluateExpressionAsync<string>(FormattableString.Invariant($"at({count:R})")).ConfigureAwait(false);
            return Convert.FromBase64String(address[(address.IndexOf(',', StringComparison.Ordinal) + 1)..]);
        }
        catch (Exception fault) when (fault is PuppeteerException or ObjectDisposedException or TimeoutException or IOException)
        {
            throw new NoPictureException("The browser ended before the last picture.", fault);
        }
    }

    public ValueTask DisposeAsync() => _browser.DisposeAsync();

    // The picture alone: no buttons, no words under it.
    private const string Blank = """
        <!doctype html><html lang="en"><meta charset="utf-8"><title>Frames</title><style>
        html, body { margin: 0; height: 100%; overflow: hidden; }
        body > div, .viewer-picture, canvas { position: absolute; inset: 0; width: 100%; height: 100%; display: block; }
        .viewer > :not(.viewer-picture) { display: none; }
        </style><body></body></html>
        """;

    private static string Script()
    {
        using var stream = typeof(FrameTaker).Assembly.GetManifestResourceStream("frames.js")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
