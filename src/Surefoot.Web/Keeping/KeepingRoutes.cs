using Microsoft.AspNetCore.Mvc;
using Surefoot.Library;
using Surefoot.Web.Safety;

namespace Surefoot.Web.Keeping;

/// <summary>Where windows send what is to be kept, and ask whether somebody else kept something.</summary>
internal static class KeepingRoutes
{
    /// <summary>Bytes of a request. A page has at most 1 MB (the library's limit); the signs JSON writes doubled may take as much again.</summary>
    public const int MostBytes = 3 << 20;

    public static void MapKeeping(this WebApplication app)
    {
        var page = app.MapGroup("/keep/{page:long}");
        page.MapGet("", State);
        page.MapGet("/opened", Opened);
        page.MapGet("/text", Text);
        var write = page.MapGroup("").AddEndpointFilter<FromOurPages>().WithMetadata(new RequestSizeLimitAttribute(MostBytes)).DisableAntiforgery();
        write.MapPost("/draft", Draft);
        write.MapPost("/forget", Forget);
        write.MapPost("/version", Version);
        write.MapPost("/back", Back);
    }

    private static async Task<IResult> State(long page, HttpContext context, DanceLibrary library)
    {
        context.Response.Headers.CacheControl = "no-store";
        if (await library.Pages.OneAsync(page) is not { Deleted: null } info) return Gone();
        // A version kept between the two questions is told the next time.
        var history = await library.Pages.HistoryAsync(page);
        return Results.Json(PageState.Of(info, history));
    }

    private static async Task<IResult> Text(long page, int version, HttpContext context, DanceLibrary library)
    {
        context.Response.Headers.CacheControl = "no-store";
        return await library.Pages.TextAsync(page, version) is { } text ? Results.Json(new TextTold(text)) : Gone();
    }

    private static async Task<IResult> Opened(long page, string? draft, HttpContext context, DanceLibrary library)
    {
        context.Response.Headers.CacheControl = "no-store";
        if (await library.Pages.OneAsync(page) is not { Deleted: null } info || await library.Pages.TextAsync(page, info.Current) is not { } text) return Gone();
        var state = PageState.Of(info, await library.Pages.HistoryAsync(page));
        var drafts = (await library.Drafts.OfAsync(page)).Where(d => d.Text != text).ToList();
        var shown = drafts.Find(d => d.Session == draft) ?? (drafts.Count > 0 ? drafts[0] : null);
        var told = shown is null ? null : new DraftTold(shown.Session, shown.Sequence, shown.BasedOn, shown.Text, shown.Saved.ToUnixTimeMilliseconds());
        return Results.Json(new PageOpened(state.Current, state.Latest, $"{info.Created.ToUnixTimeMilliseconds()}", text, told, Math.Max(0, drafts.Count - 1)));
    }

    // Not stopped when the window goes away: what it sent last is what would be missed.
    private static async Task<IResult> Draft(long page, Written written, DanceLibrary library, TimeProvider clock)
    {
        if (await library.Drafts.SaveAsync(page, written.Session, written.Sequence, written.BasedOn, written.Text) is { } refusal) return No(refusal.Why);
        await Needless(page, written, library);
        return Results.Json(new DraftKept(clock.GetUtcNow().ToUnixTimeMilliseconds()));
    }

    private static async Task<IResult> Forget(long page, Adopted draft, DanceLibrary library)
    {
        await library.Drafts.ForgetAsync(page, draft.Session, draft.Sequence);
        return Results.NoContent();
    }

    private static async Task<IResult> Version(long page, Written written, DanceLibrary library, TimeProvider clock)
    {
        var result = await library.Pages.KeepAsync(page, written.BasedOn, written.Text, new(Device: written.Device, Note: written.Note), written.Session);
        if (result is not NotKept) await Needless(page, written, library);
        return Told(result, clock);
    }

    private static async Task<IResult> Back(long page, BroughtBack version, DanceLibrary library, TimeProvider clock) =>
        Told(await library.Pages.BringBackAsync(page, version.Version, new(Device: version.Device)), clock);

    private static async Task Needless(long page, Written written, DanceLibrary library)
    {
        if (written.Adopted is { } old && old.Session != written.Session) await library.Drafts.ForgetAsync(page, old.Session, old.Sequence);
    }

    private static IResult Told(KeepResult result, TimeProvider clock)
    {
        var now = clock.GetUtcNow().ToUnixTimeMilliseconds();
        return result switch
        {
            Kept kept => Results.Json(new VersionKept(kept.Number, New: true, now)),
            KeptBeside beside => Results.Json(new VersionKept(beside.Yours, New: true, now, beside.Theirs)),
            NothingNew nothing => Results.Json(new VersionKept(nothing.Number, New: false, now, Noted: nothing.Noted)),
            NotKept not => No(not.Why),
            _ => throw new InvalidOperationException("An unknown answer of the library."),
        };
    }

    private static IResult No(string why) => Results.Json(new Refused(why), statusCode: StatusCodes.Status422UnprocessableEntity);

    private static IResult Gone() => Results.Json(new Refused("That page is not there any more. It may have been put into the bin."), statusCode: StatusCodes.Status404NotFound);
}
