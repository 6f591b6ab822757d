using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Words;

namespace Surefoot.Film.Hearing;

/// <summary>The words that a film of one dance may be expected to have: its figures, actions, parts and their names.</summary>
internal sealed class DanceWords
{
    public DanceWords(DanceScore score, FigureBook book)
    {
        Book = book;
        Score = score;
        var steps = score.Roles.SelectMany(r => r.Steps).Concat(score.Extras.SelectMany(e => e.Roles).SelectMany(r => r.Steps)).ToList();
        Figures = steps.Where(s => s.Figure is not null).Select(s => s.Figure!).ToHashSet(StringComparer.Ordinal);
        foreach (var name in Figures)
        {
            Add(name);
            foreach (var other in book.Named(name)?.OtherNames ?? []) Add(other);
        }

        foreach (var word in Figures.SelectMany(f => f.Split(' ', '-').Distinct(StringComparer.Ordinal).Select(w => (Word: w, Figure: f))).GroupBy(x => x.Word, StringComparer.Ordinal))
        {
            if (word.Count() == 1 && word.Key.Length > 3) _telling[word.Key] = word.First().Figure;
        }

        foreach (var kind in steps.Where(s => s.Figure is null).Select(s => s.Kind).Distinct()) Add(kind.Word());
        foreach (var row in score.Parts.SelectMany(p => p.Rows).SelectMany(r => r.Words)) Add(row.Text);
        foreach (var word in (string[])["left", "right", "forward", "back", "side", "half", "quarter", "step", "recover", "together"]) Words.Add(word);
        foreach (var title in score.Facts.OtherNames.Prepend(score.Title))
        {
            var words = title.ToLowerInvariant().Split([' ', '-', ',', '.', '(', ')'], StringSplitOptions.RemoveEmptyEntries);
            if (words.Length > 1) _titles.Add(words);
        }

        _rows = [.. score.Parts.SelectMany(p => p.Rows).SelectMany(r => r.Words).Select(w => w.Text.ToLowerInvariant())];
        foreach (var part in score.Parts)
        {
            var name = part.Name.ToLowerInvariant().Split([' ', ',', '-'], StringSplitOptions.RemoveEmptyEntries);
            _parts.Add(name.Length > 1 && !Writes(string.Join(' ', name)) ? name : null);
        }

        ThreeInABar = score.Facts.Meter.Beats == 3;
    }

    private readonly List<string[]> _titles = [];

    /// <summary>What the heading of each part calls it, word by word; null where that is one word or the page has it among its steps.</summary>
    private readonly List<string[]?> _parts = [];
    private readonly List<string> _rows;
    private readonly Dictionary<string, string> _telling = new(StringComparer.Ordinal);

    public FigureBook Book { get; }

    public DanceScore Score { get; }

    /// <summary>Canonical names of the figures in the dance.</summary>
    public HashSet<string> Figures { get; }

    /// <summary>Single words, in small letters.</summary>
    public HashSet<string> Words { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether the page has these words beside each other.</summary>
    public bool Writes(string words) => _rows.Exists(r => r.Contains(words, StringComparison.Ordinal));

    /// <summary>Whether the page has a word other than right after a certain one.</summary>
    public bool HasAlone(string word, string after) => _rows.Exists(r => r.Split([' ', ',', '.', '(', ')'], StringSplitOptions.RemoveEmptyEntries) is var all && Enumerable.Range(0, all.Length).Any(i => all[i] == word && (i == 0 || all[i - 1] != after)));

    public bool ThreeInABar { get; }

    /// <summary>Longest run in which counts are counted: two bars of four, or of three.</summary>
    public int CountsTo => ThreeInABar ? 6 : 8;

    /// <summary>A figure of the dance of which some words are said, one of them a word that no other figure has: "travelling cha-cha".</summary>
    public (string Figure, int Length)? PartlyAt(IReadOnlyList<Spoken> words, int at)
    {
        if (!_telling.TryGetValue(words[at].Word, out var figure)) return null;
        var name = figure.Split(' ', '-');
        var length = 1;
        while (at + length < words.Count && name.Contains(words[at + length].Word, StringComparer.Ordinal)) length++;
        return (figure, length);
    }

    /// <summary>The place after the dance's name, where it is said: "Split Rail Cha-Cha" is no cha-cha. One word may be misheard.</summary>
    public int? TitleAt(IReadOnlyList<Spoken> words, int at)
    {
        foreach (var title in _titles)
        {
            if (at + title.Length > words.Count) continue;
            var same = 0;
            for (var i = 0; i < title.Length; i++) same += words[at + i].Word == title[i] ? 1 : 0;
            if (same >= Math.Max(2, title.Length - 1)) return at + title.Length;
            // Of three words or more one may be swallowed.
            if (title.Length > 2 && words[at].Word == title[0] && ShortOfOne(words, at, title)) return at + title.Length - 1;
        }

        return null;
    }

    private static bool ShortOfOne(IReadOnlyList<Spoken> words, int at, string[] title)
    {
        for (var swallowed = 1; swallowed < title.Length; swallowed++)
        {
            var same = true;
            for (var i = 1; i < title.Length - 1 && same; i++) same = words[at + i].Word == title[i < swallowed ? i : i + 1];
            if (same) return true;
        }

        return false;
    }

    /// <summary>The place after a part's name, where it is said as its heading has it: "out and across" is no cross.</summary>
    public int? NameOfPartAt(IReadOnlyList<Spoken> words, int at, int part)
    {
        if (_parts[part] is not { } name || at + name.Length > words.Count) return null;
        for (var i = 0; i < name.Length; i++)
        {
            if (words[at + i].Word != name[i]) return null;
        }

        return at + name.Length;
    }

    /// <summary>Whether some words begin inside a part's name, so that what follows the name is no part of them.</summary>
    public bool BeginsInName(IReadOnlyList<Spoken> words, int at)
    {
        for (var part = 0; part < _parts.Count; part++)
        {
            for (var from = Math.Max(0, at - (_parts[part]?.Length ?? 0) + 1); from <= at; from++)
            {
                if (NameOfPartAt(words, from, part) > at) return true;
            }
        }

        return false;
    }

    /// <summary>A word of the dance that is one slip of the ear away, or null.</summary>
    public string? Nearest(string word)
    {
        if (word.Length < 4) return null;
        string? best = null;
        foreach (var one in Words)
        {
            if (one.Length < 5) continue;
            var limit = one.Length >= 8 ? 2 : 1;
            if (Math.Abs(one.Length - word.Length) <= limit && NearWords.Distance(word, one, limit) <= limit && (best is null || string.CompareOrdinal(one, best) < 0)) best = one;
        }

        return best;
    }

    private void Add(string text)
    {
        foreach (var word in text.ToLowerInvariant().Split([' ', '-', ',', '.', '(', ')', '[', ']'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (word.Length > 2 && word.All(char.IsLetter)) Words.Add(word);
        }
    }
}
