using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>The page lets go of hands that are apart already: taking them was forgotten, or other hands are meant.</summary>
public sealed class HandsApart : ICheck
{
    public string Name => "hands-apart";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        // Where the page does not say in which hold it begins, nobody knows what is joined.
        if (dance.InDoubt || dance.Couple is not { } couple || Holds.Named(dance.Score.Facts.Hold) is not { } start) yield break;
        var hands = HandTimes.Of(dance.Score);
        var told = new HashSet<TextSpan>();
        for (var i = 0; i < hands.Count; i++)
        {
            var letGo = hands[i];
            if (letGo.Claimed || letGo.Words is not { Verb: HandVerb.Release, Pair: not HandPair.Unsaid }) continue;
            // Both roles may say it, each on a count of the same line.
            var joined = JoinedBefore(couple, letGo);
            if (PairWords.Meant(letGo.Words, joined) != Pairs.None || !told.Add(letGo.Span)) continue;
            var before = hands.Take(i).LastOrDefault(h => h.Words.Verb == HandVerb.Release && h.Span != letGo.Span && PairWords.Meant(h.Words, JoinedBefore(couple, h)) is var let && PairWords.Meant(letGo.Words, let) != Pairs.None);
            var (part, count) = dance.Place(letGo.At);
            var one = letGo.Words is { Whose: not null, Pair: HandPair.Right or HandPair.Left };
            var named = letGo.Words.Pair switch
            {
                HandPair.Both => "both hands",
                HandPair.Inside => "inside hands",
                HandPair.Outside => "outside hands",
                _ when letGo.Words.Whose is { } whose => $"{Say.Who(whose)}'s {(letGo.Words.Pair == HandPair.Right ? "right" : "left")} hand",
                HandPair.Right => "right hands",
                _ => "left hands",
            };
            yield return new(
                Name, Severity.Warning, letGo.Span, part, count, null,
                $"The page lets go of {named} here, and {(one ? "it holds nothing" : "they are apart already")}.",
                before is null ? $"The dance begins in the {start.Name} hold, which has {LoopHold.Hands(start.Joined)} joined. Perhaps other hands are meant."
                    : $"{(one ? "It was" : "They were")} let go before and not taken again. Say where {(one ? "it is" : "they are")} taken, as in \"take {named}\", or leave these words away.",
                before is null ? default : [new(before.Span, "let go here")]);
        }
    }

    // Whatever was joined as the line began, or came to be on the way to these words.
    private static Pairs JoinedBefore(CoupleSolution couple, HandTime hand)
    {
        var joined = Pairs.None;
        foreach (var moment in couple.Moments)
        {
            if (moment.At >= hand.At && moment != couple.Moments[0]) break;
            joined = moment.At < hand.From ? moment.Joined : joined | moment.Joined;
        }

        return joined;
    }
}
