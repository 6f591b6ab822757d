using System.Text.RegularExpressions;

namespace Surefoot.Tests.Film.Speaking;

/// <summary>A phrase of a page's row as somebody would say it.</summary>
internal static partial class SpokenPhrase
{
    private static readonly string[] HandStarts = ["raise", "release", "take", "keep", "under", "into", "lower"];

    /// <summary>Row words cut at commas, what is in brackets left out.</summary>
    public static List<string> Cut(string row) =>
        [.. Brackets().Replace(row, "").Split([',', '.', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Where(p => p.Length > 0)];

    public static bool IsHands(string phrase) => HandStarts.Contains(phrase.Split(' ')[0].ToLowerInvariant());

    /// <summary>The words with "left" for L and "half" for ½; how much of the feet is named varies.</summary>
    /// <param name="allFeet">Feet have to be named, because they are what differs.</param>
    public static string Said(string phrase, Chance random, bool allFeet)
    {
        var tokens = phrase.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(t => t.Trim('(', ')')).ToList();
        // "R-L-R"
        tokens = [.. tokens.SelectMany(t => Feet().IsMatch(t) ? t.Split('-') : [t.Replace('-', ' ')])];
        var feet = tokens.Count(t => t is "L" or "R");
        var name = allFeet ? feet : random.Next(10) switch { < 5 => feet, < 7 => Math.Min(1, feet), _ => 0 };
        var with = feet == 1 && name == 1 ? random.Next(6) switch { 0 => "on the ", 1 => "with your ", _ => "" } : "";
        var said = new List<string>();
        var named = 0;
        foreach (var token in tokens)
        {
            if (token is "L" or "R")
            {
                if (named++ < name) said.Add(with + (token == "L" ? "left" : "right"));
                continue;
            }

            said.Add(token switch { "½" => "half", "¼" => "quarter", "¾" => "three quarter", "&" => "and", _ => token.ToLowerInvariant() });
        }

        return string.Join(' ', said);
    }

    public static string OtherFeet(string phrase) =>
        Letters().Replace(phrase, m => m.Value == "L" ? "R" : "L");

    public static string? OtherWay(string phrase)
    {
        if (phrase.Contains(" forward", StringComparison.Ordinal)) return phrase.Replace(" forward", " back", StringComparison.Ordinal);
        if (phrase.Contains(" back", StringComparison.Ordinal)) return phrase.Replace(" back", " forward", StringComparison.Ordinal);
        return null;
    }

    public static string? OtherTurn(string phrase)
    {
        if (phrase.Contains('½', StringComparison.Ordinal)) return phrase.Replace('½', '¼');
        if (phrase.Contains('¼', StringComparison.Ordinal)) return phrase.Replace('¼', '½');
        return null;
    }

    [GeneratedRegex(@"\([^)]*\)|\[[^\]]*\]")]
    private static partial Regex Brackets();

    [GeneratedRegex("^[LR](-[LR])+$")]
    private static partial Regex Feet();

    [GeneratedRegex(@"\b[LR]\b")]
    private static partial Regex Letters();
}
