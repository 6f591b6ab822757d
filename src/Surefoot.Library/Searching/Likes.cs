using Microsoft.EntityFrameworkCore;
using Surefoot.Dance;
using Surefoot.Dance.Scoring;
using Surefoot.Library.Keeping;
using Surefoot.Library.Store;
using Surefoot.Likeness;

namespace Surefoot.Library.Searching;

/// <summary>
/// Finds the dances most like one. The steps of each dance are kept in the database and read once; what was kept since
/// the last question, here or in another program, is read first.
/// </summary>
public sealed class Likes : IDisposable
{
    /// <summary>Dances with less in common are not named: any two share a few walks. Working value.</summary>
    private const double Least = 0.1;

    private readonly Core _core;
    private readonly Catalogue _catalogue;
    private readonly Shelving _shelving;
    private readonly SemaphoreSlim _asking = new(1, 1);
    private NearestDances _index = new();
    private (int Beginning, long Revision) _indexed = (0, -1);

    internal Likes(Core core, Catalogue catalogue, Shelving shelving) => (_core, _catalogue, _shelving) = (core, catalogue, shelving);

    public void Dispose() => _asking.Dispose();

    /// <summary>The dances most like a page as it is now, the nearest first; none for a page that is not there.</summary>
    /// <param name="notebook">In this notebook only; null for all.</param>
    public async Task<IReadOnlyList<LikeDance>> OfAsync(long page, int most = 10, long? notebook = null, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        if (await context.Pages.AsNoTracking().SingleOrDefaultAsync(p => p.Id == page, stop) is not { } row) return [];
        return await ScoreAsync(context, page, row.NotebookId, stop) is { } score ? await OfAsync(context, score, most, notebook, page, stop) : [];
    }

    /// <summary>The dances most like one that need not be in the library; the same dance is among them where it is.</summary>
    /// <param name="notebook">In this notebook only; null for all.</param>
    public async Task<IReadOnlyList<LikeDance>> OfAsync(DanceScore score, int most = 10, long? notebook = null, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return await OfAsync(context, score, most, notebook, except: 0, stop);
    }

    private async Task<IReadOnlyList<LikeDance>> OfAsync(LibraryContext context, DanceScore score, int most, long? notebook, long except, CancellationToken stop)
    {
        IReadOnlyList<NearDance> near;
        Dictionary<long, Card> cards;
        await _asking.WaitAsync(stop);
        try
        {
            cards = await IndexAsync(context, stop);
            near = _index.Ask(DanceSteps.Of(score), most, key => key != except && cards[key] is { Deleted: false } card && (notebook is null || card.Item.Notebook == notebook));
        }
        finally
        {
            _asking.Release();
        }

        var found = new List<LikeDance>();
        foreach (var dance in near)
        {
            var item = cards[dance.Key].Item;
            if (dance.Share >= Least && await ScoreAsync(context, item.Page, item.Notebook, stop) is { } other) found.Add(new(item, Verdict.Of(score, other)));
        }

        return found;
    }

    // Places of couples have no part in it, so nobody solves them here.
    private async Task<DanceScore?> ScoreAsync(LibraryContext context, long page, long notebook, CancellationToken stop) =>
        await Pages.TextAsync(context, page, version: null, stop) is { } text ? DanceReader.Read(text, (await _shelving.BookAsync(notebook, stop)).Figures).Score : null;

    private async Task<Dictionary<long, Card>> IndexAsync(LibraryContext context, CancellationToken stop)
    {
        var known = await _catalogue.KnownAsync(context, stop);
        if (_indexed == (known.Beginning, known.Revision)) return known.Cards;
        if (_indexed.Beginning != known.Beginning) (_index, _indexed) = (new(), (known.Beginning, -1));
        var after = _indexed.Revision;
        var rows = context.Shelf.AsNoTracking().Where(s => s.Revision > after).Select(s => new { s.PageId, s.Steps, s.Deleted }).AsAsyncEnumerable();
        await foreach (var row in rows.WithCancellation(stop))
        {
            if (row.Deleted || !known.Cards.ContainsKey(row.PageId)) _index.Remove(row.PageId);
            else _index.Put(row.PageId, DanceSteps.FromBytes(row.Steps));
        }

        _indexed = (known.Beginning, known.Revision);
        return known.Cards;
    }
}

/// <summary>A dance that is like another.</summary>
/// <param name="Verdict">How it is like it, seen from the dance that was asked about.</param>
public sealed record LikeDance(ShelfItem Dance, Verdict Verdict);
