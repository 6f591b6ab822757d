using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>The calls that a page writes itself, put in place of those that follow from the steps.</summary>
internal static class WrittenCalls
{
    /// <summary>The calls of each part, on every count on which they hold: a repeat inside a part takes its calls along.</summary>
    public static List<ScoreCall>[] ByPart(DanceScore score)
    {
        var all = new List<ScoreCall>[score.Parts.Count];
        for (var p = 0; p < all.Length; p++)
        {
            var own = all[p] = [.. score.Calls.Where(c => c.Part == p && IsThere(c, score))];
            foreach (var repeat in score.Parts[p].Repeats)
            {
                if (repeat.SourcePart > p) continue;
                foreach (var call in all[repeat.SourcePart].ToList())
                {
                    if (Again(call, repeat) is { } again && !own.Exists(c => Clash(c, again))) own.Add(again with { Part = p });
                }
            }
        }

        return all;
    }

    /// <summary>True when its counts and its dancing exist, and it says something.</summary>
    public static bool IsThere(ScoreCall call, DanceScore score) =>
        !call.Opening && call.Part >= 0 && call.From >= 1 && call.To <= score.Parts[call.Part].Length.Ceiling && (call.None || call.Words.Length > 0)
        && (call.Time is not > 1 || call.Time <= score.Sections.AsSpan().ToArray().Count(s => s.Part == call.Part));

    /// <summary>The calls with those of one dancing of a part in place.</summary>
    /// <param name="ahead">Counts danced before the part.</param>
    /// <param name="of">Roles of the dance; a call for a role in a dance without roles is for everybody.</param>
    public static void Put(List<Call> calls, IEnumerable<ScoreCall> written, int ahead, bool mirrored, int of)
    {
        foreach (var one in written)
        {
            var role = of == 1 ? null : one.Role;
            var (from, to) = (one.From + ahead, one.To + ahead);
            Clear(calls, from, to, role);
            if (one.None) continue;
            var words = mirrored ? CallWords.Mirrored(one.Words) : one.Words;
            calls.Add(new(from, to - from + 1, role, words, Count.At(to + 1), false, true));
        }
    }

    /// <summary>What is called before the dance begins, with what the page writes for it in place.</summary>
    public static ValueList<Call> Opening(List<Call> calls, DanceScore score)
    {
        foreach (var one in score.Calls)
        {
            if (!one.Opening || one.Time is not null || (!one.None && one.Words.Length == 0)) continue;
            var role = score.Roles.Count == 1 ? null : one.Role;
            var counts = CallPlacing.CountsFor(one.Words);
            Clear(calls, int.MinValue, 0, role);
            // Nobody is called twice before a dance: what stands lower on the page is the later thought.
            calls.RemoveAll(c => c.Written && (role is null || c.Role == role));
            if (!one.None) calls.Add(new(1 - counts, counts, role, one.Words, Count.First, false, true));
        }

        return calls.OrderBy(c => c.From).ThenBy(c => c.Role).ToValueList();
    }

    /// <summary>Takes away what is called on some counts for a role, or for everybody.</summary>
    public static void Clear(List<Call> calls, int from, int to, Role? role)
    {
        for (var i = calls.Count - 1; i >= 0; i--)
        {
            var call = calls[i];
            if (call.Written || call.From > to || call.To < from) continue;
            if (role is null || call.Role == role) calls.RemoveAt(i);
            else if (call.Role is null) calls[i] = call with { Role = role == Role.Lead ? Role.Follow : Role.Lead };
        }
    }

    // A call goes along where both its counts and the step it names are danced again, and that step is not changed.
    private static ScoreCall? Again(ScoreCall call, RepeatedStretch repeat)
    {
        var (start, end) = (repeat.SourceFrom.Whole, repeat.SourceFrom.Whole + repeat.Length.Ceiling);
        if (call.From < start || call.To + 1 >= end) return null;
        var by = repeat.From.Whole - start;
        var step = Count.At(call.To + 1 + by);
        if (repeat.Changes.AsSpan().ToArray().Any(c => c.From <= step && step < c.To && (c.Role is null || call.Role is null || c.Role == call.Role))) return null;
        return call with { From = call.From + by, To = call.To + by, Words = repeat.Mirrored ? CallWords.Mirrored(call.Words) : call.Words };
    }

    private static bool Clash(ScoreCall own, ScoreCall again) =>
        own.From <= again.To && own.To >= again.From && (own.Role is null || again.Role is null || own.Role == again.Role);
}
