using System.Text;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>A sheet that somebody else typed is pasted, looked at and kept as a dance.</summary>
public class Pasting(Studio studio) : IClassFixture<Studio>
{
    // Invented here; "frobble" is no word of any dance.
    internal const string Sheet = """
        WHEELBARROW WALTZ AWAY
        Choreographed by Nobody In Particular
        32 count, 2 wall line dance

        S1: VINES
        1-4   Vine to the right, touch left beside right
        5-8   Vine to the left, touch right beside left

        S2: WALKS
        1-2   Walk forward right, left
        3-4   frobble the gate
        5-8   Rock forward on right, recover, step back right, together

        Smile at whoever stands beside you.
        """;

    [Fact]
    public async Task A_sheet_is_pasted_looked_at_and_kept_with_the_keyboard_alone()
    {
        await using var opened = await studio.OpenAsync("/?q=shuffle");
        var (page, keys) = (opened.Page, opened.Page.Keyboard);
        await page.GetByRole(AriaRole.Link, new() { Name = "Paste a sheet" }).FocusAsync();
        await keys.PressAsync("Enter");
        await page.GetByLabel("The sheet’s text").FocusAsync();
        await keys.InsertTextAsync(Sheet);
        await TabToAsync(page, "Read it");
        await keys.PressAsync("Enter");

        // What nobody understood is said first, and leads to its line.
        await Expect(page.Locator(".doubts li").First).ToContainTextAsync("frobble");
        await Expect(page.Locator(".doubts li").First).ToHaveClassAsync("state error");
        await Expect(page.Locator(".sheet-lines li")).ToHaveCountAsync(Sheet.Split('\n').Length);
        await Expect(page.Locator("#line-11")).ToContainTextAsync("not understood:");
        await Expect(page.Locator("#line-10 .state")).ToHaveTextAsync("sure");
        await TabToAsync(page, "Line 11");
        await keys.PressAsync("Enter");
        Assert.EndsWith("#line-11", page.Url);
        await Expect(page.Locator("#line-11")).ToBeInViewportAsync();
        Assert.Equal("line-11", await page.EvaluateAsync<string>("() => document.querySelector(':target').id"));

        await PageBox(page).FocusAsync();
        await keys.PressAsync("Control+Home");
        await keys.InsertTextAsync("The ");
        await TabToAsync(page, "Keep as a new dance");
        await keys.PressAsync("Enter");

        // It opens where dances are written, as it was left.
        await page.WaitForSelectorAsync("html[data-ready] .cm-content");
        Assert.Matches(@"/dance/\d+$", page.Url);
        Assert.StartsWith("The ", await opened.TextAsync(), StringComparison.Ordinal);
        Assert.Empty(opened.Faults);

        // The sheet is kept with it, as it was pasted.
        using var library = await studio.LookAsync();
        var id = long.Parse(page.Url.Split('/')[^1], System.Globalization.CultureInfo.InvariantCulture);
        var kept = Assert.Single((await library.Details.OfAsync(id))!.Attachments);
        Assert.EndsWith(", sheet.txt", kept.FileName, StringComparison.Ordinal);
        Assert.Equal(Sheet, Encoding.UTF8.GetString((await library.Details.FileAsync(id, kept.Id))!));
    }

