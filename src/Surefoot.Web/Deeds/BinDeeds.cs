using Surefoot.Library;

namespace Surefoot.Web.Deeds;

/// <summary>Brings pages and notebooks back from the bin and throws them away for good. The bin's own page asks before that.</summary>
internal static class BinDeeds
{
    public static void MapBin(this WebApplication app)
    {
        var deeds = app.MapGroup("/bin").Guarded(_ => "/bin");
        deeds.MapPost("/back/{page:long}", async (long page, DanceLibrary library, Notes notes) =>
        {
            if (await library.Bin.TakeOutAsync(page) is { } refusal) return notes.Say("/bin", new(refusal.Why, Bad: true));
            return notes.Say("/bin", new($"“{Titles.Of(await library.Pages.TextAsync(page), "The dance")}” is back on the shelf."));
        });
        deeds.MapPost("/notebook/{notebook:long}", async (long notebook, DanceLibrary library, Notes notes) =>
            await library.NotebookBin.TakeOutAsync(notebook) is { } refusal
                ? notes.Say("/bin", new(refusal.Why, Bad: true))
                : notes.Say($"/settings?notebook={notebook}", new($"“{(await library.Notebooks.OneAsync(notebook))?.Name}” is back, with its dances.")));
        deeds.MapPost("/gone/{page:long}", async (long page, DanceLibrary library, Notes notes) =>
        {
            var title = Titles.Of(await library.Pages.TextAsync(page), "The dance");
            return await library.Bin.ThrowAwayAsync(page) is { } refusal
                ? notes.Say("/bin", new(refusal.Why, Bad: true))
                : notes.Say("/bin", new($"“{title}” is gone for good."));
        });
        deeds.MapPost("/empty", async (DanceLibrary library, Notes notes, HttpContext context) =>
        {
            // What was put in after the question was asked was not asked about.
            if (!long.TryParse(context.Request.Form["seen"], out var seen) || seen is < 0 or > 253_402_300_799_999) return ShelfDeeds.To("/bin");
            var before = DateTimeOffset.FromUnixTimeMilliseconds(seen).AddMilliseconds(1);
            var gone = await library.Bin.EmptyAsync(before);
            return notes.Say("/bin", new(gone switch { 0 => "The bin is empty.", 1 => "1 dance is gone for good.", _ => $"{gone} dances are gone for good." }));
        });
    }
}
