using System.Net;
using System.Net.Http.Json;
using System.Text;
using Surefoot.Library;

namespace Surefoot.Tests.Web;

/// <summary>Only the studio's own pages write, and not without end.</summary>
public class WritingFromElsewhere(Studio studio) : IClassFixture<Studio>
{
    public static TheoryData<string> Writes => ["draft", "version", "forget", "back"];

    [Theory]
    [MemberData(nameof(Writes))]
    public async Task What_no_page_of_ours_sent_changes_nothing(string what)
    {
        var page = await studio.AddAsync(Dances.Plain);
        foreach (var (origin, site) in ((string?, string?)[])[(null, null), ("https://elsewhere.example", null), ("null", null), (studio.Address, "cross-site"), (studio.Address, "same-site"), (studio.Address + "0", "same-origin")])
        {
            using var answer = await SendAsync(page, what, JsonContent.Create(new { session = "elsewhere", sequence = 1, basedOn = 1, text = "gone", version = 1 }), origin, site);
            Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        }

        await UnchangedAsync(page);
        // And the same from a page of ours is taken.
        using var ours = await SendAsync(page, what, JsonContent.Create(new { session = "ours", sequence = 1, basedOn = 1, text = "here", version = 1 }), studio.Address, "same-origin");
        Assert.True(ours.IsSuccessStatusCode, $"{ours.StatusCode}");
    }

    [Fact]
    public async Task A_form_of_another_page_could_not_even_say_it()
    {
        var page = await studio.AddAsync(Dances.Plain);
        using var answer = await SendAsync(page, "version", new StringContent("{\"session\":\"a\",\"sequence\":1,\"basedOn\":1,\"text\":\"gone\"}", Encoding.UTF8, "text/plain"), studio.Address, "same-origin");
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
        await UnchangedAsync(page);
    }

    [Fact]
    public async Task What_is_too_long_is_refused()
    {
        var page = await studio.AddAsync(Dances.Plain);
        using var long1 = await SendAsync(page, "draft", JsonContent.Create(new { session = "long", sequence = 1, basedOn = 1, text = new string('x', (1 << 20) + 1) }), studio.Address, "same-origin");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, long1.StatusCode);
        Assert.Contains("longer than a page may be", await long1.Content.ReadAsStringAsync());
        using var longer = await SendAsync(page, "version", JsonContent.Create(new { session = "long", sequence = 1, basedOn = 1, text = new string('x', 4 << 20) }), studio.Address, "same-origin");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, longer.StatusCode);
        using var note = await SendAsync(page, "version", JsonContent.Create(new { session = "long", sequence = 1, basedOn = 1, text = "short", note = new string('x', 5000) }), studio.Address, "same-origin");
        Assert.Equal(HttpStatusCode.UnprocessableEntity, note.StatusCode);
        await UnchangedAsync(page);
    }

    [Theory]
    [InlineData("{}")]
    [InlineData("[]")]
    [InlineData("")]
    [InlineData("{\"session\":null,\"sequence\":1,\"basedOn\":1,\"text\":\"x\"}")]
    [InlineData("{\"session\":\"a\",\"sequence\":1,\"basedOn\":1,\"text\":null}")]
    [InlineData("{\"session\":\"a\",\"sequence\":1,\"basedOn\":1,\"text\":\"\\ud800\"}")]
    [InlineData("{\"session\":\"a\",\"sequence\":1,\"basedOn\":1,\"text\":\"\\u0000\"}")]
    [InlineData("{\"session\":\"a\",\"sequence\":1e99,\"basedOn\":1,\"text\":\"x\"}")]
    public async Task What_makes_no_sense_is_refused_and_harms_nothing(string body)
    {
        var page = await studio.AddAsync(Dances.Plain);
        foreach (var what in (string[])["draft", "version"])
        {
            using var answer = await SendAsync(page, what, new StringContent(body, Encoding.UTF8, "application/json"), studio.Address, "same-origin");
            Assert.InRange((int)answer.StatusCode, 400, 499);
        }

        await UnchangedAsync(page);
    }

    [Fact]
    public async Task A_page_in_the_bin_takes_nothing_and_says_so()
    {
        var page = await studio.AddAsync(Dances.Plain);
        using (var library = await studio.LookAsync()) await library.Bin.PutAsync(page);
        using var answer = await SendAsync(page, "draft", JsonContent.Create(new { session = "late", sequence = 1, basedOn = 1, text = "late" }), studio.Address, "same-origin");
        Assert.Contains("bin", await answer.Content.ReadAsStringAsync());
        using var shown = await studio.Http.GetAsync($"{studio.Address}/dance/{page}/history");
        Assert.Equal(HttpStatusCode.NotFound, shown.StatusCode);
    }

    private async Task UnchangedAsync(long page)
    {
        using var library = await studio.LookAsync();
        Assert.Empty(await library.Drafts.OfAsync(page));
        Assert.Single(await library.Pages.HistoryAsync(page));
        Assert.Equal(Dances.Plain, await library.Pages.TextAsync(page));
    }

    private async Task<HttpResponseMessage> SendAsync(long page, string what, HttpContent content, string? origin, string? site)
    {
        using var asked = new HttpRequestMessage(HttpMethod.Post, $"{studio.Address}/keep/{page}/{what}") { Content = content };
        if (origin is not null) asked.Headers.TryAddWithoutValidation("Origin", origin);
        if (site is not null) asked.Headers.TryAddWithoutValidation("Sec-Fetch-Site", site);
        return await studio.Http.SendAsync(asked);
    }
}
