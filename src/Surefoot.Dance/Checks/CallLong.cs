using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Checks;

/// <summary>A call that the page writes has more syllables than can be said on its counts.</summary>
public sealed class CallLong : ICheck
{
    /// <summary>Counts on which <see cref="CallWords.MostSyllables"/> are said; a call over more counts has more room.</summary>
    private const int Usual = 2;

    public string Name => "call-long";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var call in dance.Score.Calls)
        {
            // What is wrong with the call otherwise is told by the check for that.
            if (call.None || call.Words.Length == 0 || call.Unread is not null || (call.Part < 0 && !call.Opening)) continue;
            var syllables = Syllables.In(CallWords.Plain(call.Words));
            var counts = call.Opening ? Usual : Math.Max(Usual, call.To - call.From + 1);
            var most = CallWords.MostSyllables * counts / Usual;
            if (syllables <= most) continue;
            yield return new(
                Name, Severity.Hint, call.Span, dance.LabelIn(call.Part), call is { Part: >= 0, Opening: false } ? dance.CountIn(call.Part, Count.At(call.From)) : null, call.Role,
                $"\"{call.Words}\" has {syllables} syllables, and its counts leave time for {most}.",
                "A call names what comes next and is over before it begins: one to three syllables on the last two counts. Longer ones fit where they are written on more counts before the step.");
        }
    }
}
