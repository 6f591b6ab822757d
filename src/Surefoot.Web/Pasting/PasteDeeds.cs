using System.Text;
using Surefoot.Dance.Figures;
using Surefoot.Library;
using Surefoot.Transcribe;
using Surefoot.Transcribe.Files;
using Surefoot.Web.Deeds;

namespace Surefoot.Web.Pasting;

/// <summary>Reads sheets that somebody else typed, and keeps as a dance what was read.</summary>
internal static class PasteDeeds
{
    /// <summary>Letters of a sheet: the longest one fills a few pages of paper, some 10 000. Working value.</summary>
    public const int Letters = 60_000;

    private const string One = "/{word:regex(^[0-9a-f]{{32}}$)}";

    public static void MapPaste(this WebApplication app)
    {
        app.MapGroup("/paste").Guarded(_ => "/paste", SheetFile.Most, files: 1).MapPost("/file", File);
        var deeds = app.MapGroup("/paste").Guarded(_ => "/paste");
        deeds.MapPost("/text", Text);
        deeds.MapPost(One + "/again", Again);
        deeds.MapPost(One + "/keep", Keep);
    }

    /// <summary>The notebook a sheet goes to; null while there is none of the person's own.</summary>
    public static Notebook? Home(IReadOnlyList<Notebook> notebooks, string? asked) =>
        notebooks.FirstOrDefault(n => n.Id.ToString(System.Globalization.CultureInfo.InvariantCulture) == asked) ?? Homes.First(notebooks);

    private static Task<IResult> Text(HttpContext context, DanceLibrary library, PastedSheets sheets, Notes notes)
    {
        var text = Field(context, "text");
        return Read(library, sheets, notes, new(null, Encoding.UTF8.GetBytes(text)), text, context.Request.Form["notebook"]);
    }

    private static async Task<IResult> File(HttpContext context, DanceLibrary library, PastedSheets sheets, Notes notes)
    {
        if (context.Request.Form.Files.GetFile("sheet") is not { Length: > 0 } file) return notes.Say("/paste", new("No file was chosen, or it is empty.", Bad: true));
        if (file.Length > SheetFile.Most) return notes.Say("/paste", new($"This file is larger than a sheet may be ({SheetFile.Most >> 20} MB).", Bad: true));
        var bytes = new byte[file.Length];
        await using (var stream = file.OpenReadStream()) await stream.ReadExactlyAsync(bytes, context.RequestAborted);
        var (text, trouble) = await Task.Run(() => SheetFile.Read(bytes));
        return text is null
            ? notes.Say("/paste", new($"“{file.FileName}” was not read: {trouble!.What} {trouble.Advice}", Bad: true))
            : await Read(library, sheets, notes, new(file.FileName, bytes), text.ReplaceLineEndings("\n"), context.Request.Form["notebook"]);
    }

    // With the sheet's words as they were changed, and what was said of words that nobody understood.
    private static Task<IResult> Again(HttpContext context, string word, DanceLibrary library, PastedSheets sheets, Notes notes)
    {
        var (form, text, page) = (context.Request.Form, Field(context, "text"), Field(context, "page"));
        if (sheets.Find(word) is not { } before) return Read(library, sheets, notes, new(null, Encoding.UTF8.GetBytes(text)), text, form["notebook"]);
        foreach (var (said, means) in form["said"].Zip(form["means"]))
        {
            // All at once on the lines as they were read: one answer does not hide the next one's line.
            if (!string.IsNullOrWhiteSpace(means)) text = OtherWords.Replaced(text, before.Read, said!, means.Trim());
        }

        // A box may have lost a blank line at its ends on the way; that is not writing.
        if (page.Trim() != before.Page.Trim()) before.Page = page;
        return Read(library, sheets, notes, before.Brought, text, before.Notebook, before.Page.Trim() == before.Read.Page.Trim() ? null : word);
    }

    private static async Task<IResult> Read(DanceLibrary library, PastedSheets sheets, Notes notes, Brought brought, string text, string? notebook, string? before = null)
    {
        if (string.IsNullOrWhiteSpace(text)) return notes.Say("/paste", new("There is no text in it.", Bad: true));
        if (text.Length > Letters) return notes.Say("/paste", new("That is far longer than a sheet. Is it the right text?", Bad: true));
        var home = Home(await library.Notebooks.AllAsync(), notebook);
        var book = home is null ? FigureBook.Shipped : await library.Pages.FiguresAsync(home.Id);
        var sheet = new PastedSheet(brought, text, notebook, await Task.Run(() => SheetReader.Read(text, book))) { Before = before };
        sheets.Put(sheet);
        return ShelfDeeds.To($"/paste/{sheet.Word}");
    }

    private static async Task<IResult> Keep(HttpContext context, string word, DanceLibrary library, PastedSheets sheets, Notes notes)
    {
        var (sheet, text) = (sheets.Find(word), Field(context, "page"));
        if (sheet is not null) sheet.Page = text;
        var way = sheet is null ? "/paste" : $"/paste/{word}";
        if (string.IsNullOrWhiteSpace(text)) return notes.Say(way, new("There is nothing on the page, so nothing was kept.", Bad: true));
        var home = await Homes.OfAsync(library, sheet?.Notebook ?? context.Request.Form["notebook"]);
        var (page, refusal) = await library.Pages.AddAsync(home, text);
        if (page is null) return notes.Say(way, new(refusal!.Why, Bad: true));
        if (sheet is not null) sheet.Kept = page.Id;
        return await KeepSheetAsync(library, page.Id, text, sheet?.Brought) is { } not
            ? notes.Say($"/details/{page.Id}#films", new($"The dance is kept, its sheet is not. {not}", Bad: true))
            : ShelfDeeds.To($"/dance/{page.Id}");
    }

    // Whoever doubts the page one day can look at what it was read from.
    private static async Task<string?> KeepSheetAsync(DanceLibrary library, long page, string text, Brought? brought)
    {
        if (brought is null) return "The studio did not have it at hand any more.";
        var name = brought.FileName ?? $"{Titles.Of(text, "Pasted")}, sheet.txt";
        return (await library.Details.AddFileAsync(page, name, FileKinds.Of(brought.Bytes), brought.Bytes, "The sheet it was read from"))?.Why;
    }

    private static string Field(HttpContext context, string name) => context.Request.Form[name].ToString().ReplaceLineEndings("\n");
}
