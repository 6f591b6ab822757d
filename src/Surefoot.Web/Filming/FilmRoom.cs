using Surefoot.Dance;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;
using Surefoot.Film;
using Surefoot.Film.Captions;
using Surefoot.Film.Notes;
using Surefoot.Library;
using Surefoot.Web.Keeping;

namespace Surefoot.Web.Filming;

/// <summary>Lays the captions of a dance's film along its page as it is now. Everything that is found comes from <see cref="FilmReader"/>.</summary>
internal sealed class FilmRoom(DanceLibrary library, Shelves shelves)
{
    public async Task<FilmShown?> ShowAsync(long page)
    {
        if (await Side.FindAsync(shelves, $"{page}") is not { } side) return null;
        var kept = await library.Films.OfAsync(page);
        var settings = (await shelves.NotebookAsync(side.Page.Notebook))?.Settings ?? new();
        // Off the line that others' requests wait in: a long film takes its time.
        return await Task.Run(() =>
        {
            var reading = DanceReader.Read(side.Text, side.Book);
            var steps = reading.Score.Sections.Count > 0;
            var notes = steps && kept is { Captions.Length: > 0 } ? FilmReader.Read(kept.Captions, reading, side.Book) : null;
            return new FilmShown(side.Page, side.Title, steps, kept, notes, Lines(reading.Page.Source, reading.Score, notes), settings);
        });
    }

    private static List<PageLine> Lines(SourceText page, DanceScore score, FilmNotes? notes)
    {
        var headings = score.Parts.GroupBy(p => page.Place(p.Span.Start).Line).ToDictionary(g => g.Key, g => g.First());
        var lines = new List<PageLine>();
        // The head of a page says nothing that a film shows.
        var first = score.Parts.Select(p => page.LineOf(p.Span.Start)).DefaultIfEmpty(0).Min();
        for (var i = first; i < page.LineCount; i++)
        {
            var number = i + 1;
            var part = headings.GetValueOrDefault(number);
            // Parts without a heading of their own begin at their first line, which leads to where it is danced.
            if (part is not null && part.Rows.Any(r => page.Place(r.Span.Start).Line == number)) part = null;
            var shown = part is null
                ? (notes?.Lines ?? []).Where(l => l.Line == number).Select(l => (l.From, l.To)).ToList()
                : notes is null ? [] : Chapters(notes.Chapters).Where(c => c.Part == part.Key && c.Inside.Count == 0).Select(c => (c.From, c.To)).ToList();
            var otherwise = (notes?.Differences ?? []).Select((d, at) => (d.Line, At: at)).Where(d => d.Line == number).Select(d => d.At).ToList();
            lines.Add(new(number, page.Words(page.Line(i)), part is not null, shown, otherwise));
        }

        return lines;
    }

    private static IEnumerable<Chapter> Chapters(IEnumerable<Chapter> chapters) => chapters.SelectMany(c => Chapters(c.Inside).Prepend(c));
}
