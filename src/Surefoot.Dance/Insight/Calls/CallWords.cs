using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>Fills in the words of a call and keeps them short.</summary>
public static partial class CallWords
{
    /// <summary>Syllables of a call, at most: what fits on two counts of a quick dance. The handbook's trade.md, "Calling".</summary>
    public const int MostSyllables = 3;

    /// <summary>The call with what the hall calls its roles: "lady's turn".</summary>
    public static string For(string words, string lead, string follow) => words
        .Replace("{lead}", lead.ToLowerInvariant(), StringComparison.Ordinal)
        .Replace("{follow}", follow.ToLowerInvariant(), StringComparison.Ordinal);

    /// <summary>The call with the usual names of the roles.</summary>
    public static string Plain(string words) => For(words, Role.Lead.Word(), Role.Follow.Word());

    /// <summary>The words with what is known of the steps; what makes them too long is left out, the last first.</summary>
    /// <param name="all">Every action of what is called.</param>
    internal static string Fill(string template, IReadOnlyList<ScoreStep> all, CallBook book)
    {
        var names = Places().Matches(template).Select(m => m.Groups[1].Value).Where(n => n is not ("lead" or "follow")).ToList();
        for (var kept = names.Count; ; kept--)
        {
            var words = template;
            for (var i = 0; i < names.Count; i++) words = words.Replace($"{{{names[i]}}}", i < kept ? Value(names[i], all, book) : "", StringComparison.Ordinal);
            words = Tight(words);
            if (kept == 0 || Syllables.In(Plain(words)) <= MostSyllables) return words;
        }
    }

    /// <summary>The words without anything that says how it is danced, for two roles that do the same in their own ways.</summary>
    internal static string Bare(string template) => Tight(Places().Replace(template, m => m.Groups[1].Value is "lead" or "follow" ? m.Value : ""));

    /// <summary>
    /// A name that is too long loses first where it goes, then its first words: the last one says what it is ("walk forward" is
    /// "walk", "copper kettle" is "kettle"). One word is never cut.
    /// </summary>
    internal static string Short(string name, int most = MostSyllables)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries).AsSpan();
        while (words.Length > 1 && Syllables.In(Plain(string.Join(' ', words))) > most) words = words[^1] is "forward" or "back" or "left" or "right" ? words[..^1] : words[1..];
        return string.Join(' ', words);
    }

    /// <summary>Left for right and right for left, for words that are danced again on the other foot.</summary>
    public static string Mirrored(string words) => Sides().Replace(words, m => (m.Value, char.IsUpper(m.Value[0])) switch
    {
        ("L", _) => "R",
        ("R", _) => "L",
        (_, var capital) => m.Value.Equals("left", StringComparison.OrdinalIgnoreCase) ? (capital ? "Right" : "right") : capital ? "Left" : "left",
    });

    private static string Value(string place, IReadOnlyList<ScoreStep> all, CallBook book)
    {
        var first = all.FirstOrDefault(s => s.Kind != ActionKind.Hold) ?? all[0];
        var turned = all.Aggregate(Turn.None, (sum, step) => sum + step.Turn);
        return place switch
        {
            "side" => first.Foot.Single()?.Word() ?? "",
            "way" => first.Direction is Direction.Side or Direction.Across ? first.Foot.Single() is { } foot ? (first.Direction == Direction.Side ? foot : foot.Other()).Word() : "" : book.WayWord(first.Direction.Word()),
            "turn" => book.TurnWord(turned.Eighths),
            "round" => turned.IsNone ? "" : turned.Eighths > 0 ? Foot.Left.Word() : Foot.Right.Word(),
            _ => "",
        };
    }

    private static string Tight(string words) => string.Join(' ', words.Split(' ', StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex(@"\{(\w+)\}")]
    private static partial Regex Places();

    [GeneratedRegex(@"\b([Ll]eft|[Rr]ight|LEFT|RIGHT|L|R)\b")]
    private static partial Regex Sides();
}
