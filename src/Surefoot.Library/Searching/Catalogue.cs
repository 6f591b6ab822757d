using Microsoft.EntityFrameworkCore;
using Surefoot.Library.Keeping;
using Surefoot.Library.Store;

namespace Surefoot.Library.Searching;

/// <summary>
/// Lists and searches. Both work in memory, so that they sort, fold and forgive alike over every database; what
/// changed since the last question, here or in another program, is read first.
/// </summary>
public sealed class Catalogue : IDisposable
{
    private readonly Core _core;
    private readonly SemaphoreSlim _gate = new(1, 1);
    private Dictionary<long, Card> _cards = [];
    private Card[] _sorted = [];
    private long _revision = -1;
    private SearchIndex? _index;
    private long _indexed = -1;

    internal Catalogue(Core core) => _core = core;

    public void Dispose() => _gate.Dispose();

    public async Task<ListAnswer> ListAsync(ListQuestion question, CancellationToken stop = default)
    {
        await _gate.WaitAsync(stop);
        Card[] cards;
        try
        {
            await using var context = _core.Context();
            await RefreshAsync(context, stop);
            cards = _sorted;
        }
        finally
        {
            _gate.Release();
        }

        return Lists.Answer(cards, question);
    }

    /// <summary>
    /// Finds dances by whatever is remembered of them: words of a name, figures, "her turn then walks",
    /// "40 counts", "about 112 bpm", "3/4", a hold, a level, a tag. Spelling need not be right.
    /// </summary>
    /// <param name="notebook">In this notebook only; null for all.</param>
    public async Task<IReadOnlyList<Found>> SearchAsync(string words, long? notebook = null, int most = 50, CancellationToken stop = default)
    {
        // Nobody remembers more than this many letters of a dance.
        var question = Question.Read(words.Length > 500 ? words[..500] : words);
        await _gate.WaitAsync(stop);
        try
        {
            await using var context = _core.Context();
            await RefreshAsync(context, stop);
            await IndexAsync(context, stop);
            return _index!.Search(question, notebook, most);
        }
        finally
        {
            _gate.Release();
        }
    }

    /// <summary>
    /// The same among the dances that a list's question asks for, the best first; a sort other than by title sorts
    /// what was found instead.
    /// </summary>
    public async Task<(int Total, IReadOnlyList<Found> Dances)> SearchAsync(string words, ListQuestion within, CancellationToken stop = default)
    {
        var fits = Lists.Sieve(within);
        var found = (await SearchAsync(words, within.Notebook, int.MaxValue, stop)).Where(f => fits(f.Dance)).ToList();
        // Dances that have only some of what was asked stand in for none that has all of it.
        if (found.Exists(f => f.Whole)) found.RemoveAll(f => !f.Whole);
        if (within.Sort != SortBy.Title) found = Lists.Sorted(found, f => f.Dance, within);
        return (found.Count, [.. found.Skip(within.Skip).Take(within.Take)]);
    }

    // Numbers of revisions become visible in their order (see Core), so what is above the last one seen is all that is new.
    private async Task RefreshAsync(LibraryContext context, CancellationToken stop)
    {
        var revision = await context.State.Select(s => s.Revision).SingleAsync(stop);
        if (revision == _revision) return;
        var total = 0;
        List<Card> changed = [];
        var whole = _revision < 0 || revision < _revision;
        if (!whole)
        {
            changed = await Card.ReadAsync(context, _revision, stop);
            total = await context.Shelf.CountAsync(stop);
            // The bin was emptied, or a copy was brought back: begin anew.
            whole = changed.Count == total || _cards.Count + changed.Count(c => !_cards.ContainsKey(c.Item.Page)) != total;
        }

        if (whole)
        {
            changed = await Card.ReadAsync(context, -1, stop);
            (_cards, _index, _indexed) = (new(changed.Count), null, -1);
        }

        foreach (var card in changed) _cards[card.Item.Page] = card;
        _sorted = [.. _cards.Values.Where(c => !c.Deleted)];
        Array.Sort(_sorted, Lists.ByTitle);
        // Not the counter itself: a change may have come in between, and is read the next time.
        _revision = Math.Max(revision, changed.Count == 0 ? revision : changed.Max(c => c.Revision));
    }

    private async Task IndexAsync(LibraryContext context, CancellationToken stop)
    {
        if (_index is not null && _indexed == _revision) return;
        _index ??= new();
        var rows = context.Shelf.AsNoTracking().Where(s => s.Revision > _indexed).Select(s => new { s.PageId, s.Words, s.Moves }).AsAsyncEnumerable();
        await foreach (var row in rows.WithCancellation(stop))
        {
            if (_cards.TryGetValue(row.PageId, out var card)) _index.Put(card, row.Words, row.Moves);
        }

        _indexed = _revision;
    }
}
