using Microsoft.EntityFrameworkCore;
using Surefoot.Dance.Figures;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>Pages and their versions. A version that was kept is never changed and never lost.</summary>
public sealed class Pages
{
    private readonly Core _core;
    private readonly Shelving _shelving;

    internal Pages(Core core, Shelving shelving) => (_core, _shelving) = (core, shelving);

    /// <summary>A new page with its first version. Without a name it is called by its title; a name that is taken gets a number.</summary>
    public async Task<(PageInfo? Page, Refusal? Refusal)> AddAsync(long notebook, string text, string? name = null, Signature? signature = null, CancellationToken stop = default)
    {
        var (clean, refusal) = Door.Page(text, _core.Limits);
        var (signed, bad) = Signed(signature);
        if ((refusal ?? bad) is { } why) return (null, why);
        var shelf = await _shelving.MakeAsync(notebook, clean, stop);
        var result = await _core.ChangeAsync<(PageInfo?, Refusal?)>(
            async (context, revision) =>
            {
                if (!await context.Notebooks.AnyAsync(n => n.Id == notebook && n.Deleted == null, stop)) return (null, Refusal.NoNotebook);
                var free = await FreeNameAsync(context, notebook, name is null ? PageName.ForTitle(shelf.Title) : PageName.Clean(name), stop);
                var now = _core.Now;
                var page = new PageRow { NotebookId = notebook, Name = free, NameKey = Folding.Key(free), IsFigures = shelf.IsFigures, Current = 1, Created = now, Changed = now };
                context.Pages.Add(page);
                await context.SaveChangesAsync(stop);
                context.Versions.Add(Version(page.Id, 1, clean, now, signed, basedOn: 0));
                Shelving.Put(context, shelf, page, revision);
                return (Shown(page), null);
            },
            stop);
        if (shelf.IsFigures) await _shelving.CatchUpAsync(notebook, stop);
        return result;
    }

    public async Task<PageInfo?> OneAsync(long page, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await context.Pages.AsNoTracking().SingleOrDefaultAsync(p => p.Id == page, stop) is { } row ? Shown(row) : null;
    }

    /// <summary>The page of a name in a notebook, or null.</summary>
    public async Task<PageInfo?> NamedAsync(long notebook, string name, CancellationToken stop = default)
    {
        var key = Folding.Key(PageName.Clean(name));
        await using var context = _core.Context();
        return await context.Pages.AsNoTracking().SingleOrDefaultAsync(p => p.NotebookId == notebook && p.NameKey == key && p.Deleted == null, stop) is { } row ? Shown(row) : null;
    }

    /// <summary>The text of a version, of the page as it is now when none is named; null where there is none.</summary>
    public async Task<string?> TextAsync(long page, int? version = null, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await TextAsync(context, page, version, stop);
    }

    /// <summary>
    /// Keeps a text as a version. <paramref name="basedOn"/> is the version the writer had before them: when the
    /// page has moved on since, the text is kept beside what is there (see <see cref="KeptBeside"/>).
    /// </summary>
    /// <param name="session">The editor whose draft this makes needless; null for none.</param>
    public async Task<KeepResult> KeepAsync(long page, int basedOn, string text, Signature? signature = null, string? session = null, CancellationToken stop = default)
    {
        var (clean, refusal) = Door.Page(text, _core.Limits);
        var (signed, bad) = Signed(signature);
        if ((refusal ?? bad) is { } why) return new NotKept(why.Why);
        return await KeepAsync(page, basedOn, clean, signed, session, broughtBack: null, stop);
    }

    /// <summary>Makes an earlier version the page again, as a new version: what stood in between stays in the history.</summary>
    public async Task<KeepResult> BringBackAsync(long page, int version, Signature? signature = null, CancellationToken stop = default)
    {
        var (signed, bad) = Signed(signature);
        if (bad is not null) return new NotKept(bad.Why);
        if (await OneAsync(page, stop) is not { } info || await TextAsync(page, version, stop) is not { } text) return new NotKept("There is no such version of this page.");
        return await KeepAsync(page, info.Current, text, signed, session: null, version, stop);
    }

    /// <summary>The words and figures in force on the pages of a notebook: what Surefoot brings along, with the notebook's figure pages over it.</summary>
    public async Task<FigureBook> FiguresAsync(long notebook, CancellationToken stop = default) => (await _shelving.BookAsync(notebook, stop)).Figures;

    /// <summary>Every version of a page, the newest first.</summary>
    public async Task<IReadOnlyList<VersionInfo>> HistoryAsync(long page, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await context.Versions.Where(v => v.PageId == page).OrderByDescending(v => v.Number)
            .Select(v => new VersionInfo(v.Number, v.Saved, v.Note, v.By, v.Device, v.BasedOn, v.BesideOf, v.BroughtBack))
            .ToListAsync(stop);
    }

    /// <summary>The page's name that goes with a title: "Five Barns" is "five-barns".</summary>
    public static string NameFor(string title) => PageName.ForTitle(title);

    /// <summary>Gives a page another name.</summary>
    public async Task<Refusal?> RenameAsync(long page, string name, CancellationToken stop = default)
    {
        var clean = PageName.Clean(name);
        return await _core.ChangeAsync<Refusal?>(
            async (context, revision) =>
            {
                if (await LiveAsync(context, page, stop) is not { } row) return Refusal.NoPage;
                var key = Folding.Key(clean);
                if (await context.Pages.AnyAsync(p => p.NotebookId == row.NotebookId && p.NameKey == key && p.Deleted == null && p.Id != page, stop))
                {
                    return new($"There is a page called {clean} in this notebook already.");
                }

                (row.Name, row.NameKey) = (clean, key);
                var shelf = await context.Shelf.SingleAsync(s => s.PageId == page, stop);
                (shelf.Name, shelf.Revision) = (clean, revision);
                return null;
            },
            stop);
    }

