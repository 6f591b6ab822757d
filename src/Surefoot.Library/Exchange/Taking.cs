using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Keeping;
using Surefoot.Library.Store;

namespace Surefoot.Library.Exchange;

/// <summary>Puts planned pages into a library, inside a change.</summary>
internal sealed class Taking(Core core, LibraryContext context, long revision, CancellationToken stop)
{
    private const string NoteOfImport = "Taken in from a file";

    /// <summary>The notebook of an export: the one of its name, or a new one.</summary>
    public async Task<long> NotebookAsync(NotebookFile file)
    {
        var (name, refusal) = Door.Name(file.Name, "", core.Limits);
        if (refusal is not null || Folding.Key(name).Length == 0) name = file.Folder;
        var key = Folding.Key(name);
        var deleted = file.Deleted;
        // One in the bin is another notebook than one of its name that is not.
        if (await context.Notebooks.FirstOrDefaultAsync(n => n.NameKey == key && n.Deleted == deleted, stop) is { } known) return known.Id;
        var row = new NotebookRow { Name = name, NameKey = key, Created = file.Created, Deleted = deleted };
        Notebooks.Set(row, Notebooks.Fault(file.Settings, core.Limits) is null ? file.Settings : new());
        context.Notebooks.Add(row);
        await context.SaveChangesAsync(stop);
        return row.Id;
    }

    /// <summary>A notebook's terms of lessons. One that is there with the same words stays; one of the same title with others stands beside it.</summary>
    public async Task<List<ImportLine>> TermsAsync(long notebook, NotebookPlan plan)
    {
        var lines = new List<ImportLine>();
        foreach (var (path, term, text) in plan.Terms)
        {
            var (title, refusal) = Door.Name(term.Title, "", core.Limits);
            if (refusal is not null) title = Path.GetFileNameWithoutExtension(term.File);
            var there = await context.Terms.AsNoTracking().Where(t => t.NotebookId == notebook && t.Title == title).Select(t => t.Text).ToListAsync(stop);
            var known = there.Contains(text, StringComparer.Ordinal);
            if (!known) context.Terms.Add(new() { NotebookId = notebook, Title = title, Text = text, Version = Math.Max(1, term.Version), Changed = term.Changed });
            lines.Add(new(Pile.Shown(path), known ? Taken.AlreadyThere : Taken.New, null, known ? "" : there.Count > 0 ? $"A term “{title}” was there and says something else; both are kept." : ""));
        }

        await context.SaveChangesAsync(stop);
        context.ChangeTracker.Clear();
        return lines;
    }

    public async Task<ImportLine> PageAsync(long notebook, PagePlan plan, ShelfRow shelf)
    {
        var line = await TakeAsync(notebook, plan, shelf);
        await context.SaveChangesAsync(stop);
        // Thousands of pages would otherwise be looked through again at each save.
        context.ChangeTracker.Clear();
        return line;
    }

    private async Task<ImportLine> TakeAsync(long notebook, PagePlan plan, ShelfRow shelf)
    {
        var deleted = plan.Kept?.Page.Deleted;
        var key = Folding.Key(plan.Name);
        var there = deleted is null
            ? await context.Pages.SingleOrDefaultAsync(p => p.NotebookId == notebook && p.NameKey == key && p.Deleted == null, stop)
            : await context.Pages.FirstOrDefaultAsync(p => p.NotebookId == notebook && p.NameKey == key && p.Deleted == deleted, stop);
        if (there is null) return new(Pile.Shown(plan.File), Taken.New, await AddAsync(notebook, plan, shelf), "");
        if (plan.Kept is { } kept && there.Deleted is null) await MergeAsync(there, kept);
        var same = await context.Versions.Where(v => v.PageId == there.Id && v.Text == plan.Text).OrderByDescending(v => v.Number).Select(v => (int?)v.Number).FirstOrDefaultAsync(stop);
        if (same == there.Current || deleted is not null) return new(Pile.Shown(plan.File), Taken.AlreadyThere, there.Id, "");
        // An old copy does not turn the page back.
        if (same is { } number) return new(Pile.Shown(plan.File), Taken.AlreadyThere, there.Id, $"It is version {number} of the page, which has been changed since.");
        var next = await context.Versions.Where(v => v.PageId == there.Id).MaxAsync(v => v.Number, stop) + 1;
        context.Versions.Add(new() { PageId = there.Id, Number = next, Text = plan.Text, Saved = core.Now, Note = NoteOfImport, BasedOn = there.Current });
        (there.Current, there.Changed, there.IsFigures) = (next, core.Now, shelf.IsFigures);
        await context.Shelf.Where(s => s.PageId == there.Id).ExecuteDeleteAsync(stop);
        await context.SaveChangesAsync(stop);
        await Shelving.PutAgainAsync(context, shelf, there, revision, stop);
        return new(Pile.Shown(plan.File), Taken.Changed, there.Id, $"The page said something else; what came in is its version {next}.");
    }

