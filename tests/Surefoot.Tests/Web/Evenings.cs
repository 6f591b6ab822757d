using System.Net;
using System.Text.RegularExpressions;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>The room of a term: written, planned, told, ticked, printed.</summary>
public partial class Evenings(Studio studio) : IClassFixture<Studio>
{
    private const string Text = "Spring\nFrom: 12 January 2027\nUntil: 16 February 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\nDinner Bell Six, by 2 February\nLamp Room Supper\n";

    private async Task<string> BegunAsync(Forms forms, string title)
    {
        var way = await forms.LeadAsync("/terms/new", "/terms", new() { { new StringContent(title), "title" }, { new StringContent("1"), "notebook" } });
        Assert.Matches("^/terms/[0-9]+$", way);
        return way;
    }

    [Fact]
    public async Task An_evening_is_planned_told_ticked_and_planned_anew()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Spring");
        await using var opened = await studio.OpenAsync(way);
        var page = opened.Page;
        await page.GetByLabel("The term’s text").FillAsync(Text + "Diner Bell Six\n");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Keep and plan" }).ClickAsync();
        await Expect(page.Locator(".term-problems li")).ToContainTextAsync("Line 9: There is no page of a dance \"Diner Bell Six\". Did you mean: Dinner Bell Six?");
        await page.GetByLabel("The term’s text").FillAsync(Text);
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Keep and plan" }).ClickAsync();
        await Expect(page.Locator(".term-problems")).ToHaveCountAsync(0);
        await Expect(page.Locator(".lesson-plan")).ToHaveCountAsync(6);
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "This is what people are told" }).ClickAsync();
        await Expect(page.GetByLabel("The term’s text")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("^Spring\n[^§]*\nTold\n12 January 2027 19:00: "));

        // The evening went by: one bite did not stay.
        var first = page.Locator(".tick input[type=checkbox]").First;
        await first.UncheckAsync();
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Tick this lesson" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("Tuesday 12 January is ticked");
        await Expect(page.Locator(".lesson-plan")).ToHaveCountAsync(5);
        await Expect(page.GetByLabel("The term’s text")).ToHaveValueAsync(new System.Text.RegularExpressions.Regex("\nReached\n12 January 2027 19:00: "));

        // It is there as what was done, and can be taken back.
        var over = page.Locator(".over li");
        await Expect(over).ToContainTextAsync("Tuesday 12 January, 19:00");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Link, new() { Name = "What was done" }).ClickAsync();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Tuesday 12 January, beginners: what was done");
        await page.GoBackAsync();
        await page.WaitForSelectorAsync("html[data-ready]", new() { State = Microsoft.Playwright.WaitForSelectorState.Attached });
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Not yet done after all" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("Tuesday 12 January is not done yet after all");
        await Expect(page.Locator(".lesson-plan")).ToHaveCountAsync(6);
        await Expect(page.GetByLabel("The term’s text")).Not.ToHaveValueAsync(new System.Text.RegularExpressions.Regex("Reached"));
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task What_was_typed_and_not_kept_is_not_lost_by_ticking()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Typed");
        await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent(Text), "text" } });
        await using var opened = await studio.OpenAsync(way);
        var page = opened.Page;
        var text = page.GetByLabel("The term’s text");
        await text.FillAsync(Text + "> Bring chalk.\n");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Tick this lesson" }).ClickAsync();
        await Expect(page.GetByRole(Microsoft.Playwright.AriaRole.Alert)).ToHaveTextAsync("What you typed is not kept yet. Press “Keep and plan” first; then do this again.");
        await Expect(text).ToHaveValueAsync(Text + "> Bring chalk.\n");
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Keep and plan" }).ClickAsync();
        await Expect(page.GetByRole(Microsoft.Playwright.AriaRole.Alert)).ToHaveCountAsync(0);
        await page.GetByRole(Microsoft.Playwright.AriaRole.Button, new() { Name = "Tick this lesson" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("is ticked");
        Assert.Contains("Bring chalk.", await text.InputValueAsync());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_bite_may_have_a_mark_of_its_own()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Marks");
        await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent(Text), "text" } });
        var page = await forms.PageAsync(way);
        Assert.Contains("name=\"went-0-2\"", page);
        var answer = await forms.SendAsync($"{way}/reached", way, new()
        {
            { new StringContent("2"), "version" }, { new StringContent("0"), "lesson" }, { new StringContent("3"), "went-0" }, { new StringContent(""), "went-0-0" }, { new StringContent("2"), "went-0-2" },
            { new StringContent("0"), "done-0" }, { new StringContent("1"), "done-0" }, { new StringContent("2"), "done-0" },
        });
        Assert.Contains("12 January 2027 19:00: Dinner Bell Six bites 1-2 went with help, Dinner Bell Six bite 3 went shaky", answer);
    }

    [Fact]
    public async Task A_new_term_shows_what_can_be_written_and_takes_dances_over()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Helped");
        var page = await forms.PageAsync(way);
        foreach (var word in (string[])["> Closed: ", ", by ", ", for ", ", after ", "at most 40 new counts", ", danced "]) Assert.Contains(word, page);
        // Its notes are no lines of its own: nothing is wrong with it.
        Assert.DoesNotContain("term-problems", page);
        Assert.Contains("<input type=\"checkbox\" name=\"dance\" value=\"Dinner Bell Six\"", page);
        var answer = await forms.SendAsync($"{way}/teach", way, new() { { new StringContent("1"), "version" }, { new StringContent("Dinner Bell Six"), "dance" }, { new StringContent("Lamp Room Supper"), "dance" }, { new StringContent("No such dance"), "dance" } });
        Assert.Contains("2 dances are in the term.", answer);
        Assert.Matches("Dinner Bell Six\r?\nLamp Room Supper\r?\n", answer);
        Assert.DoesNotContain("No such dance", answer);
        Assert.DoesNotContain("value=\"Dinner Bell Six\"", answer);
    }

    [Fact]
    public async Task From_a_lesson_a_bite_leads_to_the_floor_and_a_song_has_its_tempo()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Led");
        await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent(Text), "text" } });
        long dance;
        using (var library = await studio.LookAsync())
        {
            dance = (await library.Catalogue.ListAsync(new() { Notebook = 1 })).Dances.First(d => d.Title == "Dinner Bell Six").Page;
            Assert.Null(await library.Details.AddSongAsync(dance, "Porch Light Reel", "", 108));
        }

        Assert.Contains($"href=\"/on-the-floor/{dance}#1-6\"", await forms.PageAsync(way));
        var sheet = await forms.PageAsync($"{way}/lesson?day=2027-01-12");
        Assert.Contains($"href=\"/on-the-floor/{dance}#1-6\"", sheet);
        Assert.Contains("Porch Light Reel (108)", sheet);
        Assert.Contains("First Porch Light Reel slowed to 80 to 90 % of its tempo (86 to 97 counts a minute), then as it is (108).", sheet);
    }

    [Fact]
    public async Task Lesson_sheet_overview_and_calendar_are_there_without_script()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Printed");
        await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent(Text), "text" } });
        Assert.Contains("Tuesday 12 January, beginners", await forms.PageAsync($"{way}/lesson?day=2027-01-12"));
        Assert.Contains("Dinner Bell Six", await forms.PageAsync($"{way}/overview"));
        Assert.StartsWith("BEGIN:VCALENDAR", await forms.PageAsync($"{way}/calendar"));
        using var nothing = await studio.Http.GetAsync($"{studio.Address}{way}/lesson?day=2027-01-13");
        Assert.Equal(HttpStatusCode.NotFound, nothing.StatusCode);
    }

    [Fact]
    public async Task A_term_begins_in_a_notebook_that_has_dances_and_one_without_any_says_so()
    {
        long empty;
        using (var library = await studio.LookAsync()) empty = (await library.Notebooks.AddAsync("Nothing written yet")).Notebook!.Id;
        using var forms = new Forms(studio);
        var page = await forms.PageAsync("/terms");
        Assert.Matches("<option value=\"1\" selected[^>]*>Demo \\([1-9][0-9]* dances\\)", page);
        Assert.Matches($"<option value=\"{empty}\">Nothing written yet \\(no dances yet\\)", page);
        var way = await forms.LeadAsync("/terms/new", "/terms", new() { { new StringContent("Empty"), "title" }, { new StringContent($"{empty}"), "notebook" } });
        Assert.Contains("The notebook of this term has no dances yet", await forms.PageAsync(way));
    }

    [Fact]
    public async Task A_missing_comma_behind_a_dance_is_told_as_one()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Comma");
        var answer = await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent(Text.Replace("Six, by", "Six by", StringComparison.Ordinal)), "text" } });
        Assert.Contains("A comma is missing behind its name: Dinner Bell Six, by 2 February", answer);
    }

    [Fact]
    public async Task What_somebody_else_kept_meanwhile_is_not_written_over_and_what_was_typed_is_not_lost()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Shared");
        await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent(Text), "text" } });
        var answer = await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent("Mine, typed for an hour"), "text" } });
        Assert.Contains("Somebody else changed this term meanwhile.", answer);
        Assert.Contains("Mine, typed for an hour", answer);
        Assert.Contains("Dinner Bell Six, by 2 February", await forms.PageAsync(way));
    }

    [Fact]
    public async Task A_term_is_thrown_away_and_can_be_brought_back()
    {
        using var forms = new Forms(studio);
        var way = await BegunAsync(forms, "Over");
        await forms.SendAsync($"{way}/keep", way, new() { { new StringContent("1"), "version" }, { new StringContent(Text), "text" } });
        var kept = await forms.PageAsync(way);
        var answer = await forms.SendAsync($"{way}/gone", way, new() { { new StringContent(""), "x" } });
        Assert.Contains("is thrown away.", answer);
        using var gone = await studio.Http.GetAsync(studio.Address + way);
        Assert.Equal(HttpStatusCode.NotFound, gone.StatusCode);
        var undo = Undo().Match(answer).Groups[1].Value;
        var again = await forms.LeadAsync(undo, "/terms", new() { { new StringContent(""), "x" } });
        Assert.Contains("Dinner Bell Six, by 2 February", kept);
        Assert.Contains("Dinner Bell Six, by 2 February", await forms.PageAsync(again));
        // Once only: a second press brings no second one.
        Assert.Contains("That term is not there any more.", await forms.SendAsync(undo, "/terms", new() { { new StringContent(""), "x" } }));
    }

    [GeneratedRegex("action=\"(/terms/back/[0-9a-f]+)\"")]
    private static partial Regex Undo();
}
