using System.IO.Compression;
using Microsoft.Playwright;
using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Pages come in and go out through the browser, and nothing comes in that should not.</summary>
public class InAndOut(Studio studio) : IClassFixture<Studio>
{
    private const string Lane = "Lane\nKind: line, 1 wall\nFeet: right free\n\nPart A (4 counts)\n1-4 Vine right, touch L together\n";

    private static byte[] Zip(params (string Name, byte[] Bytes)[] files)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create))
        {
            foreach (var (name, bytes) in files)
            {
                using var entry = zip.CreateEntry(name).Open();
                entry.Write(bytes);
            }
        }

        return stream.ToArray();
    }

    private static byte[] Text(string text) => System.Text.Encoding.UTF8.GetBytes(text);

    private static MultipartFormDataContent File(string field, byte[] bytes, string name) => new() { { new ByteArrayContent(bytes), field, name } };

    [Fact]
    public async Task What_is_taken_in_from_a_zip_goes_out_again_the_same()
    {
        (string Name, byte[] Bytes)[] pages = [("sunday/lane.dance", Text(Lane)), ("sunday/gate.dance", Text(Lane.Replace("Lane", "Gaté & <Post>"))), ("readme.txt", "no page"u8.ToArray())];
        await using var opened = await studio.OpenAsync("/bring");
        await opened.Page.Locator("input[name=zip]").SetInputFilesAsync(new FilePayload { Name = "sunday.zip", MimeType = "application/zip", Buffer = Zip(pages) });
        await opened.Page.Locator("form[action='/bring/zip'] button").ClickAsync();
        await Expect(opened.Page.Locator("h1")).ToHaveTextAsync("sunday.zip");
        await Expect(opened.Page.Locator(".sums")).ToContainTextAsync("2 taken in");
        await Expect(opened.Page.Locator(".sums")).ToContainTextAsync("1 other files, left alone");

        await opened.Page.GotoAsync(studio.Address + "/?q=gate+post");
        await Expect(opened.Page.Locator(".dance .called > a").First).ToHaveTextAsync("Gaté & <Post>");

        await opened.Page.GotoAsync(studio.Address + "/take");
        var download = await opened.Page.RunAndWaitForDownloadAsync(() => opened.Page.GetByText("The whole library").ClickAsync());
        Assert.Matches(@"^surefoot-library-\d{4}-\d\d-\d\d\.zip$", download.SuggestedFilename);
        await using var zip = await ZipFile.OpenReadAsync(await download.PathAsync());
        foreach (var (name, bytes) in pages[..2])
        {
            await using var entry = await zip.GetEntry("my-dances/" + name)!.OpenAsync();
            using var came = new MemoryStream();
            await entry.CopyToAsync(came);
            Assert.Equal(bytes, came.ToArray());
        }

        // The demo notebook came out as it went in, too.
        foreach (var (path, text) in Directory.EnumerateFiles(Root.At("demo", "dances"), "*.dance", SearchOption.AllDirectories).Select(p => (Path.GetRelativePath(Root.At("demo", "dances"), p).Replace('\\', '/'), System.IO.File.ReadAllText(p))))
        {
            using var reader = new StreamReader(zip.GetEntry("demo/" + path)!.Open());
            Assert.Equal(text, await reader.ReadToEndAsync());
        }

        // The same once more changes nothing.
        await opened.Page.GotoAsync(studio.Address + "/bring");
        await opened.Page.Locator("input[name=zip]").SetInputFilesAsync(await download.PathAsync());
        await opened.Page.Locator("form[action='/bring/zip'] button").ClickAsync();
        await Expect(opened.Page.Locator(".sums")).ToContainTextAsync("here already", new() { Timeout = 30000 });
        await Expect(opened.Page.Locator(".sums")).Not.ToContainTextAsync("taken in");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Files_and_pasted_text_come_in_with_a_report()
    {
        await using var opened = await studio.OpenAsync("/bring");
        await opened.Page.GetByLabel("or files").SetInputFilesAsync(
        [
            new FilePayload { Name = "mill.dance", MimeType = "text/plain", Buffer = Text(Lane.Replace("Lane", "Mill Walk")) },
            new FilePayload { Name = "broken.dance", MimeType = "text/plain", Buffer = [0x50, 0x00, 0xFF, 0xFE] },
        ]);
        await Expect(opened.Page.Locator(".chosen").Nth(1)).ToContainTextAsync("2 files");
        await opened.Page.Locator("form[action='/bring/folder'] button").ClickAsync();
        await Expect(opened.Page.Locator(".sums")).ToContainTextAsync("1 could not be read");
        await Expect(opened.Page.Locator(".became").First).ToContainTextAsync("broken.dance");
        await Expect(opened.Page.GetByRole(AriaRole.Link, new() { Name = "mill.dance" })).ToBeVisibleAsync();

        await opened.Page.GotoAsync(studio.Address + "/bring");
        await opened.Page.GetByLabel("The page").FillAsync(Lane.Replace("Lane", "Pasted Lane"));
        await opened.Page.Locator("form[action='/bring/text'] button").ClickAsync();
        await Expect(opened.Page.Locator(".sums")).ToContainTextAsync("1 taken in");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "Pasted Lane" }).ClickAsync();
        await opened.Page.WaitForSelectorAsync("html[data-ready] .cm-content");
        Assert.Equal(Lane.Replace("Lane", "Pasted Lane").TrimEnd(), (await opened.TextAsync()).TrimEnd());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_zip_that_means_harm_is_refused_in_words()
    {
        using var forms = new Forms(studio);
        var ways = await forms.SendAsync("/bring/zip", "/bring", File("zip", Zip(("../../out.dance", Text(Lane)), ("/etc/out.dance", Text(Lane)), ("c:/out.dance", Text(Lane)), ("well/<b>.dance", Text(Lane.Replace("Lane", "Well")))), "<i>ways</i>.zip"));
        Assert.Contains("its name leads out of the folder", ways);
        Assert.Contains("3</strong> could not be read", ways);
        Assert.Contains("1</strong> taken in", ways);

        // 300 MB of blanks in 300 kB.
        var bomb = Zip([.. Enumerable.Range(0, 300).Select(n => ($"{n}.dance", new byte[1_000_000]))]);
        Assert.Contains("unpacks to far more than dances ever do", await forms.SendAsync("/bring/zip", "/bring", File("zip", bomb, "bomb.zip")));
        Assert.Contains("not a zip", await forms.SendAsync("/bring/zip", "/bring", File("zip", Text("PK but no zip"), "no.zip")));
        // Names a browser would not send.
        var folder = new MultipartFormDataContent { { new ByteArrayContent(Text(Lane)), "files", "../../../../tmp/surefoot-got-out.dance" } };
        Assert.Contains("its name leads out of the folder", await forms.SendAsync("/bring/folder", "/bring", folder));
        Assert.False(System.IO.File.Exists("/tmp/surefoot-got-out.dance"));
    }

    [Fact]
    public async Task More_than_the_page_says_is_not_taken()
    {
        using var forms = new Forms(studio);
        Assert.Contains("up to 300 MB", (await forms.PageAsync("/bring")).ToLowerInvariant().Replace("up to 300 mb", "up to 300 MB"));
        var many = new MultipartFormDataContent();
        for (var n = 0; n < 5001; n++) many.Add(new ByteArrayContent([]), "files", $"{n}.dance");
        Assert.Contains("more than can be sent at once (up to 5000 files", await forms.SendAsync("/bring/folder", "/bring", many));
        var large = new MultipartFormDataContent { { new StringContent(new string('x', 5 << 20)), "text" } };
        Assert.Contains("more than can be sent at once", await forms.SendAsync("/bring/text", "/bring", large));
    }

    [Theory]
    [InlineData("/shelf/new")]
    [InlineData("/shelf/copy/2")]
    [InlineData("/shelf/bin/2")]
    [InlineData("/shelf/back/2")]
    [InlineData("/shelf/begin")]
    [InlineData("/bin/back/2")]
    [InlineData("/bin/gone/2")]
    [InlineData("/bin/empty")]
    [InlineData("/details/2/title")]
    [InlineData("/details/2/names/add")]
    [InlineData("/details/2/files/add")]
    [InlineData("/bring/text")]
    [InlineData("/bring/zip")]
    [InlineData("/bring/folder")]
    [InlineData("/paste/text")]
    [InlineData("/paste/file")]
    [InlineData("/paste/0123456789abcdef0123456789abcdef/again")]
    [InlineData("/paste/0123456789abcdef0123456789abcdef/keep")]
    [InlineData("/take/back")]
    [InlineData("/take/replace/0123")]
    [InlineData("/settings/new")]
    [InlineData("/settings/1")]
    public async Task Nothing_is_written_by_a_form_of_somebody_else(string path)
    {
        using var forms = new Forms(studio);
        var form = new MultipartFormDataContent { { new StringContent("Stranger"), "name" }, { new StringContent("Stranger"), "title" }, { new StringContent(Lane), "text" } };
        Assert.Contains("Nothing was done", await forms.SendAsync(path, "/", form, token: false));
        Assert.DoesNotContain("Stranger", await forms.PageAsync("/?q=stranger").ContinueWith(t => t.Result.Replace("value=\"stranger\"", "")));
    }

    [Fact]
    public async Task A_copy_is_brought_back_after_a_question_and_that_can_be_undone()
    {
        await using var opened = await studio.OpenAsync("/take");
        var copy = await opened.Page.RunAndWaitForDownloadAsync(() => opened.Page.GetByText("Make a copy").ClickAsync());
        Assert.EndsWith(".db", copy.SuggestedFilename);
        using var forms = new Forms(studio);
        await forms.SendAsync("/bring/text", "/bring", new MultipartFormDataContent { { new StringContent(Lane.Replace("Lane", "After The Copy")), "text" } });
        Assert.Contains("After The Copy", await forms.PageAsync("/?q=after+the+copy"));

        await opened.Page.Locator("input[name=copy]").SetInputFilesAsync(await copy.PathAsync());
        await opened.Page.GetByText("Bring it back …").ClickAsync();
        await Expect(opened.Page.Locator("h1")).ToContainTextAsync("Replace the whole library with");
        Assert.Contains(">After The Copy</a>", await forms.PageAsync("/?q=after+the+copy"));
        await opened.Page.GetByText("Replace everything").ClickAsync();
        await Expect(opened.Page.Locator(".note")).ToContainTextAsync("The library is what the copy held");
        Assert.DoesNotContain(">After The Copy</a>", await forms.PageAsync("/?q=after+the+copy"));

        // The way back is still there after a walk through other rooms.
        await Expect(opened.Page.GetByText("Bring back what was here before")).ToBeVisibleAsync();
        await opened.Page.GotoAsync(studio.Address + "/");
        await opened.Page.GotoAsync(studio.Address + "/take");
        await opened.Page.GetByText("Bring back what was here until").ClickAsync();
        await opened.Page.GetByText("Replace everything").ClickAsync();
        await Expect(opened.Page.Locator(".note")).ToContainTextAsync("The library is what the copy held");
        Assert.Contains(">After The Copy</a>", await forms.PageAsync("/?q=after+the+copy"));

        var no = await forms.SendAsync("/take/back", "/take", File("copy", Text("no library"), "no.db"));
        Assert.Contains("Replace the whole library with no.db?", no);
        Assert.Empty(opened.Faults);
    }
}
