using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <summary>Finds and reads what a phrase says about hands and holds.</summary>
public static class HandReader
{
    /// <summary>Where the words about hands begin in a phrase; <paramref name="to"/> when it has none.</summary>
    public static int StartOf(List<Item> items, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            var item = items[i];
            if (item.Is(SenseKind.Hold) && OnlyHandsBefore(items, from, i) && OnlyHandsAfter(items, i, to) && !item.Is(SenseKind.Figure)) return from;
            if (item.Is(SenseKind.HandVerb, out var verb) && SpeaksOfHands(items, i, to, (HandVerb)verb.Value)) return i;
            // "his right hand on her shoulder": a hand named with no foot verb before it.
            if (item.Is(SenseKind.HandNoun) && !item.Is(SenseKind.Verb) && NoHeadBefore(items, from, i)) return from;
            if (item.Is(SenseKind.With) && HasNoun(items, i + 1, to)) return i;
        }

        return to;
    }

    public static HandsPiece Read(List<Item> items, int from, int to, string text)
    {
        var verb = HandVerb.Placed;
        var pair = HandPair.Unsaid;
        string? hold = null;
        var verbSaid = false;
        Role? whose = null;
        for (var i = from; i < to; i++)
        {
            if (items[i].Is(SenseKind.HandVerb, out var said) && !verbSaid)
            {
                verb = (HandVerb)said.Value;
                verbSaid = true;
            }

            if (items[i].Is(SenseKind.Side, out var side) && pair == HandPair.Unsaid) pair = side.Value == 0 ? HandPair.Left : HandPair.Right;
            if (items[i].Is(SenseKind.Pair, out var joined) && pair == HandPair.Unsaid) pair = (HandPair)joined.Value;
            if (items[i].Is(SenseKind.Hold, out var named)) hold = FigureBook.HoldName(named.Value);
            if (items[i].Is(SenseKind.Role, out var role) && role.Value < 2 && whose is null && pair == HandPair.Unsaid) whose = role.Value == 0 ? Role.Lead : Role.Follow;
        }

        if (hold == "open" && verbSaid && verb != HandVerb.Into)
        {
            // "Under inside hands" speaks of the pair, not of the hold that has its name.
            pair = HandPair.Inside;
            hold = null;
        }

        if (hold is not null && verb is HandVerb.Placed or HandVerb.Into or HandVerb.Take) verb = HandVerb.Into;
        var span = items[from].Span.Join(items[to - 1].Span);
        return new(new(verb, pair, hold, whose), span);
    }

    private static bool SpeaksOfHands(List<Item> items, int at, int to, HandVerb verb)
    {
        var pair = false;
        var noun = false;
        var head = false;
        var hold = false;
        var other = false;
        for (var i = at + 1; i < to; i++)
        {
            var item = items[i];
            noun |= item.Is(SenseKind.HandNoun) && !item.Is(SenseKind.Verb);
            head |= item.Is(SenseKind.Head);
            hold |= item.Is(SenseKind.Hold);
            pair |= item.Is(SenseKind.Side) || item.Is(SenseKind.Pair);
            other |= item.Is(SenseKind.Verb) || item.Is(SenseKind.Way) || item.Is(SenseKind.Figure) || item.Is(SenseKind.Weight) || item.Is(SenseKind.Part);
        }

        return verb switch
        {
            HandVerb.Raise or HandVerb.Release or HandVerb.Take or HandVerb.Keep or HandVerb.Lower when items[at].Is(SenseKind.Verb) => noun,
            HandVerb.Raise or HandVerb.Release or HandVerb.Take or HandVerb.Keep => noun || hold || (pair && !other),
            HandVerb.Lower => noun || (pair && !other && !items[at].Is(SenseKind.Filler)),
            HandVerb.Into => hold,
            HandVerb.Over => head || noun,
            _ => noun || head || pair,
        };
    }

    private static bool HasNoun(List<Item> items, int from, int to)
    {
        for (var i = from; i < to; i++)
        {
            if (items[i].Is(SenseKind.HandNoun) && !items[i].Is(SenseKind.Verb)) return true;
        }

        return false;
    }

    private static bool NoHeadBefore(List<Item> items, int from, int at)
    {
        for (var i = from; i < at; i++)
        {
            // "Hold right hands" keeps them; the hold that lasts a count stands alone.
            var holds = items[i].Is(SenseKind.Verb, out var verb) && (ActionKind)verb.Value == ActionKind.Hold;
            if ((items[i].Is(SenseKind.Verb) && !holds) || items[i].Is(SenseKind.Figure)) return false;
        }

        return true;
    }

    private static bool OnlyHandsBefore(List<Item> items, int from, int at)
    {
        for (var i = from; i < at; i++)
        {
            if (!items[i].Is(SenseKind.Filler) && !items[i].Is(SenseKind.HandVerb)) return false;
        }

        return true;
    }

    private static bool OnlyHandsAfter(List<Item> items, int at, int to)
    {
        for (var i = at + 1; i < to; i++)
        {
            if (!items[i].Is(SenseKind.Filler) && !items[i].Is(SenseKind.HandNoun)) return false;
        }

        return true;
    }
}
