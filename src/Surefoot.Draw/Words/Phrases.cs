namespace Surefoot.Draw.Words;

/// <summary>Small joints of sentences.</summary>
internal static class Phrases
{
    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string And(IReadOnlyList<string> items, string joint = "and") => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => $"{string.Join(", ", items.Take(items.Count - 1))} {joint} {items[^1]}",
    };

    public static string Capital(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>The text as a sentence: a capital in front, a full stop behind unless it ends in a mark already.</summary>
    public static string Sentence(string text)
    {
        text = Capital(text.Trim());
        var end = text.TrimEnd('"', '\'', '”', '’', ')');
        // After a comma or the like the writer meant to go on; a stop behind it would be ours and wrong.
        return text.Length == 0 || IsEnded(end) || text[^1] is ',' or ';' or ':' or '-' or '–' or '—' ? text : text + ".";
    }

    /// <summary>True when a text ends as sentences do.</summary>
    public static bool IsEnded(string text) => text.Length > 0 && text[^1] is '.' or '!' or '?' or '…';

    /// <summary>Letters of the longest bracket that is kept on one line; "(facing RLOD)" has 13. Working value.</summary>
    private const int KeptBracket = 16;

    /// <summary>
    /// The text with blanks that do not break inside short brackets and beside the letter of a foot, so that
    /// "(R free)" and "recover L" stay together.
    /// </summary>
    public static string Kept(string text)
    {
        var open = -1;
        var kept = text.ToCharArray();
        for (var i = 0; i < text.Length; i++)
        {
            if (text[i] == ' ' && (EndsInFoot(text, i + 1) || BeginsWithFoot(text, i - 1))) kept[i] = NoBreak;
            if (text[i] is '(' or '[') open = i;
            if (text[i] is not (')' or ']') || open < 0) continue;
            for (var k = open; k < i && i - open < KeptBracket; k++)
            {
                if (kept[k] == ' ') kept[k] = NoBreak;
            }

            open = -1;
        }

        return new(kept);
    }

    /// <summary>"recover L": the letter belongs to the word before it, where no comma parts them.</summary>
    private static bool EndsInFoot(string text, int letter) =>
        IsFoot(text, letter) && text[letter - 2 < 0 ? 0 : letter - 2] != ',';

    /// <summary>"R forward": the letter belongs to the word after it, where an action begins.</summary>
    private static bool BeginsWithFoot(string text, int letter) =>
        IsFoot(text, letter) && (letter == 0 || (letter > 1 && text[letter - 2] == ','));

    private static bool IsFoot(string text, int at) =>
        at >= 0 && at < text.Length && text[at] is 'L' or 'R' && (at + 1 == text.Length || !char.IsLetter(text[at + 1])) && (at == 0 || text[at - 1] == ' ');

    /// <summary>A blank at which lines are not broken.</summary>
    public const char NoBreak = '\u00A0';

    /// <summary>"a beginner dance", "an improver dance".</summary>
    public static string Article(string word) =>
        word.Length > 0 && char.ToLowerInvariant(word[0]) is 'a' or 'e' or 'i' or 'o' or 'u' ? "an" : "a";
}
