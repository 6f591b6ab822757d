using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>Other names, tags, songs, films and files of pages. Each thing is added and dropped by itself, so that two people do not undo each other's.</summary>
public sealed class Details
{
    private readonly Core _core;

    internal Details(Core core) => _core = core;

    public async Task<PageDetails?> OfAsync(long page, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        if (await context.Pages.AsNoTracking().SingleOrDefaultAsync(p => p.Id == page, stop) is not { } row) return null;
        return new(
            row.Learned,
            await context.Aliases.Where(a => a.PageId == page).OrderBy(a => a.Id).Select(a => a.Name).ToListAsync(stop),
            await context.Tags.Where(t => t.PageId == page).OrderBy(t => t.NameKey).Select(t => t.Name).ToListAsync(stop),
            await context.Songs.Where(s => s.PageId == page).OrderBy(s => s.Id).Select(s => new Song(s.Id, s.Title, s.Artist, s.Tempo)).ToListAsync(stop),
            [.. (await context.Attachments.AsNoTracking().Where(a => a.PageId == page).OrderBy(a => a.Id).ToListAsync(stop)).Select(Shown)]);
    }

    public Task<Refusal?> SetLearnedAsync(long page, string learned, CancellationToken stop = default)
    {
        var (clean, refusal) = Door.Note(learned, "What is said of where it was learned", _core.Limits);
        return ChangeAsync(page, refusal, (_, row) => Done(() => row.Learned = clean), stop);
    }

    /// <summary>Adds a name by which the dance is known elsewhere; one it has already changes nothing.</summary>
    public Task<Refusal?> AddAliasAsync(long page, string name, CancellationToken stop = default)
    {
        var (clean, refusal) = Named(name, "The name");
        var key = Folding.Key(clean);
        return ChangeAsync(
            page,
            refusal,
            async (context, _) =>
            {
                if (await context.Aliases.AnyAsync(a => a.PageId == page && a.NameKey == key, stop)) return null;
                if (await context.Aliases.CountAsync(a => a.PageId == page, stop) >= _core.Limits.PerPage) return TooMany("names");
                context.Aliases.Add(new() { PageId = page, Name = clean, NameKey = key });
                return null;
            },
            stop);
    }

    public Task<Refusal?> DropAliasAsync(long page, string name, CancellationToken stop = default)
    {
        var key = Folding.Key(name);
        return ChangeAsync(page, null, (context, _) => Gone(context.Aliases.Where(a => a.PageId == page && a.NameKey == key).ExecuteDeleteAsync(stop)), stop);
    }

    public Task<Refusal?> AddTagAsync(long page, string tag, CancellationToken stop = default)
    {
        var (clean, refusal) = Named(tag, "The tag");
        var key = Folding.Key(clean);
        return ChangeAsync(
            page,
            refusal,
            async (context, _) =>
            {
                if (await context.Tags.AnyAsync(t => t.PageId == page && t.NameKey == key, stop)) return null;
                if (await context.Tags.CountAsync(t => t.PageId == page, stop) >= _core.Limits.PerPage) return TooMany("tags");
                context.Tags.Add(new() { PageId = page, Name = clean, NameKey = key });
                return null;
            },
            stop);
    }

    public Task<Refusal?> DropTagAsync(long page, string tag, CancellationToken stop = default)
    {
        var key = Folding.Key(tag);
        return ChangeAsync(page, null, (context, _) => Gone(context.Tags.Where(t => t.PageId == page && t.NameKey == key).ExecuteDeleteAsync(stop)), stop);
    }

    /// <param name="tempo">Counts a minute, or null.</param>
    public Task<Refusal?> AddSongAsync(long page, string title, string artist = "", double? tempo = null, CancellationToken stop = default)
    {
        var (clean, refusal) = Named(title, "The song's title");
        var (by, bad) = Door.Name(artist, "The artist's name", _core.Limits);
        // Far outside what anybody dances to; in counts a minute.
        if (tempo is <= 0 or > 1000 or double.NaN) bad ??= new("A tempo is given in counts a minute, such as 112.");
        return ChangeAsync(
            page,
            refusal ?? bad,
            async (context, _) =>
            {
                if (await context.Songs.CountAsync(s => s.PageId == page, stop) >= _core.Limits.PerPage) return TooMany("songs");
                context.Songs.Add(new() { PageId = page, Title = clean, Artist = by, Tempo = tempo });
                return null;
            },
            stop);
    }

    public Task<Refusal?> DropSongAsync(long page, long song, CancellationToken stop = default) =>
        ChangeAsync(page, null, (context, _) => Gone(context.Songs.Where(s => s.PageId == page && s.Id == song).ExecuteDeleteAsync(stop)), stop);

