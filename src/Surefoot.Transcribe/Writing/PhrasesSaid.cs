using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Source;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Writing;

/// <summary>Finds on each line of the sheet what can be said in other words, as it stands there.</summary>
internal sealed class PhrasesSaid
{
    // Letters of a phrase that is looked for word by word. Working value: nobody says more in one.
    private const int LooksFor = 2 * SheetWords.Longest;

    private static readonly Regex Words = new(@"[\p{L}\p{N}½¼¾']+", RegexOptions.CultureInvariant);

    // Between two phrases, and around what is left between them.
    private static readonly Regex Around = new(@"^(?:[^\p{L}\p{N}½¼¾(]|\b(?:and|then)\b)+|(?:[^\p{L}\p{N}½¼¾)]|\b(?:and|then)\b)+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Columns = new(@"\s{3,}", RegexOptions.CultureInvariant);

    // "Section 1: Vines" and "[1-8] Heel struts" are headings, whatever else they name.
    private static readonly Regex NamesPart = new(@"^\W*(?:part|section|set|segment|tag|bridge|intro|ending|chorus|verse)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private readonly List<SheetLine> _stood;
    private readonly PhraseWords _plain;
    private readonly SheetPlan _plan;
    private readonly ILookup<int, Item> _items;
    private readonly Dictionary<string, HashSet<(int Line, int At)>> _everywhere = new(StringComparer.Ordinal);

    public PhrasesSaid(List<SheetLine> stood, PhraseWords plain, StandIns signs, SheetPlan plan, List<DraftPart> parts)
    {
        (_stood, _plain, _plan) = (stood, plain, plan);
        var drafts = parts.SelectMany(p => p.Lines).SelectMany(l => l.Phrases, (l, p) => (Line: l.From.Number, Item: new Item(signs.AsItStood(p.Said), p.Text, p.Unknown.Count == 0) { Unknown = p.Unknown is [var one] ? one : "" }));
        var asides = plan.Asides.Select(a => (Line: a.Number, Item: new Item(signs.AsItStood(a.Plain), "", true)));
        _items = drafts.Concat(asides).Where(i => i.Item.Said.Length > 0).ToLookup(i => i.Line, i => i.Item);
    }

    public ValueList<PhraseSaid> Of(LineRead line)
    {
        var stood = _stood[line.Number - 1];
        var found = line.Kind switch
        {
            LineKind.Steps => Located(stood.Plain, _items[line.Number]),
            // Under counts of its own nothing was understood; without them it was taken for talk.
            LineKind.Remark => _items[line.Number].Any() ? Located(stood.Plain, _items[line.Number]) : [Whole(stood.Plain)],
            // The head of a table's columns names what stands under it.
            LineKind.Heading when Columns.IsMatch(stood.Plain) => [],
            LineKind.Fact or LineKind.Heading when _plain.Speaks(stood.Plain) && !stood.Plain.Contains(':') && !NamesPart.IsMatch(stood.Plain) && CountLabel.AtStart(stood.Plain, 0, out _) is null => [Whole(stood.Plain)],
            _ => [],
        };
        var said = new List<PhraseSaid>();
        foreach (var one in found.OrderBy(f => f.From).Select(f => WithoutLabel(stood.Plain, f)).Where(f => f.Length is > 0 and <= SheetWords.Longest))
        {
            said.Add(Said(stood, one));
            // One word that nobody understood in a phrase that was: who knows it may tell it by itself.
            var at = one.Unknown.Length == 0 || one.Unknown.Length == one.Length ? -1 : stood.Plain.IndexOf(one.Unknown, one.From, one.Length, StringComparison.OrdinalIgnoreCase);
            if (at >= 0 && IsFree(stood.Plain, at, one.Unknown.Length, [])) said.Add(Said(stood, new(at, one.Unknown.Length, "", false)) with { OneWord = true });
        }

        // What has counts or columns inside is no one phrase.
        if (found.Count > 1 && !found.Exists(f => WithoutLabel(stood.Plain, f) != f) && (found.Min(f => f.From), found.Max(f => f.From + f.Length)) is var (from, to)
            && to - from <= SheetWords.Longest && !Columns.IsMatch(stood.Plain[from..to]))
        {
            said.Add(Said(stood, new(from, to - from, string.Join(", ", found.OrderBy(f => f.From).Select(f => f.Reads).Where(r => r.Length > 0)), found.TrueForAll(f => f.Understood))) with { WholeLine = true });
        }

        return said.ToValueList();
    }

    private static Found Whole(string line)
    {
        var (from, length) = Trimmed(line, 0, line.Length);
        return new(from, length, "", true);
    }

    // "Triple step left (1&2)": the counts stay the reader's.
    private static Found WithoutLabel(string line, Found found)
    {
        var words = line.Substring(found.From, found.Length);
        if (CountLabel.Inside(words, out var at, out var length) is null) return found;
        if (words[(at + length)..].Trim(' ', ',', '.', ';').Length == 0) return found with { Length = words[..at].TrimEnd(' ', ',', '.', ';').Length };
        return at == 0 ? found with { From = found.From + length + (words[length..].Length - words[length..].TrimStart().Length), Length = words[length..].TrimStart().Length } : found;
    }

    private PhraseSaid Said(SheetLine line, Found found)
    {
        var words = line.Plain.Substring(found.From, found.Length);
        var time = new WordPlaces(words, wholePhrase: () => false).In(line.Plain).Count(p => p.At < found.From);
        var places = Everywhere(words);
        var here = places.Contains((line.Number, found.From));
        return new(words, new(line.Number, time), found.Reads, found.Understood, places.Count - (here ? 1 : 0)) { IsFound = here };
    }

    // Not in a title, where the same words only name the dance.
    private HashSet<(int Line, int At)> Everywhere(string words)
    {
        var key = SheetWord.KeyOf(words);
        if (_everywhere.TryGetValue(key, out var known)) return known;
        var places = new WordPlaces(words, () => _plain.Read(words) is { Unknown.Count: 0, Moves.Count: > 0 });
        return _everywhere[key] = _stood.Where(l => _plan.Kinds.GetValueOrDefault(l.Number) != LineKind.Title).SelectMany(l => places.In(l.Plain), (l, p) => (l.Number, p.At)).ToHashSet();
    }

    private static List<Found> Located(string line, IEnumerable<Item> items)
    {
        var found = new List<Found>();
        var left = new List<(int After, Item Item)>();
        var last = Begin(line);
        foreach (var item in items)
        {
            if (Place(line, item.Said, last, found) is { } place)
            {
                found.Add(new(place.At, place.Length, item.Reads, item.Understood, item.Unknown));
                last = place.At + place.Length;
            }
            else if (!found.Exists(f => Same(line.Substring(f.From, f.Length), item.Said)))
            {
                left.Add((last, item));
            }
        }

        // What was said together or danced again is meant by what stands between its neighbours.
        foreach (var some in left.GroupBy(l => l.After))
        {
            var reads = string.Join(", ", some.Select(s => s.Item.Reads).Where(r => r.Length > 0).Distinct(StringComparer.Ordinal));
            var until = found.Where(f => f.From >= some.Key).Select(f => f.From).DefaultIfEmpty(line.Length).Min();
            var (from, length) = Trimmed(line, some.Key, until);
            if (length > 0) found.Add(new(from, length, reads, some.All(s => s.Item.Understood)));
            else if (found.FindIndex(f => f.From + f.Length == some.Key) is var before and >= 0) found[before] = found[before] with { Reads = string.Join(", ", ((string[])[found[before].Reads, reads]).Where(r => r.Length > 0)) };
        }

        return found;
    }

    // After the line's counts, and the word for who dances it.
    private static int Begin(string line)
    {
        var at = CountLabel.AtStart(line, 0, out var after) is null ? 0 : after;
        return RoleWords.Opens(line, at, out _, out var end, out var marked) && marked ? end : at;
    }

    private static (int From, int Length) Trimmed(string line, int from, int until)
    {
        if (until <= from) return (from, 0);
        var piece = line[from..until];
        var core = Around.Replace(Around.Replace(piece, ""), "");
        return core.Length == 0 ? (from, 0) : (from + piece.IndexOf(core, StringComparison.Ordinal), core.Length);
    }

    // As it stands, from where the one before ended or else anywhere; else with other marks between its words.
    private static (int At, int Length)? Place(string line, string said, int from, List<Found> taken)
    {
        foreach (var begin in (int[])[from, 0])
        {
            for (var at = begin; at <= line.Length && (at = line.IndexOf(said, at, StringComparison.OrdinalIgnoreCase)) >= 0; at++)
            {
                if (IsFree(line, at, said.Length, taken)) return (at, said.Length);
            }
        }

        if (said.Length > LooksFor) return null;
        var words = Words.Matches(said).Select(m => Regex.Escape(m.Value)).ToList();
        if (words.Count == 0) return null;
        var loose = new Regex(string.Join(@"[^\p{L}\p{N}]+(?:(?:and|then|while)\b[^\p{L}\p{N}]+)*", words), RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
        foreach (var begin in (int[])[from, 0])
        {
            for (var match = loose.Match(line, Math.Min(begin, line.Length)); match.Success; match = match.NextMatch())
            {
                if (IsFree(line, match.Index, match.Length, taken)) return (match.Index, match.Length);
            }
        }

        return null;
    }

    private static bool IsFree(string line, int at, int length, List<Found> taken) =>
        length > 0 && !Inside(line, at, -1) && !Inside(line, at + length - 1, 1) && !taken.Exists(t => at < t.From + t.Length && t.From < at + length);

    // In the middle of a word: "hop" is not in "shop".
    private static bool Inside(string line, int at, int beside) =>
        char.IsLetterOrDigit(line[at]) && at + beside >= 0 && at + beside < line.Length && char.IsLetterOrDigit(line[at + beside]);

    private static bool Same(string a, string b) => SheetWord.KeyOf(a) == SheetWord.KeyOf(b);

    private sealed record Item(string Said, string Reads, bool Understood)
    {
        /// <summary>The one word of it that nobody understood; empty for none, and for several.</summary>
        public string Unknown { get; init; } = "";
    }

    private sealed record Found(int From, int Length, string Reads, bool Understood, string Unknown = "");
}
