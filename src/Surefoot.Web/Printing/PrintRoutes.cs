using System.Text;
using Surefoot.Dance;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;
using Surefoot.Draw;
using Surefoot.Web.Keeping;
using Surefoot.Web.Live;

namespace Surefoot.Web.Printing;

/// <summary>A sheet as a page of its own, for the browser's own print: what is on paper is the sheet and nothing of the studio.</summary>
internal static class PrintRoutes
{
    public static void MapPrinting(this WebApplication app) => app.MapGet("/dance/{address}/print", Print);

    private static async Task Print(string address, HttpContext context, Shelves shelves, ILinearSolver solver)
    {
        var query = context.Request.Query;
        var page = await shelves.FindAsync(address);
        var which = Which(query).ToList();
        if (page is null || await Side.FindAsync(shelves, which is [var (name, value)] ? $"{page.Id}.{(name == "draft" ? "draft." : "")}{value}" : $"{page.Id}") is not { } side)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        // Whoever comes by the page's own address may have more in hand than was kept.
        var draft = which.Count > 0 ? null : (await shelves.Library.Drafts.OfAsync(page.Id)).Where(d => d.Text != side.Text).MaxBy(d => d.Saved)?.Session;
        var settings = (await shelves.NotebookAsync(page.Notebook))?.Settings ?? new();
        var reading = DanceReader.Read(side.Text, side.Book, solver, settings.Heights);
        var choice = PrintChoice.Of(query, settings);
        var couples = reading.Score.Facts.ForCouples;
        var options = choice.Options(settings, couples, [.. reading.Problems.Where(p => p.Severity == Severity.Error)]);
        var sheet = choice.Calls ? CallHtml.Write(reading, options) : HtmlSheet.Write(reading.Score, reading.Motion, options, reading.Couple);
        // Words of a page are escaped on the sheet, so each of these stands in it once.
        sheet = sheet
            .Replace("</head>", $"<style>{SheetTones.ForScreens}</style><link rel=\"stylesheet\" href=\"/dist/print.css\"><link rel=\"icon\" href=\"/mark.svg\"><script src=\"/dist/look.js\"></script><script type=\"module\" src=\"/dist/print.js\"></script></head>", StringComparison.Ordinal)
            .Replace("<body>", $"<body>{PrintBar.Of(page, side.Title, choice, settings, couples, which, side.Says, draft)}", StringComparison.Ordinal);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        context.Response.Headers.ContentSecurityPolicy =
            $"default-src 'none'; script-src 'self'; style-src 'self' {string.Join(' ', SheetPage.Styles(sheet))}; img-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";
        await context.Response.WriteAsync(sheet, Encoding.UTF8, context.RequestAborted);
    }

    // A version or a draft in place of the page as it is now.
    private static IEnumerable<(string Name, string Value)> Which(IQueryCollection query)
    {
        if (query["draft"] is [{ Length: > 0 } draft]) yield return ("draft", draft);
        else if (query["version"] is [{ Length: > 0 } version]) yield return ("version", version);
    }
}
