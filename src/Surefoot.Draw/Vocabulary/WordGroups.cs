using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Vocabulary;

/// <summary>Something that can be written, its other spellings, and what it means.</summary>
public sealed record Entry(string Word, IReadOnlyList<string> Also, string Meaning);

/// <summary>Entries that a dancer would look for in one place.</summary>
public sealed record WordGroup(string Name, IReadOnlyList<Entry> Entries);

/// <summary>Everything that can be written, in a dancer's groups.</summary>
public static class WordGroups
{
    // Which kinds of rows of the words file stand together, in the order in which they are listed.
    private static readonly (string Name, string[] Kinds)[] Kinds =
    [
        ("Which way a foot goes", ["way"]),
        ("Which foot, which side", ["side", "foot", "footnoun", "part", "feet"]),
        ("Turning", ["rotation", "amount"]),
        ("Size of a step", ["small", "large"]),
        ("Weight", ["weight", "even", "free", "noweight"]),
        ("Rhythm", ["slow", "quick", "counts", "number"]),
        ("Again, and other foot", ["repeat", "but", "times", "multiply", "starting", "mirrored"]),
        ("Between actions", ["then", "and", "with"]),
        ("Who dances", ["role"]),
        ("Where to look", ["face", "facing", "relation", "oclock", "wallword"]),
        ("Hands", ["handverb", "pair", "handnoun", "head"]),
        ("Holds", ["hold"]),
        ("Calls, on a line of their own", ["call", "openingcall", "nocall"]),
    ];

    public static List<WordGroup> All(FigureBook book)
    {
        var groups = new List<WordGroup>
        {
            new("Steps: the weight changes", Verbs(book, r => r is WeightRule.Takes or WeightRule.Returns or WeightRule.Evens or WeightRule.Leans)),
            new("The free foot acts, the weight stays", Verbs(book, r => r is WeightRule.FreeFootActs)),
            new("Turns, waits and the rest: no foot is asked for", Verbs(book, r => r is WeightRule.Stays)),
        };
        groups.AddRange(Kinds.Select(k => new WordGroup(k.Name, Rows(book, k.Kinds))));
        groups.AddRange(FigureKin.Of(book).Select(k => new WordGroup(
            k.Kin, [.. k.Figures.Select(f => new Entry(f.Name, [.. f.OtherNames], f.Means))])));
        groups.Add(new("Headings of parts", [new(Capital(PageReader.HeadingWords[0]), [.. PageReader.HeadingWords.Skip(1).Select(Capital)], "opens a part of the dance; tag, bridge, intro and ending stand outside the repeat; [1-8] does too")]));
        groups.Add(new("Words in the head of a page", [.. book.Rows.Where(r => r.Kind == "header").Select(r => new Entry(Capital(r.Spellings[0]) + ":", [.. r.Spellings.Skip(1)], r.Meaning))]));
        groups.Add(new("Short forms", [.. Abbreviations.All.Where(a => a.Key.Length > 1).Select(a => new Entry(a.Key, [], $"read as {a.Value}"))]));
        groups.Add(new("Styling: kept on the sheet, moves no foot", [List(book, "style", "how it looks, not where the feet go")]));
        groups.Add(new("Small words: read over", [List(book, "filler", "they make a sentence of it and change nothing")]));
        groups.Add(new("Not known as such, but Surefoot guesses what is meant", Guesses(book)));
        return [.. groups.Where(g => g.Entries.Count > 0)];
    }

    /// <summary>Every entry that a word is a spelling of.</summary>
    public static List<(string Group, Entry Entry)> Find(string word, FigureBook book)
    {
        var found = new List<(string, Entry)>();
        foreach (var group in All(book))
        {
            foreach (var entry in group.Entries)
            {
                if (Same(entry.Word.TrimEnd(':'), word, book) || entry.Also.Any(a => Same(a, word, book))) found.Add((group.Name, entry));
            }
        }

        return found;
    }

