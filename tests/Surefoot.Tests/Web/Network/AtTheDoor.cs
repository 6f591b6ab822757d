using System.Net;
using System.Net.Http.Json;
using System.Net.WebSockets;

namespace Surefoot.Tests.Web.Network;

/// <summary>Who knows the passphrase comes in, stays in as long as it holds, and goes out.</summary>
public class AtTheDoor(OpenStudio studio) : IClassFixture<OpenStudio>
{
    [Fact]
    public async Task The_right_passphrase_lets_in_to_everything()
    {
        using var guest = await studio.GuestAsync();
        Assert.Contains("Kettle Lid Shuffle", await guest.ReadAsync("/"));
        using var script = await guest.Http.GetAsync("/dist/desk.js");
        Assert.Equal(HttpStatusCode.OK, script.StatusCode);
        using var draft = new HttpRequestMessage(HttpMethod.Post, "/keep/1/draft") { Content = JsonContent.Create(new { session = "tablet", sequence = 1, basedOn = 1, text = "From a tablet" }) };
        draft.Headers.Add("Origin", guest.Address);
        using var kept = await guest.Http.SendAsync(draft);
        Assert.Equal(HttpStatusCode.OK, kept.StatusCode);
        using var line = await guest.CallAsync();
        Assert.Equal(WebSocketState.Open, line.State);
    }

    [Fact]
    public async Task What_is_sent_from_nowhere_is_refused_although_somebody_is_signed_in()
    {
        using var guest = await studio.GuestAsync();
        using var answer = await guest.Http.PostAsJsonAsync("/keep/1/draft", new { session = "nowhere", sequence = 1, basedOn = 1, text = "gone" });
        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("three slow green bucket")]
    [InlineData("Three Slow Green Buckets")]
    public async Task Another_passphrase_does_not(string passphrase)
    {
        using var visitor = studio.Visitor();
        using var answer = await visitor.SignInAsync(passphrase);
        Assert.Contains("That is not the passphrase", await visitor.ToldAsync(answer));
        Assert.False(await visitor.IsInAsync());
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task The_cookie_is_for_this_machine_alone_encrypted_and_unseen_by_scripts(bool own)
    {
        using var visitor = studio.Visitor();
        using var answer = await visitor.SignInAsync(OpenStudio.Passphrase, own);
        var cookie = Assert.Single(answer.Headers.GetValues("Set-Cookie"));
        Assert.StartsWith("__Host-surefoot=", cookie);
        Assert.Contains("; secure", cookie);
        Assert.Contains("; httponly", cookie);
        Assert.Contains("; samesite=strict", cookie);
        Assert.Contains("; path=/", cookie);
        Assert.DoesNotContain("domain", cookie);
        Assert.Equal(own, cookie.Contains("; expires=", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_the_pages_token_nobody_comes_in()
    {
        using var visitor = studio.Visitor();
        using var answer = await visitor.PostAsync("/door/in", ("passphrase", OpenStudio.Passphrase));
        Assert.False(answer.Headers.TryGetValues("Set-Cookie", out var cookies) && cookies.Any(c => c.Contains("surefoot", StringComparison.Ordinal)));
        Assert.False(await visitor.IsInAsync());
        Assert.Contains("The page was older than this studio", await visitor.ToldAsync(answer));
    }

    [Fact]
    public async Task A_form_at_the_door_takes_no_more_than_a_passphrase()
    {
        using var visitor = studio.Visitor();
        using var answer = await visitor.SendAsync("/sign-in", "/door/in", ("passphrase", new string('x', 20_000)));
        Assert.Contains("more than can be sent", await visitor.ToldAsync(answer));
    }

    [Theory]
    [InlineData("/dance/kettle-lid-shuffle?draft=a", "/dance/kettle-lid-shuffle?draft=a")]
    [InlineData("//elsewhere.example/", "/")]
    [InlineData("/\\elsewhere.example/", "/")]
    [InlineData("https://elsewhere.example/", "/")]
    [InlineData("/sign-in?to=/", "/")]
    public async Task Whoever_came_for_a_page_gets_there_and_nowhere_else(string wanted, string led)
    {
        using var visitor = studio.Visitor();
        using var answer = await visitor.SendAsync("/sign-in", "/door/in", ("passphrase", OpenStudio.Passphrase), ("to", wanted));
        Assert.Equal(led, answer.Headers.Location!.OriginalString);
    }

    [Fact]
    public async Task The_way_to_the_door_remembers_where_to()
    {
        using var visitor = studio.Visitor();
        using var asked = await visitor.GoAsync("/dance/kettle-lid-shuffle?draft=a");
        Assert.Equal("/sign-in?to=%2Fdance%2Fkettle-lid-shuffle%3Fdraft%3Da", asked.Headers.Location!.OriginalString);
        Assert.Contains("value=\"/dance/kettle-lid-shuffle?draft=a\"", await visitor.ReadAsync(asked.Headers.Location.OriginalString));
    }

    [Fact]
    public async Task Whoever_signs_out_is_out()
    {
        using var guest = await studio.GuestAsync();
        using var answer = await guest.SendAsync("/settings", "/door/out");
        Assert.False(await guest.IsInAsync());
    }

    [Fact]
    public async Task Signing_out_takes_the_pages_token_too()
    {
        using var guest = await studio.GuestAsync();
        using var answer = await guest.PostAsync("/door/out");
        Assert.True(await guest.IsInAsync());
    }
}
