using System.Text.Json;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>What the settings say holds where it matters.</summary>
public class HallSettings(Studio studio) : IClassFixture<Studio>
{
    [Fact]
    public async Task Settings_change_the_sheets_words_the_look_the_heights_and_the_tempo()
    {
        await using var opened = await studio.OpenAsync("/settings?notebook=1");
        var page = opened.Page;
        await page.Locator("input[name=leadWord]").FillAsync("Ropers");
        await page.Locator("input[name=followWord]").FillAsync("Riders & <b>");
        await page.Locator("input[name=leadStature]").FillAsync("6 ft 2");
        await page.GetByLabel("feet and inches").CheckAsync();
        await page.GetByLabel("Usual tempo").FillAsync("96");
        await page.Locator("select[name=theme]").SelectOptionAsync("dim");
        await page.GetByText("Keep", new() { Exact = true }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("The settings are kept.");
        await Expect(page.Locator("input[name=leadStature]")).ToHaveValueAsync("6 ft 2 in");
        // Nobody chose a look on this screen, so the notebook's holds.
        Assert.Equal("dim", await page.GetAttributeAsync("html", "data-look"));

        await page.GotoAsync(studio.Address + "/dance/split-rail-cha-cha");
        await page.WaitForSelectorAsync("html[data-ready] .cm-content");
        await Expect(page.FrameLocator(".sheet-frame").Locator("body")).ToContainTextAsync("Ropers");
        Assert.Equal("dim", await page.GetAttributeAsync("html", "data-look"));

        const string text = "Lane\nKind: partner, circle\nHold: sweetheart\nFacing: LOD\nFeet: same, left free\n\nPart A (4 counts)\n1-2 Rock forward L, recover R\n3-4 Rock back L, recover R\n";
        await studio.Http.PostAsync($"{studio.Address}/live/tests-of-settings?number=1&notebook=1", new StringContent(text));
        using var motion = JsonDocument.Parse(await studio.Http.GetStringAsync($"{studio.Address}/live/tests-of-settings/motion"));
        Assert.Equal(96, motion.RootElement.GetProperty("tempo").GetInt32());
        // 6 feet 2 are 74 inches of 0.0254 m.
        Assert.Contains(motion.RootElement.GetProperty("dancers").EnumerateArray(), d => Math.Abs(d.GetProperty("stature").GetDouble() - 1.8796) < 0.001);
        Assert.Empty(opened.Faults);
    }

    [Theory]
    [InlineData("leadStature", "giant", "A height is written as")]
    [InlineData("leadStature", "3.10", "A height is written as")]
    [InlineData("tempo", "5", "A tempo is given in counts a minute")]
    public async Task What_makes_no_sense_is_refused_and_changes_nothing(string field, string value, string says)
    {
        using var forms = new Forms(studio);
        var form = new MultipartFormDataContent { { new StringContent("Demo"), "name" }, { new StringContent("Nobody"), "leadWord" }, { new StringContent(value), field } };
        var answer = await forms.SendAsync("/settings/1", "/settings", form);
        Assert.Contains(says, answer);
        Assert.DoesNotContain("Nobody", answer);
    }
}
