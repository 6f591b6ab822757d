using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>Counts in a column, wherever it stands.</summary>
internal static class CountColumn
{
    /// <summary>Lines that make a column. Working value: two may be chance.</summary>
    private const int Least = 3;

    /// <summary>Puts counts that stand at the right, or as words before dots, in figures before the words; where fewer than three lines have them nothing is done.</summary>
    /// <returns>Numbers of lines that went into the one above them.</returns>
    public static IReadOnlySet<int> ToTheLeft(List<SheetLine> lines)
    {
        Pairs(lines);
        var joined = Halves(lines);
        var spelled = lines.ConvertAll(l => CountInWords.Match(l.Plain));
        if (spelled.Count(m => m.Success) >= Least)
        {
            for (var i = 0; i < lines.Count; i++)
            {
                if (spelled[i].Success) lines[i] = lines[i] with { Plain = $"{NumberWords.Read(spelled[i].Groups["n"].Value)}{(spelled[i].Groups["and"].Success ? "&" : "")}  {lines[i].Plain[spelled[i].Length..]}" };
            }

            return joined;
        }

        var found = lines.ConvertAll(l => CountsAtRight.Match(l.Plain));
        if (found.Count(m => m.Success) < Least) return joined;
        for (var i = 0; i < lines.Count; i++)
        {
            if (found[i].Success) lines[i] = lines[i] with { Plain = $"{OneLabel(found[i].Groups["counts"].Value)}  {found[i].Groups["words"].Value}" };
        }

        return joined;
    }

    // "two-and ...... right foot rocks".
    private static readonly Regex CountInWords = new($@"^(?:on |count )?(?<n>{NumberWords.Spelled})(?<and>[- ](?:and|&))?\s*(?:\.{{2,}}|\s{{2,}}|:|=|-{{1,2}}\s)\s*(?=\S)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "17 18  walk R, L" and "5 6 7&8  ...": counts with spaces between them. In a table of bars and counts the second number does not go on from the first.
    private static void Pairs(List<SheetLine> lines)
    {
        var found = lines.ConvertAll(l => CountsAtLeft(l.Plain));
        // One line alone may be "3 4 steps back".
        if (found.Count(f => f.Length > 0) < 2 && !found.Exists(f => f.Length > 3)) return;
        if (lines.Exists(l => TwoNumbers.IsMatch(l.Plain) && CountsAtLeft(l.Plain).Length == 0)) return;
        for (var i = 0; i < lines.Count; i++)
        {
            if (found[i].Length > 0) lines[i] = lines[i] with { Plain = OneLabel(found[i]) + lines[i].Plain[found[i].Length..] };
        }
    }

    // As many numbers as go on from one another, at least two with a space between them; empty where there are none.
    private static string CountsAtLeft(string plain)
    {
        var (at, last, spaces) = (0, 0, false);
        for (var number = Number.Match(plain); number.Success && (last == 0 || NumberWords.Read(number.Groups["n"].Value) == last + 1); number = Number.Match(plain, at))
        {
            spaces |= number.Groups["space"].Success;
            (at, last) = (number.Index + number.Length, NumberWords.Read(number.Groups["n"].Value));
        }

        return spaces && at < plain.Length && char.IsWhiteSpace(plain[at]) ? plain[..at] : "";
    }

    private static readonly Regex Number = new(@"\G(?:\s?&\s?|(?<space>(?<=\d)\s)|^)(?<n>\d{1,2})(?![\d/%½¼¾.-])", RegexOptions.CultureInvariant);

    private static readonly Regex TwoNumbers = new(@"^\d{1,2}\s+\d{1,2}(?:-\d{1,2})?\s+\D", RegexOptions.CultureInvariant);

    // "2  L behind" and under it "&  side R": both under one label, which has half a count more.
    private static HashSet<int> Halves(List<SheetLine> lines)
    {
        var joined = new HashSet<int>();
        for (var i = 1; i < lines.Count; i++)
        {
            if (HalfAtLeft.Match(lines[i].Plain) is not { Success: true } half || NumberAtLeft.Match(lines[i - 1].Plain) is not { Success: true } number) continue;
            lines[i - 1] = lines[i - 1] with { Plain = $"{number.Groups["n"].Value}&  {number.Groups["words"].Value}, {lines[i].Plain[half.Length..]}" };
            joined.Add(lines[i].Number);
        }

        return joined;
    }

    private static readonly Regex HalfAtLeft = new(@"^(?:&|\+)\s+(?=\S)", RegexOptions.CultureInvariant);

    private static readonly Regex NumberAtLeft = new(@"^(?<n>\d{1,2}(?:\s+\d{1,2})?)\s+(?<words>\D.*)$", RegexOptions.CultureInvariant);

    // "17 18 & 19 20" is one label.
    private static string OneLabel(string counts) => Regex.Replace(Regex.Replace(counts, @"\s*&\s*", "&"), @"(?<=\d)\s+(?=\d)", "-");

    // With blanks, or a row of dots or strokes, between the words and their counts.
    private static readonly Regex CountsAtRight = new(@"^(?<words>[^\d\s].*?[^\s._])(?:\s{2,}|\s*(?:\.{2,}|(?:\. ){2,}\.?|_{2,}|(?<=\s)-{2,}>?|=>|->)\s*)(?:(?:counts?|cts?|beats?)\.?\s*)?(?<open>[(\[])?(?<counts>\d{1,3}(?:\s?(?:,|-|&|to)\s?\d{1,3}|\s\d{1,3}|\s?&(?!\s?\d))*)(?(open)[)\]])$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
