using Microsoft.EntityFrameworkCore;
using Surefoot.Dance;
using Surefoot.Library.Searching;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>Keeps the shelf: for every page the row that lists and searches read.</summary>
internal sealed class Shelving(Core core)
{
    // Pages read anew in one change; others wait no longer than these take (some 50 couples: a quarter of a second).
    private const int AtOnce = 50;

    private readonly Books _books = new();

    /// <summary>The words and figures in force for a notebook.</summary>
    public async Task<Books.Book> BookAsync(long notebook, CancellationToken stop)
    {
        await using var context = core.Context();
        return await _books.OfAsync(context, notebook, stop);
    }

    /// <summary>The row for a text, with the notebook's figures as they are now; belongs to no page yet.</summary>
    public async Task<ShelfRow> MakeAsync(long notebook, string text, CancellationToken stop)
    {
        await using var context = core.Context();
        return await MakeAsync(context, notebook, text, stop);
    }

    /// <summary>The same inside a change.</summary>
    public async Task<ShelfRow> MakeAsync(LibraryContext context, long notebook, string text, CancellationToken stop) =>
        Make(await _books.OfAsync(context, notebook, stop), text);

    /// <summary>Puts the first row of a page.</summary>
    public static void Put(LibraryContext context, ShelfRow shelf, PageRow page, long revision)
    {
        Fit(shelf, page, revision);
        context.Shelf.Add(shelf);
    }

    /// <summary>Puts a row for a page that had one; what is told beside the page comes along.</summary>
    public static async Task PutAgainAsync(LibraryContext context, ShelfRow shelf, PageRow page, long revision, CancellationToken stop)
    {
        Put(context, shelf, page, revision);
        await TellAsync(context, shelf, stop);
    }

    /// <summary>Writes names, tags and songs into the row anew.</summary>
    public static async Task TellAsync(LibraryContext context, ShelfRow shelf, CancellationToken stop)
    {
        shelf.Aliases = string.Join('\n', await context.Aliases.Where(a => a.PageId == shelf.PageId).OrderBy(a => a.Id).Select(a => a.Name).ToListAsync(stop));
        shelf.Tags = string.Join('\n', await context.Tags.Where(t => t.PageId == shelf.PageId).OrderBy(t => t.NameKey).Select(t => t.Name).ToListAsync(stop));
        var songs = await context.Songs.AsNoTracking().Where(s => s.PageId == shelf.PageId).OrderBy(s => s.Id).ToListAsync(stop);
        shelf.Songs = string.Join('\n', songs.Select(s => s.Artist.Length > 0 ? $"{s.Title} ({s.Artist})" : s.Title));
    }

    /// <summary>Reads anew every page whose row no longer fits: the notebook's figures changed, or Surefoot learned something.</summary>
    public async Task CatchUpAsync(CancellationToken stop)
    {
        List<long> notebooks;
        await using (var context = core.Context()) notebooks = await context.Notebooks.Select(n => n.Id).ToListAsync(stop);
        foreach (var notebook in notebooks) await CatchUpAsync(notebook, stop);
    }

    public async Task CatchUpAsync(long notebook, CancellationToken stop)
    {
        while (true)
        {
            await using var context = core.Context();
            var book = await _books.OfAsync(context, notebook, stop);
            var old = await context.Shelf
                .Where(s => s.NotebookId == notebook && s.ReadWith != book.Mark && !s.Deleted).OrderBy(s => s.PageId).Take(AtOnce)
                .Select(s => s.PageId).ToListAsync(stop);
            if (old.Count == 0) return;
            var texts = await context.Pages.Where(p => old.Contains(p.Id))
                .Join(context.Versions, p => new { PageId = p.Id, Number = p.Current }, v => new { v.PageId, v.Number }, (p, v) => new { v.PageId, v.Number, v.Text })
                .ToListAsync(stop);
            var made = texts.ToDictionary(t => t.PageId, t => (t.Number, Row: Make(book, t.Text)));
            var put = await core.ChangeAsync(
                async (inside, revision) =>
                {
                    var count = 0;
                    foreach (var page in await inside.Pages.Where(p => old.Contains(p.Id)).ToListAsync(stop))
                    {
                        // Kept anew in the meantime: that has made its row.
                        if (!made.TryGetValue(page.Id, out var row) || row.Number != page.Current) continue;
                        await inside.Shelf.Where(s => s.PageId == page.Id).ExecuteDeleteAsync(stop);
                        await PutAgainAsync(inside, row.Row, page, revision, stop);
                        count++;
                    }

                    return count;
                },
                stop);
            // Others are at the same pages, or these have no text to read: the next opening looks again.
            if (put == 0) return;
        }
    }

    private ShelfRow Make(Books.Book book, string text)
    {
        var row = Facts.Of(DanceReader.Read(text, book.Figures, core.Options.Solver, book.Heights));
        row.ReadWith = book.Mark;
        return row;
    }

    private static void Fit(ShelfRow shelf, PageRow page, long revision)
    {
        (shelf.PageId, shelf.NotebookId, shelf.Revision, shelf.Version) = (page.Id, page.NotebookId, revision, page.Current);
        (shelf.Name, shelf.Changed, shelf.Learned, shelf.Deleted) = (page.Name, page.Changed, page.Learned, page.Deleted is not null);
    }
}
