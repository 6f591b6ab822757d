using System.Globalization;
using Surefoot.Dance.Figures;
using Surefoot.Library;

namespace Surefoot.Web.Keeping;

/// <summary>Finds pages and their notebooks for the studio's addresses.</summary>
internal sealed class Shelves(DanceLibrary library)
{
    public DanceLibrary Library => library;

    /// <summary>The page of an address: its number, its name, or the last piece of its name. Null where there is none, or it is in the bin.</summary>
    public async Task<PageInfo?> FindAsync(string address)
    {
        if (long.TryParse(address, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && await library.Pages.OneAsync(number) is { } page) return page.Deleted is null ? page : null;
        foreach (var notebook in await library.Notebooks.AllAsync())
        {
            if (await library.Pages.NamedAsync(notebook.Id, address) is { } named) return named;
        }

        var found = (await library.Catalogue.ListAsync(new())).Dances.FirstOrDefault(d => d.Name[(d.Name.LastIndexOf('/') + 1)..].Equals(address, StringComparison.OrdinalIgnoreCase));
        return found is null ? null : await library.Pages.OneAsync(found.Page);
    }

    /// <summary>A notebook, the first one when none is named.</summary>
    public async Task<Notebook?> NotebookAsync(long? notebook)
    {
        if (notebook is { } one) return await library.Notebooks.OneAsync(one);
        return await library.Notebooks.AllAsync() is [var first, ..] ? first : null;
    }

    /// <summary>The words and figures of a notebook; Surefoot's own where it is not there.</summary>
    public async Task<FigureBook> BookAsync(long? notebook) =>
        await NotebookAsync(notebook) is { } one ? await library.Pages.FiguresAsync(one.Id) : FigureBook.Shipped;
}
