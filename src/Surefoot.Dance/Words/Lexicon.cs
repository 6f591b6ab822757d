namespace Surefoot.Dance.Words;

/// <summary>
/// The names a page may use, each with its senses, found longest first. A notebook's or a page's own
/// figures are laid over the shipped words without changing them.
/// </summary>
public sealed class Lexicon
{
    private static readonly List<Sense> None = [];
    private readonly Lexicon? _below;
    private readonly Dictionary<string, int> _words = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int>.AlternateLookup<ReadOnlySpan<char>> _lookup;
    private readonly Dictionary<long, int> _next = [];
    private readonly List<List<Sense>> _senses = [[]];
    private readonly HashSet<string> _explicit = new(StringComparer.Ordinal);
    private readonly int _firstWord;
    private int _issued;

    public Lexicon(Lexicon? below = null)
    {
        _below = below;
        _lookup = _words.GetAlternateLookup<ReadOnlySpan<char>>();
        _firstWord = below is null ? 0 : below._firstWord + below._issued;
    }

    /// <summary>The number of a word in lower case, or -1.</summary>
    public int WordOf(ReadOnlySpan<char> word) =>
        _lookup.TryGetValue(word, out var id) ? id : _below?.WordOf(word) ?? -1;

    /// <summary>Adds a name. A word with "=" before it reads only as spelled, never as a form of another.</summary>
    public void Add(string name, Sense sense)
    {
        var node = 0;
        Span<char> one = stackalloc char[48];
        foreach (var piece in Pieces(name))
        {
            var exact = piece[0] == '=';
            var word = (exact ? piece[1..] : piece).ToLowerInvariant();
            var id = exact ? OwnWord(word) : KnownOrNew(word);
            var key = ((long)node << 32) | (uint)id;
            if (!_next.TryGetValue(key, out var to))
            {
                to = _senses.Count;
                _senses.Add([]);
                _next[key] = to;
            }

            node = to;
        }

        if (node != 0 && !_senses[node].Contains(sense)) _senses[node].Add(sense);
    }

    /// <summary>
    /// The longest name that starts at <paramref name="from"/>: its senses, and how many words it takes;
    /// 0 when none does.
    /// </summary>
    public int Longest(ReadOnlySpan<Text.Token> tokens, int from, out List<Sense> senses)
    {
        var mine = Walk(tokens, from, out senses);
        if (_below is null) return mine;
        var theirs = _below.Longest(tokens, from, out var below);
        if (theirs <= mine) return mine;
        senses = below;
        return theirs;
    }

    /// <summary>True when the very name is known.</summary>
    public bool Has(string name) => Find(name).Count > 0;

    public IReadOnlyList<Sense> Find(string name)
    {
        var node = 0;
        foreach (var piece in Pieces(name))
        {
            var id = WordOf(piece.TrimStart('=').ToLowerInvariant());
            if (id < 0 || !_next.TryGetValue(((long)node << 32) | (uint)id, out node)) return _below is null ? [] : _below.Find(name);
        }

        var found = _senses[node];
        return found.Count > 0 || _below is null ? found : _below.Find(name);
    }

    private int Walk(ReadOnlySpan<Text.Token> tokens, int from, out List<Sense> senses)
    {
        senses = None;
        var best = 0;
        var node = 0;
        for (var i = from; i < tokens.Length && tokens[i].Kind == Text.TokenKind.Word && tokens[i].Word >= 0; i++)
        {
            if (!_next.TryGetValue(((long)node << 32) | (uint)tokens[i].Word, out node)) break;
            if (_senses[node].Count == 0) continue;
            best = i - from + 1;
            senses = _senses[node];
        }

        return best;
    }

    private int KnownOrNew(string word)
    {
        var known = WordOf(word);
        if (known >= 0)
        {
            // "rocking" in "rocking chair" is the form of "rock" that is already there.
            if (_explicit.Add(word) && _lookup.ContainsKey(word)) AddForms(word, known);
            return known;
        }

        _explicit.Add(word);
        var id = _firstWord + _issued++;
        _words[word] = id;
        AddForms(word, id);
        return id;
    }

    private int OwnWord(string word)
    {
        // A form made from another word gives way to the word as spelled.
        if (_explicit.Add(word) || !_words.TryGetValue(word, out var id))
        {
            id = _firstWord + _issued++;
            _words[word] = id;
        }

        return id;
    }

    private void AddForms(string word, int id)
    {
        if (word.Length < 3 || word.Contains('/', StringComparison.Ordinal) || word.Contains('\'', StringComparison.Ordinal)) return;
        foreach (var form in WordForms.Of(word))
        {
            if (WordOf(form) < 0) _words[form] = id;
        }
    }

    private static IEnumerable<string> Pieces(string name) =>
        name.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
}
