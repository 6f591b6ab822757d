using Microsoft.Playwright;
using Surefoot.Library;
using Surefoot.Tests.Support;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Surefoot.Tests.Web;

/// <summary>Sheets as the browser prints them, read back from the paper.</summary>
public class PrintingSheets(Studio studio) : IClassFixture<Studio>
{
    // Points of 1/72 inch: A4 is 210 by 297 mm, Letter 8.5 by 11 inches (ISO 216, ANSI Y14.1).
    [Theory]
    [InlineData("", 595, 842)]
    [InlineData("?paper=letter", 612, 792)]
    public async Task On_paper_is_the_sheet_and_nothing_of_the_studio(string choice, int width, int height)
    {
        using var pdf = await PrintAsync("split-rail-cha-cha", choice);
        Assert.All(pdf.GetPages(), page => Assert.Equal((width, height), ((int)Math.Round(page.Width), (int)Math.Round(page.Height))));
        var text = Words(pdf);
        Assert.Contains("Split Rail Cha-Cha", text);
        Assert.Contains("Along the rail", text);
        Assert.DoesNotContain("Back to", text);
        Assert.DoesNotContain("Paper", text);
        Assert.DoesNotContain("as written", text);
    }

    [Fact]
    public async Task Whoever_prints_is_told_which_text_it_is_and_of_a_draft_beside_it()
    {
        await using var opened = await studio.OpenAsync("/dance/five-barns");
        var page = opened.Page;
        await page.Locator(".cm-content").FocusAsync();
        await page.Keyboard.PressAsync("Control+End");
        // In one piece, so that no draft has only the half of it.
        await page.Keyboard.InsertTextAsync("\n> Mind the gate");
        await Expect(page.Locator(".keeping")).ToContainTextAsync("Kept as a draft");
        await page.GotoAsync($"{studio.Address}/dance/five-barns/print?type=large");
        await Expect(page.Locator(".which")).ToContainTextAsync("This is version 1, the page now.");
        await Expect(page.Locator("main")).Not.ToContainTextAsync("Mind the gate");
        await page.GetByRole(AriaRole.Link, new() { Name = "print that" }).ClickAsync();
        await Expect(page.Locator(".which")).ToHaveTextAsync("This is a draft.");
        await Expect(page.GetByRole(AriaRole.Combobox, new() { Name = "Type" })).ToHaveValueAsync("large");
        await Expect(page.Locator("main")).ToContainTextAsync("Mind the gate");
        Assert.Empty(opened.Faults);
    }

    [Fact]
    public async Task Choices_change_what_is_printed()
    {
        using var usual = await PrintAsync("split-rail-cha-cha", "?pictures=none");
        using var large = await PrintAsync("split-rail-cha-cha", "?pictures=none&type=large");
        using var feet = await PrintAsync("split-rail-cha-cha", "?pictures=none&words=feet");
        Assert.True(Size(large) >= 16, $"large print is {Size(large)} points");
        Assert.True(Size(usual) < 14, $"usual print is {Size(usual)} points");
        var reading = DemoNotebook.Read(Path.Combine("circle", "split-rail-cha-cha.dance"));
        foreach (var (choice, only) in new (string, Dance.Basics.Role?)[] { ("", null), ("&role=lead", Dance.Basics.Role.Lead), ("&role=follow", Dance.Basics.Role.Follow) })
        {
            using var pdf = await PrintAsync("split-rail-cha-cha", "?pictures=none" + choice);
            Has(pdf, Draw.TextSheet.Write(reading.Score, new() { Only = only }, reading.Couple));
        }

        Has(feet, Draw.TextSheet.Write(reading.Score, new() { FeetOnly = true }, reading.Couple));
        Assert.NotEqual(Words(usual), Words(feet));
    }