    /// <summary>The meaning of a row; rows that are clear from their kind leave it out.</summary>
    private static string Meaning(WordRow row) => row.Meaning.Length > 0 ? row.Meaning : (row.Kind, row.Key) switch
    {
        ("footnoun", _) => "goes with left or right",
        ("part", _) => $"which part is meant, as in \"{row.Spellings[0]} {(row.Key is "hip" or "knee" ? "bump" : "touch")}\"",
        ("feet", _) => "both feet, as in \"feet together\"",
        ("number", _) => $"{row.Key}, as in \"{(row.Key == "1" ? "one walk" : $"{row.Spellings[0]} walks")}\"",
        ("multiply", _) => "times, as in \"x 2\"",
        ("and", _) => "joins two actions",
        ("then", _) => "the next action follows",
        ("with", _) => "adds what belongs to the same action",
        ("starting", _) => "names the first foot, as in \"starting right\"",
        ("face", _) => "where the dancers look, as in \"facing LOD\"",
        ("oclock", _) => "a wall by the clock, as in \"6 o'clock\"",
        ("wallword", _) => "a wall of the room, as in \"6:00 wall\"",
        ("weight", _) => "says which foot carries the weight",
        ("even", _) => "both feet carry the weight",
        ("free", _) => "that foot carries no weight",
        ("noweight", _) => "the weight stays where it is",
        ("counts", _) => "how long something takes",
        ("handnoun", _) => "which joined hands or arms are meant",
        ("head", _) => "what hands pass over or rest on",
        ("pair", "both") => "both joined pairs of hands",
        ("pair", "joined") => "the hands that are joined",
        ("pair", _) => $"the hands on the {row.Key}, between or away from the partners",
        _ => "",
    };

    private static List<Entry> Verbs(FigureBook book, Func<WeightRule, bool> those) =>
        [.. book.Rows.Where(r => r.Kind == "verb" && those(KindOf(r.Key).Rule())).Select(Row)];

    private static List<Entry> Rows(FigureBook book, string[] kinds) =>
        [.. kinds.SelectMany(k => book.Rows.Where(r => r.Kind == k)).Select(Row)];

    private static Entry Row(WordRow row) => new(Plain(row.Spellings[0]), [.. row.Spellings.Skip(1).Select(Plain)], Meaning(row));

    private static Entry List(FigureBook book, string kind, string meaning)
    {
        var words = book.Rows.Where(r => r.Kind == kind).SelectMany(r => r.Spellings).Select(Plain).Distinct(StringComparer.Ordinal).ToList();
        return new(words[0], [.. words.Skip(1)], meaning);
    }

    private static List<Entry> Guesses(FigureBook book)
    {
        var guesses = new List<Entry>();
        foreach (var row in book.Rows.Where(r => r.Kind == "sense"))
        {
            var arrow = row.Spellings[0].Split("->", 2, StringSplitOptions.TrimEntries);
            if (arrow.Length == 2) guesses.Add(new(arrow[0], [], $"perhaps {Phrases.And([arrow[1], .. row.Spellings.Skip(1)], "or")}"));
        }

        return guesses;
    }

    // "step across" is a step: the longest action word that the key begins with.
    private static ActionKind KindOf(string key) =>
        Enum.GetValues<ActionKind>().Where(k => key == k.Word() || key.StartsWith(k.Word() + " ", StringComparison.Ordinal)).MaxBy(k => k.Word().Length);

    private static bool Same(string spelling, string word, FigureBook book)
    {
        if (spelling.Equals(word, StringComparison.OrdinalIgnoreCase)) return true;
        // "walks" is "walk", "rocking" is "rock".
        var a = spelling.ToLowerInvariant().Split(' ', '-');
        var b = word.ToLowerInvariant().Split(' ', '-');
        if (a.Length != b.Length) return false;
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] != b[i] && (book.Lexicon.WordOf(a[i]) is var id && (id < 0 || id != book.Lexicon.WordOf(b[i])))) return false;
        }

        return true;
    }

    // The words file marks spellings whose forms are not read alike.
    private static string Plain(string spelling) => spelling.TrimStart('=');

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
