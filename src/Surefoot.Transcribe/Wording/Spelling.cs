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

    /// <summary>Words of every day that are no slip, though nearly a dancer's word.</summary>
    private static readonly HashSet<string> Everyday = new(
        ("about after again along also another any around away because been before begin below best body both bottom bring call came care case "
        + "close could count dance dancer dancers does doing done down each ease easy else even ever every face fact feel feet felt find fine floor follow form "
        + "found from full gets give goes gone good great hand hands have head hear held help here high hips hold home hope idea into just keep kept kind know "
        + "large last late lead learn leave less like line list little live long look lose made main make many mark mean meet more most much music must name "
        + "near need never next nice none note only onto open other over part pass past play plus pose rate read real rest room rule same says seen send set "
        + "shake share shoe show side sign sing size slow small some song soon sound start stay still such sure take talk tell than that their them then there these "
        + "they thing think this those three through time times told tone took toward town true turn type under until upon used very wait want week well went were "
        + "what when where which while whole wide will with word work world would year your yours degrees circle couple couples partner partners").Split(' '),
        StringComparer.OrdinalIgnoreCase);

    /// <returns>The words mended, and each mending as "written -> read".</returns>
    public static (string Words, IReadOnlyList<string> Mended) Mend(string phrase, FigureBook book)
    {
        List<string>? mended = null;
        var words = Word.Replace(phrase, match =>
        {
            var word = match.Value;
            if (word.Length < Shortest || Everyday.Contains(word) || Known(word, book)) return word;
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
