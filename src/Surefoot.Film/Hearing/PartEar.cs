using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Film.Hearing;

/// <summary>Hears which part is meant: "part b", "the second section", "the tag", or what its heading calls it.</summary>
internal sealed class PartEar
{
    private readonly List<(string Key, int Part)> _keys = [];
    private readonly List<int> _inOrder = [];
    private readonly List<(string[] Words, int Part)> _names = [];
    private readonly List<string[]> _allNames = [];

    private readonly DanceWords _dance;
    private readonly SpokenRules _rules = SpokenRules.Shipped;

    public PartEar(DanceWords dance)
    {
        _dance = dance;
        var parts = dance.Score.Parts;
        for (var i = 0; i < parts.Count; i++)
        {
            _keys.Add((parts[i].Key.ToLowerInvariant(), i));
            if (parts[i].Kind == PartKind.Part) _inOrder.Add(i);
            var words = parts[i].Name.ToLowerInvariant().Split([' ', ',', '-'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 2 && w is not ("the" or "and")).ToArray();
            _allNames.Add(words);
            // A name made of steps, "Vines", is said whenever they are danced.
            if (words.Any(w => dance.Book.Lexicon.WordOf(w) < 0)) _names.Add((words, i));
        }
    }

    public (ValueList<int> Parts, int Next, bool ByName)? At(IReadOnlyList<Spoken> words, int at)
    {
        var word = words[at].Word;
        if (_rules.Headings.Contains(word) || (_rules.HeadingsAlike.Contains(word) && at + 1 < words.Count && (words[at + 1].Word.Length == 1 || (_rules.Keys.TryGetValue(words[at + 1].Word, out var letter) && char.IsLetter(letter[0])))))
        {
            return at + 1 < words.Count && Keyed(words[at + 1].Word) is { Count: > 0 } parts ? (parts, AfterName(words, at + 2, parts[0]), false) : null;
        }

        if (_rules.Ordinals.IndexOf(word) is var nth and >= 0 && nth < _inOrder.Count && at + 1 < words.Count && (_rules.Headings.Contains(words[at + 1].Word) || _rules.HeadingsAlike.Contains(words[at + 1].Word))) return ([_inOrder[nth]], AfterName(words, at + 2, _inOrder[nth]), false);
        foreach (var (key, part) in _keys)
        {
            if (key.Length > 2 && key == word && !_inOrder.Contains(part)) return ([part], at + 1, false);
        }

        // The heading was swallowed: "so, c".
        if (word is "b" or "c" or "d" or "e" or "f" && Keyed(word) is { Count: > 0 } lone) return (lone, AfterName(words, at + 1, lone[0]), true);
        return Named(words, at);
    }

    /// <summary>"And once more part", and the letter was not heard; "that part" and "the lady's part" are none.</summary>
    public bool Unnamed(IReadOnlyList<Spoken> words, int at) => _rules.Headings.Contains(words[at].Word) && at > 0
        && (_rules.Hesitations.Contains(words[at - 1].Word) || words[at - 1].Word is "more" or "at" or "is" or "with" or "do") && words[at].From - words[at - 1].To < 0.5;

    /// <summary>A part's letter or number by itself: right after another was named and taken back.</summary>
    public (ValueList<int> Parts, int Next)? KeyAt(IReadOnlyList<Spoken> words, int at)
    {
        return Keyed(words[at].Word) is { Count: > 0 } parts ? (parts, AfterName(words, at + 1, parts[0])) : null;
    }

    // "Part c, that is vines and half turns": the name's words are no steps.
    private int AfterName(IReadOnlyList<Spoken> words, int at, int part)
    {
        var name = _allNames[part];
        if (name.Length == 0) return at;
        // Said as it is written, it is the name and no step, also right after the letter: "part b, out and across".
        if (_dance.NameOfPartAt(words, at, part) is { } after) return after;
        for (var from = at; from < Math.Min(words.Count, at + 4); from++)
        {
            var (found, last) = (0, from);
            for (var i = from; i < Math.Min(words.Count, from + name.Length + 3); i++)
            {
                if (found < name.Length && (Same(words[i].Word, name[found]) || (found + 1 < name.Length && Same(words[i].Word, name[found + 1])))) (found, last) = (Same(words[i].Word, name[found]) ? found + 1 : found + 2, i + 1);
            }

            // Its first words alone may as well be the first step.
            // One word of a name that is announced as such may be swallowed.
            if ((found >= name.Length || (from > at && name.Length > 2 && found == name.Length - 1)) && (Announced(words, at, from) || (name.Length > 2 && last - at == name.Length))) return last;
            // "That is hinge and", and the rest was swallowed.
            if (from > at && name.Length == 2 && found == 1 && from + 2 < words.Count && Same(words[from].Word, name[0]) && words[from + 1].Word == "and") return from + 3;
            if (words[from].Word is not ("that" or "is" or "called" or "it's" or "that's" or "which" or "named" or "the" or "that is")) break;
        }

        return at;
    }

    // "The", by itself, announces no name: "part b, the does a step forward hop" is what is left of "the lead does".
    private static bool Announced(IReadOnlyList<Spoken> words, int at, int from)
    {
        for (var i = at; i < from; i++)
        {
            if (words[i].Word != "the") return true;
        }

        return false;
    }

    // "Twinkles" is heard as "twinkle", and the other way round.
    private bool Same(string said, string name) => said == name || said.TrimEnd('s') == name.TrimEnd('s') || (_rules.Alike.TryGetValue(said, out var meant) && meant == name.TrimEnd('s'));

    private (ValueList<int>, int, bool)? Named(IReadOnlyList<Spoken> words, int at)
    {
        foreach (var (name, part) in _names)
        {
            if (words[at].Word != name[0]) continue;
            var (found, i) = (1, at + 1);
            for (; i < words.Count && found < name.Length && i - at < name.Length + 4; i++)
            {
                if (words[i].Word == name[found]) found++;
            }

            if (found == name.Length) return ([part], i, true);
        }

        for (var part = 0; part < _allNames.Count; part++)
        {
            if (_dance.NameOfPartAt(words, at, part) is { } next) return ([part], next, true);
        }

        return null;
    }

    private ValueList<int> Keyed(string word)
    {
        var found = Exactly(word);
        if (found.Count == 0 && _rules.Keys.TryGetValue(word, out var key)) found = Exactly(key);
        if (_rules.AlikeInCounting.TryGetValue(word, out var number) && !_rules.Keys.ContainsKey(word)) word = number;
        if (found.Count == 0 && Ear.NumberOf(word) is { } n) found = Exactly(n.ToString());
        if (found.Count == 0 && Ear.NumberOf(word) is { } nth && nth <= _inOrder.Count) found = [_inOrder[nth - 1]];
        return found.ToValueList();

        List<int> Exactly(string said) => _keys.FindAll(k => k.Key == said).ConvertAll(k => k.Part);
    }
}
