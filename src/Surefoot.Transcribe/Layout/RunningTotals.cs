using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "forward three and kick (4)", "back three and touch (8)", "vine left (12), and one right (16)": after each piece stands
/// on which count it ends. Such a number says when it begins as well, as the one before it has ended.
/// </summary>
internal static class RunningTotals
{
    // So many of them have to go up before they are taken for totals and not for lengths.
    private const int Enough = 4;

    // A piece is an eight or two; more between two numbers is something else.
    private const int Longest = 16;

    private static readonly Regex Total = new(@"\s*\((?:(?:and )?that(?:'s| is| makes)|makes|=|to|now)?\s*(?:count )?(?<n>[0-9]{1,3})(?: counts?| now)?\)\s*(?<after>[,;.]?)\s*(?:and\s+)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Puts the counts of each piece before it.</summary>
    /// <param name="speaks">Tells whether words name something to dance: each piece does.</param>
    public static void In(List<SheetLine> lines, Func<string, bool> speaks)
    {
        var ends = lines.SelectMany(l => Total.Matches(l.Plain)).Select(m => int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture)).ToList();
        // Counts of single steps go up one by one.
        if (ends.Count < Enough || ends[0] is < 2 or > Longest || ends.Zip(ends.Skip(1)).Any(p => p.Second < p.First + 2 || p.Second > p.First + Longest)) return;
        if (lines.Any(l => Total.IsMatch(l.Plain) && CountLabel.AtStart(l.Plain, 0, out _) is not null)) return;
        if (lines.Exists(l => Total.IsMatch(l.Plain) && !Total.Split(l.Plain)[0].Split([',', ':', ';', '&'], StringSplitOptions.RemoveEmptyEntries).Any(p => speaks(p.Trim())))) return;
        var ended = 0;
        for (var i = 0; i < lines.Count; i++)
        {
            var plain = lines[i].Plain;
            if (!Total.IsMatch(plain)) continue;
            var pieces = new List<string>();
            var from = 0;
            foreach (Match total in Total.Matches(plain))
            {
                var end = int.Parse(total.Groups["n"].Value, CultureInfo.InvariantCulture);
                pieces.Add($"{CountLabel.Of(ended + 1, end - ended).Name}  {plain[from..total.Index].Trim(' ', ',', ';', '.')}");
                (ended, from) = (end, total.Index + total.Length);
            }

            if (plain[from..].Trim(' ', '.') is { Length: > 0 } rest) pieces.Add(rest);
            lines[i] = lines[i] with { Plain = string.Join(". ", pieces) };
        }
    }
}