    /// <summary>RoomsForEverybody looks at the same in more sizes, and at much else; this is the short way to know it.</summary>
    [Theory]
    [InlineData("light", 1280)]
    [InlineData("dark", 810)]
    [InlineData("dim", 390)]
    public async Task A_reading_is_legible_to_everybody_with_everything_unfolded(string look, int width)
    {
        using var forms = new Forms(studio);
        var read = await forms.LeadAsync("/paste/text", "/paste", new() { { new StringContent(Sheet), "text" } });
        await using var opened = await studio.OpenAsync(read, width, look: look);
        foreach (var folded in await opened.Page.Locator("main details > summary").AllAsync()) await folded.ClickAsync();
        Assert.Empty((await opened.Page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help} at {v.Nodes.FirstOrDefault()?.Html}"));
        Assert.True(await opened.Page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"));
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task What_nobody_understood_is_said_in_the_page_s_words_and_read_again()
    {
        await using var opened = await studio.OpenAsync("/paste");
        var page = opened.Page;
        await page.GetByLabel("The sheet’s text").FillAsync("GATE POST\n2 wall line dance\n\n1-4 Walk right, left, right, frobble\n5-8 Walk left, right, left, Frobble\n");
        await page.GetByText("Read it", new() { Exact = true }).ClickAsync();
        await PageBox(page).FillAsync("Mine\n");
        await page.GetByLabel("“frobble” (2 times) means").FillAsync("hitch");
        await page.Locator(".meanings").GetByText("Read it again so").ClickAsync();
        // The sheet stays as it stood.
        await Expect(page.Locator(".stood").Nth(3)).ToHaveTextAsync("1-4 Walk right, left, right, frobble");
        await Expect(page.Locator("#line-4 .state")).ToHaveTextAsync("assumed: \"frobble\" is \"hitch\", as you corrected it");
        await Expect(page.Locator(".note-place .note")).ToContainTextAsync("“frobble” is taken so here and at one place more.");
        await Expect(page.Locator(".reading")).Not.ToContainTextAsync("not understood");
        Assert.Contains("hitch", await PageBox(page).InputValueAsync(), StringComparison.OrdinalIgnoreCase);

        // What had been written on the page before is not lost.
        await page.GetByText("That page is still there").ClickAsync();
        Assert.Equal("Mine", (await PageBox(page).InputValueAsync()).Trim());
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_phrase_that_was_read_wrongly_is_corrected_at_its_line_with_the_keyboard_and_taken_back()
    {
        await using var opened = await studio.OpenAsync("/paste");
        var (page, keys) = (opened.Page, opened.Page.Keyboard);
        await page.GetByLabel("The sheet’s text").FillAsync("GATE POST\n2 wall line dance\n\n1-4 Walk right, left, right, touch\n5-8 Walk left, right, left, touch\n");
        await page.GetByText("Read it", new() { Exact = true }).ClickAsync();
        await page.GetByText("Correct line 5").FocusAsync();
        await keys.PressAsync("Enter");
        await page.GetByRole(AriaRole.Group, new() { Name = "“touch” reads as “touch”" }).GetByLabel("should be").FocusAsync();
        await keys.InsertTextAsync("scuff");
        await keys.PressAsync("Tab");
        await Expect(page.Locator(":focus option:checked")).ToHaveTextAsync("at both places");
        await keys.PressAsync("ArrowUp");
        await Expect(page.Locator(":focus option:checked")).ToHaveTextAsync("only here");
        await page.Locator("#line-5").GetByRole(AriaRole.Button, new() { Name = "Read it again so" }).FocusAsync();
        await keys.PressAsync("Enter");
        await Expect(page.Locator("#line-5 .led-to")).ToContainTextAsync("scuff");
        await Expect(page.Locator("#line-4 .led-to")).ToContainTextAsync("touch");
        Assert.Equal("line-5", await page.EvaluateAsync<string>("() => document.querySelector(':target').id"));
        await Expect(page.Locator(".corrections li")).ToContainTextAsync("“touch” is “scuff”, on line 5");

        await page.GetByRole(AriaRole.Button, new() { Name = "Take back “touch”" }).FocusAsync();
        await keys.PressAsync("Enter");
        await Expect(page.Locator("#line-5 .led-to")).ToContainTextAsync("touch");
        await Expect(page.Locator(".corrections")).ToHaveCountAsync(0);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_correction_that_cannot_be_read_is_told_and_loses_nothing()
    {
        using var forms = new Forms(studio);
        MultipartFormDataContent Form(params (string, string)[] fields)
        {
            var form = new MultipartFormDataContent();
            foreach (var (name, value) in fields) form.Add(new StringContent(value), name);
            return form;
        }

        var read = await forms.LeadAsync("/paste/text", "/paste", Form(("text", Sheet)));
        var page = await forms.SendAsync(read + "/again", read, Form(("text", Sheet + "More.\n"), ("page", "Mine\n"), ("means-7-0", "blarg <b>it"), ("where-7-0", "always"), ("means-6-0", "walk R"), ("asked-11-0", "hitch")));
        Assert.Contains("“blarg <b>it” cannot be taken:", page);
        foreach (var kept in (string[])["More.\n", ">Mine\n", "value=\"blarg <b>it\"", "value=\"walk R\"", "value=\"hitch\""]) Assert.Contains(kept, page);
        Assert.DoesNotContain("Your corrections", page);
        using var library = await studio.LookAsync();
        Assert.DoesNotContain(await library.Words.AllAsync(), w => w.Means.Contains("blarg", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_correction_becomes_the_hall_s_own_word_and_is_taken_back_in_the_settings()
    {
        const string sheet = "GATE POST\n2 wall line dance\n\n1-4 Walk right, left, right, glimmer\n";
        await using var opened = await studio.OpenAsync("/paste");
        var page = opened.Page;
        await page.GetByLabel("The sheet’s text").FillAsync(sheet);
        await page.GetByText("Read it", new() { Exact = true }).ClickAsync();
        await page.GetByLabel("“glimmer” means").FillAsync("hitch");
        await page.GetByLabel("on every sheet that says “glimmer”").CheckAsync();
        await page.Locator(".meanings").GetByText("Read it again so").ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("“glimmer” is a word of the hall now.");

        // A later sheet is read so, and says that it was.
        await page.GotoAsync(studio.Address + "/paste");
        await page.GetByLabel("The sheet’s text").FillAsync(sheet.Replace("glimmer", "Glimmer"));
        await page.GetByText("Read it", new() { Exact = true }).ClickAsync();
        await Expect(page.Locator("#line-4 .state.hint")).ToHaveTextAsync("assumed: \"Glimmer\" is \"hitch\", the hall's own word");
        await page.GetByRole(AriaRole.Link, new() { Name = "The settings" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back “glimmer”" }).ClickAsync();
        await Expect(page.Locator(".note")).ToContainTextAsync("“glimmer” is no word of the hall any more.");

        // It can be told there as well, and what cannot be read is still there to be mended.
        await page.GetByLabel("A sheet says").FillAsync("gleam");
        await page.GetByLabel("A page would write").FillAsync("blarg");
        await page.GetByText("Keep this word").ClickAsync();
        await Expect(page.Locator(".note.bad")).ToContainTextAsync("“blarg” cannot be taken for “gleam”: a page has no word for \"blarg\".");
        await Expect(page.GetByLabel("A sheet says")).ToHaveValueAsync("gleam");
        await page.GetByLabel("A page would write").FillAsync("kick R");
        await page.GetByText("Keep this word").ClickAsync();
        await Expect(page.Locator(".hall-words .things")).ToContainTextAsync("“gleam” is “kick R”");
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help}"));
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back “gleam”" }).ClickAsync();
        await Expect(page.Locator(".hall-words .things")).ToHaveCountAsync(0);
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task A_file_is_read_and_kept_as_it_was()
    {
        using var forms = new Forms(studio);
        var bytes = Encoding.UTF8.GetBytes(Sheet);
        var read = await forms.LeadAsync("/paste/file", "/paste", new() { { new ByteArrayContent(bytes), "sheet", "barn night.txt" } });
        Assert.Matches("^/paste/[0-9a-f]{32}$", read);
        var kept = await forms.LeadAsync(read + "/keep", read, new() { { new StringContent("Barn Night\n\nPart A (4 counts)\n1-4 Vine right, touch L together\n"), "page" } });
        using var library = await studio.LookAsync();
        var id = long.Parse(kept.Split('/')[^1], System.Globalization.CultureInfo.InvariantCulture);
        var file = Assert.Single((await library.Details.OfAsync(id))!.Attachments);
        Assert.Equal("barn night.txt", file.FileName);
        Assert.Equal(bytes, await library.Details.FileAsync(id, file.Id));
        Assert.Contains("kept as a dance already", await forms.PageAsync(read));
    }

    [Fact]
    public async Task What_is_no_sheet_is_refused_in_words_and_nothing_is_kept()
    {
        using var forms = new Forms(studio);
        MultipartFormDataContent Form(string name, string value) => new() { { new StringContent(value), name } };
        Assert.Contains("There is no text in it", await forms.SendAsync("/paste/text", "/paste", Form("text", " \n")));
        Assert.Contains("far longer than a sheet", await forms.SendAsync("/paste/text", "/paste", Form("text", new string('x', 60_001))));
        Assert.Contains("No file was chosen", await forms.SendAsync("/paste/file", "/paste", Form("other", "x")));
        var harm = new MultipartFormDataContent { { new ByteArrayContent("%PDF-1.7 but no PDF"u8.ToArray()), "sheet", "<b>old</b>.pdf" } };
        Assert.Contains("“<b>old</b>.pdf” was not read:", await forms.SendAsync("/paste/file", "/paste", harm));
        var read = await forms.LeadAsync("/paste/text", "/paste", Form("text", Sheet));
        Assert.Contains("nothing was kept", await forms.SendAsync(read + "/keep", read, Form("page", " ")));
    }

    private static ILocator PageBox(IPage page) => page.GetByRole(AriaRole.Textbox, new() { Name = "The page it became" });

    // Nobody presses Tab more often than this to get anywhere on these pages.
    private static async Task TabToAsync(IPage page, string words)
    {
        for (var n = 0; n < 40; n++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (await page.EvaluateAsync<string>("() => document.activeElement.textContent.trim()") == words) return;
        }

        Assert.Fail($"Tab does not lead to {words}");
    }
}
