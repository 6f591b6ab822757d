using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Captions and address are given, told of, kept, found again and taken away.</summary>
public class FilmsKept(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task A_caption_file_is_read_kept_and_found_again()
    {
        var dance = await Films.DanceAsync(studio);
        await using var opened = await studio.OpenAsync($"/dance/{dance}/film");
        var page = opened.Page;
        await Expect(page.Locator("h1")).ToHaveTextAsync("Nine Buckets Cha-Cha, on film");
        await page.GetByLabel("The caption file").SetInputFilesAsync(new FilePayload { Name = "buckets.srt", MimeType = "text/plain", Buffer = Encoding.UTF8.GetBytes(Films.Captions) });
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the captions" }).ClickAsync();
        await Expect(page.Locator(".note")).ToHaveTextAsync("20 captions were read.");
        await Expect(page.Locator(".film-said li")).ToHaveCountAsync(4);
        await Films.ChooseAsync(page);

        await page.GotoAsync($"{studio.Address}/dance/{dance}/film");
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        await Expect(page.Locator(".film-said li")).ToHaveCountAsync(4);
        // The film itself is not kept; what it was called is known on this device.
        await Expect(page.Locator("#film-stays")).ToContainTextAsync("The last time it was “run-through.wav”.");
        Assert.Empty(opened.Faults);
        Assert.Equal(Films.Captions, await studio.Http.GetStringAsync($"{studio.Address}/film/{dance}/as-they-came"));
    }

    [Fact]
    public async Task What_is_wrong_in_captions_is_told_with_its_line_and_the_rest_is_used()
    {
        var dance = await Films.DanceAsync(studio);
        await using var opened = await studio.OpenAsync($"/dance/{dance}/film");
        var page = opened.Page;
        await page.GetByText("Or paste their text").ClickAsync();
        // The arrow of the second caption has lost a dash; its times stand in line 6.
        await page.GetByLabel("The captions’ text").FillAsync(Films.Captions.Replace("00:00:05,000 -->", "00:00:05,000 ->", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Button, new() { Name = "Read this text" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("19 captions were read.");
        await page.GetByRole(AriaRole.Link, new() { Name = "One thing" }).ClickAsync();
        await Expect(page.Locator("#troubles-name")).ToBeInViewportAsync();
        await Expect(page.Locator(".film-troubles li").First).ToContainTextAsync("Line 5");
        await Expect(page.Locator(".film-troubles li").First).ToContainTextAsync("nobody knows when it was said");
        await Expect(page.Locator(".film-chapters")).ToContainTextAsync("Part B: Out and across");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task What_holds_no_captions_takes_nobodys_place_and_is_still_in_its_box()
    {
        var dance = await Films.DanceAsync(studio, Films.Captions);
        await using var opened = await studio.OpenAsync($"/dance/{dance}/film");
        var page = opened.Page;
        await page.GetByText("Captions and film").ClickAsync();
        await page.GetByText("Mend them, or paste others").ClickAsync();
        await page.GetByLabel("The captions’ text").FillAsync("rock forward <b>left</b>, recover");
        await page.GetByRole(AriaRole.Button, new() { Name = "Read this text" }).ClickAsync();
        await Expect(page.Locator(".note.bad")).ToContainTextAsync("What you pasted holds no captions with times. Line 1:");
        await Expect(page.GetByLabel("The captions’ text")).ToHaveValueAsync("rock forward <b>left</b>, recover");
        await Expect(page.Locator(".film-said li")).ToHaveCountAsync(4);
        using var forms = new Forms(studio);
        var said = await forms.SendAsync($"/film/{dance}/captions", $"/dance/{dance}/film", new() { { new ByteArrayContent([0xFF, 0xD8, 0xFF, 0xE0, 0, 0]), "captions", "picture.jpg" } });
        Assert.Contains("“picture.jpg” was not read:", said);
        Assert.Contains("Nothing was changed.", said);
        Assert.Contains("Said otherwise than written", said);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_film_at_an_address_plays_and_what_cannot_play_is_told()
    {
        var dance = await Films.DanceAsync(studio, Films.Captions);
        await using var opened = await studio.OpenAsync($"/dance/{dance}/film");
        var page = opened.Page;
        await page.RouteAsync("https://films.example/run.wav", route => route.FulfillAsync(new() { ContentType = "audio/wav", BodyBytes = Films.Sound }));
        await page.RouteAsync("https://films.example/watch*", route => route.FulfillAsync(new() { ContentType = "text/html", Body = "<h1>A site</h1>" }));
        await KeepAsync("https://films.example/run.wav");
        await page.WaitForSelectorAsync(".film-place[data-playing]");
        await page.Locator(".film-said a.time").First.ClickAsync();
        await page.WaitForFunctionAsync("() => document.querySelector('video').currentTime > 0");
        // Without a script a time leads into the film's own file.
        Assert.Equal("https://films.example/run.wav#t=8.2", await page.Locator(".film-said a.time").First.GetAttributeAsync("href"));

        await KeepAsync("https://films.example/watch?v=1");
        await Expect(page.Locator("[data-part=film-says]")).ToContainTextAsync("What is at this address cannot be played here.");
        // A film on the device takes its place.
        await Films.ChooseAsync(page);
        await Expect(page.Locator("[data-part=film-says]")).ToBeEmptyAsync();

        await KeepAsync("http://films.example/run.wav");
        await Expect(page.Locator(".note.bad")).ToContainTextAsync("begins with https://");
        await Expect(page.GetByLabel("The address of the film’s file")).ToHaveValueAsync("http://films.example/run.wav");

        async Task KeepAsync(string address)
        {
            if (!await page.GetByLabel("The address of the film’s file").IsVisibleAsync()) await page.GetByText("Captions and film").ClickAsync();
            await page.GetByLabel("The address of the film’s file").FillAsync(address);
            await page.GetByRole(AriaRole.Button, new() { Name = "Keep the address" }).ClickAsync();
            await page.WaitForSelectorAsync("html[data-ready]", new() { State = WaitForSelectorState.Attached });
        }
    }

    [Fact]
    public async Task A_film_of_the_details_need_not_be_typed_again()
    {
        var dance = await Films.DanceAsync(studio, Films.Captions);
        using (var library = await studio.LookAsync())
        {
            await library.Details.AddFilmAsync(dance, "https://films.example/run.wav", "From the side & <b>");
            await library.Details.AddFilmAsync(dance, "http://films.example/open.mp4", "Open");
        }

        await using var opened = await studio.OpenAsync($"/dance/{dance}/film");
        var page = opened.Page;
        await page.RouteAsync("https://films.example/run.wav", route => route.FulfillAsync(new() { ContentType = "audio/wav", BodyBytes = Films.Sound }));
        await page.GetByText("Captions and film").ClickAsync();
        var take = page.GetByRole(AriaRole.Button, new() { Name = "from its details" });
        await Expect(take).ToHaveTextAsync(["Take “From the side & <b>” from its details"]);
        await take.ClickAsync();
        await page.WaitForSelectorAsync(".film-place[data-playing]");
        await Expect(take).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task Only_this_room_may_play_and_only_from_where_it_was_told()
    {
        var own = await Films.DanceAsync(studio, Films.Captions);
        var web = await Films.DanceAsync(studio, Films.Captions, "https://films.example/run.wav");
        Assert.EndsWith("; media-src 'self' blob:", await PolicyAsync($"/dance/{own}/film"));
        Assert.EndsWith("; media-src 'self' blob: https:", await PolicyAsync($"/dance/{web}/film"));
        foreach (var path in (string[])["/", $"/dance/{web}", $"/dance/{web}/watch", $"/details/{web}"]) Assert.DoesNotContain("media-src", await PolicyAsync(path));
        foreach (var path in (string[])["counts.vtt", "chapters.vtt", "times.txt", "as-they-came"]) Assert.Equal("default-src 'none'; sandbox", await PolicyAsync($"/film/{own}/{path}"));

        async Task<string> PolicyAsync(string path)
        {
            using var answer = await studio.Http.GetAsync(studio.Address + path);
            Assert.True(answer.IsSuccessStatusCode, path);
            return Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        }
    }

    [Fact]
    public async Task A_film_is_taken_away_and_brought_back()
    {
        var dance = await Films.DanceAsync(studio, Films.Captions);
        await using var opened = await studio.OpenAsync($"/dance/{dance}/film");
        var page = opened.Page;
        await page.GetByText("Captions and film").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take the film away" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("are taken away");
        await Expect(page.Locator(".film-said")).ToHaveCountAsync(0);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("The film is back.");
        await Expect(page.Locator(".film-said li")).ToHaveCountAsync(4);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_list_of_times_is_copied_and_files_are_handed_over()
    {
        var dance = await Films.DanceAsync(studio, Films.Captions);
        await using var opened = await studio.OpenAsync($"/dance/{dance}/film");
        var page = opened.Page;
        await page.Context.GrantPermissionsAsync(["clipboard-read", "clipboard-write"]);
        await page.GetByRole(AriaRole.Button, new() { Name = "Copy" }).ClickAsync();
        await Expect(page.Locator("[data-part=heard]")).ToHaveTextAsync("Copied");
        var times = await studio.Http.GetStringAsync($"{studio.Address}/film/{dance}/times.txt");
        Assert.StartsWith("0:00 Welcome\n0:05 Part A: Rocks and triples, from the back\n0:18 Part B", times);
        Assert.Equal(times, (await page.EvaluateAsync<string>("() => navigator.clipboard.readText()")).ReplaceLineEndings("\n"));
        foreach (var (name, file) in new[] { ("Chapters", "nine-buckets-cha-cha-chapters.vtt"), ("Counts and calls", "nine-buckets-cha-cha-counts.vtt") })
        {
            var handed = await page.RunAndWaitForDownloadAsync(() => page.Locator(".film-takings").GetByRole(AriaRole.Link, new() { Name = name }).ClickAsync());
            Assert.Equal(file, handed.SuggestedFilename);
            // The reader of captions knows the grammar of WebVTT and finds nothing to say.
            Assert.Empty(Surefoot.Film.Captions.CaptionReader.Read(await File.ReadAllTextAsync(await handed.PathAsync(), TestContext.Current.CancellationToken)).Troubles);
        }

        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Without_script_it_is_the_same_text_and_its_forms_do_the_same()
    {
        var dance = await Films.DanceAsync(studio);
        await using var opened = await studio.OpenAsync("/terms");
        await using var plain = await opened.Page.Context.Browser!.NewContextAsync(new() { JavaScriptEnabled = false });
        var page = await plain.NewPageAsync();
        await page.GotoAsync($"{studio.Address}/dance/{dance}/film");
        await page.GetByLabel("The caption file").SetInputFilesAsync(new FilePayload { Name = "buckets.srt", MimeType = "text/plain", Buffer = Encoding.UTF8.GetBytes(Films.Captions) });
        await page.GetByRole(AriaRole.Button, new() { Name = "Read the captions" }).ClickAsync();
        await Expect(page.Locator(".note")).ToHaveTextAsync("20 captions were read.");
        await Expect(page.Locator("noscript p")).ToBeVisibleAsync();
        await Expect(page.Locator("[data-part=film-file]")).ToBeHiddenAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Copy" })).ToBeHiddenAsync();
        await Expect(page.Locator(".film-said li").First).ToContainTextAsync("0:08");
        // A time leads to this page and not away from it.
        await page.Locator(".film-said a.time").First.ClickAsync();
        Assert.EndsWith($"/dance/{dance}/film#t=8.2", page.Url);
        await Expect(page.Locator("h1")).ToHaveTextAsync("Nine Buckets Cha-Cha, on film");
        await page.Locator(".film-said a[data-line]").First.ClickAsync();
        await Expect(page.Locator("#line-15")).ToBeInViewportAsync();
    }

    [Fact]
    public async Task Without_a_film_or_a_step_there_is_nothing_to_hand_over_and_the_room_says_what_is_missing()
    {
        var empty = await studio.AddAsync("Nothing Yet\nKind: line\n");
        Assert.Contains("There are no steps on the page yet.", await studio.Http.GetStringAsync($"{studio.Address}/dance/{empty}/film"));
        foreach (var path in (string[])["counts.vtt", "chapters.vtt", "times.txt", "as-they-came"])
        {
            Assert.Equal(System.Net.HttpStatusCode.NotFound, (await studio.Http.GetAsync($"{studio.Address}/film/{empty}/{path}")).StatusCode);
        }

        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await studio.Http.GetAsync($"{studio.Address}/dance/999999/film")).StatusCode);
    }

    /// <summary>KeptForEverybody looks at the room in all sizes and lights; this is with the film there and everything unfolded.</summary>
    [Theory]
    [InlineData("light", 1280, 800)]
    [InlineData("dark", 1024, 768)]
    [InlineData("dim", 1024, 768)]
    [InlineData("dim", 390, 844)]
    public async Task It_is_legible_to_everybody_with_everything_unfolded(string look, int width, int height)
    {
        var dance = await Films.DanceAsync(studio, Films.Captions.Replace("00:00:05,000 -->", "00:00:05,000 ->", StringComparison.Ordinal));
        await using var opened = await studio.OpenAsync($"/dance/{dance}/film", width, height, look);
        var page = opened.Page;
        await page.EvaluateAsync("() => document.querySelectorAll('main details').forEach(folded => (folded.open = true))");
        await Films.ChooseAsync(page);
        await Films.ToAsync(page, 50);
        await Expect(page.Locator(".film-page li[aria-current=true]")).ToHaveCountAsync(2);
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html} {v.Nodes.FirstOrDefault()?.Any.FirstOrDefault()?.Message}"));
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"));
        Assert.Empty(opened.Faults);
    }
}
