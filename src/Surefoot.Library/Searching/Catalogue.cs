using Microsoft.EntityFrameworkCore;
using Surefoot.Dance.Basics;
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
    private readonly SemaphoreSlim _reading = new(1, 1);
    private readonly SemaphoreSlim _searching = new(1, 1);
    private Known _known = new(0, -1, [], []);
    private SearchIndex _index = new();
    private (int Beginning, long Revision) _indexed = (0, -1);

    internal Catalogue(Core core) => _core = core;

    public void Dispose()
    {
        _reading.Dispose();
        _searching.Dispose();
    }

    public async Task<ListAnswer> ListAsync(ListQuestion question, CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return Lists.Answer((await RefreshAsync(context, stop)).Sorted, question);
    }

    /// <summary>What there is to choose from in the whole library.</summary>
    public async Task<ListChoices> ChoicesAsync(CancellationToken stop = default)
    {
        await using var context = _core.Context();
        return (await RefreshAsync(context, stop)).Choices.Value;
    }

    /// <summary>
    /// Finds dances by whatever is remembered of them: words of a name, figures, "her turn then walks",
    /// "40 counts", "about 112 bpm", "3/4", a hold, a level, a tag. Spelling need not be right.
    /// </summary>
    /// <param name="notebook">In this notebook only; null for all.</param>
    public async Task<IReadOnlyList<Found>> SearchAsync(string words, long? notebook = null, int most = 50, CancellationToken stop = default) =>
        await ShownAsync(words, SearchIndex.InOrderOfFit(await HitsAsync(words, notebook, stop)).Take(most), stop);

    /// <summary>
    /// The same among the dances that a list's question asks for, the best first; a sort other than by title sorts
    /// what was found instead.
    /// </summary>
    public async Task<(int Total, IReadOnlyList<Found> Dances)> SearchAsync(string words, ListQuestion within, CancellationToken stop = default)
    {
        // Dances that have only some of what was asked stand in for none that has all of it, here or anywhere else.
        var hits = await HitsAsync(words, within.Notebook, stop);
        var fits = Lists.Sieve(within);
        hits.RemoveAll(h => !fits(h.Card.Item));
        IEnumerable<Hit> sorted = SearchIndex.InOrderOfFit(hits);
        if (within.Sort != SortBy.Title) sorted = Lists.Sorted([.. sorted], h => h.Card.Item, within);
        return (hits.Count, await ShownAsync(words, sorted.Skip(within.Skip).Take(within.Take), stop));
    }

    // Only of the dances that are shown is it asked by what they were found.
    private async Task<IReadOnlyList<Found>> ShownAsync(string words, IEnumerable<Hit> hits, CancellationToken stop)
    {
        var question = Asked(words);
        await _searching.WaitAsync(stop);
        try
        {
            return [.. hits.Select(h => new Found(h.Card.Item, h.Score, h.Missing == 0, h.At, _index.Why(question, h).ToValueList()))];
        }
        finally
        {
            _searching.Release();
        }
    }

    // Nobody remembers more than this many letters of a dance.
    private static Question Asked(string words) => Question.Read(words.Length > 500 ? words[..500] : words);

    private async Task<List<Hit>> HitsAsync(string words, long? notebook, CancellationToken stop)
    {
        var question = Asked(words);
        await _searching.WaitAsync(stop);
        try
        {
            await using var context = _core.Context();
            await IndexAsync(context, stop);
            return _index.Search(question, notebook);
        }
        finally
        {
            _searching.Release();
        }
    }

    /// <summary>Everything that is listed, as it is now.</summary>
    internal Task<Known> KnownAsync(LibraryContext context, CancellationToken stop) => RefreshAsync(context, stop);

    // Numbers of revisions become visible in their order (see Core), so what is above the last one seen is all that is new.
    private async Task<Known> RefreshAsync(LibraryContext context, CancellationToken stop)
    {
        await _reading.WaitAsync(stop);
        try
        {
            var revision = await context.State.Select(s => s.Revision).SingleAsync(stop);
            return revision == _known.Revision ? _known : _known = await ReadAsync(context, _known, revision, stop);
        }
        finally
        {
            _reading.Release();
        }
    }

    private static async Task<Known> ReadAsync(LibraryContext context, Known known, long revision, CancellationToken stop)
    {
        var (beginning, cards) = (known.Beginning, known.Cards);
        List<Card> changed = [];
        var whole = known.Revision < 0 || revision < known.Revision;
        if (!whole)
        {
            changed = await Card.ReadAsync(context, known.Revision, stop);
            var total = await context.Shelf.CountAsync(stop);
            // The bin was emptied, or a copy was brought back: begin anew.
            whole = changed.Count == total || cards.Count + changed.Count(c => !cards.ContainsKey(c.Item.Page)) != total;
        }

        if (whole)
        {
            changed = await Card.ReadAsync(context, -1, stop);
            (beginning, cards) = (beginning + 1, []);
        }

        // A copy: somebody may be looking through the old ones.
        cards = new(cards);
        foreach (var card in changed) cards[card.Item.Page] = card;
        Card[] sorted = [.. cards.Values.Where(c => !c.Deleted)];
        Array.Sort(sorted, Lists.ByTitle);
        // Not the counter itself: a change may have come in between, and is read the next time.
        return new(beginning, Math.Max(revision, changed.Count == 0 ? revision : changed.Max(c => c.Revision)), cards, sorted);
    }

    private async Task IndexAsync(LibraryContext context, CancellationToken stop)
    {
        var known = await RefreshAsync(context, stop);
        if (_indexed == (known.Beginning, known.Revision)) return;
        if (_indexed.Beginning != known.Beginning) (_index, _indexed) = (new(), (known.Beginning, -1));
        var after = _indexed.Revision;
        var rows = context.Shelf.AsNoTracking().Where(s => s.Revision > after).Select(s => new { s.PageId, s.Words, s.Moves }).AsAsyncEnumerable();
        await foreach (var row in rows.WithCancellation(stop))
        {
            if (known.Cards.TryGetValue(row.PageId, out var card)) _index.Put(card, row.Words, row.Moves);
        }

        _indexed = (known.Beginning, known.Revision);
    }

    /// <summary>What was read of all dances; never changed, so that looking through it holds nobody up.</summary>
    /// <param name="Beginning">Goes up each time everything is read anew.</param>
    /// <param name="Revision">Of the newest change in it.</param>
    /// <param name="Sorted">By title, without those in the bin.</param>
    internal sealed record Known(int Beginning, long Revision, Dictionary<long, Card> Cards, Card[] Sorted)
    {
        public Lazy<ListChoices> Choices { get; } = new(() => Lists.Choices(Sorted));
    }
}
