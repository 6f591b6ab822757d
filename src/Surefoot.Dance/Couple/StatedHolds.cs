using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>The holds that a part states as facts, those of words that are danced again included.</summary>
internal static class StatedHolds
{
    /// <returns>Each fact with the moment of the part after which it holds, and whether its words are danced again there.</returns>
    public static List<(ScoreClaim Claim, Count After, bool Again)> Of(DanceScore score, int part)
    {
        var all = new List<(ScoreClaim Claim, Count After, bool Again)>();
        foreach (var claim in score.Claims)
        {
            if (claim.Part == part && claim.Claim is HoldClaim) all.Add((claim, claim.After, false));
        }

        foreach (var stretch in score.Parts[part].Repeats)
        {
            // In the mirror it would be another hold. A part that is danced again from another one comes after it.
            if (stretch.Mirrored || stretch.SourcePart > part) continue;
            var source = stretch.SourcePart == part ? [.. all] : Of(score, stretch.SourcePart);
            for (var shift = stretch.From - stretch.SourceFrom; stretch.SourceFrom + shift < stretch.From + stretch.Length && stretch.Each > Beats.Zero; shift += stretch.Each)
            {
                foreach (var (claim, after, _) in source)
                {
                    if (after >= stretch.SourceFrom && after < stretch.SourceFrom + stretch.Each && stretch.SourceOf(after + shift) is not null) all.Add((claim, after + shift, true));
                }
            }
        }

        return all;
    }
}
