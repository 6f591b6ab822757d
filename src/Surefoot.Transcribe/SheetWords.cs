using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Transcribe.Source;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe;

/// <summary>
/// A hall's own words as a plain file, written as the simplest lines of <c>words/sheets.rules</c> are: what a sheet says,
/// "=>", and what a page would write, one a line; lines that begin with "&gt;" are notes.
/// </summary>
public static class SheetWords
{
    /// <summary>What the file is called where nobody calls it otherwise.</summary>
    public const string FileName = "hall-words.rules";

    /// <summary>Letters of either side. A sheet's phrase has some 30; working value.</summary>
    public const int Longest = 200;

    /// <summary>Words that a hall may have. Working value, far above what any hall will tell.</summary>
    public const int Most = 2000;

    private const string Arrow = "=>";

    private static readonly string Head = $"> The hall's own words: what a sheet says, \"{Arrow}\", and what a page would write. One a line.";

    /// <summary>Reads such a file. What cannot be read is told with its line, from 1, and the rest is taken.</summary>
    public static (ValueList<SheetWord> Words, ValueList<(int Line, string Says)> Troubles) Read(string text)
    {
        var (words, troubles) = (new List<SheetWord>(), new List<(int, string)>());
        var number = 0;
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n'))
        {
            number++;
            var plain = line.Trim(' ', '\t', '\uFEFF', '\u00A0');
            if (plain.Length == 0 || plain[0] == '>') continue;
            var at = plain.IndexOf(Arrow, StringComparison.Ordinal);
            if (at < 0)
            {
                troubles.Add((number, $"there is no \"{Arrow}\" in it; a line says: frobble {Arrow} hitch"));
                continue;
            }

            var word = Clean(plain[..at], plain[(at + Arrow.Length)..]);
            if (Fault(word) is { } fault) troubles.Add((number, fault));
            else if (words.Find(w => w.Key == word.Key) is { } known) Twice(known, word);
            else if (words.Count >= Most) troubles.Add((number, $"a hall may have {Most} words; this one is one too many."));
            else words.Add(word);
        }

        return (words.ToValueList(), troubles.ToValueList());

        void Twice(SheetWord known, SheetWord again)
        {
            if (known.Means != again.Means) troubles.Add((number, $"\"{again.Said}\" was told before as \"{known.Means}\", which was taken."));
        }
    }

    /// <summary>Writes the file, in the order of what is said.</summary>
    public static string Write(IEnumerable<SheetWord> words)
    {
        var text = new StringBuilder(Head).Append('\n');
        foreach (var word in words.OrderBy(w => w.Key, StringComparer.Ordinal)) text.Append(word.Said).Append(' ').Append(Arrow).Append(' ').Append(word.IsNoStep ? SheetWord.NoStep : word.Means).Append('\n');
        return text.ToString();
    }

    /// <summary>A word of the hall with one kind of blank, quote and dash.</summary>
    public static SheetWord Clean(string said, string means) => new(OneLine(said), OneLine(means) is { Length: > 0 } page ? page : SheetWord.NoStep) { OfTheHall = true };

    /// <summary>Why this cannot be a word of the hall, as a sentence; null when it can.</summary>
    public static string? Fault(SheetWord word)
    {
        if (!word.Said.Any(char.IsLetterOrDigit)) return "there are no words before the arrow.";
        if (word.Said.Length > Longest || word.Means.Length > Longest) return $"it is longer than it may be ({Longest} letters on either side).";
        if (word.Said.Contains(Arrow, StringComparison.Ordinal) || word.Means.Contains(Arrow, StringComparison.Ordinal)) return $"\"{Arrow}\" stands in it more than once.";
        return word.Said[0] == '>' ? "what begins with \">\" is a note." : null;
    }

    /// <summary>What somebody wrote as a meaning, in a page's words, or why it cannot be read, as a sentence.</summary>
    /// <param name="means">Written as a page writes it, or as a sheet does.</param>
    /// <param name="book">The words and figures in force; those that come with Surefoot when null.</param>
    public static (string? Page, string? Fault) InPageWords(string means, FigureBook? book = null)
    {
        means = OneLine(means);
        if (new SheetWord("", means).IsNoStep) return (SheetWord.NoStep, null);
        if (means.Length > Longest) return (null, $"it is longer than it may be ({Longest} letters)");
        if (means.Contains(Arrow, StringComparison.Ordinal)) return (null, $"\"{Arrow}\" has no place in it");
        var words = new PhraseWords(book ?? FigureBook.Shipped);
        var plain = words.Page(means);
        if (plain.Unknown.Count == 0 && plain.Moves.Count > 0) return (means, null);
        var read = words.Read(means);
        if (read.Unknown.Count == 0 && read.Moves.Count > 0) return (read.Text, null);
        var unknown = plain.Unknown.Count > 0 ? plain.Unknown : read.Unknown;
        return (null, unknown.Count > 0 ? $"a page has no word for {string.Join(", ", unknown.Distinct(StringComparer.OrdinalIgnoreCase).Select(u => $"\"{u}\""))}" : "it names no step");
    }

    private static string OneLine(string text) => string.Join(' ', SheetText.PlainWords(text).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
