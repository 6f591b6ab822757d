using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>Gives each step of a list the foot, and the way, that is said once for all of them.</summary>
internal static class FeetOfAList
{
    private static readonly Regex NamesFoot = new(@"\b(?:left|right|L|R|LF|RF)\b", RegexOptions.CultureInvariant);

    public static void In(List<Phrase> phrases)
    {
        OneForEach(phrases);
        WayForAll(phrases);
    }

    private static readonly Regex FeetInBrackets = new(@"\s*\((?<feet>(?:L|R|left|right)(?:[\s,/-]+(?:L|R|left|right))+)\)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Side, together, side (L R L)": one foot for each.
    private static void OneForEach(List<Phrase> phrases)
    {
        for (var last = 1; last < phrases.Count; last++)
        {
            if (FeetInBrackets.Match(phrases[last].Text) is not { Success: true } match) continue;
            var each = NamesFoot.Matches(match.Groups["feet"].Value);
            if (each.Count != last + 1) return;
            phrases[last] = phrases[last] with { Text = phrases[last].Text[..match.Index] };
            for (var i = 0; i <= last; i++)
            {
                if (!NamesFoot.IsMatch(phrases[i].Text)) phrases[i] = phrases[i] with { Text = $"{phrases[i].Text} {char.ToUpperInvariant(each[i].Value[0])}" };
            }

            return;
        }
    }

    private static readonly Regex BareFoot = new(@"^(?:steps? )?(?<feet>(?:L|R|left|right|LF|RF)(?:\s*,\s*(?:L|R|left|right|LF|RF))*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex FootAndWay = new(@"^(?:L|R|left|right|LF|RF) (?<way>fwds?\.?|forwards?|bkwds?\.?|bwds?\.?|bk\.?|backwards?|back(?: to (?:the )?place)?|(?:twd|towards?|to|into?) (?:the )?(?:ctr\.?|centre|center|middle))$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "R (1), L (2), R (3) fwd": all of them go forward.
    private static void WayForAll(List<Phrase> phrases)
    {
        for (var last = phrases.Count - 1; last > 0; last--)
        {
            if (FootAndWay.Match(phrases[last].Text) is not { Success: true } match) continue;
            var way = Regex.Replace(match.Groups["way"].Value, @"\s+to (?:the )?place$", "", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
            if (way.Length < match.Groups["way"].Length) phrases[last] = phrases[last] with { Text = phrases[last].Text[..(match.Groups["way"].Index + way.Length)] };
            for (var i = last - 1; i >= 0 && BareFoot.Match(phrases[i].Text) is { Success: true } bare; i--)
            {
                var feet = bare.Groups["feet"].Value;
                phrases[i] = phrases[i] with { Text = feet.Contains(',', StringComparison.Ordinal) ? $"walk {way} {feet}" : $"{feet} {way}" };
            }
        }
    }
}
