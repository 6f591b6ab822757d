using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Draw;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Sheets;

/// <summary>What is called while a bite is danced, from the dance's call sheet, with the counts numbered as the bite's part numbers them.</summary>
internal static class BiteCalls
{
    public static IEnumerable<string> Of(TermDance dance, BiteStretch stretch, SheetOptions options)
    {
        // Tags and the like stand outside the repeat, and have calls of their own.
        var part = stretch.Section is { } section ? dance.Score.Sections[section].Start.Whole : 1;
        var first = part + stretch.From;
        var calls = stretch.Section is null ? dance.Calls.Extras.FirstOrDefault(e => e.Part == stretch.Part)?.Calls ?? [] : dance.Calls.Calls;
        if (stretch.Section is null && dance.Score.Parts[stretch.Part].Label.ToLowerInvariant() is var tag && dance.Calls.Walls.Any(w => w.Call.Words == tag)) yield return $"{tag} (just before)";
        // A tag is over so soon that its last call is the dance's first step.
        var until = first + stretch.Counts + (stretch.Section is null ? 1 : 0);
        foreach (var call in (first == 1 && stretch.Section is not null ? dance.Calls.Opening : default).Concat(calls))
        {
            var step = call.Step.Whole;
            if (call.From < 1) step = 1;
            if (step < first || step >= until) continue;
            var words = CallWords.For(call.Words, options.LeadWord, options.FollowWord);
            // What both do needs no name.
            if (call.Role is Role.Lead or Role.Follow) words = $"{(call.Role == Role.Lead ? options.LeadWord : options.FollowWord)}: {words}";
            yield return call.From < first ? $"{words} (just before)" : $"{words} (on {call.From - part + 1})";
        }
    }
}
