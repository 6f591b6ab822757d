using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>Finds the row after which a note stands, and which lines of notes make one paragraph.</summary>
internal static class NotePlaces
{
    /// <summary>Notes outside all parts, in the order of the page.</summary>
    public static IReadOnlyList<string> OfDance(DanceScore score, RoleNames names) =>
        [.. Paragraphs(score, n => n.Part < 0 || n.Part >= score.Parts.Count).Select(n => Words(n, names))];

    /// <summary>Notes of a part with the index of the row they follow, -1 for a note at its top.</summary>
    public static IReadOnlyList<(ScoreNote Note, int After)> OfPart(DanceScore score, int index)
    {
        var part = score.Parts[index];
        var places = new List<(ScoreNote, int)>();
        foreach (var note in Paragraphs(score, n => n.Part == index && !IsInWords(part, n))) places.Add((note, After(part, note)));
        return places;
    }

    /// <summary>Notes on lines that follow each other are one paragraph: where its lines break is no part of what it says.</summary>
    private static List<ScoreNote> Paragraphs(DanceScore score, Func<ScoreNote, bool> wanted)
    {
        var paragraphs = new List<ScoreNote>();
        foreach (var note in score.Notes)
        {
            if (!wanted(note)) continue;
            if (paragraphs.Count > 0 && GoesOn(score, paragraphs[^1], note))
            {
                var before = paragraphs[^1];
                paragraphs[^1] = before with { Text = $"{before.Text.TrimEnd()} {note.Text.TrimStart()}", Span = before.Span.Join(note.Span) };
            }
            else
            {
                paragraphs.Add(note);
            }
        }

        return paragraphs;
    }

    private static bool GoesOn(DanceScore score, ScoreNote before, ScoreNote note)
    {
        if (before.Part != note.Part || before.Role != note.Role || before.Span.Length == 0 || note.Span.Length == 0) return false;
        if (IsInRow(score, before) || IsInRow(score, note)) return false;
        var between = note.Span.Start - before.Span.End;
        if (between is < 1 or > MostBetween) return false;
        // One letter between is the end of a line. Two may be one end in a page from elsewhere, or an empty line: there the sentence decides.
        return between == 1 || !Phrases.IsEnded(before.Text.TrimEnd()) || note.Text.Trim() is [var first, ..] && char.IsLower(first);
    }

    /// <summary>Letters between lines of one note at most: the end of a line, blanks behind it and an indent. Working value.</summary>
    private const int MostBetween = 6;

    private static bool IsInRow(DanceScore score, ScoreNote note) =>
        note.Part >= 0 && note.Part < score.Parts.Count
        && score.Parts[note.Part].Rows.Any(r => r.Span.Length > 0 && r.Span.Start <= note.Span.Start && note.Span.End <= r.Span.End);

    public static string Words(ScoreNote note, RoleNames names)
    {
        var text = Phrases.Sentence(note.Text.Trim().TrimStart('>', '(').TrimEnd(')'));
        return note.Role is { } role ? $"For {names.The(role)}: {text}" : text;
    }

    /// <summary>A remark in brackets inside a line is already part of that line's words.</summary>
    private static bool IsInWords(PartScore part, ScoreNote note)
    {
        var text = note.Text.Trim();
        foreach (var row in part.Rows)
        {
            var inside = row.Span.Length > 0 && row.Span.Start <= note.Span.Start && note.Span.End <= row.Span.End;
            if (inside && row.Words.Any(w => w.Text.Contains(text, StringComparison.OrdinalIgnoreCase))) return true;
        }

        return false;
    }

    private static int After(PartScore part, ScoreNote note)
    {
        var after = note.Span.Length == 0 && note.At is null ? part.Rows.Count - 1 : -1;
        for (var i = 0; i < part.Rows.Count; i++)
        {
            var row = part.Rows[i];
            if (note.Span.Length > 0 ? row.Span.Start <= note.Span.Start : note.At is { } at && row.From <= at) after = i;
        }

        return after;
    }
}
