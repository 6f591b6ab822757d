using Surefoot.Library;

namespace Surefoot.Web.Listing;

/// <summary>Answers the shelf's questions from the library's catalogue.</summary>
internal sealed class Shelving(DanceLibrary library)
{
    // The easiest first, as sheets name them. Common practice, no source.
    private static readonly string[] Levels = ["newcomer", "beginner", "improver", "intermediate", "advanced"];

    /// <summary>Makes the index before anybody asks: with ten thousand dances the first search would wait for it.</summary>
    public async Task WarmAsync() => await library.Catalogue.SearchAsync("dance", most: 1);

    public async Task<ShelfAnswer> AnswerAsync(ShelfQuestion question, CancellationToken stop)
    {
        var notebooks = (await library.Notebooks.AllAsync(stop)).ToDictionary(n => n.Id, n => n.Name);
        var all = (await library.Catalogue.ListAsync(new() { Take = 0 }, stop)).Total;
        if (question.Words.Length == 0)
        {
            var list = await library.Catalogue.ListAsync(question.Asked, stop);
            return new(question, all, list.Total, true, [.. list.Dances.Select(d => new Found(d, 0, true, null))], notebooks);
        }

        var (total, found) = await library.Catalogue.SearchAsync(question.Words, question.Asked, stop);
        return new(question, all, total, found.Count == 0 || found[0].Whole, found, notebooks);
    }

    public async Task<ShelfChoices> ChoicesAsync(CancellationToken stop)
    {
        var levels = new SortedSet<string>(StringComparer.OrdinalIgnoreCase);
        var meters = new HashSet<Surefoot.Dance.Scoring.Meter>();
        var counts = new SortedSet<int>();
        var tags = new SortedSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var dance in (await library.Catalogue.ListAsync(new(), stop)).Dances)
        {
            if (dance.Level.Length > 0) levels.Add(dance.Level);
            meters.Add(dance.Meter);
            counts.Add(dance.Counts);
            foreach (var tag in dance.Tags) tags.Add(tag);
        }

        return new(
            await library.Notebooks.AllAsync(stop),
            [.. levels.OrderBy(l => Array.FindIndex(Levels, k => l.Contains(k, StringComparison.OrdinalIgnoreCase)) is var at and >= 0 ? at : Levels.Length)],
            [.. meters.OrderBy(m => m.Unit).ThenBy(m => m.Beats)],
            [.. counts],
            [.. tags]);
    }
}
