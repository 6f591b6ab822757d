using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>
/// What one voice says to both. Where the roles do different things there is no time for two calls: whoever turns is called, else the
/// lead, and it is said for whom.
/// </summary>
public static class CallVoice
{
    /// <summary>Each call with what a voice says for it; nothing where the partner's call at the same step is said instead.</summary>
    /// <param name="lead">What the hall calls the lead.</param>
    /// <param name="follow">What the hall calls the follow.</param>
    public static IEnumerable<(Call Call, string Says)> Over(IReadOnlyList<Call> calls, string lead, string follow)
    {
        foreach (var call in calls)
        {
            var partner = call.Role is null ? null : calls.FirstOrDefault(c => c.Step == call.Step && c.Role is { } other && other != call.Role);
            yield return (call, partner is null || Goes(call, partner) ? Said(call, lead, follow) : "");
        }
    }

    /// <summary>One call by itself, with for whom it is.</summary>
    public static string Said(Call call, string lead, string follow)
    {
        var words = CallWords.For(call.Words, lead, follow);
        if (call.Role is not { } role || role == Role.Dancer) return words;
        var who = (role == Role.Lead ? lead : follow).ToLowerInvariant();
        if (words.StartsWith(who, StringComparison.OrdinalIgnoreCase)) return words;
        // Her own words stay as she wrote them.
        if (call.Written) return $"{who} {words}";
        return call.Turns ? $"{who}'s turn" : $"{who} {CallWords.Short(words, CallWords.MostSyllables - Syllables.In(who))}";
    }

    private static bool Goes(Call call, Call partner) =>
        call.Written != partner.Written ? call.Written : call.Turns != partner.Turns ? call.Turns : call.Role == Role.Lead;
}
