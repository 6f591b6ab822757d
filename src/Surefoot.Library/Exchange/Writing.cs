using System.IO.Compression;
using System.Text;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Surefoot.Dance.Text;
using Surefoot.Library.Keeping;
using Surefoot.Library.Store;
using Surefoot.Transcribe;

namespace Surefoot.Library.Exchange;

/// <summary>Writes a whole library as plain files.</summary>
internal sealed class Writing(LibraryContext context, Func<string, byte[], Task> put)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static async Task ToFolderAsync(LibraryContext context, string folder, CancellationToken stop) =>
        await new Writing(context, async (path, bytes) =>
        {
            // Every piece of these names was made safe when the page was named (see PageName).
            var file = Path.Combine(folder, path.Replace('/', Path.DirectorySeparatorChar));
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            await File.WriteAllBytesAsync(file, bytes, stop);
        }).AllAsync(stop);

    public static async Task ToZipAsync(LibraryContext context, Stream to, long? notebook, DateTimeOffset now, CancellationToken stop)
    {
        using var zip = new ZipArchive(to, ZipArchiveMode.Create, leaveOpen: true);
        await new Writing(context, async (path, bytes) =>
        {
            var entry = zip.CreateEntry(path, CompressionLevel.Fastest);
            // A zip cannot say a year before this one.
            entry.LastWriteTime = now.Year < 1980 ? new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero) : now.ToUniversalTime();
            await using var stream = await entry.OpenAsync(stop);
            await stream.WriteAsync(bytes, stop);
        }).AllAsync(stop, notebook);
    }

    private async Task AllAsync(CancellationToken stop, long? only = null)
    {
        var notebooks = new List<NotebookFile>();
        var folders = new HashSet<string>(StringComparer.Ordinal);
        foreach (var notebook in await context.Notebooks.AsNoTracking().Where(n => only == null || n.Id == only).OrderBy(n => n.NameKey).ThenBy(n => n.Id).ToListAsync(stop))
        {
            var folder = Free(PageName.ForTitle(notebook.Name), folders);
            var pages = new List<string>();
            var deleted = 0;
            foreach (var page in await context.Pages.AsNoTracking().Where(p => p.NotebookId == notebook.Id).OrderBy(p => p.NameKey).ThenBy(p => p.Id).ToListAsync(stop))
            {
                var path = page.Deleted is null ? page.Name : $"{Layout.Bin}/{++deleted}-{page.Name.Replace('/', '-')}";
                pages.Add(path);
                await PageAsync(page, $"{folder}/{path}", stop);
            }

            notebooks.Add(new(folder, notebook.Name, notebook.Created, Notebooks.Shown(notebook).Settings, pages, notebook.Deleted) { Terms = await TermsAsync(notebook.Id, folder, stop) });
        }

        // They belong to the hall and to no notebook.
        if (only is null && await context.Words.AsNoTracking().OrderBy(w => w.SaidKey).Select(w => new SheetWord(w.Said, w.Means)).ToListAsync(stop) is { Count: > 0 } words)
        {
            await put(Layout.Words, Utf8.GetBytes(SheetWords.Write(words)));
        }

        // Last: an export that was cut off has none, and is not taken for a whole one.
        await put(Layout.Library, JsonSerializer.SerializeToUtf8Bytes(new LibraryFile(Layout.Form, notebooks), ExportJson.Plain.LibraryFile));
    }

    private async Task<List<TermFile>?> TermsAsync(long notebook, string folder, CancellationToken stop)
    {
        var terms = new List<TermFile>();
        var names = new HashSet<string>(StringComparer.Ordinal);
        foreach (var term in await context.Terms.AsNoTracking().Where(t => t.NotebookId == notebook).OrderBy(t => t.Id).ToListAsync(stop))
        {
            var file = Layout.Terms + Free(PageName.ForTitle(term.Title), names) + Layout.Term;
            await put($"{folder}/{file}", Utf8.GetBytes(term.Text));
            terms.Add(new(term.Title, file, term.Version, term.Changed));
        }

        return terms.Count > 0 ? terms : null;
    }

    private async Task PageAsync(PageRow page, string path, CancellationToken stop)
    {
        var beside = path + PageName.KeptFolder + "/";
        var versions = new List<VersionFile>();
        await foreach (var version in context.Versions.AsNoTracking().Where(v => v.PageId == page.Id).OrderBy(v => v.Number).AsAsyncEnumerable().WithCancellation(stop))
        {
            var bytes = Utf8.GetBytes(version.Text);
            var file = $"{version.Number}.txt";
            if (version.Number == page.Current) await put(path + PageNames.Ending, bytes);
            await put(beside + file, bytes);
            versions.Add(new(version.Number, file, version.Saved, version.Note, version.By, version.Device, version.BasedOn, version.BesideOf, version.BroughtBack));
        }

        var drafts = new List<DraftFile>();
        foreach (var draft in await context.Drafts.AsNoTracking().Where(d => d.PageId == page.Id).OrderBy(d => d.Session).ToListAsync(stop))
        {
            var file = $"draft-{drafts.Count + 1}.txt";
            await put(beside + file, Utf8.GetBytes(draft.Text));
            drafts.Add(new(draft.Session, draft.Sequence, draft.BasedOn, file, draft.Saved));
        }

        var attachments = new List<AttachmentFile>();
        foreach (var row in await context.Attachments.AsNoTracking().Where(a => a.PageId == page.Id).OrderBy(a => a.Id).ToListAsync(stop))
        {
            var file = "";
            if (await context.Files.AsNoTracking().Where(f => f.AttachmentId == row.Id).Select(f => f.Bytes).SingleOrDefaultAsync(stop) is { } bytes)
            {
                file = $"files/{attachments.Count + 1}-{PageName.Piece(row.FileName)}";
                await put(beside + file, bytes);
            }

            attachments.Add(new(row.Title, row.Address, file, row.FileName, row.MediaType, row.Added));
        }

        FilmFile? film = null;
        if (await context.Films.AsNoTracking().SingleOrDefaultAsync(f => f.PageId == page.Id && f.Away == null, stop) is { } told)
        {
            film = new(told.Address, told.Captions.Length == 0 ? "" : Layout.Captions, told.FileName, told.Changed);
            if (told.Captions.Length > 0) await put(beside + Layout.Captions, Utf8.GetBytes(told.Captions));
        }

        var kept = new PageFile(
            page.Name, page.Created, page.Changed, page.Deleted, page.Current, page.Learned,
            await context.Aliases.Where(a => a.PageId == page.Id).OrderBy(a => a.Id).Select(a => a.Name).ToListAsync(stop),
            await context.Tags.Where(t => t.PageId == page.Id).OrderBy(t => t.NameKey).Select(t => t.Name).ToListAsync(stop),
            await context.Songs.Where(s => s.PageId == page.Id).OrderBy(s => s.Id).Select(s => new SongFile(s.Title, s.Artist, s.Tempo)).ToListAsync(stop),
            versions, drafts, attachments, film);
        await put(beside + Layout.Page, JsonSerializer.SerializeToUtf8Bytes(kept, ExportJson.Plain.PageFile));
    }

    private static string Free(string name, HashSet<string> taken)
    {
        var free = name;
        for (var number = 2; !taken.Add(free); number++) free = $"{name}-{number}";
        return free;
    }
}
