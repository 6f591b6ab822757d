using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>A film beside its page: what has a time leads the film there, and the film marks what it shows.</summary>
public class FilmRooms(Studio studio) : IClassFixture<Studio>
{
    // Where it is said in the captions, in seconds; a caption's words are spread over its time.
    private const double PartB = 18, TripleForward = 8.2, OnTheRoad = 48.222 + (24 * 60 / 108.0);

    /// <summary>The demo's dance with the captions of a film.</summary>
    internal static async Task WithCaptionsAsync(Studio studio)
    {
        using var library = await studio.LookAsync();
        var dance = (await library.Catalogue.ListAsync(new())).Dances.First(d => d.Name.EndsWith("nine-buckets-cha-cha", StringComparison.Ordinal));
        Assert.Null(await library.Films.KeepCaptionsAsync(dance.Page, "buckets-run.srt", Films.Captions));
    }

    [Fact]
    public async Task A_part_a_chapter_a_line_and_a_difference_take_the_film_there()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await Films.ChooseAsync(page);
        await GoesToAsync(page.Locator(".film-page li.part", new() { HasText = "Part B" }).GetByRole(AriaRole.Link).First, PartB);
        await GoesToAsync(page.Locator(".film-chapters .row", new() { HasText = "Part D" }).Locator("a"), OnTheRoad, 0.3);
        await GoesToAsync(page.Locator(".film-page li", new() { HasText = "Triple back L R L" }).GetByRole(AriaRole.Link).First, TripleForward);
        await GoesToAsync(page.Locator(".film-said li", new() { HasText = "Part D, but what you show is Part C" }).Locator("a.time"), 32);
        // A press anywhere on a line or a difference does the same.
        await GoesToAsync(page.Locator(".film-said li", new() { HasText = "The page has back." }).Locator("p").First, TripleForward, beside: true);
        await GoesToAsync(page.Locator(".film-page li.part", new() { HasText = "Part B" }).Locator(".words"), PartB, beside: true);
        // What a line is shown for the second time has a time of its own.
        await GoesToAsync(page.Locator(".film-page li", new() { HasText = "Triple back L R L" }).GetByRole(AriaRole.Link).Nth(1), 48.222 + (2 * 60 / 108.0), 0.3);
        Assert.Empty(opened.Faults);

