using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>Finds how they stand at the moment a claim speaks of, the first time its part is danced.</summary>
internal static class ClaimTimes
{
    /// <param name="Stance">Index of the stance in the role's motion, or -1 for tags and the like, which have none.</param>
    /// <param name="Role">Whose steps led there.</param>
    public readonly record struct Moment(RoleStart Stands, Count At, int Stance, RoleScore Role)
    {
        /// <summary>All turns from the start up to the moment; added up only when somebody asks.</summary>
        public Turn Turned
        {
            get
            {
                var at = At;
                return new(Role.Steps.Where(s => s.At <= at).Sum(s => s.Turn.Eighths));
            }
        }
    }

    public static Moment? Of(DanceCase dance, ScoreClaim claim, Role role)
    {
        for (var s = 0; s < dance.Score.Sections.Count; s++)
        {
            var section = dance.Score.Sections[s];
            if (section.Part != claim.Part) continue;
            // A part that is only ever danced mirrored has its claims in the mirror, too: they are not compared.
            if (section.Mirrored) return null;
            var at = section.Start + (claim.After - Count.First);
            if (dance.Score.Of(role) is not { } steps) return null;
            return new(DanceCase.StandingAt(steps, at), at, DanceCase.StanceAt(steps, at), steps);
        }

        foreach (var extra in dance.Score.Extras)
        {
            if (extra.Part != claim.Part) continue;
            foreach (var steps in extra.Roles)
            {
                if (steps.Role == role) return new(DanceCase.StandingAt(steps, claim.After), claim.After, -1, steps);
            }
        }

        return null;
    }

    /// <summary>The roles a claim speaks of.</summary>
    public static IEnumerable<Role> RolesOf(DanceCase dance, ScoreClaim claim)
    {
        if (claim.Role is { } role) return [role];
        return dance.Score.Facts.Roles;
    }

    /// <summary>The count of the page that a claim's moment belongs to.</summary>
    public static string CountOf(DanceCase dance, ScoreClaim claim) =>
        dance.CountIn(claim.Part, claim.After < Count.First ? Count.First : claim.After.Value.Denominator == 64 ? Count.At(claim.After.Whole) : claim.After);

    /// <summary>Claims of a kind whose two roles fail alike are told once.</summary>
    public static IEnumerable<(ScoreClaim Claim, Role? Role, T Found)> Failing<T>(DanceCase dance, Func<Claim, Moment, Role, T?> fails)
        where T : class
    {
        var all = new List<(ScoreClaim Claim, Role? Role, T Found)>();
        foreach (var claim in dance.Score.Claims)
        {
            foreach (var role in RolesOf(dance, claim))
            {
                if (Of(dance, claim, role) is not { } moment || fails(claim.Claim, moment, role) is not { } found) continue;
                var same = all.FindIndex(a => a.Claim.Span == claim.Span);
                if (same >= 0)
                {
                    // Wrong for both: told once, for both where they stand alike.
                    if (all[same].Role != role && all[same].Found.Equals(found)) all[same] = all[same] with { Role = null };
                }
                else
                {
                    all.Add((claim, role, found));
                }
            }
        }

        return all;
    }
}
