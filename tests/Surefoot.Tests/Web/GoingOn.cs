using System.Globalization;
using System.Text.Json;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>A whole dance that is played over and over goes on from where it has come to.</summary>
public class GoingOn(Studio studio) : IClassFixture<Studio>
{
    // In a circle it goes on along the line of dance; over walls each repeat begins turned.
    private const string
        Circle = "Lane\nKind: partner, circle\nTempo: 120\nHold: sweetheart\nFacing: LOD\nFeet: same, left free\n\nPart A (4 counts)\n1-4 Walk forward L R L R\n",
        Walls = "Corner\nKind: line, 4 walls\nTempo: 120\nFeet: left free\n\nPart A (4 counts)\n1-2 Walk forward L, R\n3 Step forward L\n4 Turn ¼ right stepping side R\n",
        Nowhere = "Gate\nKind: line, 1 wall\nTempo: 120\nFeet: left free\n\nPart A (4 counts)\n1-3 Walk forward L R L\n4 Touch R together\n";

    [Theory]
    // Cosine and sine of the turn.
    [InlineData(Circle, 1, 0)]
    [InlineData(Walls, 0, -1)]
    public async Task The_view_goes_along_from_one_repeat_to_the_next(string text, int cosine, int sine)
    {
        var (from, to) = await EndsAsync(text);
        await using var opened = await PlayedAsync(text);
        var first = await MiddleAsync(opened, round: 0);
        var second = await MiddleAsync(opened, round: 1);
        var third = await MiddleAsync(opened, round: 2);
        // What lies from the first to the second lies, turned once more, from the second to the third.
        var way = (X: second.X - first.X, Y: second.Y - first.Y);
        Assert.Equal((way.X * cosine) - (way.Y * sine), third.X - second.X, 0.02);
        Assert.Equal((way.X * sine) + (way.Y * cosine), third.Y - second.Y, 0.02);
        Assert.True(Math.Sqrt((way.X * way.X) + (way.Y * way.Y)) > 0.5, "it came no further");
        if (sine == 0) Assert.Equal(to - from, way.X, 0.02);
        // The player's first button leads back to the very beginning.
        await opened.Page.GetByText("Pause", new() { Exact = true }).ClickAsync();
        await opened.Page.GetByText("Start", new() { Exact = true }).ClickAsync();
        await Expect(opened.Page.Locator(".floor-picture")).ToHaveAttributeAsync("data-round", "0");
    }

    [Fact]
    public async Task A_dance_that_does_not_lead_into_its_start_begins_again_where_it_began()
    {
        await using var opened = await PlayedAsync(Nowhere);
        await BackAtStartAsync(opened);
        Assert.All(await opened.Page.EvaluateAsync<string[]>("() => Object.keys(window.seen)"), seen => Assert.StartsWith("0.", seen));
    }

    // How far along the floor the lead is at the beginning and at the end of a repeat, in metres.
    private async Task<(double From, double To)> EndsAsync(string text)
    {
        await studio.Http.PostAsync($"{studio.Address}/live/tests-of-going-on?number=1", new StringContent(text));
        using var file = JsonDocument.Parse(await studio.Http.GetStringAsync($"{studio.Address}/live/tests-of-going-on/motion"));
        var (width, last) = (file.RootElement.GetProperty("fields").GetArrayLength(), (int)(file.RootElement.GetProperty("counts").GetDouble() * 60 * file.RootElement.GetProperty("rate").GetInt32() / file.RootElement.GetProperty("tempo").GetInt32()));
        var values = file.RootElement.GetProperty("dancers")[0].GetProperty("values");
        return (values[0].GetDouble(), values[last * width].GetDouble());
    }

    private async Task<Opened> PlayedAsync(string text)
    {
        var opened = await studio.OpenAsync($"/dance/{await studio.AddAsync(text)}");
        await Expect(opened.Page.Locator(".floor-player .roles dd").First).ToHaveTextAsync("ready");
        // What is looked at on each count of each repeat is written down in the page: a busy machine may ask too late.
        await opened.Page.EvaluateAsync("""
            () => {
              const picture = document.querySelector('.floor-picture');
              window.seen = {};
              new MutationObserver(() => window.seen[`${picture.dataset.round}.${document.querySelector('.floor-player .count').textContent}`] ??= picture.dataset.middle)
                .observe(picture, { attributes: true, attributeFilter: ['data-middle'] });
            }
            """);
        await opened.Page.Locator(".play").ClickAsync();
        return opened;
    }

    // The floor that is looked at on the second count of a repeat, in metres.
    private static async Task<(double X, double Y)> MiddleAsync(Opened opened, int round)
    {
        var told = await (await opened.Page.WaitForFunctionAsync(
            "(round) => window.seen[`${round}.2`]",
            round,
            new() { PollingInterval = 50, Timeout = 60_000 })).JsonValueAsync<string>();
        var parts = told.Split(' ').Select(p => double.Parse(p, CultureInfo.InvariantCulture)).ToArray();
        return (parts[0], parts[1]);
    }

    private static async Task BackAtStartAsync(Opened opened)
    {
        await opened.Page.EvaluateAsync("""
            () => {
              window.last = 0;
              const look = () => {
                const at = Number(document.querySelector('.floor-player .controls > input').value);
                if (at < window.last - 1) window.begunAgain = true;
                window.last = at;
                requestAnimationFrame(look);
              };
              look();
            }
            """);
        await opened.Page.WaitForFunctionAsync("() => window.begunAgain && window.last > 1.2", null, new() { PollingInterval = 50, Timeout = 60_000 });
    }
}
