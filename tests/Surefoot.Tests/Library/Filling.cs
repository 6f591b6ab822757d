using Surefoot.Library.Keeping;
using Surefoot.Library.Store;

namespace Surefoot.Tests.Library;

/// <summary>Fills a library with many pages in few transactions, which saving page by page would take minutes for.</summary>
internal static class Filling
{
    public static async Task ManyAsync(LibraryStore store, long notebook, int pages)
    {
        var core = new Core(store, new());
        var shelving = new Shelving(core);
        for (var from = 0; from < pages; from += 1000)
        {
            var rows = new List<(string Text, ShelfRow Shelf)>();
            for (var number = from; number < Math.Min(pages, from + 1000); number++)
            {
                var text = ManyDances.Page(number);
                rows.Add((text, await shelving.MakeAsync(notebook, text, default)));
            }

            await core.ChangeAsync(
                async (context, revision) =>
                {
                    var made = new List<PageRow>();
                    for (var i = 0; i < rows.Count; i++)
                    {
                        var name = $"dance-{from + i}";
                        made.Add(new() { NotebookId = notebook, Name = name, NameKey = Folding.Key(name), Current = 1, Created = core.Now, Changed = core.Now });
                    }

                    context.Pages.AddRange(made);
                    await context.SaveChangesAsync();
                    for (var i = 0; i < rows.Count; i++)
                    {
                        context.Versions.Add(new() { PageId = made[i].Id, Number = 1, Text = rows[i].Text, Saved = core.Now });
                        Shelving.Put(context, rows[i].Shelf, made[i], revision);
                    }

                    return 0;
                },
                default);
        }
    }
}
