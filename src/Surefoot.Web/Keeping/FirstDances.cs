using Surefoot.Library;

namespace Surefoot.Web.Keeping;

/// <summary>A library that has nothing in it begins with the demo notebook, so that there is something to look at.</summary>
internal static class FirstDances
{
    private const string Name = "Demo";

    public static async Task TakeInAsync(DanceLibrary library, string folder, string? terms = null)
    {
        if (!Directory.Exists(folder)) return;
        // Whoever put the demo away does not want it again.
        if ((await library.NotebookBin.LookAsync()).Count > 0) return;
        var notebooks = await library.Notebooks.AllAsync();
        // An empty one of that name is left by a studio that was stopped before its pages were in.
        var home = notebooks switch
        {
            [] => (await library.Notebooks.AddAsync(Name)).Notebook,
            [{ Name: Name } only] when await IsEmptyAsync(library, only.Id) => only,
            _ => null,
        };
        if (home is null) return;
        await library.Exchange.TakeFolderAsync(folder, home.Id);
        if (terms is null || !Directory.Exists(terms) || (await library.Terms.AllAsync()).Count > 0) return;
        foreach (var file in Directory.EnumerateFiles(terms, "*.term").Order(StringComparer.Ordinal))
        {
            var text = await File.ReadAllTextAsync(file);
            await library.Terms.AddAsync(home.Id, Surefoot.Lessons.Text.TermPage.Read(text).Title, text);
        }
    }

    private static async Task<bool> IsEmptyAsync(DanceLibrary library, long notebook) =>
        (await library.Catalogue.ListAsync(new() { Notebook = notebook, Take = 1 })).Total == 0 && (await library.Bin.LookAsync(notebook)).Count == 0;
}