    [Fact]
    public async Task A_sheet_for_one_role_has_nothing_of_the_other_and_feet_only_nothing_but_feet()
    {
        var reading = DemoNotebook.Read(Path.Combine("circle", "split-rail-cha-cha.dance"));
        HashSet<string> Words(Draw.SheetOptions options) => [.. Whole(Draw.TextSheet.Write(reading.Score, options, reading.Couple))];
        var (lead, follow, feet, all) = (Words(new() { Only = Dance.Basics.Role.Lead }), Words(new() { Only = Dance.Basics.Role.Follow }), Words(new() { FeetOnly = true }), Words(new()));
        foreach (var (choice, has, not) in new[] { ("&role=lead", lead, follow), ("&role=follow", follow, lead), ("&words=feet", feet, all) })
        {
            var others = not.Except(has, StringComparer.OrdinalIgnoreCase).ToList();
            Assert.NotEmpty(others);
            using var pdf = await PrintAsync("split-rail-cha-cha", "?pictures=none" + choice);
            var printed = pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => Bare(w.Text)).ToHashSet(StringComparer.OrdinalIgnoreCase);
            Assert.All(others, word => Assert.DoesNotContain(word, printed));
        }
    }

    [Fact]
    public async Task Large_print_says_all_that_the_usual_print_says_and_stays_on_the_paper()
    {
        using var usual = await PrintAsync("split-rail-cha-cha", "?pictures=none");
        using var large = await PrintAsync("split-rail-cha-cha", "?pictures=none&type=large");
        var there = Counted(large);
        Assert.All(Counted(usual), word => Assert.True(there.GetValueOrDefault(word.Key) >= word.Value, $"“{word.Key}” is {there.GetValueOrDefault(word.Key)} times in large print and {word.Value} times in the usual"));
        Assert.True(large.NumberOfPages > usual.NumberOfPages || Size(large) > Size(usual));
        Assert.All(large.GetPages().SelectMany(p => p.GetWords().Select(w => (w, p))), at => Assert.True(at.w.BoundingBox.Right <= at.p.Width && at.w.BoundingBox.Left >= 0, $"“{at.w.Text}” runs off the paper"));

        static Dictionary<string, int> Counted(PdfDocument pdf) => pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => Bare(w.Text)).Where(w => w.Length > 2 && w.All(char.IsLetter)).CountBy(w => w).ToDictionary();
    }

    [Fact]
    public async Task The_calls_are_another_kind_of_sheet()
    {
        using var pdf = await PrintAsync("split-rail-cha-cha", "?sheet=calls");
        var text = Words(pdf);
        Assert.Contains("Calls for Split Rail Cha-Cha", text);
        var reading = DemoNotebook.Read(Path.Combine("circle", "split-rail-cha-cha.dance"));
        foreach (var call in reading.Calls.Calls) Assert.Contains(call.Words, text);
        Assert.Single(pdf.GetPages());
        Assert.DoesNotContain("Back to", text);
        using var hers = await PrintAsync("split-rail-cha-cha", "?sheet=calls&role=follow");
        Assert.Contains("for the follow", Words(hers));
        Assert.DoesNotContain("lead", Words(hers));
    }

    [Fact]
    public async Task A_choice_is_shown_at_once_and_a_press_prints()
    {
        await using var opened = new Opened(await studio.BlankAsync());
        await opened.Page.AddInitScriptAsync("window.print = () => window.printed = true");
        await opened.Page.GotoAsync($"{studio.Address}/dance/split-rail-cha-cha/print");
        await opened.Page.SelectOptionAsync("select[name=role]", "follow");
        await Expect(opened.Page).ToHaveURLAsync($"{studio.Address}/dance/split-rail-cha-cha/print?role=follow");
        await Expect(opened.Page.Locator("select[name=role]")).ToHaveValueAsync("follow");
        // The button has the focus already: Enter is enough.
        await Expect(opened.Page.Locator("[data-print]")).ToBeFocusedAsync();
        await opened.Page.Keyboard.PressAsync("Enter");
        Assert.True(await opened.Page.EvaluateAsync<bool>("() => window.printed"));
    }

    [Fact]
    public async Task What_is_in_the_window_is_what_is_printed()
    {
        var page = await studio.AddAsync(Dances.Plain);
        await using var opened = await studio.OpenAsync($"/dance/{page}");
        await opened.WriteAsync(Dances.Plain.Replace("over", "not kept yet"));
        await Expect(opened.Standing).ToContainTextAsync("draft");
        await opened.Page.GetByRole(AriaRole.Link, new() { Name = "Print" }).ClickAsync();
        await Expect(opened.Page.Locator("main")).ToContainTextAsync("not kept yet");
        using (var library = await studio.LookAsync()) await library.Pages.KeepAsync(page, 1, Dances.Plain.Replace("over", "second"));
        await opened.Page.GotoAsync($"{studio.Address}/dance/{page}/print?version=1");
        await Expect(opened.Page.Locator("main")).ToContainTextAsync("over");
    }

    // A dancer in front of a screen has no command line.
    [Fact]
    public async Task A_page_that_cannot_be_danced_says_so_and_paper_names_the_places()
    {
        var broken = Dances.Plain.Replace("Walk forward L, R", "Walk forward L, L");
        var page = await studio.AddAsync(broken);
        await studio.Http.PostAsync($"{studio.Address}/live/tests-of-doubts?number=1", new StringContent(broken));
        foreach (var path in (string[])["/live/tests-of-doubts/sheet", $"/dance/{page}/print"])
        {
            var sheet = await studio.Http.GetStringAsync(studio.Address + path);
            Assert.Matches("cannot be danced as written; (the problems beside this sheet say why|look at [^.;]+, count [0-9]+)\\.", sheet);
            Assert.DoesNotContain("surefoot check", sheet);
        }
    }

    private async Task<PdfDocument> PrintAsync(string dance, string choice)
    {
        var page = await studio.BlankAsync();
        var answer = await page.GotoAsync($"{studio.Address}/dance/{dance}/print{choice}");
        Assert.Equal(200, answer!.Status);
        var bytes = await page.PdfAsync(new() { PreferCSSPageSize = true });
        await page.CloseAsync();
        return PdfDocument.Open(bytes);
    }

    // Every word of the plain sheet is on the paper, wherever the columns put it.
    private static void Has(PdfDocument pdf, string sheet)
    {
        var printed = pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => Bare(w.Text)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        Assert.All(Whole(sheet), word => Assert.Contains(word, printed));
    }

    private static IEnumerable<string> Whole(string sheet) => sheet.Split([' ', '\n', '|'], StringSplitOptions.RemoveEmptyEntries).Select(Bare).Where(w => w.Length > 2 && w.All(char.IsLetter));

    private static string Bare(string word) => JoinedLetters.Apart(word.Trim(',', '.', ':', ';', '(', ')', '"'));

    private static string Words(PdfDocument pdf) => string.Join(' ', pdf.GetPages().SelectMany(p => p.GetWords()).Select(w => w.Text));

    // The size most letters have.
    private static double Size(PdfDocument pdf) => pdf.GetPages().SelectMany(p => p.Letters).GroupBy(l => Math.Round(l.PointSize, 1)).OrderByDescending(g => g.Count()).First().Key;
}
