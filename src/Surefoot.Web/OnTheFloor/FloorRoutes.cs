using System.Text;
using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.OnTheFloor;

/// <summary>
/// The screen that lies in her hand while she teaches, and what keeps it on the tablet when the studio is out of reach. Everything it
/// needs is in one page, one script and one style sheet; the keeper sees addresses under /on-the-floor/ only.
/// </summary>
internal static class FloorRoutes
{
    public static void MapOnTheFloor(this WebApplication app)
    {
        app.MapGet("/on-the-floor/keeper.js", Keeper);
        app.MapGet("/on-the-floor/{address}", Screen);
    }

    private static async Task Screen(string address, HttpContext context, Shelves shelves)
    {
        if (await shelves.FindAsync(address) is not { } page || await Side.FindAsync(shelves, Which(page.Id, context.Request.Query)) is not { } side)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        var settings = (await shelves.NotebookAsync(page.Notebook))?.Settings ?? new();
        var reading = DanceReader.Read(side.Text, side.Book);
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes)) FloorData.Write(json, page.Id, reading, settings);
        context.Response.ContentType = "text/html; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        await context.Response.WriteAsync(FloorPage.Of(page.Id, side.Title, reading.Score.Counts.Ceiling > 0, Encoding.UTF8.GetString(bytes.ToArray())), Encoding.UTF8, context.RequestAborted);
    }

    // A version or a draft in place of the page as it is now.
    private static string Which(long page, IQueryCollection query) =>
        query["draft"] is [{ Length: > 0 } draft] ? $"{page}.draft.{draft}" : query["version"] is [{ Length: > 0 } version] ? $"{page}.{version}" : $"{page}";

    // Lies beside the pages it keeps and not with the other scripts: a browser lets it see its own folder and no more.
    private static IResult Keeper(HttpContext context, IWebHostEnvironment home)
    {
        context.Response.Headers.CacheControl = "no-cache";
        var file = home.WebRootFileProvider.GetFileInfo("dist/floor-keeper.js");
        return file.Exists ? Results.Stream(file.CreateReadStream(), "text/javascript; charset=utf-8") : Results.NotFound();
    }
}
