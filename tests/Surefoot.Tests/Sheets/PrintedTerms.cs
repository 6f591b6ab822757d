using Surefoot.Draw;
using Surefoot.Lessons;
using Surefoot.Lessons.Sheets;
using Surefoot.Tests.Lessons;
using Surefoot.Tests.Support;
using UglyToad.PdfPig;

namespace Surefoot.Tests.Sheets;

/// <summary>A term's overview, printed by a real browser and read back from the paper.</summary>
public class PrintedTerms(Browser browser) : IClassFixture<Browser>
{
    [Theory]
    [InlineData(PaperSize.A4, "A4")]
    [InlineData(PaperSize.Letter, "Letter")]
    public async Task The_days_in_words_stand_together_on_one_page(PaperSize paper, string format)
    {
        var plan = Terms.Plan(Terms.Demo);
        var page = await browser.PageAsync();
        await page.SetContentAsync(OverviewHtml.Write(plan, new() { Paper = paper }));
        var bytes = await page.PdfAsync(new() { Format = format, PreferCSSPageSize = true, PrintBackground = true });
        await page.CloseAsync();
        using var pdf = PdfDocument.Open(bytes);
        var pages = pdf.GetPages().Select(p => string.Concat(JoinedLetters.Apart(p.Text).Where(c => !char.IsWhiteSpace(c)))).ToList();
        Assert.InRange(pages.Count, 1, 2);
        var days = Assert.Single(pages, p => p.Contains("Daybyday", StringComparison.Ordinal));
        foreach (var lesson in plan.Lessons) Assert.Contains(DayWords.Weekday(lesson.Lesson.Day).Replace(" ", "", StringComparison.Ordinal), days);
    }
}
