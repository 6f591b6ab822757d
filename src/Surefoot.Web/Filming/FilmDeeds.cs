using Surefoot.Dance.Text;
using Surefoot.Film.Captions;
using Surefoot.Library;
using Surefoot.Web.Deeds;

namespace Surefoot.Web.Filming;

/// <summary>What the forms of the film's room do: captions and an address are kept, the film is taken away and comes back.</summary>
internal static class FilmDeeds
{
    /// <summary>Bytes of a caption file: what the library takes.</summary>
    public static int CaptionBytes { get; } = new LibraryLimits().CaptionBytes;

    private const string Advice = "Take the file of captions that your video program or site gives out, WebVTT or SRT. Nothing was changed.";

    public static void MapFilm(this WebApplication app)
    {
        // What is a little too large is told so by the library, in its own words.
        app.MapGroup("/film/{page:long}").Guarded(Home, fileBytes: 1 << 20, files: 1).MapPost("/captions", File);
        var deeds = app.MapGroup("/film/{page:long}").Guarded(Home);
        deeds.MapPost("/text", Text);
        deeds.MapPost("/address", Address);
        deeds.MapPost("/away", Away);
        deeds.MapPost("/back", async (long page, DanceLibrary library, Notes notes) =>
            await library.Films.BringBackAsync(page) is { } refusal ? Say(notes, page, refusal.Why, bad: true) : Say(notes, page, "The film is back."));
        app.MapFilmFiles();
    }

    private static string Home(HttpContext context) => Home(long.Parse((string)context.Request.RouteValues["page"]!, System.Globalization.CultureInfo.InvariantCulture));

    private static string Home(long page) => $"/dance/{page}/film";

    private static IResult Say(Notes notes, long page, string says, bool bad = false) => notes.Say(Home(page), new(says, bad));

    private static async Task<IResult> File(HttpContext context, long page, DanceLibrary library, Notes notes)
    {
        if (context.Request.Form.Files.GetFile("captions") is not { Length: > 0 } file) return Say(notes, page, "No file was chosen, or it is empty.", bad: true);
        var bytes = new byte[file.Length];
        await using (var stream = file.OpenReadStream()) await stream.ReadExactlyAsync(bytes, context.RequestAborted);
        var (text, _, trouble) = TextForms.Read(bytes);
        return trouble is null
            ? await KeepAsync(page, file.FileName, text, library, notes)
            : Say(notes, page, $"“{file.FileName}” was not read: {trouble.What} {Advice}", bad: true);
    }

    // Browsers send line ends in a way of their own.
    private static Task<IResult> Text(HttpContext context, long page, DanceLibrary library, Notes notes) =>
        KeepAsync(page, "", context.Request.Form["captions"].ToString().ReplaceLineEndings("\n"), library, notes);

    private static async Task<IResult> KeepAsync(long page, string name, string text, DanceLibrary library, Notes notes)
    {
        var read = CaptionReader.Read(text);
        var what = name.Length > 0 ? $"“{name}”" : "What you pasted";
        // What holds no captions takes no others' place; it stays in its box, to be looked at.
        if (read.Cues.Count == 0) return notes.Say(Home(page), new($"{what} holds no captions with times. {First(read)}{Advice}", Bad: true, Typed: Typed("captions", text)));
        if (await library.Films.KeepCaptionsAsync(page, name, text) is { } refusal) return notes.Say(Home(page), new(refusal.Why, Bad: true, Typed: Typed("captions", text)));
        return Say(notes, page, read.Cues.Count == 1 ? "One caption was read." : $"{read.Cues.Count} captions were read.");
    }

    private static string First(CaptionFile read) =>
        read.Troubles.FirstOrDefault(t => t.Lost) is { } lost ? $"Line {lost.Line}: {lost.Says} " : "";

    private static async Task<IResult> Address(HttpContext context, long page, DanceLibrary library, Notes notes)
    {
        var address = context.Request.Form["address"].ToString().Trim();
        if (await library.Films.KeepAddressAsync(page, address) is { } refusal) return notes.Say(Home(page), new(refusal.Why, Bad: true, Typed: Typed("address", address)));
        return Say(notes, page, address.Length == 0 ? "The address is forgotten." : "The address is kept. Whoever opens this page has the film fetched from there by their own browser.");
    }

    private static async Task<IResult> Away(long page, DanceLibrary library, Notes notes) =>
        await library.Films.TakeAwayAsync(page) is { } refusal
            ? Say(notes, page, refusal.Why, bad: true)
            : notes.Say(Home(page), new("The film’s captions and its address are taken away. The film itself is where it was.", Undo: $"/film/{page}/back"));

    private static Dictionary<string, string> Typed(string field, string text) => new(StringComparer.Ordinal) { [field] = text };
}
