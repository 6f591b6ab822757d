using Microsoft.AspNetCore.Http.HttpResults;
using Surefoot.Library;
using Surefoot.Web.Components.Parts;
using Surefoot.Web.Listing;

namespace Surefoot.Web.Deeds;

/// <summary>What the shelf is asked while somebody types, and what its buttons do.</summary>
internal static class ShelfDeeds
{
    public static void MapShelf(this WebApplication app)
    {
        app.MapGet("/shelf/list", List);
        app.Lifetime.ApplicationStarted.Register(() => _ = Task.Run(() => Warming.BeginAsync(Studio.Address(app), app.Services.GetRequiredService<Shelving>())));
        var deeds = app.MapGroup("/shelf").Guarded(Guard.Back);
        deeds.MapPost("/new", New);
        deeds.MapPost("/copy/{page:long}", Copy);
        deeds.MapPost("/bin/{page:long}", Bin);
        deeds.MapPost("/back/{page:long}", Back);
        deeds.MapPost("/begin", Begin);
    }

    private static async Task<RazorComponentResult<DanceList>> List(HttpContext context, Shelving shelving)
    {
        context.Response.Headers.CacheControl = "no-store";
        // A letter typed meanwhile gives this question up, but not the index it may be making for the first time.
        var answer = await shelving.AnswerAsync(ShelfQuestion.Read(context.Request.Query), CancellationToken.None);
        return new(new Dictionary<string, object?> { ["Answer"] = answer });
    }

    private static async Task<IResult> New(HttpContext context, DanceLibrary library, Notes notes)
    {
        var form = context.Request.Form;
        var home = await Homes.OfAsync(library, form["notebook"]);
        var title = StartingPage.Title(form["title"]);
        var tempo = (await library.Notebooks.OneAsync(home))?.Settings.UsualTempo;
        var (page, refusal) = await library.Pages.AddAsync(home, StartingPage.For(title.Length == 0 ? "New dance" : title, form["kind"] != "line", tempo));
        return page is null ? notes.Say(Guard.Back(context), new(refusal!.Why, Bad: true)) : To($"/dance/{page.Id}?write");
    }

    private static async Task<IResult> Copy(HttpContext context, long page, DanceLibrary library, Notes notes)
    {
        if (await library.Pages.OneAsync(page) is not { Deleted: null } info || await library.Pages.TextAsync(page) is not { } text) return notes.Say(Guard.Back(context), Gone);
        var title = Titles.Of(text, info.Name);
        var (copy, refusal) = await library.Pages.AddAsync(info.Notebook, StartingPage.Retitled(text, $"{title}, copy"));
        return copy is null
            ? notes.Say(Guard.Back(context), new(refusal!.Why, Bad: true))
            : notes.Say(Guard.Back(context), new($"“{title}, copy” stands on the shelf now.", Undo: $"/shelf/bin/{copy.Id}"));
    }

    private static async Task<IResult> Bin(HttpContext context, long page, DanceLibrary library, Notes notes)
    {
        var title = await library.Pages.OneAsync(page) is { } info ? Titles.Of(await library.Pages.TextAsync(page), info.Name) : "";
        return await library.Bin.PutAsync(page) is { } refusal
            ? notes.Say(Guard.Back(context), new(refusal.Why, Bad: true))
            : notes.Say(Guard.Back(context), new($"“{title}” is in the bin.", Undo: $"/shelf/back/{page}"));
    }

    private static async Task<IResult> Back(HttpContext context, long page, DanceLibrary library, Notes notes)
    {
        if (await library.Bin.TakeOutAsync(page) is { } refusal) return notes.Say(Guard.Back(context), new(refusal.Why, Bad: true));
        return notes.Say(Guard.Back(context), new($"“{Titles.Of(await library.Pages.TextAsync(page), "The dance")}” is back on the shelf."));
    }

    // Whoever puts the greeting away has a notebook of their own from then on; that is how it stays away.
    private static async Task<IResult> Begin(HttpContext context, DanceLibrary library, Notes notes)
    {
        var home = await Homes.OfAsync(library, asked: null);
        return notes.Say("/", new($"Your own notebook is called “{(await library.Notebooks.OneAsync(home))?.Name}”. The settings give it another name."));
    }

    internal static Note Gone { get; } = new("That dance is not there any more. It may be in the bin.", Bad: true);

    internal static IResult To(string page) => Results.LocalRedirect(page);
}
