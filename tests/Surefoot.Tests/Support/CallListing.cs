using System.Text;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Scoring;

namespace Surefoot.Tests.Support;

/// <summary>The calls of a dance as lines of text, the form in which the corpus keeps them: counts, for whom, words, what one voice says.</summary>
internal static class CallListing
{
    public static string Of(CallSheet sheet, DanceScore score)
    {
        var text = new StringBuilder();
        Lines(text, "before | ", sheet.Opening);
        Lines(text, "", sheet.Calls);
        foreach (var extra in sheet.Extras) Lines(text, $"{score.Parts[extra.Part].Label}{(extra.AfterWall is { } wall ? $" after {wall}" : "")} | ", extra.Calls);
        foreach (var wall in sheet.Walls) Lines(text, $"in repeat {wall.Wall} | ", [wall.Call]);
        return text.ToString();
    }

    private static void Lines(StringBuilder text, string where, IReadOnlyList<Call> calls)
    {
        foreach (var (call, says) in CallVoice.Over(calls, "lead", "follow"))
        {
            var counts = call.Counts == 1 ? $"{call.From}" : $"{call.From}-{call.To}".Replace("-1-0", "two counts", StringComparison.Ordinal);
            if (call.To == 0 && call.Counts == 1) counts = "one count";
            text.Append($"{where}{counts} | {call.Role?.ToString().ToLowerInvariant() ?? "all"} | {CallWords.Plain(call.Words)} | {(says.Length > 0 ? $"\"{says}\"" : "unsaid")} | for {call.Step.Name}{(call.Written ? " | written" : "")}\n");
        }
    }
}
