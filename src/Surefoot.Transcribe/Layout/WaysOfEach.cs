using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Man forward from L, woman back from R, 3 steps and a hop": where each goes, and then what both do there.</summary>
internal static class WaysOfEach
{
    private const string Way = @"(?<WAY>forwards?|fwd|backwards?|back|bkwd|in|out|to (?:the )?(?:left|right|side))(?:,? (?:starting )?(?:from|with|on) (?:the )?(?<FOOT>left|right|L|R)(?: foot)?)?";

    private static readonly Regex Each = new(
        $@"\b(?<his>man|men|gent|lead|leader|M)(?: goes?| moves?)? {Of("his")},?\s+(?:and )?(?<hers>woman|women|lady|follow|follower|W)(?: goes?| moves?)? {Of("hers")},\s*(?:with )?(?<many>[2-8]|two|three|four|six|eight) (?<what>steps|walks|walking steps|running steps)(?<rest>[^;.]*)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Move apart, man to his left, lady to her right: side, close, side, touch": each to the own side, as feet that mirror each other go.
    private static readonly Regex Apart = new(
        @"(?:,|\s*\()?\s*(?:the )?(?:man|men|gents?|leader|he|(?-i:M))(?: (?:turn(?:s|ing)?|mov(?:es?|ing)|goe?s?|going)(?: to)?| to) (?:his |the |their )?(?<way>left|right|L|R),?\s+(?:and )?(?:the )?(?:wom[ae]n|lad(?:y|ies)|follower|she|(?-i:W))(?: (?:turn(?:s|ing)?|mov(?:es?|ing)|goe?s?|going)(?: to)?| to) (?:her |the |their )?(?!\k<way>\b)(?:left|right|L|R)\)?(?=\s*(?::|,\s*(?:one|once|a|in|with|travel\w*|\d|two|three|four|side|step)\b))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Of(string whose) => Way.Replace("WAY", whose + "Way", StringComparison.Ordinal).Replace("FOOT", whose + "Foot", StringComparison.Ordinal);

    public static void In(List<SheetLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            if (Apart.IsMatch(lines[i].Plain)) lines[i] = lines[i] with { Plain = Apart.Replace(lines[i].Plain, "") };
            if (Each.IsMatch(lines[i].Plain)) lines[i] = lines[i] with { Plain = Each.Replace(lines[i].Plain, e => $"{Said(e, "his")}. {Said(e, "hers")}") };
        }
    }

    private static string Said(Match each, string whose)
    {
        var foot = each.Groups[whose + "Foot"];
        return $"{each.Groups[whose].Value}: {each.Groups["many"].Value} {each.Groups["what"].Value} {each.Groups[whose + "Way"].Value}{(foot.Success ? $" starting {foot.Value}" : "")}{each.Groups["rest"].Value}";
    }
}
