using Surefoot.Dance.Words;

namespace Surefoot.Library.Searching;

/// <summary>Every word of the library with a number; finds those that a typed word may mean.</summary>
internal sealed class Vocabulary
{
    // How good a match is, of 255. Working values: only their order matters, and that two half-right words
    // do not beat one right one.
    private const byte Same = 255;

    /// <summary>The word itself in another form.</summary>
    public const byte Form = 230;

    private const int Beginning = 200;
    private const byte Ending = 150;
    private const int Slip = 190;
    private const int EachSlip = 45;

    // Letters from which on the end of a longer word is taken for a word: shorter ones are in everything. Working value.
    private const int LeastEnding = 4;

    // Typed words whose matches are remembered: a byte for every word of the library each. Working value.
    private const int MostMatched = 60;

    private readonly Dictionary<string, int> _numbers = new(StringComparer.Ordinal);
    private readonly List<string> _words = [];
    private readonly List<uint> _letters = [];
    private readonly Dictionary<string, byte[]> _matched = new(StringComparer.Ordinal);

    public int Count => _words.Count;

    public int Of(string word)
    {
        if (_numbers.TryGetValue(word, out var number)) return number;
        _numbers[word] = number = _words.Count;
        _words.Add(word);
        _letters.Add(Letters(word));
        _matched.Clear();
        return number;
    }

    /// <returns>Its number, or -1 where no dance has it.</returns>
    public int Known(string word) => _numbers.GetValueOrDefault(word, -1);

    /// <summary>For every word how well it fits what was typed; 0 for not at all. Whoever asks may write into the answer.</summary>
    public byte[] Match(string typed)
    {
        // Of a question that is being typed only the last word is new.
        if (_matched.TryGetValue(typed, out var known)) return [.. known];
        if (_matched.Count >= MostMatched) _matched.Clear();
        var fits = Compare(typed);
        _matched[typed] = [.. fits];
        return fits;
    }

    private byte[] Compare(string typed)
    {
        var fits = new byte[_words.Count];
        // Two slips in a long word, one in a short one, none in three letters: at most about a third of the word.
        var limit = typed.Length < 4 || !typed.All(char.IsLetter) ? 0 : typed.Length < 6 ? 1 : 2;
        var letters = Letters(typed);
        for (var i = 0; i < fits.Length; i++)
        {
            var word = _words[i];
            if (word == typed) fits[i] = Same;
            else if (IsForm(word, typed) || IsForm(typed, word)) fits[i] = Form;
            else if (typed.Length > 1 && word.StartsWith(typed, StringComparison.Ordinal)) fits[i] = (byte)(Beginning - Math.Min(80, 8 * (word.Length - typed.Length)));
            // "Pond" is what somebody remembers of "Millpond".
            else if (typed.Length >= LeastEnding && word.Length > typed.Length && word.EndsWith(typed, StringComparison.Ordinal)) fits[i] = Ending;
            // A slip changes at most two letters of the set, so most words need no counting.
            else if (limit > 0 && Math.Abs(word.Length - typed.Length) <= limit && word.Length <= 40
                && System.Numerics.BitOperations.PopCount(letters ^ _letters[i]) <= 2 * limit
                && NearWords.Distance(typed, word, limit) is var slips && slips <= limit) fits[i] = (byte)(Slip - (EachSlip * slips));
        }

        return fits;
    }

    // "walks", "walking", "walked" for "walk".
    private static bool IsForm(string longer, string word) =>
        word.Length > 2 && longer.Length > word.Length && longer.Length <= word.Length + 3 && longer.StartsWith(word, StringComparison.Ordinal)
        && longer.AsSpan(word.Length) is "s" or "es" or "ing" or "ed" or "d";

    private static uint Letters(string word)
    {
        var letters = 0u;
        foreach (var letter in word) letters |= 1u << (letter is >= 'a' and <= 'z' ? letter - 'a' : 26 + (letter % 6));
        return letters;
    }
}
