using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>Terms of lessons. The library keeps their text and does not read it.</summary>
public sealed class Terms
{
    private readonly Core _core;

    internal Terms(Core core) => _core = core;

    /// <summary>All terms of notebooks that are not in the bin, the one that was changed last first.</summary>
    public async Task<IReadOnlyList<TermInfo>> AllAsync(CancellationToken stop = default)
    {
        await using var context = _core.Context();
        var rows = await context.Terms.AsNoTracking().Where(t => context.Notebooks.Any(n => n.Id == t.NotebookId && n.Deleted == null)).ToListAsync(stop);
        return [.. rows.OrderByDescending(t => t.Changed).ThenBy(t => t.Id).Select(Shown)];
    }

    public async Task<TermInfo?> OneAsync(long term, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await context.Terms.AsNoTracking().SingleOrDefaultAsync(t => t.Id == term, stop) is { } row ? Shown(row) : null;
    }

    public async Task<(TermInfo? Term, Refusal? Refusal)> AddAsync(long notebook, string title, string text, CancellationToken stop = default)
    {
        if (TooLong(text) is { } why) return (null, why);
        return await _core.ChangeAsync<(TermInfo?, Refusal?)>(
            async (context, _) =>
            {
                if (!await context.Notebooks.AnyAsync(n => n.Id == notebook && n.Deleted == null, stop)) return (null, new("That notebook is not there any more."));
                var row = new TermRow { NotebookId = notebook, Title = title, Text = text, Version = 1, Changed = _core.Now };
                context.Terms.Add(row);
                await context.SaveChangesAsync(stop);
                return (Shown(row), null);
            },
            stop);
    }

    /// <param name="basedOn">The version that was changed; when somebody kept another meanwhile, nothing is done.</param>
    public async Task<Refusal?> KeepAsync(long term, int basedOn, string title, string text, CancellationToken stop = default)
    {
        if (TooLong(text) is { } why) return why;
        return await _core.ChangeAsync<Refusal?>(
            async (context, _) =>
            {
                if (await context.Terms.SingleOrDefaultAsync(t => t.Id == term, stop) is not { } row) return new("That term is not there any more.");
                if (row.Version != basedOn) return new("Somebody else changed this term meanwhile.");
                (row.Title, row.Text, row.Version, row.Changed) = (title, text, row.Version + 1, _core.Now);
                return null;
            },
            stop);
    }

    /// <summary>Throws a term away, for good.</summary>
    public async Task ThrowAwayAsync(long term, CancellationToken stop = default) =>
        await _core.ChangeAsync(async (context, _) => await context.Terms.Where(t => t.Id == term).ExecuteDeleteAsync(stop), stop);

    private Refusal? TooLong(string text) => System.Text.Encoding.UTF8.GetByteCount(text) > _core.Limits.PageBytes ? new("That is too long for a term.") : null;

    private static TermInfo Shown(TermRow row) => new(row.Id, row.NotebookId, row.Title, row.Text, row.Version, row.Changed);
}
