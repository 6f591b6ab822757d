using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Words;

/// <summary>Knows which short spellings stand for which full word: "fwd" for "forward", "LF" for "L".</summary>
public static class Abbreviations
{
    private static readonly Dictionary<string, string> Short = new(StringComparer.OrdinalIgnoreCase)
    {
        ["fwd"] = "forward",
        ["f/w"] = "forward",
        ["fw"] = "forward",
        ["bk"] = "back",
        ["bck"] = "back",
        ["bwd"] = "back",
        ["tog"] = "together",
        ["beh"] = "behind",
        ["xs"] = "cross",
        ["diag"] = "diagonal",
        ["ctr"] = "centre",
        ["tch"] = "touch",
        ["wt"] = "weight",
        ["w/"] = "with",
        ["sd"] = "side",
        ["rk"] = "rock",
        ["rec"] = "recover",
        ["stp"] = "step",
        ["lf"] = "L",
        ["rf"] = "R",
        ["pvt"] = "pivot",
        ["trn"] = "turn",
        ["qtr"] = "¼",
        ["ct"] = "count",
        ["cts"] = "counts",
        ["rpt"] = "repeat",
        ["scf"] = "scuff",
        ["br"] = "brush",
        ["pt"] = "point",
        ["kck"] = "kick",
        ["bmp"] = "bump",
        ["swy"] = "sway",
        ["clp"] = "clap",
        ["lod"] = "LOD",
        ["rlod"] = "RLOD",
        ["ilod"] = "ILOD",
        ["olod"] = "OLOD",
        ["l"] = "L",
        ["r"] = "R",
    };

    /// <summary>All abbreviations with their full words, in order.</summary>
    public static IEnumerable<KeyValuePair<string, string>> All => Short.OrderBy(p => p.Key, StringComparer.OrdinalIgnoreCase);

    /// <summary>The full word for a known abbreviation, or null when the word is not one.</summary>
    public static string? Full(ReadOnlySpan<char> word, Token token, FigureBook book)
    {
        if (word.Length > 5 || !Lookup.TryGetValue(word, out var full)) return null;
        return book.Lexicon.WordOf(full.ToLowerInvariant()) >= 0 || full.Length == 1 ? full : null;
    }

    private static readonly Dictionary<string, string>.AlternateLookup<ReadOnlySpan<char>> Lookup = Short.GetAlternateLookup<ReadOnlySpan<char>>();
}
