using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Turn a quarter to the left and left forward (slow)": where every step has its slow or quick, a turn without one is made with its step.</summary>
internal static class TurnsOfTheRhythm
{
    private static readonly Regex TurnOnly = new(
        @"^(?:and |then |now |go on |keep |continue )*turn(?:s|ing)? (?:through )?(?:a |one |the (?:other |second |last )?)?(?<how>half|quarter|½|¼|1/2|1/4)(?: (?:way|turn))?(?: round)? (?:to (?:the |your )?)?(?<way>left|right|L|R)(?: to (?:face|look)(?: to| at)? (?:the )?\S+)?$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Makes each such turn one phrase with the step after it.</summary>
    public static void In(List<Phrase> phrases)
    {
        for (var i = 0; i + 1 < phrases.Count; i++)
        {
            if (phrases[i].Beats > 0 || phrases[i].Label is not null || phrases[i + 1].Beats == 0 || TurnOnly.Match(phrases[i].Text) is not { Success: true } turn) continue;
            var step = phrases[i + 1];
            phrases[i + 1] = step with { Text = $"{step.Text} turning {turn.Groups["how"].Value} {turn.Groups["way"].Value}", Said = $"{phrases[i].Said}, {step.Said}" };
            phrases.RemoveAt(i);
        }
    }
}
