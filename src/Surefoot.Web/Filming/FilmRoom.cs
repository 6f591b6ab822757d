using Surefoot.Dance;
using Surefoot.Dance.Figures;
using Surefoot.Film;
using Surefoot.Film.Notes;
using Surefoot.Library;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Filming;

/// <summary>
/// Lays the captions of a dance's film along its page as it was kept last. Everything that is found comes from
/// <see cref="FilmReader"/>. The last few films are remembered: the room asks for its page, and then for what stands on the film.
/// </summary>
internal sealed class FilmRoom(DanceLibrary library, Shelves shelves)
{
    /// <summary>Films that are remembered. Working value.</summary>
    private const int Most = 8;

    private readonly Lock _gate = new();
    private readonly LinkedList<Laid> _laid = new();

    public async Task<FilmShown?> ShowAsync(long page)
    {
        if (await Side.FindAsync(shelves, $"{page}") is not { } side) return null;
        var kept = await library.Films.OfAsync(page);
        var settings = (await shelves.NotebookAsync(side.Page.Notebook))?.Settings ?? new();
        // A film of an hour takes a second or two; others are not kept waiting for it.
        var laid = await Task.Run(() => Along(side.Text, side.Book, kept?.Captions ?? "", RolesCalled.Of(settings.LeadWord, settings.FollowWord)));
        return new(side.Page, side.Title, laid.Reading.Score.Sections.Count > 0, kept, laid.Notes, PageLines.Of(laid.Reading, laid.Notes), settings);
    }

    private Laid Along(string text, FigureBook book, string captions, RolesCalled called)
    {
        lock (_gate)
        {
            // A notebook's book is the same one until its figures change.
            if (_laid.FirstOrDefault(l => ReferenceEquals(l.Book, book) && l.Captions == captions && l.Text == text && l.Called == called) is { } known) return known;
        }

        var reading = DanceReader.Read(text, book);
        var made = new Laid(text, book, captions, called, reading, reading.Score.Sections.Count > 0 && captions.Length > 0 ? FilmReader.Read(captions, reading, book, called: called) : null);
        lock (_gate)
        {
            _laid.AddFirst(made);
            if (_laid.Count > Most) _laid.RemoveLast();
        }

        return made;
    }

    private sealed record Laid(string Text, FigureBook Book, string Captions, RolesCalled Called, Reading Reading, FilmNotes? Notes);
}
