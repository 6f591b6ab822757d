using System.Globalization;
using System.Net;
using System.Text;
using Surefoot.Lessons;
using Surefoot.Lessons.Calendar;
using Surefoot.Lessons.Sheets;
using Surefoot.Web.Keeping;
using Surefoot.Web.Live;
using Surefoot.Web.Printing;

namespace Surefoot.Web.Teaching;

/// <summary>Lesson sheets, the overview and the calendar of a term, each at an address of its own.</summary>
internal static class TermPrinting
{
    public static void MapTermPrinting(this WebApplication app)
    {
        app.MapGet("/terms/{id:long}/lesson", Lesson);
        app.MapGet("/terms/{id:long}/overview", Overview);
        app.MapGet("/terms/{id:long}/calendar", Calendar);
    }

    private static async Task Lesson(HttpContext context, long id, TermRoom room, Shelves shelves)
    {
        var query = context.Request.Query;
        if (await room.ShowAsync(id) is not { Plan: { } plan } shown
            || !DateOnly.TryParseExact(query["day"], "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)
            || plan.On(day).Where(l => (query["at"].Count == 0 || query["at"] == DayWords.Time(l.Lesson.At))).ToList() is not { Count: > 0 } lessons)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        var options = HallSheet.Of((await shelves.NotebookAsync(shown.Kept.Notebook))?.Settings ?? new());
        await WriteAsync(context, shown, LessonHtml.Write(lessons.ConvertAll(l => LessonSheet.Of(plan, l, options)), options));
    }

    private static async Task Overview(HttpContext context, long id, TermRoom room, Shelves shelves)
    {
        if (await room.ShowAsync(id) is not { Plan: { } plan } shown)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        await WriteAsync(context, shown, OverviewHtml.Write(plan, HallSheet.Of((await shelves.NotebookAsync(shown.Kept.Notebook))?.Settings ?? new())));
    }

    private static async Task<IResult> Calendar(long id, TermRoom room, TimeProvider clock)
    {
        if (await room.ShowAsync(id) is not { Plan: { } plan }) return Results.NotFound();
        var file = CalendarFile.Write(plan, clock.GetUtcNow().UtcDateTime, lesson => LessonWords.InShort(plan.Case, lesson));
        return Results.File(Encoding.UTF8.GetBytes(file), "text/calendar; charset=utf-8", "term.ics");
    }

    /// <summary>A sheet with a line above it that paper leaves out, as for the sheet of a dance.</summary>
    private static async Task WriteAsync(HttpContext context, TermShown shown, string sheet)
    {
        var bar = $"<header class=\"print-bar\"><a class=\"home\" href=\"/terms/{shown.Kept.Id}\">Back to {WebUtility.HtmlEncode(TermDeeds.Title(shown.Kept.Title))}</a><button type=\"button\" class=\"primary\" data-print>Print</button></header>";
        sheet = sheet
            .Replace("</head>", $"<style>{SheetTones.ForScreens}</style><link rel=\"stylesheet\" href=\"/dist/print.css\"><link rel=\"icon\" href=\"/mark.svg\"><script src=\"/dist/look.js\"></script><script type=\"module\" src=\"/dist/print.js\"></script></head>", StringComparison.Ordinal)
            .Replace("<body>", $"<body>{bar}", StringComparison.Ordinal);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.ContentSecurityPolicy =
            $"default-src 'none'; script-src 'self'; style-src 'self' {string.Join(' ', SheetPage.Styles(sheet))}; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
        await context.Response.WriteAsync(sheet, Encoding.UTF8, context.RequestAborted);
    }
}
