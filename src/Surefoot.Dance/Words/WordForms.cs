namespace Surefoot.Dance.Words;

/// <summary>The plural, third-person, -ing and -ed forms of an English word, so that all read alike.</summary>
public static class WordForms
{
    public static IEnumerable<string> Of(string word)
    {
        var last = word[^1];
        var hissing = last is 's' or 'x' or 'z' || word.EndsWith("ch", StringComparison.Ordinal) || word.EndsWith("sh", StringComparison.Ordinal);
        yield return hissing ? word + "es" : word + "s";
        if (last == 'e')
        {
            yield return word[..^1] + "ing";
            yield return word + "d";
        }
        else if (last == 'y' && word.Length > 2 && !IsVowel(word[^2]))
        {
            yield return word[..^1] + "ies";
            yield return word[..^1] + "ied";
            yield return word + "ing";
        }
        else
        {
            yield return word + "ing";
            yield return word + "ed";
            if (!IsVowel(last) && IsVowel(word[^2]) && !IsVowel(word[^3]))
            {
                yield return word + last + "ing";
                yield return word + last + "ed";
            }
        }
    }

    private static bool IsVowel(char c) => c is 'a' or 'e' or 'i' or 'o' or 'u';
}
