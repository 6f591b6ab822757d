using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Counts 1-8 once more", "5-6 three times more", "as 1-8", "the same with the other foot", "again".</summary>
internal static class AgainWords
{
    private static readonly Regex Range = new(
        @"^\W*(?:(?:do|dance|same\s+as|repeat|as(?:\s+in)?|like|mirror(?:\s+of)?|opposite\s+of)\s+)*(?:the\s+)?(?<unit>counts?|cts?\.?|beats?|bars?|measures?|meas\.?|steps?|parts?)?\s*(?<from>\d{1,3})(?:\s?(?:-|to|through|thru|&)\s?(?<to>\d{1,3}))?\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Said = new(
        @"^\W*(?:and\s+)?again\b|\b(?:repeat(?:s|ed)?|once\s+again|the\s+same\s+again|once\s+more|times?\s+more|another\s+\w+\s+times?|same(?:\s+(?:as|again|to|with|the|starting|on|but))|as\s+(?:in\s+)?\d|do\s+\d|mirror|opposite\s+of\s+\d|all\s+that|do\s+it\s+again)\b|^\W*(?:counts?|measures?|bars?)\s+\d[\d\s-]*(?:,|$|\s+(?:again|more|opposite|back))|^\W*\d{1,2}\s?-\s?\d{1,2}\b.*\b(?:opposite|other|mirror\w*|again|more|same|reversed?)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Other = new(
        @"\b(?:opposite|opp|mirror\w*|other\s+(?:foot|side|way|direction|feet)|to\s+the\s+(?:left|right)|starting\s+(?:left|right|L|R)|backwards?|inside\s+foot|other\s+foot|(?:left|right|L|R)\s+(?:foot\s+)?first|reverse)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Often = new(
        $@"\b(?:(?<n>{NumberWords.Spelled}|\d)\s+(?:more\s+times|times\s+more|times)|another\s+(?<n>{NumberWords.Spelled}|\d)\s+times|(?<twice>twice(?:\s+more)?|two\s+times)|x\s?(?<n>\d))\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // A foot that does something, and is not only the one to begin with.
    private static readonly Regex Foot = new(@"\b(?:left|right)\s+(?:foot|heel|toe)\b(?!\s+(?:first|this\s+time))(?<!(?:start|begin|lead)\w*\s+(?:with\s+)?(?:the\s+)?\w+\s+\w+)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>What a phrase has danced again, or null. Words with steps of their own are no repeat.</summary>
    public static Again? Of(string text)
    {
        if (!Said.IsMatch(text) || text.Length > 90 || Foot.IsMatch(text)) return null;
        var range = Range.Match(text);
        var unit = range.Groups["unit"].Value is var said && (said.StartsWith("bar", StringComparison.OrdinalIgnoreCase) || said.StartsWith("meas", StringComparison.OrdinalIgnoreCase)) ? LabelUnit.Bars : LabelUnit.Counts;
        var from = range.Success ? NumberWords.Read(range.Groups["from"].Value) : 0;
        var to = range.Groups["to"].Success ? NumberWords.Read(range.Groups["to"].Value) : from;
        return new(from, to, unit, Other.IsMatch(text), Math.Max(1, Times(text)));
    }

    /// <summary>"Measures 1-2", "5-12 on opposite feet": earlier counts, whatever words come after.</summary>
    public static bool NamesCounts(string text) => Named.IsMatch(text);

    private static readonly Regex Named = new(@"^\W*(?:as\s+(?:in\s+)?|repeat\s+)?(?:counts?|measures?|bars?)\s+\d|^\W*\d{1,2}\s?-\s?\d{1,2}\s+(?:on|with|once|twice|two|three|four|again|reversed)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>How many times words say, or 0.</summary>
    public static int Times(string text)
    {
        var often = Often.Match(text);
        if (!often.Success) return 0;
        return often.Groups["twice"].Success ? 2 : NumberWords.Read(often.Groups["n"].Value);
    }
}