    // A page that was called by its title is called by its new one; a name that somebody gave it stays.
    private static async Task FollowTitleAsync(LibraryContext context, PageRow row, string title, CancellationToken stop)
    {
        var before = await context.Shelf.Where(s => s.PageId == row.Id).Select(s => s.Title).SingleAsync(stop);
        if (before == title || !PageName.IsFor(row.Name, before)) return;
        row.Name = await FreeNameAsync(context, row.NotebookId, row.Name[..(row.Name.LastIndexOf('/') + 1)] + PageName.ForTitle(title), stop, except: row.Id);
        row.NameKey = Folding.Key(row.Name);
    }

    internal static async Task<string?> TextAsync(LibraryContext context, long page, int? version, CancellationToken stop) => version is { } number
        ? await context.Versions.Where(v => v.PageId == page && v.Number == number).Select(v => v.Text).SingleOrDefaultAsync(stop)
        : await context.Pages.Where(p => p.Id == page)
            .Join(context.Versions, p => new { PageId = p.Id, Number = p.Current }, v => new { v.PageId, v.Number }, (p, v) => v.Text)
            .SingleOrDefaultAsync(stop);

    internal static async Task<PageRow?> LiveAsync(LibraryContext context, long page, CancellationToken stop) =>
        await context.Pages.SingleOrDefaultAsync(p => p.Id == page && p.Deleted == null, stop);

    /// <summary>The name itself, or with the first number that makes it free.</summary>
    /// <param name="except">The page that is to have it.</param>
    internal static async Task<string> FreeNameAsync(LibraryContext context, long notebook, string name, CancellationToken stop, long? except = null)
    {
        var free = name;
        for (var number = 2; ; number++)
        {
            var key = Folding.Key(free);
            if (!await context.Pages.AnyAsync(p => p.NotebookId == notebook && p.NameKey == key && p.Deleted == null && p.Id != except, stop)) return free;
            free = $"{name}-{number}";
        }
    }

    internal static PageInfo Shown(PageRow row) =>
        new(row.Id, row.NotebookId, row.Name, row.IsFigures, row.Current, row.Learned, row.Created, row.Changed, row.Deleted);

    private async Task<KeepResult> KeepAsync(long page, int basedOn, string text, Signature signed, string? session, int? broughtBack, CancellationToken stop)
    {
        if (await OneAsync(page, stop) is not { Deleted: null } info) return new NotKept(Refusal.NoPage.Why);
        // Read before the others have to wait for this change.
        var shelf = await _shelving.MakeAsync(info.Notebook, text, stop);
        var result = await _core.ChangeAsync<KeepResult>(
            async (context, revision) =>
            {
                if (await LiveAsync(context, page, stop) is not { } row) return new NotKept(Refusal.NoPage.Why);
                if (session is not null) await context.Drafts.Where(d => d.PageId == page && d.Session == session).ExecuteDeleteAsync(stop);
                if (await TextAsync(context, page, row.Current, stop) == text) return await NotedAsync(context, page, row.Current, signed.Note, stop);
                var number = await context.Versions.Where(v => v.PageId == page).MaxAsync(v => v.Number, stop) + 1;
                var version = Version(page, number, text, _core.Now, signed, basedOn);
                if (broughtBack is not null) (version.BroughtBack, version.BasedOn) = (broughtBack, row.Current);
                context.Versions.Add(version);
                if (basedOn != row.Current && broughtBack is null)
                {
                    version.BesideOf = row.Current;
                    return new KeptBeside(row.Current, number);
                }

                (row.Current, row.Changed, row.IsFigures) = (number, version.Saved, shelf.IsFigures);
                await FollowTitleAsync(context, row, shelf.Title, stop);
                await context.Shelf.Where(s => s.PageId == page).ExecuteDeleteAsync(stop);
                await Shelving.PutAgainAsync(context, shelf, row, revision, stop);
                return new Kept(number);
            },
            stop);
        if (result is Kept && (shelf.IsFigures || info.IsFigures)) await _shelving.CatchUpAsync(info.Notebook, stop);
        return result;
    }

    // Nothing new but what is said of it: that is written down with the version that says the same already.
    private async Task<KeepResult> NotedAsync(LibraryContext context, long page, int version, string note, CancellationToken stop)
    {
        if (note.Length == 0) return new NothingNew(version);
        var row = await context.Versions.SingleAsync(v => v.PageId == page && v.Number == version, stop);
        if (row.Note == note || row.Note.Split("; ").Contains(note)) return new NothingNew(version, Noted: true);
        var (both, refusal) = Door.Note(row.Note.Length == 0 ? note : $"{row.Note}; {note}", "The note", _core.Limits);
        if (refusal is not null) return new NotKept(refusal.Why);
        row.Note = both;
        return new NothingNew(version, Noted: true);
    }

    private static VersionRow Version(long page, int number, string text, DateTimeOffset saved, Signature signed, int basedOn) => new()
    {
        PageId = page,
        Number = number,
        Text = text,
        Saved = saved,
        Note = signed.Note,
        By = signed.By,
        Device = signed.Device,
        BasedOn = basedOn,
    };

    private (Signature Signature, Refusal? Refusal) Signed(Signature? signature)
    {
        signature ??= new();
        var (by, a) = Door.Name(signature.By, "The name", _core.Limits);
        var (device, b) = Door.Name(signature.Device, "The device's name", _core.Limits);
        var (note, c) = Door.Note(signature.Note, "The note", _core.Limits);
        return (new(by, device, note), a ?? b ?? c);
    }
}
