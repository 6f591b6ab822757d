using System.Text;
using Surefoot.Film.Captions;
using Surefoot.Film.Notes;
using Surefoot.Library;
using Surefoot.Library.Keeping;

namespace Surefoot.Web.Filming;

/// <summary>What a film's notes give as files: counts and calls as captions, chapters, the list of times, and the captions as they came.</summary>
internal static class FilmFiles
{
    private const string Vtt = "text/vtt; charset=utf-8";

    public static void MapFilmFiles(this WebApplication app)
    {
        var files = app.MapGroup("/film/{page:long}");
        files.MapGet("/counts.vtt", (long page, HttpContext context, FilmRoom room) => FileAsync(page, context, room, "counts.vtt", Vtt, notes => VttWriter.Captions(notes.Captions)));
        files.MapGet("/chapters.vtt", (long page, HttpContext context, FilmRoom room) => FileAsync(page, context, room, "chapters.vtt", Vtt, notes => VttWriter.Chapters(notes.AllChapters)));
        files.MapGet("/times.txt", (long page, HttpContext context, FilmRoom room) => FileAsync(page, context, room, "times.txt", "text/plain; charset=utf-8", TimeList.Of));
        files.MapGet("/as-they-came", AsTheyCame);
    }

    private static async Task<IResult> FileAsync(long page, HttpContext context, FilmRoom room, string ending, string kind, Func<FilmNotes, string> make)
    {
        context.Response.Headers.CacheControl = "no-store";
        return await room.ShowAsync(page) is { Notes: { } notes } shown
            ? Handed(context, $"{Pages.NameFor(shown.Title)}-{ending}", kind, make(notes))
            : Results.NotFound();
    }

    // Never shown as a page of the studio's: whatever a file holds, it is handed over.
    private static async Task<IResult> AsTheyCame(long page, HttpContext context, DanceLibrary library)
    {
        context.Response.Headers.CacheControl = "no-store";
        return await library.Pages.OneAsync(page) is { Deleted: null } && await library.Films.OfAsync(page) is { Captions.Length: > 0 } film
            ? Handed(context, film.FileName.Length > 0 ? film.FileName : "captions.txt", "application/octet-stream", film.Captions)
            : Results.NotFound();
    }

    private static IResult Handed(HttpContext context, string name, string kind, string text)
    {
        context.Response.Headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        return Results.File(Encoding.UTF8.GetBytes(text), kind, name);
    }
}
