using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Library;
using Surefoot.Solver;
using Surefoot.Web.Listing;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>What the settings say holds where it matters.</summary>
public class HallSettings(Studio studio) : IClassFixture<Studio>
{
    private const string Lane = "Lane\nKind: partner, circle\nHold: sweetheart\nFacing: LOD\nFeet: same, left free\n\nPart A (4 counts)\n1-2 Rock forward L, recover R\n3-4 Rock back L, recover R\n";

    [Fact]
    public async Task Settings_change_the_sheets_words_the_look_the_heights_and_the_tempo()
    {
        await using var opened = await studio.OpenAsync("/settings?notebook=1");
        var page = opened.Page;
        await page.Locator("input[name=leadWord]").FillAsync("Ropers");
        await page.Locator("input[name=followWord]").FillAsync("Riders & <b>");
        await page.Locator("input[name=leadStature]").FillAsync("6 ft 2");
        await page.GetByLabel("feet and inches").CheckAsync();
        await page.GetByLabel("with a comma").CheckAsync();
        await page.GetByLabel("US Letter").CheckAsync();
        await page.GetByLabel("Usual tempo").FillAsync("96");
        await page.Locator("select[name=theme]").SelectOptionAsync("dim");
        await page.GetByText("Keep", new() { Exact = true }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("The settings are kept.");
        await Expect(page.Locator("input[name=leadStature]")).ToHaveValueAsync("6 ft 2 in");
        await Expect(page.GetByLabel("with a comma")).ToBeCheckedAsync();
        await Expect(page.GetByLabel("US Letter")).ToBeCheckedAsync();
        // Nobody chose a look on this screen, so the notebook's holds.
        Assert.Equal("dim", await page.GetAttributeAsync("html", "data-look"));

        await page.GotoAsync(studio.Address + "/dance/split-rail-cha-cha");
        await page.WaitForSelectorAsync("html[data-ready] .cm-content");
        await Expect(page.FrameLocator(".sheet-frame").Locator("body")).ToContainTextAsync("Ropers");
        await Expect(page.Locator(".floor-player .roles dt").First).ToHaveTextAsync("ropers");
        await Expect(page.GetByLabel("Show both")).ToContainTextAsync("riders & <b>");
        Assert.Equal("dim", await page.GetAttributeAsync("html", "data-look"));

        await studio.Http.PostAsync($"{studio.Address}/live/tests-of-settings?number=1&notebook=1", new StringContent(Lane));
        using var motion = JsonDocument.Parse(await studio.Http.GetStringAsync($"{studio.Address}/live/tests-of-settings/motion"));
        Assert.Equal(96, motion.RootElement.GetProperty("tempo").GetInt32());
        // 6 feet 2 are 74 inches of 0.0254 m.
        Assert.Contains(motion.RootElement.GetProperty("dancers").EnumerateArray(), d => Math.Abs(d.GetProperty("stature").GetDouble() - 1.8796) < 0.001);
        Assert.Empty(opened.Faults);
    }

    [Theory]
    [InlineData(Units.FeetAndInches, DecimalMark.Point, @" by count 4 they are \d+ ft \d+ in ")]
    [InlineData(Units.Metric, DecimalMark.Comma, @" they are \d,\d m ")]
    public async Task Problems_and_facts_are_said_in_the_notebooks_way(Units units, DecimalMark mark, string says)
    {
        var notebook = await NotebookAsync($"Hall of {units}, {mark}", new() { Units = units, DecimalMark = mark, LeadWord = "Cowboy", FollowWord = "Lady" });
        const string text = "Gate\nKind: partner, circle\nHold: sweetheart\nFacing: LOD\nFeet: same, left free\n\n1-4 Lead: walk forward L R L R. Follow: rock forward L, recover R, rock back L, recover R\n";
        using var answer = await studio.Http.PostAsync($"{studio.Address}/live/tests-of-units-{(int)units}{(int)mark}?number=1&notebook={notebook}", new StringContent(text));
        using var read = JsonDocument.Parse(await answer.Content.ReadAsStringAsync());
        var problem = read.RootElement.GetProperty("problems").EnumerateArray().Single(p => p.GetProperty("name").GetString() == "hold-place");
        Assert.Matches(says, problem.GetProperty("message").GetString());
        Assert.DoesNotMatch(@"\d\.\d+ m\b", problem.GetProperty("reason").GetString());
        Assert.Contains("the cowboy", problem.GetProperty("reason").GetString());
    }

    [Fact]
    public void Roles_are_named_in_the_notebooks_words_and_quotes_stay_as_they_are_written() => Assert.Equal(
        "The cowboy's right arm lies over the lady. \"Round the lead\" follows from one cowboy to the next.",
        HallRoles.In("The lead's right arm lies over the follow. \"Round the lead\" follows from one lead to the next.", new() { LeadWord = "Cowboy", FollowWord = "Lady" }));

    [Fact]
    public async Task Sheets_are_printed_on_the_notebooks_paper_for_its_heights_and_in_its_words()
    {
        var settings = new NotebookSettings { Paper = Paper.Letter, LeadStature = 2.1, FollowStature = 1.5, LeadWord = "Cowboy" };
        long page;
        using (var library = await studio.LookAsync()) page = (await library.Pages.AddAsync(await NotebookAsync("Printing hall", settings), Lane)).Page!.Id;
        var printed = await studio.Http.GetStringAsync($"{studio.Address}/dance/{page}/print");
        Assert.Contains("@page{size:" + Size(PaperSize.Letter), printed);
        var reading = DanceReader.Read(Lane, solver: new ProvenSolver(), heights: settings.Heights);
        var expected = HtmlSheet.Write(reading.Score, reading.Motion, new() { Paper = PaperSize.Letter, LeadWord = "Cowboy", FollowWord = "Follow" }, reading.Couple);
        Assert.Equal(Sheet(expected), Sheet(printed));
        Assert.Contains("@page{size:" + Size(PaperSize.A4), await studio.Http.GetStringAsync($"{studio.Address}/dance/{page}/print?paper=a4"));
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

    [Fact]
    public async Task A_notebook_gets_another_name_goes_into_the_bin_and_comes_back_with_its_dances()
    {
        var notebook = await NotebookAsync("Barn nights", new());
        long dance;
        using (var library = await studio.LookAsync()) dance = (await library.Pages.AddAsync(notebook, Lane)).Page!.Id;
        await using var opened = await studio.OpenAsync($"/settings?notebook={notebook}");
        var page = opened.Page;
        await page.GetByLabel("The notebook’s name").FillAsync("Barn days");
        await page.GetByText("Keep", new() { Exact = true }).ClickAsync();
        await Expect(page.Locator(".tabs")).ToContainTextAsync("Barn days");
        await page.GetByText("Move this notebook to the bin").ClickAsync();
        await Expect(page.Locator(".question")).ToContainTextAsync("Its one dance goes there with it.");
        await page.GetByText("Move it to the bin", new() { Exact = true }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("“Barn days” is in the bin, with its dances.");
        // Where only one notebook is left there is nothing to choose between.
        await Expect(page.Locator(".tabs", new() { HasText = "Barn days" })).ToHaveCountAsync(0);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await studio.Http.GetAsync($"{studio.Address}/dance/{dance}")).StatusCode);
        await page.GotoAsync(studio.Address + "/bin");
        await Expect(page.Locator(".things").First).ToContainTextAsync("Barn days");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Bring back the notebook Barn days and its pages" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("“Barn days” is back, with its dances.");
        Assert.Equal(System.Net.HttpStatusCode.OK, (await studio.Http.GetAsync($"{studio.Address}/dance/{dance}")).StatusCode);
        Assert.Empty(opened.Faults);
    }

    private static string Sheet(string sheet) => sheet[sheet.IndexOf("<main>", StringComparison.Ordinal)..sheet.IndexOf("</main>", StringComparison.Ordinal)];

    // As the styles name a sheet of paper to a browser.
    private static string Size(PaperSize paper) => paper == PaperSize.Letter ? "letter" : "A4";

    private async Task<long> NotebookAsync(string name, NotebookSettings settings)
    {
        using var library = await studio.LookAsync();
        return (await library.Notebooks.AddAsync(name, settings)).Notebook!.Id;
    }
}
