using System.Text.Json;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Draw.Vocabulary;

namespace Surefoot.Cli.Json;

/// <summary>What can be written, for other programs.</summary>
internal static class WordsJson
{
    /// <summary>Everything that can be written, group by group.</summary>
    public static void All(Utf8JsonWriter json, FigureBook book)
    {
        json.WriteStartObject();
        json.WriteStartArray("groups");
        foreach (var group in WordGroups.All(book))
        {
            json.WriteStartObject();
            json.WriteString("group", group.Name);
            json.WriteStartArray("words");
            foreach (var entry in group.Entries) Write(json, null, entry);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    public static bool Knows(string word, FigureBook book) => book.Named(word) is not null || WordGroups.Find(word, book).Count > 0;

    /// <summary>What one word means; for a figure, its steps from either foot.</summary>
    public static void One(Utf8JsonWriter json, string word, FigureBook book)
    {
        var found = WordGroups.Find(word, book);
        var figure = book.Named(word);
        json.WriteStartObject();
        json.WriteString("asked", word);
        json.WriteStartArray("words");
        foreach (var (group, entry) in found) Write(json, group, entry);
        json.WriteEndArray();
        if (figure is null) json.WriteNull("figure");
        else Write(json, figure, book);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string? group, Entry entry)
    {
        json.WriteStartObject();
        if (group is not null) json.WriteString("group", group);
        json.WriteString("word", entry.Word);
        json.WriteString("meaning", entry.Meaning);
        Strings(json, "also", entry.Also);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Figure figure, FigureBook book)
    {
        json.WriteStartObject("figure");
        json.WriteString("name", figure.Name);
        json.WriteString("meaning", figure.Means);
        Strings(json, "also", figure.OtherNames);
        json.Text("source", figure.Source.Length > 0 ? figure.Source : null);
        json.WriteStartArray("danced");
        foreach (var shown in FigureShown.All(figure, book))
        {
            json.WriteStartObject();
            json.WriteString("way", shown.Way);
            json.WriteString("starting", shown.From.Word());
            json.WriteStartArray("roles");
            foreach (var role in shown.Score.Roles)
            {
                json.WriteStartObject();
                json.WriteString("role", role.Role.Word());
                json.WriteStartArray("steps");
                foreach (var step in role.Steps)
                {
                    json.WriteStartObject();
                    StepsJson.Action(json, step, floor: null);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> values)
    {
        json.WriteStartArray(name);
        foreach (var value in values) json.WriteStringValue(value);
        json.WriteEndArray();
    }
}
