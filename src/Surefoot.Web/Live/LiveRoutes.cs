using System.Text;
using System.Text.Json;
using Microsoft.AspNetCore.Mvc;
using Surefoot.Draw;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Live;

/// <summary>What an open page asks for while somebody types: problems at once, sheet and motion when there is time.</summary>
internal static class LiveRoutes
{
    /// <summary>Letters of a page that is read, at most: some ten thousand lines, longer than any dance.</summary>
    private const int MostLetters = 1 << 20;

    public static void MapLive(this WebApplication app)
    {
        app.MapGet("/words.json", async (HttpContext context, long? notebook, Shelves shelves) =>
        {
            var book = await shelves.BookAsync(notebook);
            await Json(context, json => WordLists.Write(json, book));
        });
        var live = app.MapGroup("/live/{desk:regex(^[a-z0-9-]{{8,40}}$)}");
        live.MapPost("", Read).WithMetadata(new RequestSizeLimitAttribute(KeepingRoutes.MostBytes)).DisableAntiforgery();
        live.MapGet("/motion", (HttpContext context, string desk, Desks desks) => desks.Find(desk) is { } found
            ? Json(context, json => MotionFile.Write(json, found.Reading, MotionFile.UsualRate, MotionFile.TempoOf(found.Reading, found.Settings.UsualTempo), (found.Settings.LeadWord, found.Settings.FollowWord)))
            : Forgotten(context));
        live.MapGet("/figure", (HttpContext context, string desk, string name, Desks desks) => desks.Find(desk) is { } found
            ? Json(context, json => FigureJson.Write(json, name, found.Text, found.Book, found.Settings))
            : Forgotten(context));
        live.MapGet("/sheet", (HttpContext context, string desk, string? look, int? doubts, Desks desks) => desks.Find(desk) is { } found
            ? SheetPage.Write(context, found, look, doubts)
            : Forgotten(context));
        live.MapGet("/tidy", (HttpContext context, string desk, Desks desks) => desks.Find(desk) is { } found
            ? Json(context, json => TidyJson.Write(json, found))
            : Forgotten(context));
    }

    private static async Task Read(HttpContext context, string desk, int number, long? notebook, Desks desks)
    {
        using var reader = new StreamReader(context.Request.Body, Encoding.UTF8);
        var text = await reader.ReadToEndAsync(context.RequestAborted);
        if (text.Length > MostLetters)
        {
            context.Response.StatusCode = StatusCodes.Status413PayloadTooLarge;
            return;
        }

        var read = await desks.ReadAsync(desk, number, text, notebook);
        await Json(context, json => ReadingJson.Write(json, read));
    }

    private static async Task Json(HttpContext context, Action<Utf8JsonWriter> document)
    {
        context.Response.ContentType = "application/json; charset=utf-8";
        context.Response.Headers.CacheControl = "no-store";
        using (var json = new Utf8JsonWriter(context.Response.BodyWriter)) document(json);
        await context.Response.BodyWriter.FlushAsync(context.RequestAborted);
    }

    // The window sends its text again when it hears this.
    private static Task Forgotten(HttpContext context)
    {
        context.Response.StatusCode = StatusCodes.Status404NotFound;
        return Task.CompletedTask;
    }
}
