using Surefoot.Web.Keeping;

namespace Surefoot.Web.Deeds;

/// <summary>What the next page says of what was just done.</summary>
/// <param name="Bad">It was not done.</param>
/// <param name="Undo">Where to send a form that takes it back; null for nothing.</param>
/// <param name="UndoSays">What the button for it says.</param>
/// <param name="Typed">What was typed into the form and not taken, by the names of its fields, so that it is there again; null for nothing.</param>
internal sealed record Note(string Says, bool Bad = false, string? Undo = null, string UndoSays = "Undo", IReadOnlyDictionary<string, string>? Typed = null);

/// <summary>
/// Carries a note from a form's answer to the page it leads to. The address names it by a word nobody can guess
/// and never holds the sentence itself, so no address can put words into the studio's mouth.
/// </summary>
internal sealed class Notes
{
    /// <summary>Notes that are remembered, so that a page may be loaded again. Working value.</summary>
    private const int Most = 200;

    private readonly LastFew<Note> _notes = new(Most);

    public Note? Find(string? word) => word is null ? null : _notes.Find(word);

    /// <summary>Leads to a page that says the note.</summary>
    public IResult Say(string page, Note note)
    {
        var word = _notes.Put(note);
        var (path, mark) = page.IndexOf('#') is var at and >= 0 ? (page[..at], page[at..]) : (page, "");
        return Results.LocalRedirect($"{path}{(path.Contains('?') ? '&' : '?')}note={word}{mark}", permanent: false, preserveMethod: false);
    }
}
