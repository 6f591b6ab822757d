using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>How everybody stands before a part's first count: "In sweetheart, both facing LOD, left foot free."</summary>
internal static class StartWords
{
    public static string Of(DanceScore score, int part, Role? only, RoleNames names, OurLines? ours)
    {
        var starts = Starts(score, part, only);
        if (starts.Count == 0) return "";
        var section = FeetWords.FirstDancing(score, part);
        // Behind a foot that cannot be the free one nobody knows which one is.
        var standing = Doubtful(score, section)
            ? Standing.Facings(starts, score.Facts.Floor, names)
            : Standing.Words(starts, score.Facts.Floor, names, full: false);
        return Phrases.Sentence(section >= 0 && Hold(score, section, ours) is { } hold ? $"{hold}, {standing}" : standing);
    }

    private static bool Doubtful(DanceScore score, int section) =>
        section >= 0 && score.Roles.Any(r => r.Steps.Any(s => s.Section < section && s.Conflict != Conflict.None));

    // Where nobody solved the couple, what the page's own words tell.
    private static string? Hold(DanceScore score, int section, OurLines? ours) =>
        ours is not null ? ours.Before(section) : HoldNow.Before(score, section) is { } hold ? HoldPhrases.In(hold) : null;

    private static List<RoleStart> Starts(DanceScore score, int part, Role? only)
    {
        var section = FeetWords.FirstDancing(score, part);
        var starts = new List<RoleStart>();
        if (section >= 0)
        {
            foreach (var role in score.Roles)
            {
                if (Wanted(score, role.Role, only)) starts.Add(Standing.Before(role, section));
            }

            return starts;
        }

        foreach (var extra in score.Extras)
        {
            if (extra.Part != part || starts.Count > 0) continue;
            starts.AddRange(extra.Roles.Where(r => Wanted(score, r.Role, only)).Select(r => r.Start with { Role = r.Role }));
        }

        return starts;
    }

    private static bool Wanted(DanceScore score, Role role, Role? only) =>
        only is null || role == only || !score.Facts.ForCouples;
}
