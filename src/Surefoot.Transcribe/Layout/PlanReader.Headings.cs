using System.Globalization;
using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <content>Lines that head a part.</content>
internal sealed partial class PlanReader
{
    private static readonly Regex PartHead = new(
        @"^(?:#+\s*)?(?<word>part|section|sect(?:\.|\b)|sec(?:\.|\b)|s(?=\d)|set|segment|tag|bridge|intro|ending|chorus|verse|figure|fig\.?|phrase|pattern)\s*(?<key>[A-Z]|\d{1,2}|[IVX]{1,4}|one|two|three|four|five|six)?\b\s*[:.)-]*\s*(?<rest>.*)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Counted = new(@"\(?\b(?<n>\d{1,3})\s*(?:counts?|cts?|beats)\b\)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Step 1" by itself, above what is done in it.
    private static readonly Regex Numbered = new($@"^(?:step|no\.?|number)\s*(?:\d{{1,2}}|{NumberWords.Spelled})[\s:.)-]*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "II. Side", "IV": where the steps stand under it.
    private static readonly Regex Roman = new(@"^(?-i:[IVX]{1,4})(?:[.)]\s*(?<name>[^.;,]{0,32})|(?<name>))$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "C. SIDE, CLAP", "HEELS & SHUFFLES": capitals where the steps have none.
    private static readonly Regex Lettered = new(@"^[A-H][.):]\s+(?<name>(?=[^a-z]*[A-Z]{3})[^a-z\d]{3,48})$", RegexOptions.CultureInvariant);

    /// <summary>Whether a line is written in capitals and names no foot.</summary>
    internal static bool IsShouted(string line) => Regex.Replace(line, @"\s*\([^)]*\)\s*$", "", RegexOptions.CultureInvariant) is var plain &&
        plain.Length is > 3 and < 49 && plain.Count(char.IsLetter) * 4 >= plain.Length * 3 - 4 && !plain.Any(char.IsLower) && !plain.Any(char.IsDigit)
        && Regex.IsMatch(plain, @"[A-Z]{3}", RegexOptions.CultureInvariant) && !Regex.IsMatch(plain, @"\b(?:LEFT|RIGHT|L|R|LF|RF)\b|^[SQ\s,-]+$", RegexOptions.CultureInvariant);

    // "SECOND PART.", "Third Figure".
    private static readonly Regex Nth = new($@"^(?:the\s+)?(?:{NumberWords.SpelledNth}|last)\s+(?:part|figure|movement|section|half|strain)(?:,\s*(?:the )?(?:gentleman|gent|man|leader))?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "BASIC (S S Q Q S)  8 cts".
    private static readonly Regex RhythmHead = new(@"^(?<name>[\p{L}][\p{L} '-]{2,30}?)\s*\(\s*(?:(?:slow|quick|[SQ])\b[\s,-]*){2,}\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private PlanPart? HeadingOf(int i, string plain)
    {
        if (RhythmHead.Match(plain) is { Success: true } rhythm)
        {
            var counted = Counted.Match(plain);
            return new() { Heading = $"Part {NextPart()}  {rhythm.Groups["name"].Value.Trim()}", StatedCounts = counted.Success ? int.Parse(counted.Groups["n"].Value, CultureInfo.InvariantCulture) : null };
        }

        var match = PartHead.Match(plain);
        if (match.Success && (match.Groups["key"].Success || plain.Length < 24) && !CountLabelled(plain))
        {
            var stated = Counted.Match(plain);
            var rest = match.Groups["rest"].Value;
            var word = match.Groups["word"].Value.TrimEnd('.').ToLowerInvariant() is "s" or "sec" or "sect" ? "section" : match.Groups["word"].Value.TrimEnd('.').Equals("fig", StringComparison.OrdinalIgnoreCase) ? "figure" : match.Groups["word"].Value.ToLowerInvariant();
            var name = $"{char.ToUpperInvariant(word[0])}{word[1..]} {match.Groups["key"].Value.ToUpperInvariant()}".Trim();
            if (rest.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length is > 0 and <= 6) name += "  " + Counted.Replace(rest, "").Trim(' ', ':', '-', '.');
            return new() { Heading = name.Trim(), StatedCounts = stated.Success ? int.Parse(stated.Groups["n"].Value, CultureInfo.InvariantCulture) : null };
        }

        var lettered = Lettered.Match(plain);
        if (lettered.Success || (_shouts && IsShouted(plain) && _plan.Title.Length > 0))
        {
            return new() { Heading = $"Part {NextPart()}  {(lettered.Success ? lettered.Groups["name"].Value : plain).Trim(' ', '.', ':')}".Trim() };
        }

        if (Nth.Match(plain) is { Success: true } nth)
        {
            return new() { Heading = $"Part {NextPart()}" };
        }

        if (Roman.Match(plain) is { Success: true } roman)
        {
            return new() { Heading = $"Part {NextPart()}  {roman.Groups["name"].Value.Trim()}".Trim() };
        }

        // "[1-8] Vines", or a few words without counts above lines that have them.
        var label = CountLabel.AtStart(plain, 0, out var after);
        var next = lines.Skip(i + 1).FirstOrDefault(l => l.Plain.Length > 0);
        var nextLabel = next is null ? null : CountLabel.AtStart(next.Plain, 0, out _);
        if (label is { Length: >= 4, HasHalves: false } && plain[0] is '[' or '(' && next is not null && nextLabel is null && plain[after..].Split(' ', StringSplitOptions.RemoveEmptyEntries).Length <= 6)
        {
            return new() { Heading = $"Part {NextPart()}  {plain[after..].Trim(' ', '-', ':', '.')}".Trim(), StatedCounts = label.Length };
        }

        // "9-16  LOCK STEP, MAMBO, COASTER" above "1&2": a heading as the one before it was, and its steps count anew.
        if (label is { Length: >= 8, HasHalves: false, From: > 1 } && nextLabel is { From: 1 } && (nextLabel.To < label.Length || (nextLabel.To == label.Length && _part is { StatedCounts: not null, Heading: not "" })) && (label.From - 1) % 8 == 0 && (plain[after..].Count(char.IsLower) * 4 < plain[after..].Count(char.IsLetter) || _part is { StatedCounts: not null, Heading: not "" }))
        {
            return new() { Heading = $"Part {NextPart()}  {plain[after..].Trim(' ', '-', ':', '.')}".Trim(), StatedCounts = label.Length };
        }

        if (label is { Length: >= 4, HasHalves: false } && nextLabel is not null && ((nextLabel.From == label.From && nextLabel.To < label.To) || (nextLabel.From == 1 && label.From > 1 && nextLabel.To < label.Length && plain[0] is '[' or '(')))
        {
            return new() { Heading = $"Part {NextPart()}  {plain[after..].Trim(' ', '-', ':', '.')}".Trim(), StatedCounts = label.Length };
        }

        if (label is null && nextLabel is { From: 1 } && plain.EndsWith(':') && plain.Split(' ').Length <= 7 && _part is not null && !RoleWords.Opens(plain, 0, out _, out _, out _))
        {
            // "The Waltz, turning to the right:" above "1st."
            return new() { Heading = $"Part {NextPart()}  {plain.Trim(':', ' ')}" };
        }

        if (label is null && nextLabel is { Unit: not LabelUnit.Order } && !Looks.IsMatch(plain) && !Begins.IsMatch(plain) && plain.Split(' ').Length <= 6 && !plain.Contains('.') && (_part is null || nextLabel.From == 1 || nextLabel.From == LastCount() + 1) && !RoleWords.Opens(plain, 0, out _, out _, out _) && !Wording.StandIns.Stands(plain))
        {
            return new() { Heading = $"Part {NextPart()}  {plain.Trim(':', ' ')}" };
        }

        return null;
    }

    private int NextPart() => _plan.Parts.Count(p => p.Groups.Count > 0) + 1;

    private int LastCount() => _part?.Groups.LastOrDefault(g => g.Label is not null)?.Label?.To ?? 0;
}
