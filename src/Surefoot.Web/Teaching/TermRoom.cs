using System.Security.Cryptography;
using System.Text;
using Surefoot.Dance;
using Surefoot.Dance.Words;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Text;
using Surefoot.Library;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Teaching;

/// <summary>A term as its room shows it.</summary>
/// <param name="Titles">The dances its notebook has, whether the term speaks of them or not.</param>
/// <param name="Case">Null where the text does not say when the term is; then there is no plan either.</param>
internal sealed record TermShown(TermInfo Kept, TermPage Page, IReadOnlyList<string> Titles, TermCase? Case, TermPlan? Plan)
{
    /// <summary>Dances of the notebook that the term does not speak of yet.</summary>
    public IEnumerable<string> Untaught
    {
        get
        {
            var named = new HashSet<string>(Page.Term is { } term ? [.. term.Wishes.Select(w => w.Dance), .. term.Known.Select(k => k.Dance)] : [], StringComparer.OrdinalIgnoreCase);
            return Titles.Where(t => !named.Contains(t)).Order(StringComparer.CurrentCultureIgnoreCase);
        }
    }
}

/// <summary>Reads and plans the terms of the library. A plan takes a second or two, so the last few are kept while their text and their dances stay the same.</summary>
internal sealed class TermRoom(DanceLibrary library, Shelves shelves, IWholeSolver solver) : IDisposable
{
    /// <summary>Plans that are kept. Working value.</summary>
    private const int Most = 16;

    private readonly SemaphoreSlim _one = new(1, 1);
    private readonly LastFew<TermPlan> _plans = new(Most);

    public async Task<TermShown?> ShowAsync(long id)
    {
        if (await library.Terms.OneAsync(id) is not { } kept || await library.Notebooks.OneAsync(kept.Notebook) is null) return null;
        var page = TermPage.Read(kept.Text);
        var all = (await library.Catalogue.ListAsync(new() { Notebook = kept.Notebook })).Dances.Where(d => !d.IsFigures).ToList();
        var titles = all.ConvertAll(d => d.Title.Length > 0 ? d.Title : d.Name);
        if (page.Term is not { } term) return new(kept, page, titles, null, null);
        var (dances, mark) = await DancesAsync(kept.Notebook, all, Named(term));
        var key = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes($"{kept.Text}\n{mark}")));
        // One after the other: whoever asks for the same plan meanwhile gets it when it is there.
        await _one.WaitAsync();
        try
        {
            var plan = _plans.Find(key);
            if (plan is null)
            {
                plan = await Task.Run(() => new Planner(solver).Plan(TermCase.Of(page, dances)!));
                _plans.Put(key, plan);
            }

            return new(kept, page, titles, plan.Case, plan);
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose() => _one.Dispose();

    private static HashSet<string> Named(Surefoot.Lessons.Term term) => new(
        [.. term.Wishes.Select(w => w.Dance), .. term.Wishes.SelectMany(w => w.After.Select(a => a.Name)), .. term.Known.Select(k => k.Dance), .. term.Reached.SelectMany(r => r.Dances.Select(d => d.Dance)), .. term.Told.SelectMany(t => t.Dances.Select(d => d.Dance))],
        StringComparer.OrdinalIgnoreCase);

    /// <summary>The dances a term speaks of, and the nearest of those it misspells; with a mark that changes when one of them does.</summary>
    private async Task<(List<TermDance> Dances, string Mark)> DancesAsync(long notebook, IEnumerable<ShelfItem> all, HashSet<string> named)
    {
        var book = await shelves.BookAsync(notebook);
        var dances = new List<TermDance>();
        var mark = new StringBuilder();
        foreach (var item in all)
        {
            string[] names = [item.Title.Length > 0 ? item.Title : item.Name, .. item.Aliases, item.Name[(item.Name.LastIndexOf('/') + 1)..]];
            if (!Array.Exists(names, n => named.Contains(n) || named.Any(w => w.StartsWith(n + " ", StringComparison.OrdinalIgnoreCase) || NearWords.Distance(n.ToLowerInvariant(), w.ToLowerInvariant(), 3) <= 3))) continue;
            if (await library.Pages.TextAsync(item.Page) is not { } text) continue;
            var reading = DanceReader.Read(text, book);
            // The shelf has the songs' names only.
            var songs = (await library.Details.OfAsync(item.Page))?.Songs.Select(s => new TermSong(s.Title, s.Artist, s.Tempo)).ToList() ?? [];
            dances.Add(new(Surefoot.Dance.Basics.ValueList.ToValueList(names), reading.Score, reading.Calls) { Songs = [.. songs], Page = item.Page });
            mark.Append(item.Page).Append(' ').Append(item.Changed.ToUnixTimeMilliseconds()).Append(' ').AppendJoin('|', songs.Select(s => s.Words)).Append('\n');
        }

        return (dances, mark.ToString());
    }
}
