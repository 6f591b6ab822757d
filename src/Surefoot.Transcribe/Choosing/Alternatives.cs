using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Choosing;

/// <summary>One way to understand a phrase.</summary>
/// <param name="Text">In a page's words.</param>
/// <param name="Cost">How far it is from what the words say: 0 for the words themselves.</param>
/// <param name="Says">What was taken, in a dancer's words; null where the words say it.</param>
internal sealed record Alternative(string Text, double Cost, string? Says);

/// <summary>The ways a phrase is meant when it is not meant as it is written: what writers of sheets leave open or mix up.</summary>
internal static class Alternatives
{
    // A foot that only closes is often not weighted, and nobody writes so. Common practice, no source.
    private const double TouchForClose = 2, StompUp = 0.5, StepForTouch = 3, OtherFoot = 5;

    private static readonly Regex Close = new(@"^(?:close|together|step together)(?: (?<foot>L|R))?$|^(?<foot>L|R) together$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Touch = new(@"\b(?:touch(?:es)?|taps?|points?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Stomp = new(@"\bstomps?\b(?! up)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Foot = new(@"\b(?:L|R|left|right)\b(?! side\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static IEnumerable<Alternative> Of(string text)
    {
        yield return new(text, 0, null);
        if (Close.Match(text) is { Success: true } close)
        {
            var foot = close.Groups["foot"].Value;
            yield return new($"touch {foot} together".Replace("  ", " "), TouchForClose, "closed without weight, because the same foot goes on");
        }
        else if (Stomp.IsMatch(text))
        {
            yield return new(Stomp.Replace(text, "stomp up"), StompUp, "stomped without weight, because the same foot goes on");
        }
        else if (Touch.IsMatch(text))
        {
            yield return new(Touch.Replace(text, "step"), StepForTouch, "stepped with weight, because the other foot goes on");
        }

        if (Foot.Count(text) == 1)
        {
            yield return new(Foot.Replace(text, m => Swapped(m.Value)), OtherFoot, "danced with the other foot than written, because the written one carries the weight");
        }
    }

    /// <summary>Left for right and right for left.</summary>
    public static string Mirrored(string text) => Regex.Replace(text, @"\b(?:L|R|left|right|LF|RF|(?-i:[LR]{2,4}))\b", m => Swapped(m.Value), RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Swapped(string word) => word switch
    {
        "L" => "R",
        "R" => "L",
        "LF" => "RF",
        "RF" => "LF",
        // "Shuffle LRL".
        { Length: > 1 } feet when feet.All(f => f is 'L' or 'R') => string.Concat(feet.Select(f => f == 'L' ? 'R' : 'L')),
        _ => (word[0] is 'l' or 'L') switch
        {
            true => char.IsUpper(word[0]) ? "Right" : "right",
            false => char.IsUpper(word[0]) ? "Left" : "left",
        },
    };
}
