using System.Text;
using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Wording;

/// <summary>
/// Words whose meaning somebody told, each put out of the reader's way before it begins: one sign stands in for them,
/// which nothing cuts, mends or rewrites, and which speaks of what was told. What was told so wins over every rule.
/// </summary>
internal sealed class StandIns
{
    // Letters that Unicode gives to nobody (private use); word processors take theirs from U+F000 on.
    private const char First = '\uE000', Last = '\uEFFF';

    private readonly Dictionary<char, (string Said, SheetWord Word)> _signs = [];
    private readonly Dictionary<(string, SheetWord), char> _of = [];
    private readonly Queue<char> _free;
    private readonly List<WordUsed> _used = [];

    private StandIns(IEnumerable<char> free) => _free = new(free);

    /// <summary>The sheet's lines with signs in them.</summary>
    public List<SheetLine> Lines { get; private init; } = [];

    /// <summary>Every place where one stands, in the order of the sheet.</summary>
    public IReadOnlyList<WordUsed> Used => _used;

    /// <param name="lines">The sheet as it stands.</param>
    /// <param name="told">What was told; what is told of one place comes before what is told of all, a sheet's correction before the hall's word, longer words before shorter ones.</param>
    /// <param name="knows">Whether the reader understands words by itself: then they are meant only where they are all of a phrase, else wherever they stand.</param>
    public static StandIns In(List<SheetLine> lines, IReadOnlyList<SheetWord> told, Func<string, bool> knows)
    {
        var there = lines.SelectMany(l => l.Plain).Where(c => c is >= First and <= Last).ToHashSet();
        var signs = new StandIns(Enumerable.Range(First, Last - First + 1).Select(n => (char)n).Where(c => !there.Contains(c)));
        var ordered = told.OrderBy(w => w.Only is null).ThenBy(w => w.OfTheHall).ThenByDescending(w => w.Said.Length).Select(w => new Told(w, new(w.Said, () => w.Only is null && knows(w.Said)))).ToList();
        foreach (var line in lines) signs.Lines.Add(line.Plain.Length == 0 ? line : line with { Plain = signs.Put(line, ordered) });
        return signs;
    }

    /// <summary>Whether a sign stands in some words.</summary>
    public static bool Stands(string words) => words.AsSpan().IndexOfAnyInRange(First, Last) >= 0;

    /// <summary>Words with what stood on the sheet in the place of every sign.</summary>
    public string AsItStood(string words) => Stands(words) ? Filled(words, sign => sign.Said) : words;

    /// <summary>What words mean in which signs stand.</summary>
    /// <param name="page">Reads words that are a page's already.</param>
    public PhraseRead Read(string words, Func<string, PhraseRead> page)
    {
        if (words.Trim(' ', ',', '.', ';', ':', '-') is [var one] && _signs.TryGetValue(one, out var alone)) return (alone.Word.IsNoStep ? new("", [], [], Dance.Basics.Beats.Zero) : page(alone.Word.Means)) with { Told = true };
        // Rules see the words around together with what was told, unless they would change what was told.
        var open = words.All(c => !_signs.TryGetValue(c, out var sign) || string.Equals(SheetRules.Rewrite(sign.Word.Means), sign.Word.Means, StringComparison.OrdinalIgnoreCase));
        return page(open ? SheetRules.Rewrite(Filled(words, Means)) : Filled(SheetRules.Rewrite(words), Means));

        static string Means((string Said, SheetWord Word) sign) => sign.Word.IsNoStep ? " " : sign.Word.Means;
    }

    /// <summary>Whether a phrase is all one that was told to be no step.</summary>
    public bool IsNoStep(string phrase) => phrase.Trim(' ', '.', ',', ';', ':') is [var one] && _signs.TryGetValue(one, out var sign) && sign.Word.IsNoStep;

    private string Filled(string words, Func<(string Said, SheetWord Word), string> with)
    {
        var filled = new StringBuilder();
        foreach (var c in words)
        {
            if (_signs.TryGetValue(c, out var sign)) filled.Append(with(sign));
            else filled.Append(c);
        }

        return filled.ToString();
    }

    private string Put(SheetLine line, List<Told> ordered)
    {
        var taken = new List<(int At, int Length, SheetWord Word)>();
        foreach (var (word, places) in ordered)
        {
            if (word.Only is { } only && only.Line != line.Number) continue;
            var time = 0;
            foreach (var (at, length) in places.In(line.Plain))
            {
                if (word.Only is { } one && one.Time != time++) continue;
                if (!taken.Exists(t => at < t.At + t.Length && t.At < at + length)) taken.Add((at, length, word));
            }
        }

        if (taken.Count == 0) return line.Plain;
        var (put, from) = (new StringBuilder(), 0);
        foreach (var (at, length, word) in taken.OrderBy(t => t.At))
        {
            var said = line.Plain.Substring(at, length);
            if (SignOf(said, word) is not { } sign) continue;
            put.Append(line.Plain, from, at - from);
            // "1.frobble": a count's mark is one before a blank.
            if (at > 0 && line.Plain[at - 1] is '.' or ':' or ')' or ']' or '=') put.Append(' ');
            put.Append(sign);
            from = at + length;
            _used.Add(new(line.Number, said, word));
        }

        return put.Append(line.Plain, from, line.Plain.Length - from).ToString();
    }

    private char? SignOf(string said, SheetWord word)
    {
        if (_of.TryGetValue((said, word), out var known)) return known;
        if (!_free.TryDequeue(out var sign)) return null;
        _signs[sign] = (said, word);
        return _of[(said, word)] = sign;
    }

    private sealed record Told(SheetWord Word, WordPlaces Places);
}
