using Surefoot.Dance;
using Surefoot.Film.Notes;

namespace Surefoot.Web.Filming;

/// <summary>Puts beside each line of a page the moments of the film that show it.</summary>
internal static class PageLines
{
    public static IReadOnlyList<PageLine> Of(Reading reading, FilmNotes? notes)
    {
        var (page, score) = (reading.Page.Source, reading.Score);
        var headings = score.Parts.GroupBy(p => page.Place(p.Span.Start).Line).ToDictionary(g => g.Key, g => g.First());
        // The head of a page says nothing that a film shows.
        var first = score.Parts.Select(p => page.LineOf(p.Span.Start)).DefaultIfEmpty(0).Min();
        var lines = new List<PageLine>();
        for (var i = first; i < page.LineCount; i++)
        {
            var number = i + 1;
            var part = headings.GetValueOrDefault(number);
            // Parts without a heading of their own begin at their first line, which leads to where it is danced.
            if (part is not null && part.Rows.Any(r => page.Place(r.Span.Start).Line == number)) part = null;
            var shown = part is null
                ? (notes?.Lines ?? []).Where(l => l.Line == number).Select(l => (l.From, l.To)).ToList()
                : notes is null ? [] : All(notes.Chapters).Where(c => c.Part == part.Key && c.Inside.Count == 0).Select(c => (c.From, c.To)).ToList();
            var otherwise = (notes?.Differences ?? []).Select((d, at) => (d.Line, At: at)).Where(d => d.Line == number).Select(d => d.At).ToList();
            lines.Add(new(number, page.Words(page.Line(i)), part is not null, shown, otherwise));
        }

        return lines;
    }

    private static IEnumerable<Chapter> All(IEnumerable<Chapter> chapters) => chapters.SelectMany(c => All(c.Inside).Prepend(c));
}
