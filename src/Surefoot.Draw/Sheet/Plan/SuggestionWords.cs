using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Sheet.Plan;

/// <summary>Suggestions for the hands in a dancer's words: "on 3&amp; raise right hands", "let go both hands, on 4 take them again".</summary>
internal static class SuggestionWords
{
    /// <summary>All that one pair does, and the pairs that do the same at the same counts.</summary>
    private sealed record Deed(Pairs Pairs, List<(Count At, HandVerb Verb)> Acts);

    /// <param name="suggestions">Those of one row, in the order of their counts.</param>
    /// <param name="ahead">How far the repeat's counts are ahead of the part's.</param>
    /// <param name="from">The row's first count in its part: what is done there needs no count.</param>
    public static string Of(IReadOnlyList<HandSuggestion> suggestions, Beats ahead, Count from, RoleNames names)
    {
        var deeds = new List<Deed>();
        foreach (var pair in PairsOf.Each)
        {
            var acts = new List<(Count At, HandVerb Verb)>();
            foreach (var one in suggestions)
            {
                // Up, down and up again in one row is one raising to whoever leads it.
                if (one.Pair == pair && (acts.Count == 0 || acts[^1].Verb != one.Verb)) acts.Add((one.At - ahead, one.Verb));
            }

            if (acts.Count == 0) continue;
            var same = deeds.FindIndex(d => d.Acts.SequenceEqual(acts));
            if (same < 0) deeds.Add(new(pair, acts));
            else deeds[same] = deeds[same] with { Pairs = deeds[same].Pairs | pair };
        }

        return string.Join("; ", deeds.OrderBy(d => d.Acts[0].At).Select(d => Told(d, from, names)));
    }

    private static string Told(Deed deed, Count from, RoleNames names)
    {
        var told = new List<string>();
        foreach (var (at, verb) in deed.Acts)
        {
            var what = told.Count == 0 ? HandPhrases.Of(deed.Pairs, names) : "them";
            var act = verb switch
            {
                HandVerb.Raise => $"raise {what}",
                HandVerb.Release => told.Count == 0 ? $"let go {what}" : $"let {what} go",
                _ => $"take {what} again",
            };
            told.Add(at == from ? act : $"on {at.Name} {act}");
        }

        return string.Join(", ", told);
    }
}
