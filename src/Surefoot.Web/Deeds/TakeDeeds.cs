using System.Globalization;
using Surefoot.Library;

namespace Surefoot.Web.Deeds;

/// <summary>Hands the library out, and makes it again what a copy holds.</summary>
internal static class TakeDeeds
{
    /// <summary>Bytes of a copy that can be brought back in the browser; larger ones are brought back by the file. Working value.</summary>
    public const long CopyBytes = 1L << 30;

    public static void MapTake(this WebApplication app)
    {
        app.MapGet("/take/library", (HttpContext context, DanceLibrary library, TimeProvider clock) => Give(context, library, clock, null, "library"));
        app.MapGet("/take/notebook/{notebook:long}", async (HttpContext context, long notebook, DanceLibrary library, TimeProvider clock) =>
            await library.Notebooks.OneAsync(notebook) is { } one ? await Give(context, library, clock, notebook, Surefoot.Library.Keeping.Pages.NameFor(one.Name)) : Results.NotFound());
        app.MapGet("/take/copy", Copy);
        app.MapGroup("/take").Guarded(_ => "/take", CopyBytes, files: 1).MapPost("/back", Ask);
        app.MapGroup("/take").Guarded(_ => "/take").MapPost("/replace/{word}", Replace);
    }

    private static async Task<IResult> Give(HttpContext context, DanceLibrary library, TimeProvider clock, long? notebook, string name)
    {
        var stream = TempFile.Make();
        await library.Exchange.GiveZipAsync(stream, notebook, context.RequestAborted);
        stream.Position = 0;
        return Results.Stream(stream, "application/zip", $"surefoot-{name}-{Today(clock)}.zip");
    }

    private static async Task<IResult> Copy(HttpContext context, DanceLibrary library, Notes notes, TimeProvider clock)
    {
        var name = TempFile.Name();
        if (await library.Copies.MakeAsync(name, context.RequestAborted) is { } refusal) return notes.Say("/take", new(refusal.Why, Bad: true));
        var stream = TempFile.Last(name);
        var head = new byte[2];
        var zip = await stream.ReadAtLeastAsync(head, 2, throwOnEndOfStream: false, context.RequestAborted) == 2 && head is [(byte)'P', (byte)'K'];
        stream.Position = 0;
        return Results.Stream(stream, "application/octet-stream", $"surefoot-copy-{Today(clock)}.{(zip ? "zip" : "db")}");
    }

    // Nothing is replaced yet: the page it leads to asks.
    private static async Task<IResult> Ask(HttpContext context, WaitingCopies copies, Notes notes)
    {
        if (context.Request.Form.Files.GetFile("copy") is not { Length: > 0 } file) return notes.Say("/take", new("No copy was chosen, or it is empty.", Bad: true));
        var name = TempFile.Name();
        await using (var stream = new FileStream(name, FileMode.CreateNew)) await file.CopyToAsync(stream, context.RequestAborted);
        return ShelfDeeds.To($"/take/back/{copies.Put(name, file.FileName, before: false)}");
    }

    private static async Task<IResult> Replace(string word, DanceLibrary library, WaitingCopies copies, Notes notes)
    {
        if (copies.Take(word) is not { } copy) return notes.Say("/take", new("That copy is not waiting any more. Please choose it again.", Bad: true));
        try
        {
            // What is replaced stays at hand until the studio is closed.
            var before = TempFile.Name();
            if (await library.Copies.MakeAsync(before) is { } unsafely) return notes.Say("/take", new($"Nothing was replaced, because what is here could not be copied first. {unsafely.Why}", Bad: true));
            if (await library.Copies.BringBackAsync(copy.File) is { } refusal)
            {
                File.Delete(before);
                return notes.Say("/take", new(refusal.Why, Bad: true));
            }

            var way = copies.Put(before, "what was here before", before: true);
            return notes.Say("/take", new("The library is what the copy held.", Undo: $"/take/back/{way}", UndoSays: "Bring back what was here before"));
        }
        finally
        {
            File.Delete(copy.File);
        }
    }

    private static string Today(TimeProvider clock) => clock.GetLocalNow().ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
