using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>What the author says of hands and holds in a row, so that nothing is printed beside it that says it again or says otherwise.</summary>
internal sealed class WrittenHands
{
    private readonly List<(HandVerb Verb, Pairs Pairs, Count At)> _said = [];
    private readonly HashSet<string> _holds = new(StringComparer.OrdinalIgnoreCase);

    /// <param name="from">The row's first count in its part, and the count before which it ends.</param>
    public WrittenHands(DanceScore score, ValueList<Moment> moments, Section section, Count from, Count to)
    {
        var ahead = section.Start - Count.First;
        var (joined, apart, onHisLeft) = (Pairs.None, Turn.None, false);
        foreach (var moment in moments)
        {
            if (moment.At < from + ahead) (joined, apart, onHisLeft) = (moment.Joined, moment.Apart, moment.Where.Centre.Y > 0);
            else if (moment.At < to + ahead) (joined, apart, onHisLeft) = (joined | moment.Joined, moment.Apart, moment.Where.Centre.Y > 0);
        }

        foreach (var hands in score.Hands)
        {
            if (hands.Part != section.Part || hands.At < from || hands.At >= to) continue;
            var words = section.Mirrored ? hands.Words.Mirrored() : hands.Words;
            var pairs = words.Verb switch
            {
                HandVerb.Into => Holds.Named(words.Hold)?.Joined ?? Pairs.None,
                HandVerb.Take => PairWords.Taken(words, joined, apart, onHisLeft) | PairWords.Meant(words, joined),
                _ => PairWords.Meant(words, joined),
            };
            _said.Add((words.Verb, pairs, hands.At + ahead));
            if (words is { Verb: HandVerb.Into, Hold: { } hold }) _holds.Add(hold);
        }

        foreach (var claim in score.Claims)
        {
            if (claim.Part == section.Part && claim.After >= from && claim.After < to && claim.Claim is HoldClaim stated) _holds.Add(stated.Hold);
        }
    }

    /// <summary>True when the row says which hands are joined from here on.</summary>
    public bool TellsJoining => _said.Exists(s => s.Verb is HandVerb.Release or HandVerb.Take or HandVerb.Into or HandVerb.Under or HandVerb.Keep);

    public bool Names(string hold) => _holds.Contains(hold);

    /// <summary>True when the row says a suggestion already, or it would read as if it denied the row's words.</summary>
    public bool Covers(HandSuggestion ours)
    {
        foreach (var (verb, pairs, at) in _said)
        {
            if (!pairs.HasFlag(ours.Pair)) continue;
            var covered = verb switch
            {
                HandVerb.Release => true,
                HandVerb.Keep => ours.Verb != HandVerb.Raise,
                HandVerb.Lower => ours.Verb == HandVerb.Raise,
                HandVerb.Take => ours.Verb == HandVerb.Take || (ours.Verb == HandVerb.Release && ours.At >= at),
                HandVerb.Into => ours.Verb == HandVerb.Take,
                HandVerb.Raise or HandVerb.Under or HandVerb.Over => ours.Verb == HandVerb.Raise || ours.At <= at,
                _ => false,
            };
            if (covered) return true;
        }

        return false;
    }
}
