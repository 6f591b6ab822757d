namespace Surefoot.Draw.Words;

/// <summary>Small joints of sentences.</summary>
internal static class Phrases
{
    /// <summary>"a", "a and b", "a, b and c".</summary>
    public static string And(IReadOnlyList<string> items) => items.Count switch
    {
        0 => "",
        1 => items[0],
        _ => string.Join(", ", items.Take(items.Count - 1)) + " and " + items[^1],
    };

    public static string Capital(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    /// <summary>The text as a sentence: a capital in front, a full stop behind unless it ends in one already.</summary>
    public static string Sentence(string text)
    {
        text = Capital(text.Trim());
        return text.Length == 0 || text[^1] is '.' or '!' or '?' ? text : text + ".";
    }

    /// <summary>"a beginner dance", "an improver dance".</summary>
    public static string Article(string word) =>
        word.Length > 0 && char.ToLowerInvariant(word[0]) is 'a' or 'e' or 'i' or 'o' or 'u' ? "an" : "a";
}