        async Task GoesToAsync(ILocator link, double seconds, double near = 0.05, bool beside = false)
        {
            await Films.ToAsync(page, 1);
            // What lies over the words is the link itself; the film stays above, so they are brought to where it is not.
            if (beside) await link.EvaluateAsync("e => e.scrollIntoView({ block: 'end' })");
            await link.ClickAsync(new() { Force = beside });
            // It plays on from there.
            await page.WaitForFunctionAsync("() => !document.querySelector('video').paused");
            Assert.InRange(await Films.AtAsync(page), seconds - near, seconds + 4);
        }
    }

    [Fact]
    public async Task The_part_and_the_line_that_are_shown_are_marked_and_the_mark_goes_along()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await Films.ChooseAsync(page);
        var lines = page.Locator(".film-page li[aria-current=true] .words");
        var chapter = page.Locator(".film-chapters [data-chapter][aria-current=true] > .row .called");
        await Films.ToAsync(page, 9);
        await Expect(lines).ToHaveTextAsync(["Part A  Rocks and triples  (8 counts)", "3&4    Triple back L R L"]);
        await Expect(chapter).ToHaveTextAsync(["Part A: Rocks and triples, from the back"]);
        await Expect(page.Locator("[data-part=film-now]")).ToHaveTextAsync("Part A: Rocks and triples, from the back · 3&4 Triple back L R L");
        // In the run each count has its moment; of a chapter and the chapter in it the smaller one is marked.
        await Films.ToAsync(page, 48.222 + (8.5 * 60 / 108.0));
        await Expect(lines).ToHaveTextAsync(["Part B  Out and across  (8 counts)", "1-2    Rock side L, recover R"]);
        await Expect(chapter).ToHaveTextAsync(["Part B: Out and across"]);
        await page.EvaluateAsync("() => document.querySelector('video').play()");
        await Expect(lines).ToHaveTextAsync(["Part B  Out and across  (8 counts)", "3&4    Cross shuffle L R L"]);
        // On a tablet too the page goes along in its own box, and nothing else moves.
        await page.SetViewportSizeAsync(1024, 768);
        await page.EvaluateAsync("t => { const film = document.querySelector('video'); film.currentTime = t; return film.play(); }", OnTheRoad + (6.2 * 60 / 108.0));
        await Expect(page.Locator(".film-page li[aria-current=true]").Last).ToContainTextAsync("7&8");
        await Expect(page.Locator(".film-page li[aria-current=true]").Last).ToBeInViewportAsync(new() { Ratio = 0.9f });
        Assert.Equal(0, await page.EvaluateAsync<double>("() => scrollY"));
        // Where nothing is shown nothing is marked.
        await Films.ToAsync(page, 2);
        await Expect(lines).ToHaveCountAsync(0);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Counts_and_calls_stand_on_the_film_and_can_be_switched_off()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await Films.ChooseAsync(page);
        await Films.ToAsync(page, 48.222 + (1.5 * 60 / 108.0));
        await page.WaitForFunctionAsync("() => document.querySelector('video').textTracks[0].activeCues?.length === 1");
        Assert.Equal("showing 1-2  rock forward, recover", await page.EvaluateAsync<string>("() => { const track = document.querySelector('video').textTracks[0]; return track.mode + ' ' + track.activeCues[0].text; }"));
        await page.GetByLabel("Counts and calls on the film").UncheckAsync();
        Assert.Equal("hidden", await page.EvaluateAsync<string>("() => document.querySelector('video').textTracks[0].mode"));
        // The browser's own switch moves this one.
        await page.EvaluateAsync("() => (document.querySelector('video').textTracks[0].mode = 'showing')");
        await Expect(page.GetByLabel("Counts and calls on the film")).ToBeCheckedAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_film_never_leaves_the_device()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        var asked = new List<IRequest>();
        page.Request += (_, request) => asked.Add(request);
        await Films.ChooseAsync(page);
        await Films.ToAsync(page, 60);
        await page.EvaluateAsync("() => document.querySelector('video').play()");
        await page.WaitForFunctionAsync("() => document.querySelector('video').currentTime > 60.5");
        await Expect(page.Locator("#film-stays")).ToContainTextAsync("never leaves this device");
        Assert.NotEmpty(asked);
        Assert.All(asked, request => Assert.True(request.Url.StartsWith("blob:", StringComparison.Ordinal) || (request.Method == "GET" && request.PostDataBuffer is null), $"{request.Method} {request.Url}"));
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_time_that_is_pressed_before_the_film_was_chosen_is_gone_to_then()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await page.Locator(".film-said a.time").First.ClickAsync();
        await Expect(page.Locator("[data-part=film-says]")).ToHaveTextAsync("Choose the film first; it then goes there at once.");
        await Expect(page.Locator("[data-part=film-file]")).ToBeFocusedAsync();
        await Films.ChooseAsync(page);
        await page.WaitForFunctionAsync("() => Math.abs(document.querySelector('video').currentTime - 8.2) < 0.05");
        await Expect(page.Locator("[data-part=film-says]")).ToBeEmptyAsync();
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_keyboard_alone_does_it_all()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        await Films.ChooseAsync(page);
        await TabToAsync(page, ".film-said a.time");
        await page.Keyboard.PressAsync("Enter");
        await page.WaitForFunctionAsync("() => document.querySelector('video').currentTime >= 8.2");
        await TabToAsync(page, ".film-said a[data-line]");
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("line-15", await page.EvaluateAsync<string>("() => document.querySelector(':target').id"));
        await TabToAsync(page, ".otherwise a");
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("said-1", await page.EvaluateAsync<string>("() => document.querySelector(':target').id"));
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_film_with_pictures_plays_too_and_one_that_is_shorter_than_its_captions_is_told()
    {
        await using var opened = await OpenAsync();
        var page = opened.Page;
        // Half a second of a canvas, as the browser itself records it.
        await page.EvaluateAsync("""
            async () => {
              const canvas = Object.assign(document.createElement("canvas"), { width: 64, height: 36 }), paint = canvas.getContext("2d");
              const recorder = new MediaRecorder(canvas.captureStream(20), { mimeType: "video/webm" }), parts = [];
              recorder.ondataavailable = e => parts.push(e.data);
              recorder.start();
              for (let i = 0; i < 12; i++) { paint.fillStyle = i % 2 ? "#fff" : "#036"; paint.fillRect(0, 0, 64, 36); await new Promise(r => setTimeout(r, 50)); }
              await new Promise(done => { recorder.onstop = done; recorder.stop(); });
              const held = new DataTransfer();
              held.items.add(new File(parts, "short.webm", { type: "video/webm" }));
              const chooser = document.querySelector("[data-part=film-file]");
              chooser.files = held.files;
              chooser.dispatchEvent(new Event("change", { bubbles: true }));
            }
            """);
        await page.WaitForFunctionAsync("() => document.querySelector('video').videoWidth === 64");
        await page.SetInputFilesAsync("[data-part=film-file]", new FilePayload { Name = "short.wav", MimeType = "audio/wav", Buffer = Films.Shortened(20) });
        await Expect(page.Locator("[data-part=film-says]")).ToHaveTextAsync("This film ends at 0:20, its captions at 1:09. Do they belong together?");
        await page.SetInputFilesAsync("[data-part=film-file]", new FilePayload { Name = "notes.txt", MimeType = "text/plain", Buffer = "no film"u8.ToArray() });
        await Expect(page.Locator("[data-part=film-says]")).ToContainTextAsync("This browser cannot play that file.");
    }

    private async Task<Opened> OpenAsync() => await studio.OpenAsync($"/dance/{await Films.DanceAsync(studio, Films.Captions)}/film");

    private static async Task TabToAsync(IPage page, string selector)
    {
        for (var i = 0; i < 80; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<bool>("s => document.activeElement?.matches(s) ?? false", selector)) return;
        }

        Assert.Fail($"The keyboard does not reach {selector}.");
    }
}
