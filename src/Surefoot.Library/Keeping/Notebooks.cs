using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Store;

namespace Surefoot.Library.Keeping;

/// <summary>The notebooks of a library; those in the bin are <see cref="NotebookBin"/>'s.</summary>
public sealed class Notebooks
{
    // Shorter or taller people than this stand in no hall; in metres, as the page's own line takes them.
    private const double Smallest = 1.0;
    private const double Tallest = 2.4;

    // Counts a minute. Dances are danced between 60 and 220; twice as far either way is a slip.
    private const int Slowest = 30;
    private const int Fastest = 400;

    private readonly Core _core;
    private readonly Shelving _shelving;

    internal Notebooks(Core core, Shelving shelving) => (_core, _shelving) = (core, shelving);

    public async Task<IReadOnlyList<Notebook>> AllAsync(CancellationToken stop = default)
    {
        await using var context = _core.Context();
        var rows = await context.Notebooks.AsNoTracking().Where(n => n.Deleted == null).OrderBy(n => n.NameKey).ToListAsync(stop);
        return [.. rows.Select(Shown)];
    }

    public async Task<Notebook?> OneAsync(long notebook, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await context.Notebooks.AsNoTracking().SingleOrDefaultAsync(n => n.Id == notebook && n.Deleted == null, stop) is { } row ? Shown(row) : null;
    }

    /// <summary>A new notebook; names that differ in capitals and accents only are the same name.</summary>
    public async Task<(Notebook? Notebook, Refusal? Refusal)> AddAsync(string name, NotebookSettings? settings = null, CancellationToken stop = default)
    {
        settings ??= new();
        var (clean, refusal) = NameOf(name);
        if ((refusal ?? Fault(settings, _core.Limits)) is { } why) return (null, why);
        return await _core.ChangeAsync<(Notebook?, Refusal?)>(
            async (context, _) =>
            {
                var key = Folding.Key(clean);
                if (await context.Notebooks.AnyAsync(n => n.NameKey == key && n.Deleted == null, stop)) return (null, new($"There is a notebook called {clean} already."));
                var row = new NotebookRow { Name = clean, NameKey = key, Created = _core.Now };
                Set(row, settings);
                context.Notebooks.Add(row);
                await context.SaveChangesAsync(stop);
                return (Shown(row), null);
            },
            stop);
    }

    public async Task<Refusal?> RenameAsync(long notebook, string name, CancellationToken stop = default)
    {
        var (clean, refusal) = NameOf(name);
        if (refusal is not null) return refusal;
        return await _core.ChangeAsync<Refusal?>(
            async (context, _) =>
            {
                var key = Folding.Key(clean);
                if (await context.Notebooks.AnyAsync(n => n.NameKey == key && n.Deleted == null && n.Id != notebook, stop)) return new($"There is a notebook called {clean} already.");
                if (await context.Notebooks.SingleOrDefaultAsync(n => n.Id == notebook && n.Deleted == null, stop) is not { } row) return Refusal.NoNotebook;
                (row.Name, row.NameKey) = (clean, key);
                return null;
            },
            stop);
    }

    public async Task<Refusal?> SetAsync(long notebook, NotebookSettings settings, CancellationToken stop = default)
    {
        if (Fault(settings, _core.Limits) is { } fault) return fault;
        var refusal = await _core.ChangeAsync<Refusal?>(
            async (context, _) =>
            {
                if (await context.Notebooks.SingleOrDefaultAsync(n => n.Id == notebook && n.Deleted == null, stop) is not { } row) return Refusal.NoNotebook;
                Set(row, settings);
                return null;
            },
            stop);
        // Taller dancers take longer steps: what is known of each dance is found anew.
        if (refusal is null) await _shelving.CatchUpAsync(notebook, stop);
        return refusal;
    }

    internal static void Set(NotebookRow row, NotebookSettings settings)
    {
        (row.LeadWord, row.FollowWord) = (settings.LeadWord.Trim(), settings.FollowWord.Trim());
        (row.LeadStature, row.FollowStature) = (settings.LeadStature, settings.FollowStature);
        (row.Units, row.DecimalMark, row.Paper) = (settings.Units, settings.DecimalMark, settings.Paper);
        (row.UsualTempo, row.Theme) = (settings.UsualTempo, settings.Theme.Trim());
    }

    internal static Notebook Shown(NotebookRow row) => new(
        row.Id,
        row.Name,
        new()
        {
            LeadWord = row.LeadWord,
            FollowWord = row.FollowWord,
            LeadStature = row.LeadStature,
            FollowStature = row.FollowStature,
            Units = row.Units,
            DecimalMark = row.DecimalMark,
            Paper = row.Paper,
            UsualTempo = row.UsualTempo,
            Theme = row.Theme,
        },
        row.Created);

    internal static Refusal? Fault(NotebookSettings settings, LibraryLimits limits)
    {
        foreach (var word in (string[])[settings.LeadWord, settings.FollowWord, settings.Theme])
        {
            if (Door.Name(word, "That word", limits).Refusal is { } refusal) return refusal;
        }

        if (settings.LeadStature is < Smallest or > Tallest or double.NaN || settings.FollowStature is < Smallest or > Tallest or double.NaN)
        {
            return new("A dancer's height is given in metres, such as 1.75.");
        }

        return settings.UsualTempo is < Slowest or > Fastest ? new("A tempo is given in counts a minute, such as 112.") : null;
    }

    private (string Name, Refusal? Refusal) NameOf(string name)
    {
        var (clean, refusal) = Door.Name(name, "The notebook's name", _core.Limits);
        if (refusal is null && Folding.Key(clean).Length == 0) refusal = new("A notebook needs a name.");
        return (clean, refusal);
    }
}
