using System.Globalization;
using Surefoot.Library;

namespace Surefoot.Web.Deeds;

/// <summary>What is known of a dance beside its page: each thing is added and dropped by a form of its own.</summary>
internal static class DetailsDeeds
{
    /// <summary>Bytes of a file kept with a dance: what the library takes.</summary>
    public const int FileBytes = 50 << 20;

    public static void MapDetails(this WebApplication app)
    {
        app.MapGet("/details/{page:long}/file/{file:long}", FileOf);
        var deeds = app.MapGroup("/details/{page:long}").Guarded(Home);
        Map(deeds, "/title", "top", Retitle);
        Map(deeds, "/learned", "learned", (l, page, form) => l.Details.SetLearnedAsync(page, form["learned"].ToString()));
        Map(deeds, "/names/add", "names", (l, page, form) => l.Details.AddAliasAsync(page, form["name"].ToString()));
        Map(deeds, "/names/drop", "names", (l, page, form) => l.Details.DropAliasAsync(page, form["name"].ToString()));
        Map(deeds, "/tags/add", "tags", (l, page, form) => l.Details.AddTagAsync(page, form["tag"].ToString()));
        Map(deeds, "/tags/drop", "tags", (l, page, form) => l.Details.DropTagAsync(page, form["tag"].ToString()));
        Map(deeds, "/songs/add", "songs", Song);
        Map(deeds, "/songs/drop", "songs", (l, page, form) => l.Details.DropSongAsync(page, Number(form["song"])));
        Map(deeds, "/films/add", "films", (l, page, form) => l.Details.AddFilmAsync(page, form["address"].ToString().Trim(), form["title"].ToString()));
        Map(deeds, "/attachments/drop", "films", (l, page, form) => l.Details.DropAttachmentAsync(page, Number(form["attachment"])));
        Map(app.MapGroup("/details/{page:long}").Guarded(Home, FileBytes, files: 1), "/files/add", "films", Keep);
    }

    private static string Home(HttpContext context) => $"/details/{context.Request.RouteValues["page"]}";

    private static void Map(RouteGroupBuilder deeds, string way, string mark, Func<DanceLibrary, long, IFormCollection, Task<Refusal?>> deed) =>
        deeds.MapPost(way, async (HttpContext context, long page, DanceLibrary library, Notes notes) =>
            await deed(library, page, context.Request.Form) is { } refusal
                ? notes.Say($"/details/{page}#{mark}", new(refusal.Why, Bad: true))
                : ShelfDeeds.To($"/details/{page}#{mark}"));

    // A new title is a new version of the page, whose first line it is.
    private static async Task<Refusal?> Retitle(DanceLibrary library, long page, IFormCollection form)
    {
        var title = StartingPage.Title(form["title"]);
        if (title.Length == 0) return new("A dance needs a title.");
        if (await library.Pages.OneAsync(page) is not { Deleted: null } info || await library.Pages.TextAsync(page, info.Current) is not { } text) return new(ShelfDeeds.Gone.Says);
        var retitled = StartingPage.Retitled(text, title);
        if (Titles.Of(retitled, "") != title) return new("That would not read as a title: it reads as a line of the dance.");
        switch (await library.Pages.KeepAsync(page, info.Current, retitled, new(Note: $"Called {title}")))
        {
            case NotKept not: return new(not.Why);
            case KeptBeside: return new("Somebody else has just changed this dance. Your title is kept in its history; please look there.");
        }

        return null;
    }

    private static Task<Refusal?> Song(DanceLibrary library, long page, IFormCollection form)
    {
        var told = form["tempo"].ToString().Trim().Replace(',', '.');
        double? tempo = double.TryParse(told, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
        return told.Length > 0 && tempo is null
            ? Task.FromResult<Refusal?>(new("A tempo is given in counts a minute, such as 112."))
            : library.Details.AddSongAsync(page, form["title"].ToString(), form["artist"].ToString(), tempo);
    }

    private static async Task<Refusal?> Keep(DanceLibrary library, long page, IFormCollection form)
    {
        if (form.Files.GetFile("file") is not { Length: > 0 } file) return new("No file was chosen, or it is empty.");
        if (file.Length > FileBytes) return new($"This file is larger than a file may be ({FileBytes >> 20} MB).");
        var bytes = new byte[file.Length];
        await using var stream = file.OpenReadStream();
        await stream.ReadExactlyAsync(bytes);
        return await library.Details.AddFileAsync(page, file.FileName, FileKinds.Of(bytes), bytes, form["title"].ToString());
    }

    // Pictures are shown, everything else is only handed over: nothing that was uploaded acts as a page of the studio.
    private static async Task<IResult> FileOf(HttpContext context, long page, long file, DanceLibrary library)
    {
        if (await library.Details.OfAsync(page) is not { } details || details.Attachments.FirstOrDefault(a => a.Id == file) is not { } attachment) return Results.NotFound();
        if (await library.Details.FileAsync(page, file) is not { } bytes) return Results.NotFound();
        context.Response.Headers.ContentSecurityPolicy = "default-src 'none'; sandbox";
        context.Response.Headers.CacheControl = "no-store";
        var kind = FileKinds.Of(bytes);
        return FileKinds.IsPicture(kind) ? Results.Bytes(bytes, kind) : Results.File(bytes, "application/octet-stream", attachment.FileName);
    }

    private static long Number(string? text) => long.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
