using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>Counts in a column, wherever it stands.</summary>
internal static class CountColumn
{
    /// <summary>Lines that make a column. Working value: two may be chance.</summary>
    private const int Least = 3;

    /// <summary>Puts counts that stand at the right, or as words before dots, in figures before the words; where fewer than three lines have them nothing is done.</summary>
    public static void ToTheLeft(List<SheetLine> lines)
    {
        var spelled = lines.ConvertAll(l => CountInWords.Match(l.Plain));
        if (spelled.Count(m => m.Success) >= Least)
        {
            for (var i = 0; i < lines.Count; i++)
            {
                if (spelled[i].Success) lines[i] = lines[i] with { Plain = $"{NumberWords.Read(spelled[i].Groups["n"].Value)}{(spelled[i].Groups["and"].Success ? "&" : "")}  {lines[i].Plain[spelled[i].Length..]}" };
            }

            return;
        }

        var found = lines.ConvertAll(l => CountsAtRight.Match(l.Plain));
        if (found.Count(m => m.Success) < Least) return;
        for (var i = 0; i < lines.Count; i++)
        {
            if (found[i].Success) lines[i] = lines[i] with { Plain = $"{OneLabel(found[i].Groups["counts"].Value)}  {found[i].Groups["words"].Value}" };
        }
    }

    // "two-and ...... right foot rocks".
    private static readonly Regex CountInWords = new($@"^(?:on |count )?(?<n>{NumberWords.Spelled})(?<and>[- ](?:and|&))?\s*(?:\.{{2,}}|\s{{2,}}|:|=|-{{1,2}}\s)\s*(?=\S)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "17 18 & 19 20" is one label.
    private static string OneLabel(string counts) => Regex.Replace(Regex.Replace(counts, @"\s*&\s*", "&"), @"(?<=\d)\s+(?=\d)", "-");

    private static readonly Regex CountsAtRight = new(@"^(?<words>[^\d\s].*?\S)\s{2,}(?<counts>\d{1,3}(?:\s?(?:,|-|&|to)\s?\d{1,3}|\s\d{1,3}|\s?&(?!\s?\d))*)$", RegexOptions.CultureInvariant);
}
