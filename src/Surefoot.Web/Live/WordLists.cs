using System.Text.Json;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Web.Live;

/// <summary>
/// Every word the editor colours and offers, made from the words file and the figure book that pages are read
/// with, so that the two cannot drift apart.
/// </summary>
internal static class WordLists
{
    /// <summary>What the editor shows alike, by the kinds of rows of the words file. Small words and styling stay plain.</summary>
    private static string? Group(string kind) => kind switch
    {
        "verb" => "step",
        "way" or "side" or "foot" or "footnoun" or "feet" or "part" or "rotation" or "amount" or "small" or "large" => "way",
        "hold" => "hold",
        "handverb" or "pair" or "handnoun" or "head" => "hand",
        "role" => "role",
        "face" or "facing" or "relation" or "oclock" or "wallword" or "weight" or "even" or "free" or "noweight" => "look",
        "repeat" or "but" or "times" or "multiply" or "starting" or "mirrored" or "slow" or "quick" => "again",
        "header" => "header",
        "call" or "nocall" or "openingcall" => "call",
        _ => null,
    };

    public static void Write(Utf8JsonWriter json, FigureBook book)
    {
        var words = new HashSet<string>(StringComparer.Ordinal);
        json.WriteStartObject();
        json.WriteStartArray("words");
        foreach (var row in book.Rows)
        {
            if (Group(row.Kind) is { } group) Entry(json, group, [.. row.Spellings, .. row.Dated], row.Meaning, words);
        }

        foreach (var figure in book.All) Entry(json, "figure", [figure.Name, .. figure.OtherNames], figure.Means, words);
        Entry(json, "part", PageReader.HeadingWords, "opens a part of the dance", words);
        foreach (var level in Levels.Words) Entry(json, "level", [level], "level of the dance", words);
        json.WriteEndArray();
        json.WriteStartObject("forms");
        // The lexicon itself says which spellings are one word; the first of them stands for all.
        var first = new Dictionary<int, string>();
        var forms = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var word in words.OrderBy(w => w.Length).ThenBy(w => w, StringComparer.Ordinal))
        {
            foreach (var form in word.Length >= 3 && word.All(char.IsLetter) ? WordForms.Of(word).Prepend(word) : [word])
            {
                if (book.Lexicon.WordOf(form) is not (>= 0 and var id)) continue;
                if (first.TryAdd(id, form) || first[id] == form) continue;
                forms.TryAdd(form, first[id]);
            }
        }

        foreach (var (form, word) in forms) json.WriteString(form, word);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Entry(Utf8JsonWriter json, string group, IReadOnlyList<string> spellings, string meaning, HashSet<string> words)
    {
        json.WriteStartObject();
        json.WriteString("group", group);
        json.WriteString("meaning", meaning);
        json.WriteStartArray("spellings");
        foreach (var spelling in spellings)
        {
            var plain = spelling.TrimStart('=');
            json.WriteStringValue(plain);
            foreach (var word in plain.ToLowerInvariant().Split(' ', '-')) words.Add(word);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
