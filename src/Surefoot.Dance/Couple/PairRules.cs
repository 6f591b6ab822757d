using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>What a pair of hands may be at a moment.</summary>
[Flags]
internal enum PairStates
{
    None = 0,
    Released = 1,
    Low = 2,
    Shoulder = 4,
    Raised = 8,
    Down = Low | Shoulder,
    Joined = Low | Shoulder | Raised,
    Any = Released | Joined,
}

/// <summary>What the page fixes of one pair, moment by moment. Where it is silent, everything is open.</summary>
/// <param name="Hold">A named hold whose arms they have there, or null.</param>
/// <param name="Hammerlock">True where the page asks for one.</param>
internal readonly record struct PairRule(PairStates Allowed, bool Said, Hold? Hold, bool Hammerlock);

internal static class PairRules
{
    public static PairRule[] Of(DanceScore score, IReadOnlyList<HandTime> hands, IReadOnlyList<Moment> moments, Pairs pair, bool[] hammerlocks)
    {
        var rules = new PairRule[moments.Count];
        var (h, joined, apart) = (0, moments[0].Joined, !moments[0].Joined.HasFlag(pair));
        var down = false;
        for (var m = 0; m < rules.Length; m++)
        {
            var moment = moments[m];
            var (taken, kept, both) = (false, false, false);
            for (; h < hands.Count && hands[h].At <= moment.At; h++)
            {
                var words = hands[h].Words;
                var meant = PairWords.Meant(words, joined).HasFlag(pair);
                if (words.Verb == HandVerb.Lower && meant) down = true;
                if (words.Verb is HandVerb.Raise or HandVerb.Under or HandVerb.Over && meant) down = false;
                kept |= words.Verb == HandVerb.Keep && meant;
                // Who takes both hands has both then, also one that was joined before.
                both |= words is { Verb: HandVerb.Take, Pair: HandPair.Both };
            }

            joined = moment.Joined;
            var now = joined.HasFlag(pair);
            taken |= now && (apart || both);
            apart = !now;
            var allowed = apart ? PairStates.Released
                : moment.Raised.HasFlag(pair) && moment.Turning && !both ? PairStates.Raised
                : taken || kept ? PairStates.Joined
                : PairStates.Any;
            if (down) allowed &= ~PairStates.Raised;
            // "Down through the turn" says that they stay joined as well.
            if (down && moment.Turning && now) allowed &= PairStates.Joined;
            var hold = moment.Stated is { Fits: true } stated ? Holds.Named(stated.Hold) : null;
            if (hold is not null && now && !HandHeights.MayBeUp(hold)) allowed &= PairStates.Down;
            rules[m] = new(allowed, down || kept, hold, hammerlocks[m]);
            if (!moment.Turning && m > 0 && moments[m - 1].Turning) down = false;
        }

        var start = Holds.Named(score.Facts.Hold);
        if (start is not null && moments[0].Joined.HasFlag(pair))
        {
            rules[0] = rules[0] with
            {
                Allowed = HandHeights.Of(start) == HandHeight.Low ? PairStates.Low : PairStates.Shoulder,
                Hold = start,
            };
        }

        return rules;
    }
}
