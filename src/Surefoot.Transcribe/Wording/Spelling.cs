using System.Text.RegularExpressions;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Words;

namespace Surefoot.Transcribe.Wording;

/// <summary>Mends slips of the pen: a word nobody knows that is nearly one of the page's.</summary>
internal static class Spelling
{
    /// <summary>Words shorter than this are too near to too many others.</summary>
    private const int Shortest = 4;

    private static readonly Regex Word = new(@"\b[\p{L}]{4,}\b", RegexOptions.CultureInvariant);

    /// <returns>The words mended, and each mending as "written -> read".</returns>
    public static (string Words, IReadOnlyList<string> Mended) Mend(string phrase, FigureBook book)
    {
        List<string>? mended = null;
        var words = Word.Replace(phrase, match =>
        {
            var word = match.Value;
            if (word.Length < Shortest || Known(word, book)) return word;
            var near = NearWords.Of(word, book);
            // Only one letter off or two exchanged, and nothing else as near.
            if (near is not [{ BySense: false, Distance: 1 } first, ..] || (near.Count > 1 && near[1].Distance == first.Distance && !SameStem(near[1].Word, first.Word))) return Exchanged(word, near, ref mended);
            (mended ??= []).Add($"\"{word}\" was read as \"{first.Word}\"");
            return first.Word;
        });
        return (words, mended ?? (IReadOnlyList<string>)[]);
    }

    // "Stpe", "forwrad": the same letters in another order.
    private static string Exchanged(string word, List<NearWords.Near> near, ref List<string>? mended)
    {
        var letters = Sorted(word);
        foreach (var one in near)
        {
            if (one.BySense || Sorted(one.Word) != letters) continue;
            (mended ??= []).Add($"\"{word}\" was read as \"{one.Word}\"");
            return one.Word;
        }

        return word;
    }

    private static bool SameStem(string a, string b) => a.StartsWith(b, StringComparison.OrdinalIgnoreCase) || b.StartsWith(a, StringComparison.OrdinalIgnoreCase);

    private static string Sorted(string word)
    {
        var letters = word.ToLowerInvariant().ToCharArray();
        Array.Sort(letters);
        return new(letters);
    }

    private static bool Known(string word, FigureBook book) => SheetRules.Knows(word) || book.Lexicon.WordOf(word.ToLowerInvariant()) >= 0;
}
