using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Sheet.Plan;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>A line of a stretch of a dance, as the sheet has it.</summary>
/// <param name="Both">Words for everybody, or null where the roles have their own.</param>
/// <param name="IsNote">True for a remark of the page's author, which stands in <paramref name="Both"/>.</param>
public sealed record StretchRow(string Counts, string? Both, string Lead, string Follow, bool IsNote);

/// <summary>Some counts of a part with their words for both roles, the same that stand on the dance's own sheet.</summary>
public static class StretchRows
{
    /// <param name="part">Index of the part.</param>
    /// <param name="from">First count within the part, from 0. A line that reaches into the stretch is given whole.</param>
    public static IReadOnlyList<StretchRow> Of(DanceScore score, int part, int from, int counts, SheetOptions options)
    {
        var (start, end) = (Count.First + Beats.Of(from), Count.First + Beats.Of(from + counts));
        var rows = RowPlan.Of(score, part, options, new RoleNames(options.LeadWord, options.FollowWord), only: row => row.From < end && row.From + row.Length > start);
        return [.. rows.Select(r => new StretchRow(Counts(r), r.Note ?? r.Both, r.Lead, r.Follow, r.Note is not null))];
    }

    private static string Counts(RowPlan row) =>
        row.Note is not null ? "" : (row.Kind == RowKind.Change ? "but " : "") + row.Counts + (row.Covers.Length > 0 ? $" {row.Covers}" : "");
}
