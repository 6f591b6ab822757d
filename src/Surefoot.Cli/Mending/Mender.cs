using Surefoot.Cli.Files;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Text;

namespace Surefoot.Cli.Mending;

/// <summary>Applies the fixes that may be applied without asking.</summary>
internal static class Mender
{
    // A fix may bring another problem to light; fixes that chase each other are stopped here.
    private const int MostRounds = 12;

    /// <returns>The mended text and how many fixes went into it.</returns>
    public static (string Text, int Fixes) Mend(string text, FigureBook book)
    {
        var fixes = 0;
        var seen = new HashSet<string>(StringComparer.Ordinal) { text };
        for (var round = 0; round < MostRounds; round++)
        {
            var reading = Reader.Read(text, book);
            var edits = Choose(reading, out var chosen);
            if (chosen == 0) break;
            var next = TextEdits.Apply(text, edits);
            if (!seen.Add(next)) break;
            text = next;
            fixes += chosen;
        }

        return (text, fixes);
    }

    // Each fix whole or not at all; one that would touch another waits for the next round.
    private static List<TextEdit> Choose(Reading reading, out int chosen)
    {
        var edits = new List<TextEdit>();
        var notes = Notes(reading.Page);
        chosen = 0;
        foreach (var problem in reading.Problems)
        {
            var sure = problem.Fixes.FirstOrDefault(f => f.Sureness == Sureness.Sure);
            if (sure is null || sure.Edits.Count == 0) continue;
            if (sure.Edits.Any(e => edits.Exists(o => Touch(o.Span, e.Span)) || notes.Exists(n => Touch(n, e.Span)))) continue;
            foreach (var edit in sure.Edits) edits.Add(edit with { Text = LineEnds.Like(reading.Page.Source.Text, edit.Text) });
            chosen++;
        }

        return edits;
    }

    private static bool Touch(TextSpan a, TextSpan b) => (a.Start < b.End && b.Start < a.End) || a.Start == b.Start;

    private static List<TextSpan> Notes(Page page)
    {
        // Words put at the very end of a note would become part of it.
        var notes = page.Lines.OfType<NoteLine>().Select(n => n.Span with { Length = n.Span.Length + 1 }).ToList();
        foreach (var line in page.Parts.SelectMany(p => p.Lines).OfType<CountLine>())
        {
            notes.AddRange(line.Segments.SelectMany(s => s.Pieces).OfType<NotePiece>().Select(p => p.Span));
        }

        return notes;
    }
}
