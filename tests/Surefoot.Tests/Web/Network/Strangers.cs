using System.Net;
using System.Net.WebSockets;

namespace Surefoot.Tests.Web.Network;

/// <summary>Who is not signed in sees the door and nothing behind it.</summary>
public class Strangers(OpenStudio studio) : IClassFixture<OpenStudio>
{
    // What was sent to the door without a page's token leads back to its page, as everything else does.
    private static readonly string[] BeforeTheDoor = ["/sign-in", "/mark.svg", "/dist/studio.css", "/dist/look.js", "/dist/door.js"];

    [Fact]
    public async Task At_every_address_there_is_a_stranger_gets_the_door()
    {
        using var stranger = studio.Stranger();
        var routes = await studio.RoutesAsync();
        // That all of them are there: pages, what pages ask for, files, the line.
        Assert.Superset(new HashSet<string> { "/", "/dance/lantern-swing", "/settings", "/words.json", "/keep/1/draft", "/take/copy", "/dist/desk.js", "/_blazor", "/_blazor/negotiate", "/door/change" }, routes.Select(r => r.Path).ToHashSet());
        var open = new List<string>();
        foreach (var (methods, path) in routes)
        {
            foreach (var method in methods.Length == 0 ? ["GET", "POST"] : methods)
            {
                foreach (var window in (bool[])[true, false])
                {
                    using var asked = new HttpRequestMessage(new(method), path);
                    asked.Headers.Add("Accept", window ? "text/html" : "*/*");
                    if (method == "POST") asked.Content = new FormUrlEncodedContent([]);
                    if (method == "POST") asked.Headers.Add("Origin", studio.There);
                    using var answer = await stranger.Http.SendAsync(asked);
                    var led = answer.StatusCode == HttpStatusCode.Redirect && answer.Headers.Location!.OriginalString.Contains("/sign-in", StringComparison.Ordinal);
                    if (led || answer.StatusCode == HttpStatusCode.Unauthorized)
                    {
                        Assert.True((await answer.Content.ReadAsStringAsync()) is "" or "Please sign in.", path);
                        continue;
                    }

                    open.Add(path);
                }
            }
        }

        Assert.Equal(BeforeTheDoor.Order(), open.Distinct().Where(p => !p.EndsWith(".gz", StringComparison.Ordinal)).Order());
    }

    [Theory]
    [InlineData("/nowhere")]
    [InlineData("/dist/../appsettings.json")]
    [InlineData("/sign-in/..%2fdance/1")]
    [InlineData("/SETTINGS")]
    [InlineData("/keep/1")]
    public async Task What_is_not_there_looks_as_what_is(string path)
    {
        using var stranger = studio.Stranger();
        using var answer = await stranger.GoAsync(path);
        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        Assert.Contains("/sign-in", answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task The_line_of_an_open_page_is_refused()
    {
        using var stranger = studio.Stranger();
        using var negotiated = await stranger.Http.PostAsync("/_blazor/negotiate?negotiateVersion=1", null);
        Assert.Equal(HttpStatusCode.Unauthorized, negotiated.StatusCode);
        await Assert.ThrowsAsync<WebSocketException>(() => stranger.LineAsync(""));
    }

    [Theory]
    [InlineData("hall.example", HttpStatusCode.Forbidden)]
    [InlineData("localhost.example", HttpStatusCode.Forbidden)]
    [InlineData("203.0.113.9", HttpStatusCode.OK)]
    [InlineData("[2001:db8::9]", HttpStatusCode.OK)]
    [InlineData("localhost", HttpStatusCode.OK)]
    public async Task The_studio_answers_to_its_own_names_alone(string host, HttpStatusCode status)
    {
        using var stranger = studio.Stranger();
        using var asked = new HttpRequestMessage(HttpMethod.Get, "/sign-in") { Headers = { Host = $"{host}:{studio.Port}" } };
        using var answer = await stranger.Http.SendAsync(asked);
        Assert.Equal(status, answer.StatusCode);
    }

    [Fact]
    public async Task The_machines_own_line_answers_to_this_machine_alone()
    {
        using var near = studio.AtTheMachine();
        using var asked = new HttpRequestMessage(HttpMethod.Get, "/sign-in") { Headers = { Host = $"{OpenStudio.Outside}:{new Uri(studio.Here).Port}" } };
        using var answer = await near.Http.SendAsync(asked);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        using var caller = new System.Net.Sockets.TcpClient();
        await Assert.ThrowsAnyAsync<System.Net.Sockets.SocketException>(() => caller.ConnectAsync(OpenStudio.Outside, new Uri(studio.Here).Port));
    }

    [Fact]
    public async Task The_door_has_the_same_guards_as_every_page_and_ties_no_browser_to_encryption()
    {
        using var stranger = studio.Stranger();
        using var answer = await stranger.GoAsync("/sign-in");
        var policy = Assert.Single(answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'; script-src 'self';", policy);
        Assert.DoesNotContain("unsafe", policy);
        // With it a browser would let nobody past the warning of a certificate that is the studio's own.
        Assert.False(answer.Headers.Contains("Strict-Transport-Security"));
        Assert.False(answer.Headers.Contains("Server"));
        Assert.DoesNotContain("<script>", await answer.Content.ReadAsStringAsync());
    }

    [Fact]
    public async Task Who_sits_at_the_machine_is_asked_too()
    {
        using var near = studio.AtTheMachine();
        Assert.False(await near.IsInAsync());
        using var answer = await near.SignInAsync(OpenStudio.Passphrase);
        Assert.True(await near.IsInAsync());
    }

    [Theory]
    [InlineData("https://elsewhere.example")]
    [InlineData("null")]
    public async Task A_page_from_elsewhere_cannot_knock(string origin)
    {
        using var stranger = studio.Stranger();
        using var asked = new HttpRequestMessage(HttpMethod.Post, "/door/in") { Content = new FormUrlEncodedContent([KeyValuePair.Create("passphrase", OpenStudio.Passphrase)]) };
        asked.Headers.Add("Origin", origin);
        using var answer = await stranger.Http.SendAsync(asked);
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }
}
