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

    private static readonly Regex Total = new(@"\s*\((?:(?:and )?that(?:'s| is| makes)|makes|=|to|now)?\s*(?:count )?(?<n>\d{1,3})(?: counts?| now)?\)\s*(?<after>[,;.]?)\s*(?:and\s+)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Puts the counts of each piece before it.</summary>
    public static void In(List<SheetLine> lines)
    {
        var ends = lines.SelectMany(l => Total.Matches(l.Plain)).Select(m => int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture)).ToList();
        // Counts of single steps go up one by one.
        if (ends.Count < Enough || ends[0] < 2 || ends.Zip(ends.Skip(1)).Any(p => p.Second < p.First + 2)) return;
        if (lines.Any(l => Total.IsMatch(l.Plain) && CountLabel.AtStart(l.Plain, 0, out _) is not null)) return;
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
