using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>"That's sixteen.", "Twenty-four, and you still face the front": how many counts are danced by now, said between the steps.</summary>
internal static class Reckoning
{
    // No dance of one list is longer.
    private const int Most = 128;

    private static readonly Regex Said = new(
        $@"^\W*(?:(?:and |so |now |there |ok(?:ay)?,? )*(?<says>that(?:'s| is| was| makes?| gives(?: you| us)?| brings (?:you|us) to)|there(?:'s| is| are)|this (?:is|makes)|we(?:'re| are) (?:at|up to)|makes)\s+(?:already |up to |now |your |the |our )*)?(?:first |all |a total of )?(?<n>\d{{1,3}}|{NumberWords.SpelledLarge})(?<unit> counts?| beats?| cts?)?(?:\s*(?:,|(?:in all|altogether|counts|done|so far|already|now|and|so|then)\b)(?<rest>.*))?\W*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex InBars = new(
        $@"^\W*(?:and |so |now )*(?:(?:you|we|they|that)(?:'ve| have| has|'s| is| makes)? (?:now )?(?:used(?: up)?|danced|done|had|filled)?|there (?:go|are|were)) ?(?:already |now |the first )*(?<n>\d{{1,2}}|{NumberWords.SpelledLarge}) (?:bars|measures)(?: (?:now|so far|already|done|danced|gone))*\W*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <returns>The bars that are danced by now ("You have used up four bars"), or 0.</returns>
    public static int BarsOf(string sentence) => InBars.Match(sentence) is { Success: true } bars ? NumberWords.Read(bars.Groups["n"].Value) : 0;

    private static readonly Regex Foot = new(@"\b(?:left|right|L|R|steps?|walk|touch|kick)\b", RegexOptions.CultureInvariant);

    /// <returns>The counts that are danced by now, or 0 where a sentence says something else.</returns>
    public static int Of(string sentence)
    {
        var match = Said.Match(sentence);
        if (!match.Success || Foot.IsMatch(match.Groups["rest"].Value)) return 0;
        // "Eight." alone may be a count.
        var n = NumberWords.Read(match.Groups["n"].Value);
        if (!match.Groups["says"].Success && !match.Groups["unit"].Success && (n < 12 || n % 4 != 0)) return 0;
        return n is >= 4 and <= Most && n % 2 == 0 ? n : 0;
    }
}
