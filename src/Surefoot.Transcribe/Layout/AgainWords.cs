using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Counts 1-8 once more", "5-6 three times more", "as 1-8", "the same with the other foot", "again".</summary>
internal static class AgainWords
{
    private static readonly Regex Range = new(
        @"^\W*(?:the\s+)?(?:(?:do|dance|finish\s+with|end\s+with|then|go\s+on\s+with|same\s+as|repeat|reverse(?:\s+of)?|as(?:\s+in)?(?:\s+the)?|like|mirror(?:\s+of)?|opposite\s+of)\s+)*(?:the\s+)?(?<unit>counts?|cts?\.?|beats?|bars?|measures?|meas\.?|steps?|parts?|numbers?|n[or]s?\.?|lines?|items?|\#|(?-i:M)\.?)?\s*(?<from>\d{1,3})(?:st|nd|rd|th|d)?(?:\s?(?:-|to|through|thru|&|and)\s?(?:the\s+)?(?<to>\d{1,3})(?:st|nd|rd|th|d)?)?\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "With the four step-hops of bars three and four": which counts stands at the end.
    private static readonly Regex AtTheEnd = new(
        $@"\b(?:of|as\s+in|as|like|from)\s+(?:the\s+)?(?<unit>counts?|cts?\.?|beats?|bars?|measures?|meas\.?)\s+(?<from>\d{{1,3}}|{NumberWords.Spelled})(?:\s?(?:-|to|through|thru|&|and)\s?(?<to>\d{{1,3}}|{NumberWords.Spelled}))?\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Said = new(
        @"^\W*(?:and\s+)?again\b(?!\s+onto)|\b(?:repeat(?:s|ed)?|rpt|once\s+again|the\s+same\s+again|once\s+more|times?\s+more|another\s+\w+\s+times?|same(?:\s+(?:opp\w*|as|again|back|going|from|travell?ing|moving|in|commencing|reversed|to|with|the|starting|on|but|steps?|movements?|figure|thing))|as\s+(?:in\s+)?(?:the\s+)?(?:(?:counts?|cts?|bars?|measures?|meas|steps?)\.?\s+)?\d+(?:st|nd|rd|th|d)?|(?:do|(?:finish|end|go\s+on|start|begin)\s+with)\s+(?:number\s+|no\.?\s+|steps?\s+|part\s+|\#\s?)?\d|reverse\s+(?:of\s+)?(?:steps?|counts?|bars?|meas\w*)\.?\s+\d|mirror|opposite\s+of\s+\d|all\s+that|do\s+it\s+again|same\s+\w+\s+(?:again|once\s+more|another\s+time))\b|\b(?:of|as in)\s+(?:bars?|measures?|counts?)\s+\w+|^\W*(?:counts?|measures?|bars?|meas\.?|numbers?|n[or]s?\.?|lines?|items?)\s+\d[\d\s-]*(?:,|$|\s+(?:again|more|opp\w*|back|moving|going|travell?ing|from|backwards?|bkwds?|forwards?|with|to|in|on|reversed?))|^\W*\d{1,2}\s?-\s?\d{1,2}\b.*\b(?:opposite|other|mirror\w*|again|more|same|reversed?|first|to\s+the\s+(?:left|right))\b|^\W*(?:(?-i:M)\.?\s?)?\d{1,2}\s?-\s?\d{1,2}\W*$|^\W*\d{1,2}\s?(?:-|to)\s?\d{1,2} (?:again|once more|one more time|(?:for )?(?:a|the) (?:second|third|fourth|last|final) time)\W*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Other = new(
        @"\b(?:opposite|opp|mirror\w*|other\s+(?:foot|side|way|direction|feet)|against|from\s+(?:the\s+)?(?:L|R|left|right)(?:\s+f\w+)?|(?:commencing|beginning|starting|leading)\s+(?:with|on|from)\s+(?:the\s+|your\s+)?(?:L|R|left|right)|to\s+the\s+(?:left|right|L|R)|alternate|starting\s+(?:left|right|L|R)|backwards?|inside\s+f(?:oo)?t|other\s+foot|(?:left|right|L|R)\s+(?:foot\s+)?first|contrary|reversed?|in\s+(?:the\s+)?RLOD|(?:back|return\w*)\s+to(?:wards?)?\s+(?:your\s+|the\s+)?partner)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Often = new(
        $@"\b(?:(?<n>{NumberWords.Spelled}|\d)\s+(?:more\s+times|times\s+more|times)|another\s+(?<n>{NumberWords.Spelled}|\d)\s+times|(?<twice>twice(?:\s+more)?|two\s+times)|x\s?(?<n>\d))\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // A foot that does something, and is not only the one to begin with.
    private static readonly Regex Foot = new(@"\b(?:left|right)\s+(?:foot|heel|toe)\b(?<!\b(?:with|on|from|using)\s+(?:the\s+|your\s+|his\s+|her\s+)?\w+\s+\w+)(?!\s+(?:first|this\s+time|beginning|leading|starting|commencing))(?<!(?:start|begin|lead)\w*\s+(?:with\s+)?(?:the\s+)?\w+\s+\w+)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Then all six counts over again".
    private static readonly Regex AllCounts = new($@"^\W*(?:and |then |now )*(?:do |dance |repeat )?all (?:the |of the |these |those )?(?<n>{NumberWords.Spelled}|\d{{1,2}}) (?:counts?|beats?) (?:over again|over|again|once more|a second time)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>"Recommence with the right foot": all that was danced, and not the whole dance for another time.</summary>
    public static bool FromTheOtherFoot(string text) => Recommence.IsMatch(text);

    private static readonly Regex Recommence = new(@"^\W*(?:and |then |now )?(?:recommence|commence again)s? (?:with|on|from) (?:the |his |your )?(?:left|right|other|opposite|contrary|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Same as the last eight beginning with left".
    private static readonly Regex LastCounts = new($@"^\W*(?:do |dance |repeat )?(?:the )?(?:same as )?(?:the )?(?:last|previous) (?<n>four|eight|sixteen|twelve|4|8|12|16)(?: counts?| beats?)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>What a phrase has danced again, or null. Words with steps of their own are no repeat.</summary>
    public static Again? Of(string text)
    {
        if (!Said.IsMatch(text) || text.Length > (AtTheEnd.IsMatch(text) ? 150 : 90) || Foot.IsMatch(text)) return null;
        if (LastCounts.Match(text) is { Success: true } eight) return new(0, 0, LabelUnit.Counts, Other.IsMatch(text), 1) { LastCounts = NumberWords.Read(eight.Groups["n"].Value) };
        var range = Range.Match(text);
        if (!range.Success) range = AtTheEnd.Match(text);
        var unit = range.Groups["unit"].Value is var said && (said.StartsWith('M') || said.StartsWith("bar", StringComparison.OrdinalIgnoreCase) || said.StartsWith("meas", StringComparison.OrdinalIgnoreCase)) ? LabelUnit.Bars : LabelUnit.Counts;
        var from = range.Success ? NumberWords.Read(range.Groups["from"].Value) : 0;
        var to = range.Groups["to"].Success ? NumberWords.Read(range.Groups["to"].Value) : from;
        return new(from, to, unit, Other.IsMatch(text), Math.Max(1, Times(text)));
    }

    /// <summary>What came just before, once more, however it is said; from the other foot where the words name one or another way.</summary>
    public static Again Plainly(string text) => new(0, 0, LabelUnit.Counts, Other.IsMatch(text), Math.Max(1, Times(text)));

    /// <summary>"And back again" beside counts: what came just before, the other way.</summary>
    public static bool AndBack(string text) => Back.IsMatch(text);

    private static readonly Regex Back = new(@"^\W*(?:and |then )*back(?: again)?(?: the other way| to place| the same way)?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>"Measures 1-2", "5-12 on opposite feet": earlier counts, whatever words come after.</summary>
    public static bool NamesCounts(string text) => Named.IsMatch(text) || AtTheEnd.IsMatch(text);

    /// <summary>"4 to 7 for the last time": counts or items that are danced again, and no label.</summary>
    public static bool OnceMoreCounts(string text) => OnceMore.IsMatch(text);

    private static readonly Regex OnceMore = new(@"^\W*\d{1,2}\s?(?:-|to)\s?\d{1,2} (?:one more time|(?:for )?(?:a|the) (?:second|third|fourth|last|final) time)\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Named = new(@"^\W*(?:as\s+(?:in\s+)?(?:the\s+)?|repeat\s+|reverse\s+|(?:finish|end|go\s+on)\s+with\s+)?(?:counts?|measures?|bars?|meas\.?|steps?)\s+\d|^\W*(?:as\s+(?:in\s+)?(?:the\s+)?|repeat\s+|reverse\s+|do\s+)(?:number\s+|no\.?\s+)?\d|^\W*(?:the\s+)?same\s+(?:as|like)\s+(?:(?:counts?|bars?|measures?|steps?|no\.?)\s+)?\d|^\W*(?:(?-i:M)\.?\s?)?\d{1,2}\s?-\s?\d{1,2}(?:\W*$|\s+(?:on|with|to|starting|from|but|once|twice|two|three|four|again|reversed)\b)|^\W*\d{1,2}\s?(?:-|to)\s?\d{1,2} (?:again|once more|one more time|(?:for )?(?:a|the) (?:second|third|fourth|last|final) time)\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>"Do that again and you have come all the way round": only its first words have something danced.</summary>
    public static Again? DoAgain(string text)
    {
        if (AllCounts.Match(text) is { Success: true } counted) return new(0, 0, LabelUnit.Counts, Other.IsMatch(text), 1) { LastCounts = NumberWords.Read(counted.Groups["n"].Value) };
        foreach (var lastOnes in LastOnes)
        {
            if (lastOnes.Match(text) is { Success: true } ones) return new(0, 0, LabelUnit.Counts, Other.IsMatch(text), 1) { Last = Math.Max(1, NumberWords.Read(ones.Groups["n"].Value)) };
        }

        if (Several.Match(text) is { Success: true } several) return new(0, 0, LabelUnit.Counts, false, Math.Max(1, NumberWords.Read(several.Groups["n"].Value) - 1)) { WholeLine = true };
        if (!Ordered.IsMatch(text) && !FromTheOtherFoot(text)) return null;
        // "All of this is danced twice" is once more.
        return new(0, 0, LabelUnit.Counts, Other.IsMatch(text), Math.Max(1, Danced.IsMatch(text) ? Times(text) - 1 : Times(text))) { WholeLine = !OnlySame.IsMatch(text) && !SecondTime.IsMatch(text) };
    }

    /// <summary>"All of that the other way, right heel out, right toe in": what is danced again is said again.</summary>
    public static bool SaidAgain(string text, string after, Func<string, bool> speaks) =>
        DoAgain(text) is { Mirrored: true } && !OwnFoot.IsMatch(text) && !text.Contains(':', StringComparison.Ordinal) && OwnFoot.IsMatch(after) && after.Split(',').Count(p => speaks(p)) > 1;

    /// <summary>"Do that again, stomp left, stomp right": where steps begin that are not danced again, or 0.</summary>
    public static int StepsAfter(string text, Func<string, bool> speaks)
    {
        for (var comma = text.IndexOf(','); comma > 0; comma = text.IndexOf(',', comma + 1))
        {
            if (DoAgain(text[..comma]) is null) continue;
            if ((OwnFoot.IsMatch(text[(comma + 1)..]) || SaidAgain(text[..comma], text[(comma + 1)..], speaks)) && speaks(text[(comma + 1)..])) return comma + 1;
        }

        return 0;
    }

    // Something done with a foot: "stomp left", "left forward", and not "starting with the left" or "R foot first".
    private static readonly Regex OwnFoot = new(@"^\s*(?:and |then )*(?:(?:step|stomp|stamp|touch|rock|walk|kick|point|cross|close|tap|scuff|brush)s?\s+(?:the |your )?(?:left|right|L|R)\b|(?:the |your )?(?:left|right)\s+(?:foot\s+|toe\s+|heel\s+)?(?:forward|back|behind|beside|next|touch|step|kick|stomp|across|over|out|in(?! place))\w*\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Ordered = new(
        @"^\W*(?:and |then |now |they |you |again )*(?:do |dance |repeat )?(?:all )?(?:of )?(?:that|this|it|these|those|the whole thing|everything)(?: \w+){0,2}? (?:again|once more|twice|over|a second time)\b"
        + @"|^\W*(?:the whole|all|everything|this|that|it|all (?:of )?(?:this|that)) (?:is |are )?(?:then |now )?(?:(?:done|danced|performed|repeated) (?:twice|\w+ times)|repeated|done again|danced again|gone through again|(?:executed|danced|done|performed|taken|made) (?:in|to|with|on) the (?:opposite|contrary|other))\b"
        + @"|^\W*(?:and |then )?(?:do )?(?:all )?(?:of )?(?:that|this)(?: again)? (?:to|on|with|starting|from) (?:the |your )?(?:left|right|other|opposite|L|R)\b|^\W*(?:and |then )?(?:all )?again(?:,? (?:and )?so (?:home|back))?\W*$"
        + @"|^\W*(?:and |then |now )*(?:all (?:of )?(?:that|this|it)|the (?:whole|entire) (?:lot|thing|of (?:that|this|it))|(?:that|this|it) all|(?:exactly )?the (?:very )?same(?: \w+)?|the lot)(?: again)?,? (?:the other way(?: round| about)?|on the other (?:side|foot)|to the other side|from the other foot|in mirror(?: image)?|once more|once again|another time|over again|a second time|again|back the other way|with the other foot)\W*(?:$|,)"
        + @"|^\W*(?:all )?the (?:foregoing|above)(?: \w+)? (?:is|are|to be) (?:then )?(?:repeated|danced again)\b"
        + @"|^\W*(?:the )?same(?: again| steps?| thing)*\W*$|^\W*do (?:this|that|it) (?:twice|(?:two|three|four|five|six) times)\b"
        + @"|^\W*(?:and |then )?(?:the )?same\s*,\s*(?:(?-i:[LR])[ ,]|commencing|beginning|starting|but|with|to|on|from|the (?:left|right|other)(?: foot)?(?: leading| first)?)"
        + @"|^\W*(?:and |then |now |they |you )*(?:do(?:es)? |dances? |repeats? )?(?:exactly )?the (?:very )?same (?:\w+ )?(?:steps?|thing|movements?|figure|to|with|on|starting|beginning)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Do the same to the left" is said of the last sentence, "do all that again" of the whole line.
    private static readonly Regex OnlySame = new(@"\bthe same\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SecondTime = new(@"^\W*do (?:that|this|it) (?:a second time|twice|\w+ times)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Danced = new(@"\b(?:is|are|was) (?:\w+ )?(?:twice|\w+ times)\b|^\W*do (?:that|this|it) (?:twice|\w+ times)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // So many of the last lines.
    private static readonly Regex[] LastOnes =
    [
        // "Do the two side steps again".
        new($@"^\W*(?:do|dance) (?:the|those|these) (?:last )?(?:(?<n>two|three|four|\d) )?(?!same\b)[\w ]{{2,24}} again$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant),
        // "Do the four heel lines a second time".
        new($@"^\W*(?:do|dance|repeat) (?:the|those|these) (?:last |same )?(?<n>{NumberWords.Spelled}|\d{{1,2}}) [\w ]{{2,24}} (?:again|once more|over|a second time|over again)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant),
        // "The same six again".
        new($@"^\W*(?:do )?the same (?<n>{NumberWords.Spelled}|\d{{1,2}})(?: counts?| steps?| movements?)? (?:again|once more)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant),
        // "The six movements are then executed in the contrary direction".
        new($@"^\W*(?:the |these |those |all )+(?<n>{NumberWords.Spelled}|\d{{1,2}}) (?:movements?|steps?|figures?|counts?) (?:are|is) (?:\w+ )?(?:executed|repeated|danced|done|performed|made|taken)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant),
    ];

    // "We do two of those".
    private static readonly Regex Several = new($@"^\W*(?:we |you |they )?(?:do|did|dance|danced|make) (?<n>two|three|four|\d) of (?:those|these|them)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>How many times words say, or 0.</summary>
    public static int Times(string text)
    {
        var often = Often.Match(text);
        if (!often.Success) return 0;
        return often.Groups["twice"].Success ? 2 : NumberWords.Read(often.Groups["n"].Value);
    }
}
