using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;

namespace Surefoot.Dance.Text;

/// <summary>What has to be known of the head before the rest can be read.</summary>
public static class HeadReader
{
    /// <summary>Every spelling of a header word with the key it stands for.</summary>
    public static Dictionary<string, string> KeysOf(FigureBook book)
    {
        var keys = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var row in book.Rows)
        {
            if (row.Kind != "header") continue;
            foreach (var spelling in row.Spellings) keys.TryAdd(spelling, row.Key);
        }

        return keys;
    }

    /// <summary>
    /// Which frame the page's facings are in: a line dance has walls, everything for couples or in a circle
    /// has a line of dance. Without a Kind line, a page that speaks of leads and follows is for couples.
    /// </summary>
    public static Floor FloorOf(SourceText source)
    {
        var couples = false;
        var clock = false;
        for (var n = 0; n < source.LineCount; n++)
        {
            var words = source.Slice(source.Line(n)).Trim(" \t\u00A0\uFEFF");
            if (words.StartsWith("kind", StringComparison.OrdinalIgnoreCase) && words.Contains(':'))
            {
                return Has(words, "line") && (!Has(words, "partner") || Has(words, "no partner")) && !Has(words, "couple") && !Has(words, "circle") ? Floor.Walls : Floor.Track;
            }

            couples |= Has(words, "lead:") || Has(words, "follow:") || Has(words, "man:") || Has(words, "lady:")
                || words.StartsWith("hold:", StringComparison.OrdinalIgnoreCase) || Has(words, "LOD");
            clock |= Has(words, "12:00") || Has(words, "6:00") || Has(words, "3:00") || Has(words, "9:00");
        }

        return couples && !clock ? Floor.Track : Floor.Walls;
    }

    /// <summary>
    /// True for a page that lends its figures to a notebook: it says "Page: figures of the hall" before its
    /// first figure. The first few thousand characters of the page are enough.
    /// </summary>
    public static bool IsFigurePage(string head)
    {
        foreach (var line in head.AsSpan().EnumerateLines())
        {
            var colon = line.IndexOf(':');
            if (colon < 0) continue;
            var key = line[..colon].Trim(" \t\u00A0\uFEFF");
            if (key.Equals("figure", StringComparison.OrdinalIgnoreCase)) return false;
            if (key.Equals("page", StringComparison.OrdinalIgnoreCase)) return line[colon..].Contains("figure", StringComparison.OrdinalIgnoreCase);
        }

        return false;
    }

    private static bool Has(ReadOnlySpan<char> words, string part) => words.Contains(part, StringComparison.OrdinalIgnoreCase);
}
