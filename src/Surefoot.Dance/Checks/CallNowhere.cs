using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Checks;

/// <summary>A call that the page writes has no place in the dance, or says nothing.</summary>
public sealed class CallNowhere : ICheck
{
    public string Name => "call-nowhere";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var call in dance.Score.Calls)
        {
            if (Why(dance, call) is not { } why) continue;
            yield return new(
                Name, Severity.Warning, call.Span, dance.LabelIn(call.Part), call is { Part: >= 0, Opening: false } ? dance.CountIn(call.Part, Count.At(call.From)) : null, call.Role,
                why.Message, why.Reason);
        }
    }

    private static (string Message, string Reason)? Why(DanceCase dance, ScoreCall call)
    {
        if (call.Part < 0 && !call.Opening) return ("This call stands before the first part, so nobody knows whose counts it means.", "A call stands among the lines of its part and names the counts of that part. What is called before the first step is written \"Call before the dance: ...\".");
        if (call.Unread is { } unread) return ($"Nobody can tell whom or when \"{dance.Words(unread)}\" means.", "Before the colon stand the counts or \"before the dance\", then \"lead\" or \"follow\" for one of them, and \"2nd time\" or \"last time\" for one dancing of the part.");
        if (!call.None && call.Words.Length == 0) return ("This call says nothing.", "Write the words after the colon, or \"none\" where nothing is to be called.");
        if (call.Opening)
        {
            return call.Time is null ? null : ("The dance begins only once, so nobody knows which time this call means.", "\"Call before the dance\" is heard on the last counts before the first step.");
        }

        var part = dance.Score.Parts[call.Part];
        var length = part.Length.Ceiling;
        if (call.From < 1 || call.To > length)
        {
            var outside = call.From < 1 ? call.From : call.To > length ? Math.Max(call.From, length + 1) : call.To;
            return (
                $"{part.Label} has no count {dance.CountIn(call.Part, Count.At(outside))}, so this call is never heard.",
                length == 0 ? "No counts are danced in it." : $"It goes from count {dance.CountIn(call.Part, Count.First)} to {dance.CountIn(call.Part, Count.At(length))}. A call stands on the counts before its step: what is called for the next part stands on the last counts of this one.");
        }

        var times = dance.Score.Sections.Count(s => s.Part == call.Part);
        return call.Time > Math.Max(1, times) ? ($"{part.Label} is danced {(times == 1 ? "once" : $"{times} times")} in a repeat, so this call is never heard.", "\"2nd time\" means the second time that the part is danced in one repeat of the dance.") : null;
    }
}
