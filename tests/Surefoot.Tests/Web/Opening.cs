using Surefoot.Tests.Support;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Pages open, say what the notebook holds, and keep to themselves.</summary>
public class Opening(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task Whoever_comes_while_the_studio_is_getting_ready_is_answered_too()
    {
        var early = new Studio();
        for (var time = 0; time < 3; time++)
        {
            await early.StartAsync();
            foreach (var answer in await Task.WhenAll(new[] { "/", "/?q=kettle", "/bin", "/" }.Select(path => early.Http.GetAsync(early.Address + path))))
            {
                // What went wrong is written a little later than it is answered.
                if (!answer.IsSuccessStatusCode) await Task.Delay(2000);
                Assert.True(answer.IsSuccessStatusCode, $"{answer.RequestMessage?.RequestUri}: {answer.StatusCode}. The studio said: {early.Said}");
                Assert.Contains("</main>", await answer.Content.ReadAsStringAsync());
            }

            await early.KillAsync();
        }

        await early.DisposeAsync();
    }

    [Fact]
    public async Task The_notebook_lists_every_dance_and_leads_to_it()
    {
        await using var opened = await studio.OpenAsync("/");
        Assert.Equal(DemoNotebook.Dances.Count, await opened.Page.Locator(".dance .called > a").CountAsync());
        await opened.Page.GetByText("Split Rail Cha-Cha").ClickAsync();
        await opened.Page.WaitForSelectorAsync("html[data-ready] .cm-content");
        Assert.Equal("Split Rail Cha-Cha", await opened.Page.Locator("h1").First.TextContentAsync());
        Assert.Contains("40 counts in four parts", await opened.Page.Locator(".facts").TextContentAsync());
        var sheet = opened.Page.FrameLocator(".sheet-frame");
        await Expect(sheet.Locator("body")).ToContainTextAsync("Along the rail");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_page_allows_nothing_written_into_it_and_nothing_from_elsewhere()
    {
        foreach (var path in (string[])["/", "/dance/split-rail-cha-cha", "/words.json"])
        {
            using var answer = await studio.Http.GetAsync(studio.Address + path);
            var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
            Assert.Contains("default-src 'none'", policy);
            Assert.Contains("script-src 'self';", policy);
            Assert.DoesNotContain("unsafe", policy);
            Assert.DoesNotContain("http", policy);
            Assert.DoesNotContain("*", policy);
        }
    }

    [Theory]
    [InlineData("Host", "notebook.example")]
    [InlineData("Origin", "https://notebook.example")]
    public async Task Who_was_led_here_from_elsewhere_gets_nothing(string header, string value)
    {
        using var asked = new HttpRequestMessage(HttpMethod.Post, studio.Address + "/live/0123456789?number=1") { Content = new StringContent("Lane") };
        asked.Headers.TryAddWithoutValidation(header, value);
        using var answer = await studio.Http.SendAsync(asked);
        Assert.Equal(System.Net.HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.Empty(await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Words_of_a_page_never_become_markup()
    {
        await using var opened = await studio.OpenAsync("/dance/nine-buckets-cha-cha");
        const string evil = "<img src=x onerror=\"document.title='gone'\">";
        await opened.WriteAsync($"{evil}\nKind: line, 1 wall\n\nPart A {evil}\n1-2 Step {evil}\n3-4 Walk forward L, R\n\nFigure: {evil} (1 count)\nMeans: {evil}\n1 Step forward\n");
        await Expect(opened.Page.Locator("h1").First).ToHaveTextAsync(evil);
        await opened.Page.WaitForTimeoutAsync(700);
        Assert.Equal(1, await opened.Page.Locator("img").CountAsync()); // our own mark
        Assert.DoesNotContain("gone", await opened.Page.TitleAsync());
        Assert.Equal(0, await opened.Page.FrameLocator(".sheet-frame").Locator("img").CountAsync());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task The_studio_listens_to_this_machine_alone()
    {
        // Every address this machine has besides its own name for itself.
        var port = new Uri(studio.Address).Port;
        foreach (var address in (await System.Net.Dns.GetHostAddressesAsync(System.Net.Dns.GetHostName())).Where(a => !System.Net.IPAddress.IsLoopback(a)))
        {
            using var caller = new System.Net.Sockets.TcpClient(address.AddressFamily);
            await Assert.ThrowsAnyAsync<System.Net.Sockets.SocketException>(() => caller.ConnectAsync(address, port));
        }
    }

    [Theory]
    [InlineData("/dance/no-such-dance")]
    [InlineData("/dance/..%2F..%2FREADME")]
    [InlineData("/nowhere")]
    public async Task What_is_not_there_is_said_in_words(string path)
    {
        using var answer = await studio.Http.GetAsync(studio.Address + path);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("There is no such page", await answer.Content.ReadAsStringAsync());
    }
}
