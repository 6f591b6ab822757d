using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>
/// A line of the sheet: a count group with words for both, or with words on each side, or a note.
/// </summary>
/// <param name="Covers">The counts that slows and quicks fill; empty where the counts are numbers.</param>
/// <param name="Both">Words for everybody, or null when the roles have their own.</param>
/// <param name="Lead">The lead's words; empty where they stand in another line.</param>
/// <param name="Note">A note that stands at this place; the other texts are then empty.</param>
internal sealed record RowPlan(string Counts, string Covers, RowKind Kind, string? Both, string Lead, string Follow, string? Note = null)
{
    /// <summary>A gap of the page; the dash shows that nothing was lost in printing.</summary>
    public const string Nothing = "–";

    /// <summary>Opposite a change in a repeat that is the partner's only.</summary>
    private const string Unchanged = "as before";

    /// <summary>What Surefoot worked out for the row above; all other texts are then empty.</summary>
    public IReadOnlyList<OurLine> Ours { get; init; } = [];

    public bool HasSides => Both is null && Note is null && Ours.Count == 0;

    /// <param name="only">Which lines of the part are wanted; all when null.</param>
    public static IReadOnlyList<RowPlan> Of(DanceScore score, int index, SheetOptions options, RoleNames names, OurLines? ours = null, Func<PartRow, bool>? only = null)
    {
        var part = score.Parts[index];
        var rows = new List<RowPlan>();
        var notes = NotePlaces.OfPart(score, index);
        if (only is null) AddNotes(-1);
        if (score.Facts.ForCouples && options.Only is null)
        {
            foreach (var row in SidedRow.Of(score, part))
            {
                if (only is not null && !only(row.First)) continue;
                rows.Add(Couple(score, index, row, options.FeetOnly));
                AddOurs(row.First, row.Shared ? [row.First] : [row.Lead, row.Follow]);
                for (var i = 0; i < part.Rows.Count; i++)
                {
                    if (row.Holds(part.Rows[i])) AddNotes(i);
                }
            }

            return rows;
        }

        for (var i = 0; i < part.Rows.Count; i++)
        {
            if (only is not null && !only(part.Rows[i])) continue;
            if (Single(score, index, part.Rows[i], options, names) is { } row)
            {
                rows.Add(row);
                AddOurs(part.Rows[i], [part.Rows[i]]);
            }

            AddNotes(i);
        }

        return rows;

        void AddOurs(PartRow first, PartRow?[] both)
        {
            var end = both.Max(r => r is null ? first.From : r.From + r.Length);
            if (ours?.Of(index, first, end, options.FeetOnly) is { Count: > 0 } lines) rows.Add(new("", "", RowKind.Written, null, "", "") { Ours = lines });
        }

        void AddNotes(int after)
        {
            foreach (var (note, row) in notes)
            {
                if (row != after || options.Only is { } only && note.Role is { } role && role != only) continue;
                rows.Add(new("", "", RowKind.Written, null, "", "", NotePlaces.Words(note, names)));
            }
        }
    }

    /// <summary>A line for one dancer, or null when the row is only about the partner.</summary>
    private static RowPlan? Single(DanceScore score, int index, PartRow row, SheetOptions options, RoleNames names)
    {
        var part = score.Parts[index];
        var role = score.Facts.ForCouples ? options.Only!.Value : Role.Dancer;
        if (score.Facts.ForCouples && SidedRow.OwnerOf(score, part, row) is { } owner && owner != role
            && (row.Kind == RowKind.Change || SidedRow.StandElsewhere(score, part, row, role)))
        {
            return null;
        }

        var counts = CountsWords.Of(row);
        var words = options.FeetOnly && row.Kind != RowKind.Repeat
            ? FeetWords.Of(score, index, row, role)
            : Joined(row, score.Facts.ForCouples ? role : null);
        if (!options.FeetOnly && score.Facts.ForCouples) words += PartnersHands.Of(score, index, row, role, names);
        return new(counts.Counts, counts.Covers, row.Kind, Or(words, Nothing), "", "");
    }

    private static RowPlan Couple(DanceScore score, int index, SidedRow row, bool feetOnly)
    {
        var (lead, follow) = (Side(row.Lead, Role.Lead), Side(row.Follow, Role.Follow));
        var counts = CountsWords.Of(row);
        var kind = row.Lead?.Kind == row.Follow?.Kind || row.Lead is null || row.Follow is null ? row.First.Kind : RowKind.Written;
        return lead == follow && !(MeansTwoThings() && !feetOnly)
            ? new(counts.Counts, counts.Covers, kind, lead, "", "")
            : new(counts.Counts, counts.Covers, kind, null, lead, follow);

        string Side(PartRow? own, Role role)
        {
            var part = score.Parts[index];
            var feet = feetOnly && (own ?? row.First).Kind != RowKind.Repeat;
            if (own is not null) return Or(feet ? FeetWords.Of(score, index, own, role) : Joined(own, role), Nothing);
            if (row.First.Kind != RowKind.Change) return SidedRow.StandElsewhere(score, part, row.First, role) ? "" : Or(feet ? FeetWords.Of(score, index, row.First, role) : "", Nothing);
            return feet ? Or(FeetWords.Of(score, index, row.First, role), Unchanged) : Unchanged;
        }

        // On opposite feet, words for everybody are the lead's; the same words given to each role mean what they say.
        bool MeansTwoThings() => score.Facts.FeetRelation == FeetRelation.Opposite && row.First.Kind != RowKind.Repeat
            && (!row.Shared || row.First.Words.Any(w => w.Role is not null));
    }

    private static string Or(string text, string otherwise) => text.Length == 0 ? otherwise : text;

    /// <summary>The words everybody dances and those of one role, in the order of the page.</summary>
    private static string Joined(PartRow row, Role? role)
    {
        var texts = row.Words
            .Where(w => role is null || w.Role is null || w.Role == role)
            .Select(w => FeetApart.In(Phrases.Capital(w.Text.Trim())))
            .Where(t => t.Length > 0)
            .ToList();
        for (var i = 0; i < texts.Count - 1; i++) texts[i] = Phrases.Sentence(texts[i]);
        return string.Join(' ', texts);
    }
}
