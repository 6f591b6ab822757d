using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>
/// "Triple in place. Follow: triple ½ right under right hands, release left hands": hands are done by two. What the page
/// says of them among the partner's words belongs on the sheet of the one who leads it as well.
/// </summary>
internal static class PartnersHands
{
    /// <returns>The partner's words in brackets, to stand after the own ones; empty where they say nothing of hands.</returns>
    public static string Of(DanceScore score, int index, PartRow row, Role role, RoleNames names)
    {
        if (row.Kind == RowKind.Repeat) return "";
        var partner = role == Role.Lead ? Role.Follow : Role.Lead;
        var told = new List<string>();
        foreach (var other in score.Parts[index].Rows)
        {
            if (other.From >= row.From + row.Length || row.From >= other.From + other.Length || other.Kind == RowKind.Repeat) continue;
            var end = other.From + other.Length;
            var hands = score.Hands.Any(h => h.Part == index && h.Role == partner && h.At >= other.From && h.At < end && h.At >= row.From && h.At < row.From + row.Length);
            if (hands) told.AddRange(other.Words.Where(w => w.Role == partner).Select(w => Lower(w.Text.Trim().TrimEnd('.'))).Where(t => t.Length > 0));
        }

        return told.Count == 0 ? "" : $" ({names.Bare(partner)}: {string.Join("; ", told.Distinct(StringComparer.Ordinal))})";
    }

    // "LOD" and "L" stay what they are.
    private static string Lower(string words) => words.Length > 1 && char.IsLower(words[1]) ? char.ToLowerInvariant(words[0]) + words[1..] : words;
}
