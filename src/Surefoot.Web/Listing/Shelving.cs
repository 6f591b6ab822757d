using Surefoot.Library;

namespace Surefoot.Web.Listing;

/// <summary>Answers the shelf's questions from the library's catalogue.</summary>
internal sealed class Shelving(DanceLibrary library)
{
    /// <summary>Makes the index of the search.</summary>
    public async Task WarmAsync() => await library.Catalogue.SearchAsync("dance", most: 1);

    public async Task<ShelfAnswer> AnswerAsync(ShelfQuestion question, CancellationToken stop)
    {
        var notebooks = (await library.Notebooks.AllAsync(stop)).ToDictionary(n => n.Id, n => n.Name);
        var (total, found) = question.Words.Length == 0 ? await ListedAsync(question, stop) : await library.Catalogue.SearchAsync(question.Words, question.Asked, stop);
        var all = total > 0 ? total : (await library.Catalogue.ListAsync(new() { Take = 0 }, stop)).Total;
        return new(question, all, total, found.Count == 0 || found[0].Whole, found, notebooks)
        {
            Binned = total > 0 ? 0 : (await library.Bin.LookAsync(0, 0, stop)).Total,
        };
    }

    public async Task<ShelfChoices> ChoicesAsync(CancellationToken stop) => new(await library.Notebooks.AllAsync(stop), await library.Catalogue.ChoicesAsync(stop));

    private async Task<(int Total, IReadOnlyList<Found> Dances)> ListedAsync(ShelfQuestion question, CancellationToken stop)
    {
        var list = await library.Catalogue.ListAsync(question.Asked, stop);
        return (list.Total, [.. list.Dances.Select(d => new Found(d, 0, true, null))]);
    }
}
