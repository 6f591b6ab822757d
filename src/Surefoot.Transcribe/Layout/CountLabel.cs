using System.Globalization;
using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>What the numbers of a label number.</summary>
internal enum LabelUnit
{
    /// <summary>Counts, as far as the sheet tells.</summary>
    Counts,

    /// <summary>Bars, also called measures.</summary>
    Bars,

    /// <summary>"1st", "2)": the order of things, which need not be their counts.</summary>
    Order,
}

/// <summary>When something is danced, as a sheet labels it: "1-4", "3 &amp; 4", "Beat one:", "Bars 1-4", "2d."</summary>
/// <param name="Name">As a page writes it: "1-4", "3&amp;4".</param>
/// <param name="From">The first whole number.</param>
/// <param name="To">The last whole number.</param>
internal sealed record CountLabel(LabelUnit Unit, string Name, int From, int To)
{
    public int Length => To - From + 1;

    public bool HasHalves => Name.Contains('&') || Name.Contains('a') || Name.Contains('e');

    /// <summary>The same label so many numbers later.</summary>
    public CountLabel Moved(int by) => by == 0 ? this : new(
        Unit, Numbers.Replace(Name, m => (int.Parse(m.Value, CultureInfo.InvariantCulture) + by).ToString(CultureInfo.InvariantCulture)), From + by, To + by);

    public static CountLabel Of(int from, int length) => new(LabelUnit.Counts, length == 1 ? $"{from}" : $"{from}-{from + length - 1}", from, from + length - 1);

    /// <summary>Reads a label where a line or a sentence begins.</summary>
    /// <param name="end">Where its words go on.</param>
    public static CountLabel? AtStart(string text, int at, out int end) => Nth(text, at, out end) ?? Read(Start.Match(text, at), text, out end);

    // "In the third and fourth bars", "the second measure".
    private static CountLabel? Nth(string text, int at, out int end)
    {
        var match = NthBars.Match(text, at);
        end = match.Index + match.Length;
        if (!match.Success) return null;
        var from = NumberWords.Nth(match.Groups["from"].Value);
        var to = match.Groups["to"].Success ? NumberWords.Nth(match.Groups["to"].Value) : from;
        return from == 0 || to < from ? null : Of(from, to - from + 1) with { Unit = LabelUnit.Bars };
    }

