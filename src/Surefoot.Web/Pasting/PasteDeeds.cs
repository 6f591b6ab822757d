using System.Globalization;
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
        var deeds = app.MapGroup("/paste").Guarded(_ => "/paste", values: Boxes.Most);
        deeds.MapPost("/text", Text);
        deeds.MapPost(One + "/again", Again);
        deeds.MapPost(One + "/keep", Keep);
    }

    /// <summary>The notebook a sheet goes to; null while there is none of the person's own.</summary>
    public static Notebook? Home(IReadOnlyList<Notebook> notebooks, string? asked) =>
        notebooks.FirstOrDefault(n => n.Id.ToString(CultureInfo.InvariantCulture) == asked) ?? Homes.First(notebooks);

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

    // With the sheet's words as they were changed, and with what was said of them.
    private static async Task<IResult> Again(HttpContext context, string word, DanceLibrary library, PastedSheets sheets, Notes notes)
    {
        var (form, text, page) = (context.Request.Form, Field(context, "text"), Field(context, "page"));
        if (sheets.Find(word) is not { } before) return await Read(library, sheets, notes, new(null, Encoding.UTF8.GetBytes(text)), text, form["notebook"]);
        // A box may have lost a blank line at its ends on the way; that is not writing.
        if (page.Trim() != before.Page.Trim()) before.Page = page;
        var book = await BookAsync(library, before.Notebook);
        var filled = Boxes.Filled(before.Read, form).Select(f => (f.Said, f.Means, f.Holds, f.Field, Read: SheetWords.InPageWords(f.Means, book))).ToList();
        var why = filled.Where(f => f.Read.Fault is not null).ToDictionary(f => f.Field, f => $"“{f.Means}” cannot be taken: {f.Read.Fault}.", StringComparer.Ordinal);
        if (why.Count > 0)
        {
            before.Refused = new(text, Boxes.Typed(form), why);
            var first = filled.First(f => f.Read.Fault is not null);
            return notes.Say($"/paste/{word}{Mark(first.Field)}", new($"{why[first.Field]} Say it as a page does, such as “rock back L, recover R”. Nothing was read again, and all you typed is still there.", Bad: true));
        }

        before.Refused = NotTaken.Nothing;
        var corrections = Corrections.Without(before.Corrections, int.TryParse(form["back"], NumberStyles.None, CultureInfo.InvariantCulture, out var back) ? back : -1);
        foreach (var (said, _, holds, field, (means, _)) in filled)
        {
            if (holds == Holds.Always && (await library.Words.KeepAsync(said.Words, means!)).Refusal is { } not)
            {
                before.Refused = new(text, Boxes.Typed(form), new Dictionary<string, string> { [field] = not.Why });
                return notes.Say($"/paste/{word}{Mark(field)}", new(not.Why, Bad: true));
            }

            corrections = Corrections.With(corrections, said, means!, holds);
        }

        var moved = Corrections.Moved(corrections, before.Text, text, out var lost);
        var says = filled.Select(f => f.Holds == Holds.Always ? $"“{f.Said.Words}” is a word of the hall now." : f.Holds == Holds.All && f.Said.Elsewhere > 0 ? $"“{f.Said.Words}” is taken so here and at {Places(f.Said.Elsewhere)} more." : $"“{f.Said.Words}” is taken so here.").ToList();
        if (lost.Count > 0) says.Add($"What you said of “{lost[0]}”{(lost.Count > 1 ? $" and {lost.Count - 1} more" : "")} was let go, because its line is not there any more.");
        var note = says.Count == 0 ? null : string.Join(' ', says.Take(3)) + (says.Count > 3 ? $" And {says.Count - 3} more." : "");
        return await Read(library, sheets, notes, before.Brought, text, before.Notebook, before.Page.Trim() == before.Read.Page.Trim() ? null : word, moved, note, filled.Count > 0 ? Mark(filled[0].Field) : "");
    }

    /// <summary>The place on the page where a field stands: its line, or the list above all lines.</summary>
    private static string Mark(string field) => field.StartsWith("means-", StringComparison.Ordinal) ? $"#line-{field.Split('-')[1]}" : "#unknown";

    internal static string Places(int count) => count == 1 ? "one place" : $"{count} places";

    private static async Task<FigureBook> BookAsync(DanceLibrary library, string? notebook) =>
        Home(await library.Notebooks.AllAsync(), notebook) is { } home ? await library.Pages.FiguresAsync(home.Id) : FigureBook.Shipped;

    private static async Task<IResult> Read(
        DanceLibrary library, PastedSheets sheets, Notes notes, Brought brought, string text, string? notebook, string? before = null, IReadOnlyList<SheetWord>? corrections = null, string? note = null, string mark = "")
    {
        if (string.IsNullOrWhiteSpace(text)) return notes.Say("/paste", new("There is no text in it.", Bad: true));
        if (text.Length > Letters) return notes.Say("/paste", new("That is far longer than a sheet. Is it the right text?", Bad: true));
        var book = await BookAsync(library, notebook);
        SheetWord[] told = [.. corrections ?? [], .. (await library.Words.AllAsync()).Select(w => w.ForSheets)];
        var sheet = new PastedSheet(brought, text, notebook, await Task.Run(() => SheetReader.Read(text, book, told))) { Before = before, Corrections = corrections ?? [] };
        sheets.Put(sheet);
        // What stood above all lines may be gone with what was told of it.
        var way = $"/paste/{sheet.Word}{(mark == "#unknown" ? "" : mark)}";
        return note is null ? ShelfDeeds.To(way) : notes.Say(way, new(note));
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
