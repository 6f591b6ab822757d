using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "Walk R L, shuffle R, rock L fwd, rec" and under it "12  3&amp;4  56": the counts stand in a row of their own below (or
/// above) the steps they are of.
/// </summary>
internal static class CountRows
{
    // A row alone may be a list of anything.
    private const int Enough = 2;

    // What is written without a space between its counts has as many of them.
    private const int LongestRun = 8;

    private static readonly Regex OnlyCounts = new(@"^(?:(?:counts?|cts?|beats?)\.?:?\s+)?[\d\s&+,;|e/-]*\d[\d\s&+,;|/-]*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Head = new(@"^(?:counts?|cts?|beats?)\.?:?\s+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "S2: R fwd, ..." has its part first.
    private static readonly Regex Part = new(@"^(?:(?:part|section|sect?|s|set|fig(?:ure)?)\.?\s*(?:[A-Z]|\d{1,2})|[A-H])\s*[:.)-]+\s+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Pieces = new(@"\s*[,;|]\s*(?![^(]*\))", RegexOptions.CultureInvariant);

    /// <summary>Puts the counts before what they are of, and empties their rows.</summary>
    /// <returns>Numbers of the lines that went into another.</returns>
    public static IReadOnlySet<int> In(List<SheetLine> lines)
    {
        var rows = lines.ConvertAll(l => l.Plain.Length > 2 && OnlyCounts.IsMatch(l.Plain) ? Read(Head.Replace(l.Plain, "")) : []);
        var joined = new HashSet<int>();
        if (rows.Count(r => r.Count > 1) < Enough) return joined;
        // Where the first row has no steps above it, each stands above its own.
        var first = rows.FindIndex(r => r.Count > 1);
        var above = first > 0 && Steps(lines[first - 1].Plain, rows[first].Count) ? -1 : 1;
        for (var i = 0; i < lines.Count; i++)
        {
            if (rows[i].Count < 2 || i + above < 0 || i + above >= lines.Count) continue;
            var line = lines[i + above];
            if (line.Plain.Length == 0 || rows[i + above].Count > 0 || joined.Contains(line.Number)) continue;
            var part = Part.Match(line.Plain);
            var words = line.Plain[part.Length..].Trim(' ', '.');
            var pieces = Pieces.Split(words);
            // One piece to each of its counts, or the whole list at the end, to be shared out by what the words say.
            var counted = pieces.Length == rows[i].Count
                ? string.Join("; ", rows[i].Zip(pieces, (count, piece) => $"{count}  {piece.Trim(' ', '.')}"))
                : pieces.Length == 1 ? $"{FirstNumber.Match(rows[i][0]).Value}-{LastNumber.Match(rows[i][^1]).Value}  {words}"
                : $"{words} ({string.Join(", ", rows[i])})";
            lines[i + above] = line with { Plain = part.Value + counted };
            lines[i] = lines[i] with { Plain = "" };
            joined.Add(lines[i].Number);
        }

        return joined;
    }

    private static readonly Regex FirstNumber = new("[0-9]+", RegexOptions.CultureInvariant);

    private static readonly Regex LastNumber = new("[0-9]+(?=[^0-9]*$)", RegexOptions.CultureInvariant);

    // "3 & 4" is one label, and "2& 3" two.
    private static readonly Regex Joint = new(@"(?<=\d)\s+(?<joint>[&+/-])\s+(?=\d)", RegexOptions.CultureInvariant);

    // A line that could have so many counts under it.
    private static bool Steps(string plain, int counts) => plain.Length > 0 && (Part.IsMatch(plain) || ((counts < 2 || Pieces.Count(plain) > 0) && plain.Any(char.IsLetter)));

    // "12 3&4 56 7&8": each number goes on from the one before it, however they are spaced; nothing where one does not.
    private static List<string> Read(string row)
    {
        var counts = new List<string>();
        var next = 0;
        foreach (var one in Joint.Replace(row, "${joint}").Split([' ', ',', ';', '|'], StringSplitOptions.RemoveEmptyEntries))
        {
            var numbers = Numbers(one, next);
            if (numbers.Count == 0 || (next > 0 && numbers[0] != next) || (next == 0 && numbers[0] != 1 && (numbers[0] - 1) % 4 != 0)) return [];
            for (var i = 1; i < numbers.Count; i++)
            {
                if (numbers[i] != numbers[i - 1] + 1 && !one.Contains('-', StringComparison.Ordinal)) return [];
            }

            next = numbers[^1] + 1;
            counts.Add(one.Contains('&', StringComparison.Ordinal) || one.Contains('+', StringComparison.Ordinal) ? one.Replace('+', '&').Replace('/', '-')
                : numbers.Count == 1 ? numbers[0].ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{numbers[0]}-{numbers[^1]}"));
        }

        return counts;
    }

    // "56" after 4 is five and six, "16" after 15 sixteen.
    private static List<int> Numbers(string one, int next)
    {
        var numbers = new List<int>();
        foreach (Match digits in Regex.Matches(one, "[0-9]+", RegexOptions.CultureInvariant))
        {
            if (digits.Length > LongestRun) return [];
            var expected = numbers.Count > 0 ? numbers[^1] + 1 : next;
            var whole = int.Parse(digits.Value, CultureInfo.InvariantCulture);
            var each = digits.Value.Select(d => d - '0').ToList();
            if (whole != expected && each.Count > 1 && (expected == 0 || each[0] == expected) && each.Zip(each.Skip(1)).All(p => p.Second == p.First + 1)) numbers.AddRange(each);
            else numbers.Add(whole);
        }

        return numbers;
    }
}
