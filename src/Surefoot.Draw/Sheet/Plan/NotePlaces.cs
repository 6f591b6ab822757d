using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>Finds the row after which a note stands.</summary>
internal static class NotePlaces
{
    /// <summary>Notes outside all parts, in the order of the page.</summary>
    public static IReadOnlyList<string> OfDance(DanceScore score, RoleNames names) =>
        [.. score.Notes.Where(n => n.Part < 0 || n.Part >= score.Parts.Count).Select(n => Words(n, names))];

    /// <summary>Notes of a part with the index of the row they follow, -1 for a note at its top.</summary>
    public static IReadOnlyList<(ScoreNote Note, int After)> OfPart(DanceScore score, int index)
    {
        var part = score.Parts[index];
        var places = new List<(ScoreNote, int)>();
        foreach (var note in score.Notes)
        {
            if (note.Part != index || IsInWords(part, note)) continue;
            places.Add((note, After(part, note)));
        }

        return places;
    }

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
