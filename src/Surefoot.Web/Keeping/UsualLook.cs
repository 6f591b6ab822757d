using System.Globalization;
using Surefoot.Library;
using Surefoot.Web.Deeds;

namespace Surefoot.Web.Keeping;

/// <summary>How a page looks, until somebody chooses on their screen, and how it writes numbers: as its notebook's settings say, else as the first own notebook's do.</summary>
internal sealed class UsualLook(DanceLibrary library, Shelves shelves)
{
    private const string Dances = "/dance/";

    public async Task<NotebookSettings> OfAsync(HttpRequest request)
    {
        var path = request.Path.Value ?? "";
        var named = path.StartsWith(Dances, StringComparison.Ordinal) && path[Dances.Length..].Split('/')[0] is { Length: > 0 } address
            ? (await shelves.FindAsync(address))?.Notebook
            : long.TryParse(request.Query["notebook"], NumberStyles.None, CultureInfo.InvariantCulture, out var asked) ? asked : null;
        var all = await library.Notebooks.AllAsync();
        return (all.FirstOrDefault(n => n.Id == named) ?? Homes.First(all))?.Settings ?? new();
    }
}
