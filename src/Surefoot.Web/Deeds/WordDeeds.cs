using System.Globalization;
using Surefoot.Dance.Figures;
using Surefoot.Library;
using Surefoot.Transcribe;

namespace Surefoot.Web.Deeds;

/// <summary>The hall's own words are told and taken back.</summary>
internal static class WordDeeds
{
    private const string Home = "/settings#words";

    public static void MapWords(this WebApplication app)
    {
        var deeds = app.MapGroup("/settings/words").Guarded(_ => "/settings");
        deeds.MapPost("/keep", Keep);
        deeds.MapPost("/back", async (HttpContext context, DanceLibrary library, Notes notes) =>
        {
            var id = long.TryParse(context.Request.Form["word"], NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
            var said = (await library.Words.AllAsync()).FirstOrDefault(w => w.Id == id)?.Said;
            return await library.Words.TakeBackAsync(id) is { } refusal
                ? notes.Say(Home, new(refusal.Why, Bad: true))
                : notes.Say(Home, new($"“{said}” is no word of the hall any more. Sheets that are read from now on are read without it."));
        });
    }

    private static async Task<IResult> Keep(HttpContext context, DanceLibrary library, Notes notes)
    {
        var (said, told) = (context.Request.Form["said"].ToString(), context.Request.Form["means"].ToString());
        var typed = new Dictionary<string, string>(StringComparer.Ordinal) { ["said"] = said, ["means"] = told };
        if (string.IsNullOrWhiteSpace(told)) return notes.Say(Home, new("Say what it means, as a page would write it, or “no step”.", Bad: true, Typed: typed));
        // A figure of any notebook may be meant.
        var fault = "";
        foreach (var book in await BooksAsync(library))
        {
            var (means, why) = SheetWords.InPageWords(told, book);
            if (means is null)
            {
                if (fault.Length == 0) fault = why!;
                continue;
            }

            var (word, refusal) = await library.Words.KeepAsync(said, means);
            return word is null
                ? notes.Say(Home, new(refusal!.Why, Bad: true, Typed: typed))
                : notes.Say(Home, new($"“{word.Said}” is {(word.ForSheets.IsNoStep ? "no step" : $"“{word.Means}”")} from now on, whenever a sheet is read."));
        }

        return notes.Say(Home, new($"“{told.Trim()}” cannot be taken for “{said.Trim()}”: {fault}. Say it as a page does, such as “rock back L, recover R”.", Bad: true, Typed: typed));
    }

    private static async Task<List<FigureBook>> BooksAsync(DanceLibrary library)
    {
        var books = new List<FigureBook> { FigureBook.Shipped };
        foreach (var notebook in await library.Notebooks.AllAsync()) books.Add(await library.Pages.FiguresAsync(notebook.Id));
        return books;
    }
}