    private static readonly Regex NthBars = new(
        $@"\G\s*(?:(?:and|then|on|in|for|during|over)\s+)*(?:the\s+)?(?<from>{NumberWords.SpelledNth})(?:\s+(?:and|to)\s+(?:the\s+)?(?<to>{NumberWords.SpelledNth}))?\s+(?:bars?|measures?)\b[,:]?\s*",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Reads "(1)", "(1&amp;2)", "on beat one", "on count 3", "on one-and-two" inside or after a phrase.</summary>
    public static CountLabel? Inside(string text, out int at, out int length)
    {
        if (NthBeat.Match(text) is { Success: true } nth)
        {
            (at, length) = (nth.Index, nth.Length);
            return Of(NumberWords.Nth(nth.Groups["n"].Value), 1);
        }

        var match = Within.Match(text);
        (at, length) = (match.Index, match.Length);
        return Read(match, text, out _);
    }

    /// <summary>Reads "ct 1 step forward", "count 3: hop" where a phrase begins.</summary>
    /// <param name="length">Letters of it.</param>
    public static CountLabel? Before(string text, out int length)
    {
        var match = First.Match(text);
        length = match.Length;
        return Read(match, text, out _);
    }

    private static readonly Regex First = new($@"^(?:on\s+)?(?<unit>(?:counts?|cts?\.?|beats?)\s+)(?<numbers>{Digits}(?:\s?(?:&|and|-|to)\s?{Digits})*|{WordSequence})(?<mark>\s*[:,.=-]?)\s+(?=\S)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static CountLabel? Read(Match match, string text, out int end)
    {
        end = match.Index + match.Length;
        if (!match.Success) return null;
        var said = match.Groups["unit"].Value;
        var unit = OfBars.IsMatch(said) ? LabelUnit.Bars
            : match.Groups["order"].Success ? LabelUnit.Order
            : LabelUnit.Counts;
        if (said.Length == 0 && !match.Groups["mark"].Success && !match.Groups["close"].Success && (NotCounts.IsMatch(text[end..]) || (!match.Groups["numbers"].Value.Contains('-') && NotOneCount.IsMatch(text[end..])))) return null;
        var name = Plain(match.Groups["numbers"].Value);
        // "Bars five and six": bars have no halves.
        if (unit is LabelUnit.Bars or LabelUnit.Order) name = name.Replace('&', '-');
        var numbers = Numbers.Matches(name).Select(m => int.Parse(m.Value, CultureInfo.InvariantCulture)).ToList();
        if (numbers.Count == 0 || numbers[0] is 0 or > 400 || numbers[^1] < numbers[0]) return null;
        // "1, 2" and "1-2-3" are ranges.
        if (!name.Contains('&') && !name.Contains('a') && !name.Contains('e') && numbers.Count > 1) name = $"{numbers[0]}-{numbers[^1]}";
        return new(unit, name, numbers[0], numbers[^1]);
    }

    private static readonly Regex OfBars = new(@"\b(?:bars?|meas|measures?|bb?|m|br?s)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static string Plain(string numbers)
    {
        var plain = numbers.ToLowerInvariant();
        plain = Spelled.Replace(plain, m => NumberWords.Read(m.Value).ToString(CultureInfo.InvariantCulture));
        plain = Regex.Replace(plain, @"(?<=\d)\s+(?=\d)", "-");
        plain = Regex.Replace(plain, @"\s*(?:\band\b|\+)\s*", "&");
        plain = Regex.Replace(plain, @"\s*\buh\b\s*", "e");
        plain = Regex.Replace(plain, @"\s*\b(?:to|thru|through)\b\s*|\s*[,/]\s*", "-");
        return Regex.Replace(plain.Replace(" ", ""), "-?&-?", "&").TrimEnd('-');
    }

    private const string Word = NumberWords.Spelled;

    private static readonly Regex Spelled = new($@"\b(?:{Word})\b", RegexOptions.CultureInvariant);

    private const string Digits = @"\d{1,3}(?![\d%½¼¾]|/\d)";

    private const string Sequence = $@"&?\s?{Digits}(?:\s?(?:-|to|thru|through)\s?{Digits}|\s?(?:,|/|&|\+|\band\b|\buh\b|\ba\b)\s?{Digits}|[&+](?!\w)|\s&(?=\s*[.:)\]-])|\suh(?=\W))*";

    private const string WordSequence = $@"(?:{Word})(?:(?:\s|-)?(?:and|&)(?:\s|-)?(?:{Word})|(?:\s|-|,\s?)(?:{Word}))*";

    private static readonly Regex Numbers = new(@"\d+", RegexOptions.CultureInvariant);

    private static readonly Regex Start = new(
        $@"\G\s*(?<unit>(?:(?:and|then|on|in|for|during|over)\s+)*(?:the\s+)?(?:(?:counts?|cts?\.?|beats?|bars?|measures?|meas\.?)\s+|(?:cts?|beats?|bars?|meas|bb?|m|br?s)\.\s*(?=\d)|(?:bars?|meas|cts?|bb?|(?-i:M))(?=\d))|steps?\s+(?=\d{{1,2}}(?:\s?-\s?\d{{1,2}})?\s?[:.)]))?(?:[\[(]\s?)?(?<numbers>{Sequence}|(?<=\b(?:counts?|beats?|bars?|measures?)\s+(?:[\[(]\s?)?){WordSequence})(?<close>\s?[\])])?"
        + @"(?<order>(?:st|nd|rd|th|d)\b)?(?:\s*(?<mark>[.:)\]=]+)(?=\s|$|[A-Za-z])|\s*(?<mark>-+)(?=\s|$)|\s+(?=\S)|\s*$)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "On the fourth beat".
    private static readonly Regex NthBeat = new($@"\b(?:on|at)\s+the\s+(?<n>{NumberWords.SpelledNth})(?:\s+(?:beat|count)\b|(?=,?\s+(?:(?:the|he|she|they|you)\s+)?(?:(?:close|touch|bring|draw|point|kick|hop|cross|put|place|tap|slide)e?s?|steps?\s+(?:again|to|forward|back|side|sideways|left|right|on))\b))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Within = new(
        $@"\((?<unit>(?:counts?|cts?\.?|beats?)\s+)?(?<numbers>\d{{1,2}}(?:\s\d{{1,2}})+|{Sequence}|{WordSequence})\)(?<mark>)|\bon\s+(?<unit>(?:counts?|beats?)\s+)?(?<numbers>{Digits}(?:\s?(?:&|and|-|to)\s?{Digits})*|{WordSequence})(?<mark>)\b(?!\s+(?:foot|hand|side|spot))",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "4 walls", "32 counts" are facts; "1 m" is a length, "1 M" the man.
    private static readonly Regex NotCounts = new(
        @"^\s*(?:walls?|counts?|times|bars?|bpm|beats?|couples?|hands?|more|(?-i:m|cm)|quicks?|slows?|min|o'?clock|degrees?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "3 steps forward", "2 stomps" say how many.
    private static readonly Regex NotOneCount = new(
        @"^\s*(?:(?:small|large|slow|quick|running|short|long|walking|more|further|other|polka|waltz|side|stamping)\s+)*(?:steps|walks|runs|shuffles|stomps|claps|kicks|hops|turns|vines|polkas|heels|toes|rocks|touches|taps|triples|cha-chas|scuffs)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
