using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Couple;
using Surefoot.Draw;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Watching;

/// <summary>The motion of a kept dance, for the room in which it is watched.</summary>
internal static class WatchRoutes
{
    public static void MapWatching(this WebApplication app) => app.MapGet("/dance/{address}/motion", Motion);

    private static async Task Motion(string address, HttpContext context, Shelves shelves, ILinearSolver solver)
    {
        if (await Side.FindAsync(shelves, address) is not { } side)
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }

        var settings = (await shelves.NotebookAsync(side.Page.Notebook))?.Settings ?? new();
        var reading = DanceReader.Read(side.Text, side.Book, solver, settings.Heights, settings.Measures);
        context.Response.ContentType = "application/json; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        using (var json = new Utf8JsonWriter(context.Response.BodyWriter)) MotionFile.Write(json, reading, MotionFile.UsualRate, MotionFile.TempoOf(reading, settings.UsualTempo), (settings.LeadWord, settings.FollowWord));
        await context.Response.BodyWriter.FlushAsync(context.RequestAborted);
    }
}
