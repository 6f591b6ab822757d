using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>
/// A line of the sheet: a count group with words for both, or with words on each side, or a note.
/// </summary>
/// <param name="Both">Words for everybody, or null when the roles have their own.</param>
/// <param name="Note">A note that stands at this place; the other texts are then empty.</param>
internal sealed record RowPlan(string Counts, RowKind Kind, string? Both, string Lead, string Follow, string? Note = null)
{
    public bool HasSides => Both is null && Note is null;

    public static IReadOnlyList<RowPlan> Of(DanceScore score, int index, SheetOptions options, RoleNames names)
    {
        var part = score.Parts[index];
        var rows = new List<RowPlan>();
        var notes = NotePlaces.OfPart(score, index);
        AddNotes(-1);
        for (var i = 0; i < part.Rows.Count; i++)
        {
            rows.Add(Of(score, index, part.Rows[i], options));
            AddNotes(i);
        }

        return rows;

        void AddNotes(int after)
        {
            foreach (var (note, row) in notes)
            {
                if (row != after || options.Only is { } only && note.Role is { } role && role != only) continue;
                rows.Add(new("", RowKind.Written, null, "", "", NotePlaces.Words(note, names)));
            }
        }
    }

    private static RowPlan Of(DanceScore score, int index, PartRow row, SheetOptions options)
    {
        if (options.FeetOnly && row.Kind != RowKind.Repeat) return Feet(score, index, row, options.Only);
        if (!score.Facts.ForCouples) return new(row.Label, row.Kind, Joined(row, null), "", "");
        if (options.Only is { } role) return new(row.Label, row.Kind, Joined(row, role), "", "");
        return Sides(row, Joined(row, Role.Lead), Joined(row, Role.Follow));
    }

    private static RowPlan Feet(DanceScore score, int index, PartRow row, Role? only)
    {
        if (!score.Facts.ForCouples) return new(row.Label, row.Kind, FeetWords.Of(score, index, row, Role.Dancer), "", "");
        return only is { } role
            ? new(row.Label, row.Kind, FeetWords.Of(score, index, row, role), "", "")
            : Sides(row, FeetWords.Of(score, index, row, Role.Lead), FeetWords.Of(score, index, row, Role.Follow));
    }

    private static RowPlan Sides(PartRow row, string lead, string follow) => string.Equals(lead, follow, StringComparison.Ordinal)
        ? new(row.Label, row.Kind, lead, "", "")
        : new(row.Label, row.Kind, null, lead, follow);

    /// <summary>The words everybody dances and those of one role, in the order of the page.</summary>
    private static string Joined(PartRow row, Role? role)
    {
        var texts = row.Words
            .Where(w => role is null || w.Role is null || w.Role == role)
            .Select(w => Phrases.Capital(w.Text.Trim()))
            .Where(t => t.Length > 0)
            .ToList();
        for (var i = 0; i < texts.Count - 1; i++) texts[i] = Phrases.Sentence(texts[i]);
        return string.Join(' ', texts);
    }
}
