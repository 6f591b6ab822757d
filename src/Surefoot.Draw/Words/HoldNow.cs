using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Words;

/// <summary>
/// The hold at the beginning of a section as far as the page's own words tell it: the hold of the head, a hold
/// that is stated, a hold that is gone into. Letting go or taking hands ends what was known. Nothing is guessed,
/// because a wrong hold at the top of a part is worse on paper than none.
/// </summary>
internal static class HoldNow
{
    /// <param name="section">Index into the score's sections.</param>
    public static string? Before(DanceScore score, int section)
    {
        if (!score.Facts.ForCouples) return null;
        var hold = score.Facts.Hold;
        (string? Hold, HandPair Pair, Turn Between) letGo = default;
        for (var i = 0; i < section; i++)
        {
            foreach (var word in WordsOf(score, score.Sections[i].Part))
            {
                var at = score.Sections[i].Start + (word.At - Count.First);
                if (word.Stated is { } stated)
                {
                    hold = stated;
                    letGo = default;
                }
                else if (word.Verb == HandVerb.Release)
                {
                    letGo = (hold, word.Pair, Between(score, at));
                    hold = null;
                }
                else if (word.Verb == HandVerb.Take)
                {
                    // The same pair taken again, and they look as they did when it was let go: the hold they had.
                    var same = letGo.Pair == word.Pair && letGo.Between == Standings(score, section);
                    hold = same ? letGo.Hold : null;
                    letGo = default;
                }
            }
        }

        return hold;
    }

    private readonly record struct Word(Count At, string? Stated, HandVerb Verb, HandPair Pair);

    /// <summary>What is said of a part's hands and holds, in order; at one moment the hands come first and what is stated after them.</summary>
    private static List<Word> WordsOf(DanceScore score, int part)
    {
        var words = new List<Word>();
        foreach (var hands in score.Hands)
        {
            if (hands.Part != part || hands.Words.Verb is not (HandVerb.Release or HandVerb.Take or HandVerb.Into)) continue;
            words.Add(new(hands.At, hands.Words.Verb == HandVerb.Into ? hands.Words.Hold : null, hands.Words.Verb, hands.Words.Pair));
        }

        foreach (var claim in score.Claims)
        {
            if (claim.Part == part && claim.Claim is HoldClaim stated) words.Add(new(claim.After, stated.Hold, default, default));
        }

        return [.. words.OrderBy(w => w.At)];
    }

    private static Turn Standings(DanceScore score, int section) =>
        score.Of(Role.Lead) is { } lead && score.Of(Role.Follow) is { } follow
            ? Standing.Before(follow, section).Facing - Standing.Before(lead, section).Facing
            : Turn.None;

    /// <summary>The follow's facing against the lead's just before a moment of the repeat.</summary>
    private static Turn Between(DanceScore score, Count before) =>
        score.Of(Role.Lead) is { } lead && score.Of(Role.Follow) is { } follow
            ? FacingBefore(follow, before) - FacingBefore(lead, before)
            : Turn.None;

    private static Facing FacingBefore(RoleScore role, Count before)
    {
        var facing = role.Start.Facing;
        foreach (var step in role.Steps)
        {
            if (step.At >= before) break;
            facing = step.Facing;
        }

        return facing;
    }
}
