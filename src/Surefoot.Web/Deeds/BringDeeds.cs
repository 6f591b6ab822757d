using System.IO.Compression;
using Surefoot.Library;

namespace Surefoot.Web.Deeds;

/// <summary>Takes in what the browser's file chooser gives: a zip, a folder's files, or pasted text.</summary>
internal static class BringDeeds
{
    /// <summary>Bytes of an upload: ten thousand dances with their versions are some 150 MB packed. Working value.</summary>
    public const long UploadBytes = 300L << 20;

    /// <summary>Files of a folder: more than a browser sends comfortably. Working value.</summary>
    public const int FolderFiles = 5000;

    public static void MapBring(this WebApplication app)
    {
        app.MapGet("/bring/{word:regex(^[0-9a-f]{{32}}$)}/state", (string word, Bringing bringing) => bringing.Find(word) is { } one
            ? Results.Json(new BringState(one.Work.IsCompleted, one.Progress.Done, one.Progress.Pages))
            : Results.NotFound());
        app.MapGroup("/bring").Guarded(_ => "/bring").MapPost("/text", Text);
        app.MapGroup("/bring").Guarded(_ => "/bring", UploadBytes, files: 1).MapPost("/zip", Zip);
        app.MapGroup("/bring").Guarded(_ => "/bring", UploadBytes, FolderFiles).MapPost("/folder", Folder);
    }

    private static async Task<IResult> Text(HttpContext context, DanceLibrary library, Bringing bringing, Notes notes)
    {
        var text = context.Request.Form["text"].ToString().ReplaceLineEndings("\n");
        if (string.IsNullOrWhiteSpace(text)) return notes.Say("/bring", new("There is no text in it yet.", Bad: true));
        var home = await Homes.OfAsync(library, context.Request.Form["notebook"]);
        var title = Titles.Of(text, "Pasted text");
        return await Lead(bringing, "the pasted text", async _ =>
        {
            var (page, refusal) = await library.Pages.AddAsync(home, text);
            return new([new(title, page is null ? Taken.NotRead : Taken.New, page?.Id, refusal?.Why ?? "")], 0);
        });
    }

    private static async Task<IResult> Zip(HttpContext context, DanceLibrary library, Bringing bringing, Notes notes)
    {
        if (context.Request.Form.Files.GetFile("zip") is not { Length: > 0 } file) return notes.Say("/bring", new("No zip was chosen, or it is empty.", Bad: true));
        var home = await Homes.OfAsync(library, context.Request.Form["notebook"]);
        var stream = TempFile.Make();
        await file.CopyToAsync(stream, context.RequestAborted);
        return await Lead(bringing, file.FileName, progress => TakeAsync(library, home, stream, progress));
    }

    // The files go the way a zip goes, so that the library looks at their names and sizes as it looks at a zip's.
    private static async Task<IResult> Folder(HttpContext context, DanceLibrary library, Bringing bringing, Notes notes)
    {
        var files = context.Request.Form.Files.GetFiles("files");
        if (!files.Any(f => f.Length > 0)) return notes.Say("/bring", new("No files were chosen, or they are empty.", Bad: true));
        var home = await Homes.OfAsync(library, context.Request.Form["notebook"]);
        var stream = TempFile.Make();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var file in files)
            {
                await using var to = await zip.CreateEntry(file.FileName, CompressionLevel.NoCompression).OpenAsync(context.RequestAborted);
                await file.CopyToAsync(to, context.RequestAborted);
            }
        }

        return await Lead(bringing, files.Count == 1 ? files[0].FileName : $"{files.Count} files", progress => TakeAsync(library, home, stream, progress));
    }

    private static async Task<ImportReport> TakeAsync(DanceLibrary library, long home, FileStream stream, IProgress<ImportProgress> progress)
    {
        await using (stream)
        {
            stream.Position = 0;
            return await library.Exchange.TakeZipAsync(stream, home, progress: progress);
        }
    }

    private static async Task<IResult> Lead(Bringing bringing, string what, Func<IProgress<ImportProgress>, Task<ImportReport>> take) =>
        ShelfDeeds.To($"/bring/{(await bringing.BeginAsync(what, take)).Word}");
}

internal sealed record BringState(bool Ready, int Done, int Pages);