    private async Task<long> AddAsync(long notebook, PagePlan plan, ShelfRow shelf)
    {
        var told = plan.Kept?.Page;
        var page = new PageRow
        {
            NotebookId = notebook,
            Name = plan.Name,
            NameKey = Folding.Key(plan.Name),
            IsFigures = shelf.IsFigures,
            Current = 1,
            Created = told?.Created ?? core.Now,
            Changed = told?.Changed ?? core.Now,
            Deleted = told?.Deleted,
        };
        context.Pages.Add(page);
        await context.SaveChangesAsync(stop);
        foreach (var (version, text) in plan.Kept?.Versions ?? [])
        {
            context.Versions.Add(new()
            {
                PageId = page.Id,
                Number = version.Number,
                Text = text,
                Saved = version.Saved,
                Note = Note(version.Note),
                By = Name(version.By),
                Device = Name(version.Device),
                BasedOn = version.BasedOn,
                BesideOf = version.BesideOf,
                BroughtBack = version.BroughtBack,
            });
        }

        // The page's own file is the truth: where it is none of its versions it is a new one.
        var current = plan.Kept?.Versions.Where(v => v.Version.Number == told!.Current && v.Text == plan.Text).Select(v => v.Version.Number).SingleOrDefault() ?? 0;
        if (current == 0)
        {
            current = (plan.Kept?.Versions.Select(v => v.Version.Number).DefaultIfEmpty().Max() ?? 0) + 1;
            context.Versions.Add(new() { PageId = page.Id, Number = current, Text = plan.Text, Saved = core.Now, Note = told is null ? "" : NoteOfImport, BasedOn = told?.Current ?? 0 });
            if (told is not null) page.Changed = core.Now;
        }

        page.Current = current;
        foreach (var (draft, text) in (plan.Kept?.Drafts ?? []).DistinctBy(d => Name(d.Draft.Session)))
        {
            context.Drafts.Add(new() { PageId = page.Id, Session = Name(draft.Session), Sequence = draft.Sequence, BasedOn = draft.BasedOn, Text = text, Saved = draft.Saved });
        }

        if (plan.Kept is { } kept) await MergeAsync(page, kept);
        await context.SaveChangesAsync(stop);
        await Shelving.PutAgainAsync(context, shelf, page, revision, stop);
        return page.Id;
    }

    /// <summary>Adds what is told beside the page and is not there yet.</summary>
    private async Task MergeAsync(PageRow page, KeptPlan kept)
    {
        if (page.Learned.Length == 0) page.Learned = Note(kept.Page.Learned);
        var aliases = await context.Aliases.Where(a => a.PageId == page.Id).Select(a => a.NameKey).ToListAsync(stop);
        foreach (var name in kept.Page.Aliases.Select(Name))
        {
            if (!Fits(aliases, Folding.Key(name))) continue;
            context.Aliases.Add(new() { PageId = page.Id, Name = name, NameKey = Folding.Key(name) });
        }

        var tags = await context.Tags.Where(t => t.PageId == page.Id).Select(t => t.NameKey).ToListAsync(stop);
        foreach (var name in kept.Page.Tags.Select(Name))
        {
            if (!Fits(tags, Folding.Key(name))) continue;
            context.Tags.Add(new() { PageId = page.Id, Name = name, NameKey = Folding.Key(name) });
        }

        var songs = await context.Songs.AsNoTracking().Where(s => s.PageId == page.Id).ToListAsync(stop);
        foreach (var song in kept.Page.Songs)
        {
            if (songs.Exists(s => s.Title == Name(song.Title) && s.Artist == Name(song.Artist) && s.Tempo == song.Tempo) || songs.Count >= core.Limits.PerPage) continue;
            if (Name(song.Title).Length == 0 || song.Tempo is <= 0 or > 1000) continue;
            var row = new SongRow { PageId = page.Id, Title = Name(song.Title), Artist = Name(song.Artist), Tempo = song.Tempo };
            context.Songs.Add(row);
            await context.SaveChangesAsync(stop);
        }

        var attachments = await context.Attachments.AsNoTracking().Where(a => a.PageId == page.Id).ToListAsync(stop);
        foreach (var (file, bytes) in kept.Attachments)
        {
            var row = new AttachmentRow
            {
                PageId = page.Id,
                Title = Name(file.Title),
                Address = Note(file.Address),
                FileName = file.FileName.Length == 0 ? "" : PageName.Piece(Name(file.FileName)),
                MediaType = Name(file.MediaType),
                Size = bytes?.Length ?? 0,
                Added = file.Added,
            };
            if (bytes is null && !Details.IsFilm(row.Address)) continue;
            if (attachments.Exists(a => a.Address == row.Address && a.FileName == row.FileName && a.Size == row.Size && a.Title == row.Title) || attachments.Count >= core.Limits.PerPage) continue;
            context.Attachments.Add(row);
            await context.SaveChangesAsync(stop);
            if (bytes is not null) context.Files.Add(new() { AttachmentId = row.Id, Bytes = bytes });
            attachments.Add(row);
        }

        // One that is here stays, and so does one that was taken away here.
        if (kept is { Page.Film: { } film, Captions: { } captions } && !await context.Films.AnyAsync(f => f.PageId == page.Id, stop))
        {
            var address = Note(film.Address);
            context.Films.Add(new() { PageId = page.Id, Address = Films.IsFile(address) ? address : "", FileName = Name(film.FileName), Captions = captions, Changed = film.Changed });
        }

        bool Fits(List<string> there, string key)
        {
            if (key.Length == 0 || there.Contains(key) || there.Count >= core.Limits.PerPage) return false;
            there.Add(key);
            return true;
        }
    }

    // What an export says went through the door once; what somebody wrote into it since does now.
    private string Name(string text) => Door.Name(text, "", core.Limits) is { Refusal: null } ok ? ok.Text : "";

    private string Note(string text) => Door.Note(text, "", core.Limits) is { Refusal: null } ok ? ok.Text : "";
}
