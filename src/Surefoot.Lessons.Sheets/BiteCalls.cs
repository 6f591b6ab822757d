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
        // Tags and the like stand outside the repeat, which is what a call sheet goes through.
        if (stretch.Section is not { } section) yield break;
        var part = dance.Score.Sections[section].Start.Whole;
        var first = part + stretch.From;
        foreach (var call in (first == 1 ? dance.Calls.Opening : default).Concat(dance.Calls.Calls))
        {
            var step = call.Step.Whole;
            if (call.From < 1) step = 1;
            if (step < first || step >= first + stretch.Counts) continue;
            var words = CallWords.For(call.Words, options.LeadWord, options.FollowWord);
            // What both do needs no name.
            if (call.Role is Role.Lead or Role.Follow) words = $"{(call.Role == Role.Lead ? options.LeadWord : options.FollowWord)}: {words}";
            yield return call.From < first ? $"{words} (just before)" : $"{words} (on {call.From - part + 1})";
        }
    }
}
