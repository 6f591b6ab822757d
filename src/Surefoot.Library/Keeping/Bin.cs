using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>Pages that were deleted. They keep everything that belongs to them until the bin is emptied.</summary>
public sealed class Bin
{
    private readonly Core _core;
    private readonly Shelving _shelving;

    internal Bin(Core core, Shelving shelving) => (_core, _shelving) = (core, shelving);

    /// <summary>Puts a page into the bin.</summary>
    public Task<Refusal?> PutAsync(long page, CancellationToken stop = default) => MoveAsync(page, into: true, stop);

    /// <summary>Takes a page out again, and its notebook where that lies there too. Where its name was given away in the meantime it gets a number.</summary>
    public Task<Refusal?> TakeOutAsync(long page, CancellationToken stop = default) => MoveAsync(page, into: false, stop);

    /// <summary>What is in the bin of a notebook, the last put in first.</summary>
    public async Task<IReadOnlyList<PageInfo>> LookAsync(long notebook, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        var rows = await context.Pages.AsNoTracking().Where(p => p.NotebookId == notebook && p.Deleted != null).OrderByDescending(p => p.Deleted).ThenByDescending(p => p.Id).ToListAsync(stop);
        return [.. rows.Select(Pages.Shown)];
    }

    /// <summary>Throws away for good what was put in before a moment. This cannot be undone.</summary>
    /// <returns>How many pages are gone.</returns>
    public Task<int> EmptyAsync(long notebook, DateTimeOffset before, CancellationToken stop = default) =>
        _core.ChangeAsync((context, _) => context.Pages.Where(p => p.NotebookId == notebook && p.Deleted != null && p.Deleted < before).ExecuteDeleteAsync(stop), stop);

    /// <summary>Throws away for good whatever was put in before a moment, notebooks of which nothing is left then, and films that were taken away. This cannot be undone.</summary>
    /// <returns>How many pages are gone.</returns>
    public Task<int> EmptyAsync(DateTimeOffset before, CancellationToken stop = default) => _core.ChangeAsync(
        async (context, _) =>
        {
            var gone = await context.Pages.Where(p => p.Deleted != null && p.Deleted < before).ExecuteDeleteAsync(stop);
            await NotebookBin.ForgetAsync(context, before, stop);
            await context.Films.Where(f => f.Away != null && f.Away < before).ExecuteDeleteAsync(stop);
            return gone;
        },
        stop);

    /// <summary>How many pages lie in the bin, and a stretch of them with their titles, the last put in first.</summary>
    public async Task<(int Total, IReadOnlyList<(PageInfo Page, string Title)> Pages)> LookAsync(int skip, int take, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        var rows = await context.Pages.AsNoTracking().Where(p => p.Deleted != null)
            .Join(context.Shelf, p => p.Id, s => s.PageId, (p, s) => new { Page = p, s.Title })
            .OrderByDescending(r => r.Page.Deleted).ThenByDescending(r => r.Page.Id).Skip(skip).Take(take).ToListAsync(stop);
        return (await context.Pages.CountAsync(p => p.Deleted != null, stop), [.. rows.Select(r => (Pages.Shown(r.Page), r.Title))]);
    }

    /// <summary>Throws one page away for good that lies in the bin. This cannot be undone.</summary>
    public Task<Refusal?> ThrowAwayAsync(long page, CancellationToken stop = default) => _core.ChangeAsync<Refusal?>(
        async (context, _) => await context.Pages.Where(p => p.Id == page && p.Deleted != null).ExecuteDeleteAsync(stop) == 0 ? new("That page is not in the bin any more.") : null,
        stop);

    private async Task<Refusal?> MoveAsync(long page, bool into, CancellationToken stop)
    {
        var (moved, refusal) = await _core.ChangeAsync<(PageRow?, Refusal?)>(
            async (context, revision) =>
            {
                if (await context.Pages.SingleOrDefaultAsync(p => p.Id == page, stop) is not { } row) return (null, Refusal.NoPage);
                if (into == row.Deleted is not null) return (row, null);
                row.Deleted = into ? _core.Now : null;
                if (!into && await context.Notebooks.SingleAsync(n => n.Id == row.NotebookId, stop) is { Deleted: not null } home) await NotebookBin.ReviveAsync(context, home, stop);
                if (!into) row.Name = await Pages.FreeNameAsync(context, row.NotebookId, row.Name, stop);
                row.NameKey = Folding.Key(row.Name);
                var shelf = await context.Shelf.SingleAsync(s => s.PageId == page, stop);
                (shelf.Deleted, shelf.Name, shelf.Revision) = (into, row.Name, revision);
                return (row, null);
            },
            stop);
        // Figures that came or went, or that changed while the page lay in the bin.
        if (moved is not null && (moved.IsFigures || !into)) await _shelving.CatchUpAsync(moved.NotebookId, stop);
        return refusal;
    }
}
