using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Where the page asks for a hammerlock: in its head, by going into one, by stating one, or by a figure of that name.</summary>
internal static class Hammerlocks
{
    private const string Name = "hammerlock";

    /// <summary>For each moment. The way into one, from the line that names it, belongs to it, and so does the way out up to the next hold that is named.</summary>
    public static bool[] Asked(DanceScore score, IReadOnlyList<HandTime> hands, IReadOnlyList<Moment> moments)
    {
        var asked = new bool[moments.Count];
        if (Is(score.Facts.Hold)) Mark(Count.At(0), Next(hands, -1));
        for (var h = 0; h < hands.Count; h++)
        {
            if (hands[h].Words.Verb == HandVerb.Into && Is(hands[h].Words.Hold)) Mark(hands[h].From, Next(hands, h));
        }

        foreach (var role in score.Roles)
        {
            for (var i = 0; i < role.Steps.Count; i++)
            {
                if (!string.Equals(role.Steps[i].Figure, Name, StringComparison.OrdinalIgnoreCase)) continue;
                var next = hands.FirstOrDefault(h => h.Words.Verb == HandVerb.Into && h.At > role.Steps[i].At)?.At;
                Mark(role.Steps[i].At, next);
            }
        }

        return asked;

        void Mark(Count from, Count? to)
        {
            for (var m = 0; m < asked.Length; m++) asked[m] |= moments[m].At >= from && (to is null || moments[m].At < to);
        }
    }

    private static Count? Next(IReadOnlyList<HandTime> hands, int from)
    {
        for (var h = from + 1; h < hands.Count; h++)
        {
            if (hands[h].Words.Verb == HandVerb.Into && !Is(hands[h].Words.Hold)) return hands[h].At;
        }

        return null;
    }

    private static bool Is(string? hold) => Holds.Named(hold)?.Kind == Name;
}
