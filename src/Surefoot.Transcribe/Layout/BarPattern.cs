using System.Globalization;
using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "7  1-2  R in place (1), L in front (uh), R in place (&amp;), L beside (2) ...", "3 steps and a hop (1&amp;2&amp;)": a bar's
/// row says how many beats it has, and its brackets on which parts of them the steps are.
/// </summary>
internal static class BarPattern
{
    // A number is taken whole, so that there is one way only to cut a row of digits.
    private const string Part = @"(?:[0-9]{1,2}(?![0-9])|&|and|uh|ah|a|e)";

    private static readonly Regex Bracket = new($@"\s*\(\s*(?<parts>{Part}(?:[\s,-]*{Part})*)\s*\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Ends = new($@"\(\s*{Part}(?:[\s,-]*{Part})*\s*\)\s*(?:[.;]|$)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Parts = new($"{Part}", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <param name="words">Comes back without the brackets where a pattern was found.</param>
    /// <returns>The row's label with the parts of its beats; nothing where the brackets say nothing more than it does.</returns>
    public static CountLabel? In(ref string words, CountLabel row)
    {
        var brackets = Bracket.Matches(words);
        if (brackets.Count == 0 || row.HasHalves) return null;
        var parts = brackets.Select(b => string.Concat(Parts.Matches(b.Groups["parts"].Value).Select(p => Short(p.Value)))).ToList();
        // What each of them does has the same brackets.
        if (parts.Count > 1 && parts.TrueForAll(p => p == parts[0]) && Ends.Count(words) == parts.Count) parts = [parts[0]];
        // Brackets that each have a beat of their own are read where they stand.
        if (parts.Count > 1 && parts.TrueForAll(p => p.Any(char.IsDigit))) return null;
        if (brackets.Count == 1 && brackets[0].Index + brackets[0].Length < words.TrimEnd(' ', '.').Length) return null;
        var pattern = string.Concat(parts);
        var beats = pattern.Where(char.IsDigit).Select(d => d - '0').ToList();
        if (pattern[0] != '1' || pattern.Length == beats.Count || beats.Count > row.Length || beats.Where((b, i) => b != i + 1).Any() || pattern.Zip(pattern.Skip(1)).Any(p => p.First == p.Second)) return null;
        words = Bracket.Replace(words, "");
        return row with { Name = string.Concat(pattern.Select(c => char.IsDigit(c) ? (c - '0' + row.From - 1).ToString(CultureInfo.InvariantCulture) : c.ToString())), To = row.From + beats[^1] - 1 };
    }

    private static string Short(string part) => part.ToLowerInvariant() switch { "and" => "&", "uh" => "e", "ah" => "a", var other => other };
}
