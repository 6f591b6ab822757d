namespace Surefoot.Dance.Insight.Calls;

/// <summary>
/// Counts the syllables of English words by their spelling: groups of vowels, with the usual silent endings taken off. Checked in the
/// tests against a pronouncing dictionary; a word nobody spells like others may come out one off.
/// </summary>
public static class Syllables
{
    public static int In(string words)
    {
        var sum = 0;
        foreach (var word in words.ToLowerInvariant().Split([' ', '-', ',', '/', '.', '!'], StringSplitOptions.RemoveEmptyEntries)) sum += OfWord(word);
        return sum;
    }

    private static int OfWord(string word)
    {
        var letters = new string(Plain(word).Where(char.IsLetter).ToArray());
        if (letters.Length == 0) return word.Any(char.IsDigit) || word.IndexOfAny(['½', '¼', '¾']) >= 0 ? 1 : 0;
        // Possessives are heard only after a hiss: "lady's" has two, "boss's" two.
        var stem = word.EndsWith("'s", StringComparison.Ordinal) && !Hisses(letters[..^1]) ? letters[..^1] : letters;
        var groups = 0;
        for (var i = 0; i < stem.Length; i++)
        {
            if (!IsVowel(stem, i)) continue;
            if (i == 0 || !IsVowel(stem, i - 1) || Parts(stem, i)) groups++;
        }

        return Math.Max(1, groups - Silent(stem) - Begun(stem) + Joined(stem));
    }

    // "chassé" is spelled with a mark and heard with it.
    private static string Plain(string word) => word.Replace("é", "eh", StringComparison.Ordinal).Replace("’", "'", StringComparison.Ordinal);

    private static bool IsVowel(string word, int at) => word[at] switch
    {
        'a' or 'e' or 'i' or 'o' => true,
        // "qu" and "gu" before a vowel are no sound of their own.
        'u' => at == 0 || word[at - 1] is not 'q' && !(word[at - 1] == 'g' && at + 1 < word.Length && word[at + 1] is 'a' or 'e' or 'i'),
        // At the start of a word or before a vowel it is a consonant: "yes", "beyond".
        'y' => at > 0 && !(at + 1 < word.Length && word[at + 1] is 'a' or 'e' or 'i' or 'o' or 'u' && !"aeiou".Contains(word[at - 1]) is false),
        _ => false,
    };

    // Two vowels that are heard apart: "trio", "diagonal", "create", "fluid", "going".
    private static bool Parts(string word, int at) => (word[at - 1], word[at]) switch
    {
        ('i', 'a' or 'o' or 'u') => !(at >= 2 && word[at - 2] is 't' or 'c' or 's' or 'x' or 'g'),
        ('e', 'o') => !word[..at].EndsWith("ge", StringComparison.Ordinal) && !word[at..].StartsWith("op", StringComparison.Ordinal),
        ('u', 'a') => !(at >= 2 && word[at - 2] is 'q' or 'g' or 's'),
        ('u', 'o') => true,
        ('o' or 'y', 'i') => word[at..] == "ing",
        ('e', 'i') => word[at..] == "ing",
        ('u', 'e') => word[at..] is "et" or "el" or "ent" or "ence" && !word[..at].EndsWith("qu", StringComparison.Ordinal),
        ('y', 'a' or 'o') => false,
        ('i', 'e') => word[at..] is "er" or "et" or "ety" or "nce" or "nt" && !(at >= 2 && word[at - 2] is 't' or 'c'),
        _ => false,
    };

    private static int Silent(string word)
    {
        if (word.Length < 3) return 0;
        var end = word.Length - 1;
        bool Consonant(int at) => at >= 0 && !IsVowel(word, at);
        // "turn-ed" is heard after d and t only.
        if (word.EndsWith("ed", StringComparison.Ordinal) && word.Length > 3 && Consonant(end - 2)) return word[end - 2] is 'd' or 't' || (word[end - 2] is 'l' && Consonant(end - 3) && word[end - 3] is not 'l') ? 0 : 1;
        if (word.EndsWith("es", StringComparison.Ordinal) && word.Length > 3 && Consonant(end - 2)) return Hisses(word[..^2]) || (word[end - 2] == 'l' && Consonant(end - 3)) ? 0 : 1;
        if (word[end] == 'e' && Consonant(end - 1))
        {
            // "shuffle", "little": the last one is heard.
            return word[end - 1] == 'l' && Consonant(end - 2) && word[end - 2] is not ('l' or 'r' or 'w' or 'y') ? 0 : 1;
        }

        // "basement", "sidestep": an e in the middle that only makes the vowel before it long.
        return Inside.Any(i => word.Length > i.Length && word.EndsWith(i, StringComparison.Ordinal)
            && Consonant(word.Length - i.Length - 1) && !(word[word.Length - i.Length - 1] is 'l' && Consonant(word.Length - i.Length - 2))) ? 1 : 0;
    }

    private static readonly string[] Inside = ["ement", "ements", "eless", "eful", "efully", "ely", "eness", "etime", "etimes"];

    private static readonly string[] Before = ["side", "grape", "some", "note", "every", "where", "home", "time"];

    // "sidestep", "grapevine", "somebody": two words in one, and the e in the middle is silent.
    private static int Begun(string word) => Before.Any(b => word.Length > b.Length + 1 && word.StartsWith(b, StringComparison.Ordinal) && !IsVowel(word, b.Length)) || word.StartsWith("every", StringComparison.Ordinal) ? 1 : 0;

    // "rhythm" ends in a syllable without a vowel.
    private static int Joined(string word) => word.EndsWith("thm", StringComparison.Ordinal) || word.EndsWith("sm", StringComparison.Ordinal) || word.EndsWith("sms", StringComparison.Ordinal)
        || word.EndsWith("tre", StringComparison.Ordinal) || word.EndsWith("tres", StringComparison.Ordinal) ? 1 : 0;

    private static bool Hisses(string word) =>
        word.Length > 0 && (word[^1] is 's' or 'x' or 'z' or 'c' or 'g' || word.EndsWith("ch", StringComparison.Ordinal) || word.EndsWith("sh", StringComparison.Ordinal));
}
