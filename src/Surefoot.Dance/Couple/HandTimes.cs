using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Something the page says of hands, at the moment from which it holds.</summary>
/// <param name="From">First count of the line it is said in.</param>
/// <param name="At">When it is done: letting go and raising at the beginning of those steps, taking and arriving in a hold at their end.</param>
/// <param name="Claimed">True for a hold stated as a fact.</param>
/// <param name="Again">True for a fact that was stated of words which are danced again here: it holds where it can, and is nothing to complain of where it does not.</param>
public sealed record HandTime(Count From, Count At, HandWords Words, bool Claimed, TextSpan Span, bool Again = false);

/// <summary>What the page says of hands through the whole repeat.</summary>
public static class HandTimes
{
    public static List<HandTime> Of(DanceScore score)
    {
        var all = new List<HandTime>();
        foreach (var section in score.Sections)
        {
            var ahead = section.Start - Count.First;
            foreach (var hands in score.Hands)
            {
                if (hands.Part != section.Part) continue;
                var words = section.Mirrored ? hands.Words.Mirrored() : hands.Words;
                var from = hands.At + ahead;
                all.Add(new(RowFrom(score, section, from), Done(score, hands, words, from), words, false, hands.Span));
            }

            // What a part states is about its first dancing; in the mirror it would be another hold.
            if (section.Mirrored) continue;
            foreach (var (claim, after, again) in StatedHolds.Of(score, section.Part))
            {
                var at = after + ahead;
                if (all.Exists(h => h.Claimed && h.At == at && h.Words.Hold == ((HoldClaim)claim.Claim).Hold)) continue;
                all.Add(new(RowFrom(score, section, at), at, new(HandVerb.Into, HandPair.Unsaid, ((HoldClaim)claim.Claim).Hold), true, claim.Span, again));
            }
        }

        return [.. all.OrderBy(h => h.At).ThenBy(h => h.Claimed)];
    }

    private static Count Done(DanceScore score, ScoreHands hands, HandWords words, Count from)
    {
        if (words.Verb is not (HandVerb.Take or HandVerb.Into or HandVerb.Lower)) return from;
        var done = from;
        // Whoever walks up to somebody takes hands on arriving, as the words come one after the other.
        var turns = words.Verb is HandVerb.Into or HandVerb.Take;
        foreach (var role in score.Roles)
        {
            if (hands.Role is { } only && only != role.Role) continue;
            var (first, last) = Stretch(role, DoneBy(role, from) - 1);
            for (var i = Math.Max(0, first); i <= last; i++) turns |= !role.Steps[i].Turn.IsNone;
            if (last >= 0 && role.Steps[last].At > done) done = role.Steps[last].At;
        }

        // Where nobody turns, hands are there to be taken at once.
        return turns ? done : from;
    }

    // Where the line of the page begins that has a moment of the repeat; of words that are danced again, the line they came from.
    private static Count RowFrom(DanceScore score, Section section, Count at)
    {
        var inPart = Count.First + (at - section.Start);
        return at - (inPart - RowFrom(score, section.Part, inPart));
    }

    private static Count RowFrom(DanceScore score, int part, Count inPart)
    {
        var from = inPart;
        foreach (var row in score.Parts[part].Rows)
        {
            if (row.Kind != RowKind.Repeat && row.From <= inPart && inPart < row.From + row.Length && row.From < from) from = row.From;
        }

        if (from != inPart) return from;
        foreach (var stretch in score.Parts[part].Repeats)
        {
            // Words come before their repeat, so that this has an end.
            if (stretch.SourceOf(inPart) is { } source && (stretch.SourcePart != part || source < inPart)) return inPart - (source - RowFrom(score, stretch.SourcePart, source));
        }

        return inPart;
    }

    /// <summary>The actions that came of the same words as one of them.</summary>
    public static (int First, int Last) Stretch(RoleScore role, int step)
    {
        if (step < 0) return (-1, -1);
        var (first, last) = (step, step);
        while (first > 0 && Same(role.Steps[first - 1], role.Steps[step])) first--;
        while (last + 1 < role.Steps.Count && Same(role.Steps[last + 1], role.Steps[step])) last++;
        return (first, last);

        // The same words danced again are another stretch; they begin at least a count later.
        static bool Same(ScoreStep a, ScoreStep b) => a.Source == b.Source && a.Section == b.Section && a.Repeated == b.Repeated;
    }

    private static int DoneBy(RoleScore role, Count at)
    {
        var (low, high) = (0, role.Steps.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (role.Steps[middle].At <= at) low = middle + 1;
            else high = middle;
        }

        return low;
    }
}