    /// <summary>Keeps where a film of the dance can be seen.</summary>
    public Task<Refusal?> AddFilmAsync(long page, string address, string title = "", CancellationToken stop = default)
    {
        var (clean, refusal) = Door.Note(address, "The address", _core.Limits);
        // An address is opened by a click one day: nothing but the web's own two kinds, so that a click runs nothing.
        if (!IsFilm(clean)) refusal ??= new("A film's address begins with https:// or http://.");
        var (called, bad) = Door.Name(title, "The title", _core.Limits);
        return AttachAsync(page, refusal ?? bad, new() { Address = clean, Title = called }, bytes: null, stop);
    }

    /// <summary>Keeps a file with the page.</summary>
    public Task<Refusal?> AddFileAsync(long page, string fileName, string mediaType, byte[] bytes, string title = "", CancellationToken stop = default)
    {
        var (clean, refusal) = Door.Name(fileName, "The file's name", _core.Limits);
        clean = PageName.Piece(clean.Replace('\\', '/').Split('/')[^1]);
        if (clean.Length == 0) clean = "file";
        var (media, bad) = Door.Name(mediaType, "The file's kind", _core.Limits);
        var (called, worse) = Door.Name(title, "The title", _core.Limits);
        if (bytes.Length > _core.Limits.FileBytes) worse ??= new($"This file is larger than a file may be ({_core.Limits.FileBytes >> 20} MB).");
        return AttachAsync(page, refusal ?? bad ?? worse, new() { FileName = clean, MediaType = media, Title = called, Size = bytes.Length }, bytes, stop);
    }

    /// <summary>The bytes of a stored file, or null.</summary>
    public async Task<byte[]?> FileAsync(long page, long attachment, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await context.Attachments.Where(a => a.PageId == page && a.Id == attachment)
            .Join(context.Files, a => a.Id, f => f.AttachmentId, (_, f) => f.Bytes).SingleOrDefaultAsync(stop);
    }

    public Task<Refusal?> DropAttachmentAsync(long page, long attachment, CancellationToken stop = default) =>
        ChangeAsync(page, null, (context, _) => Gone(context.Attachments.Where(a => a.PageId == page && a.Id == attachment).ExecuteDeleteAsync(stop)), stop);

    internal static bool IsFilm(string address) => Uri.TryCreate(address, UriKind.Absolute, out var where) && where.Scheme is ("http" or "https");

    internal static Attachment Shown(AttachmentRow row) => new(row.Id, row.Title, row.Address, row.FileName, row.MediaType, row.Size, row.Added);

    private Task<Refusal?> AttachAsync(long page, Refusal? refusal, AttachmentRow row, byte[]? bytes, CancellationToken stop) => ChangeAsync(
        page,
        refusal,
        async (context, _) =>
        {
            if (await context.Attachments.CountAsync(a => a.PageId == page, stop) >= _core.Limits.PerPage) return TooMany("films and files");
            (row.PageId, row.Added) = (page, _core.Now);
            context.Attachments.Add(row);
            await context.SaveChangesAsync(stop);
            if (bytes is not null) context.Files.Add(new() { AttachmentId = row.Id, Bytes = bytes });
            return null;
        },
        stop);

    private async Task<Refusal?> ChangeAsync(long page, Refusal? refusal, Func<LibraryContext, PageRow, Task<Refusal?>> change, CancellationToken stop)
    {
        if (refusal is not null) return refusal;
        return await _core.ChangeAsync(
            async (context, revision) =>
            {
                if (await Pages.LiveAsync(context, page, stop) is not { } row) return Refusal.NoPage;
                if (await change(context, row) is { } why) return why;
                await context.SaveChangesAsync(stop);
                var shelf = await context.Shelf.SingleAsync(s => s.PageId == page, stop);
                (shelf.Revision, shelf.Learned) = (revision, row.Learned);
                await Shelving.TellAsync(context, shelf, stop);
                return null;
            },
            stop);
    }

    private (string Text, Refusal? Refusal) Named(string name, string what)
    {
        var (clean, refusal) = Door.Name(name, what, _core.Limits);
        return (clean, refusal ?? (Folding.Key(clean).Length == 0 ? new($"{what} has no letters.") : null));
    }

    private Refusal TooMany(string what) => new($"This page has {_core.Limits.PerPage} {what} already, which is as many as it may have.");

    private static Task<Refusal?> Done(Action change)
    {
        change();
        return Task.FromResult<Refusal?>(null);
    }

    private static async Task<Refusal?> Gone(Task<int> deleting)
    {
        await deleting;
        return null;
    }
}
