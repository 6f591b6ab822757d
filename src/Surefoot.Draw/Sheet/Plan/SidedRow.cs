using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>
/// What stands on one line of a couple's sheet. Rows for everybody, or with words for both roles in them, stay as
/// they are; lines written for one role and later lines written for the other are brought side by side.
/// </summary>
/// <param name="Lead">The row with the lead's words, or null when he has none on this line.</param>
/// <param name="Follow">The row with the follow's words; the same row as the lead's where the page has them together.</param>
internal sealed record SidedRow(PartRow? Lead, PartRow? Follow)
{
    public PartRow First => Lead ?? Follow!;

    /// <summary>True when one row of the page holds the words of both.</summary>
    public bool Shared => ReferenceEquals(Lead, Follow);

    public bool Holds(PartRow row) => ReferenceEquals(Lead, row) || ReferenceEquals(Follow, row);

    public static IReadOnlyList<SidedRow> Of(DanceScore score, PartScore part)
    {
        var rows = new List<SidedRow>();
        var (lead, follow) = (new Queue<PartRow>(), new Queue<PartRow>());
        foreach (var row in part.Rows)
        {
            switch (OwnerOf(score, part, row))
            {
                case Role.Lead:
                    lead.Enqueue(row);
                    break;
                case Role.Follow:
                    follow.Enqueue(row);
                    break;
                default:
                    Align();
                    rows.Add(new(row, row));
                    break;
            }
        }

        Align();
        return rows;

        // Both lists run with the counts; the one that begins earlier goes first, and those that begin together share a line.
        void Align()
        {
            while (lead.Count > 0 || follow.Count > 0)
            {
                var (his, hers) = (lead.Count > 0 ? lead.Peek() : null, follow.Count > 0 ? follow.Peek() : null);
                if (his is not null && hers is not null && his.From != hers.From)
                {
                    if (his.From < hers.From) hers = null;
                    else his = null;
                }

                if (his is not null) lead.Dequeue();
                if (hers is not null) follow.Dequeue();
                rows.Add(new(his, hers));
            }
        }
    }

    /// <summary>The only role a row has words for, or null.</summary>
    public static Role? OwnerOf(DanceScore score, PartScore part, PartRow row)
    {
        if (!score.Facts.ForCouples) return null;
        if (row.Kind == RowKind.Repeat) return RepeaterOf(score, part, row);
        Role? only = null;
        foreach (var words in row.Words)
        {
            if (words.Role is not { } role || (only is { } other && other != role)) return null;
            only = role;
        }

        return only;
    }

    /// <summary>
    /// "Repeat 1-4" among one role's lines is danced by that role alone, which shows in the steps. A repeat with
    /// changes is everybody's: what differs stands under it.
    /// </summary>
    private static Role? RepeaterOf(DanceScore score, PartScore part, PartRow row)
    {
        if (row.Span.Length == 0 || part.Repeats.Any(r => r.Span == row.Span && r.Changes.Count > 0)) return null;
        var all = score.Roles.Concat(score.Extras.SelectMany(e => e.Roles));
        var roles = all.Where(r => r.Steps.Any(s => s.RepeatedBy == row.Span)).Select(r => r.Role).Distinct().ToList();
        return roles is [var only] ? only : null;
    }

    /// <summary>True when a role has words in another row of the part for some of the counts of this one.</summary>
    public static bool StandElsewhere(DanceScore score, PartScore part, PartRow row, Role role)
    {
        foreach (var other in part.Rows)
        {
            if (ReferenceEquals(other, row) || other.From >= row.From + row.Length || row.From >= other.From + other.Length) continue;
            if (OwnerOf(score, part, other) is not { } owner || owner == role) return true;
        }

        return false;
    }
}
