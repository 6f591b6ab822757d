using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>
/// Notebooks that were deleted. Their pages lie in the bin and come back with them; a notebook is gone for good only
/// when the bin is emptied, never while one of its pages is left.
/// </summary>
public sealed class NotebookBin
{
    private readonly Core _core;
    private readonly Shelving _shelving;

    internal NotebookBin(Core core, Shelving shelving) => (_core, _shelving) = (core, shelving);

    /// <summary>Puts a notebook into the bin, and every page of it.</summary>
    public Task<Refusal?> PutAsync(long notebook, CancellationToken stop = default) => _core.ChangeAsync<Refusal?>(
        async (context, revision) =>
        {
            if (await context.Notebooks.SingleOrDefaultAsync(n => n.Id == notebook, stop) is not { Deleted: null } row) return Refusal.NoNotebook;
            // Pages that share this moment are those that went with it; what lay in the bin before stays there.
            var now = _core.Now;
            row.Deleted = now;
            await context.Pages.Where(p => p.NotebookId == notebook && p.Deleted == null).ExecuteUpdateAsync(s => s.SetProperty(p => p.Deleted, now), stop);
            await context.Shelf.Where(s => s.NotebookId == notebook && !s.Deleted).ExecuteUpdateAsync(s => s.SetProperty(r => r.Deleted, true).SetProperty(r => r.Revision, revision), stop);
            return null;
        },
        stop);

    /// <summary>Takes a notebook out again with the pages that went in with it. Where its name was given away in the meantime it gets a number.</summary>
    public async Task<Refusal?> TakeOutAsync(long notebook, CancellationToken stop = default)
    {
        var refusal = await _core.ChangeAsync<Refusal?>(
            async (context, revision) =>
            {
                if (await context.Notebooks.SingleOrDefaultAsync(n => n.Id == notebook, stop) is not { } row) return Refusal.NoNotebook;
                if (row.Deleted is not { } then) return null;
                await ReviveAsync(context, row, stop);
                var pages = await context.Pages.Where(p => p.NotebookId == notebook && p.Deleted == then).Select(p => p.Id).ToListAsync(stop);
                await context.Pages.Where(p => p.NotebookId == notebook && p.Deleted == then).ExecuteUpdateAsync(s => s.SetProperty(p => p.Deleted, (DateTimeOffset?)null), stop);
                await context.Shelf.Where(s => pages.Contains(s.PageId)).ExecuteUpdateAsync(s => s.SetProperty(r => r.Deleted, false).SetProperty(r => r.Revision, revision), stop);
                return null;
            },
            stop);
        // Surefoot may have learned something while its pages lay there.
        if (refusal is null) await _shelving.CatchUpAsync(notebook, stop);
        return refusal;
    }

    /// <summary>The notebooks in the bin, the last put in first.</summary>
    public async Task<IReadOnlyList<DeletedNotebook>> LookAsync(CancellationToken stop = default)
    {
        await using var context = _core.Context();
        var rows = await context.Notebooks.AsNoTracking().Where(n => n.Deleted != null).OrderByDescending(n => n.Deleted).ThenByDescending(n => n.Id)
            .Select(n => new { Row = n, Pages = context.Pages.Count(p => p.NotebookId == n.Id && p.Deleted == n.Deleted) }).ToListAsync(stop);
        return [.. rows.Select(r => new DeletedNotebook(Notebooks.Shown(r.Row), r.Row.Deleted!.Value, r.Pages))];
    }

    /// <summary>Makes a notebook one of the library's again, alone.</summary>
    internal static async Task ReviveAsync(LibraryContext context, NotebookRow row, CancellationToken stop)
    {
        var name = row.Name;
        for (var number = 2; await context.Notebooks.AnyAsync(n => n.NameKey == row.NameKey && n.Deleted == null, stop); number++)
        {
            row.Name = $"{name} {number}";
            row.NameKey = Folding.Key(row.Name);
        }

        row.Deleted = null;
        await context.SaveChangesAsync(stop);
    }

    /// <summary>Throws away the notebooks that were put in before a moment and have no page left.</summary>
    internal static Task ForgetAsync(LibraryContext context, DateTimeOffset before, CancellationToken stop) =>
        context.Notebooks.Where(n => n.Deleted != null && n.Deleted < before && !context.Pages.Any(p => p.NotebookId == n.Id)).ExecuteDeleteAsync(stop);
}
