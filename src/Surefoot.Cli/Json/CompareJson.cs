using System.Text.Json;
using Surefoot.Dance.Scoring;
using Surefoot.Likeness;

namespace Surefoot.Cli.Json;

/// <summary>Two dances side by side; the shape is docs/compare.schema.json.</summary>
internal static class CompareJson
{
    /// <param name="files">As they were typed, with slashes.</param>
    public static void Write(Utf8JsonWriter json, (string First, string Second) files, DanceScore first, DanceScore second)
    {
        var verdict = Likeness.Verdict.Of(first, second);
        var compared = verdict.Compared;
        json.WriteStartObject();
        Dance(json, "first", files.First, first.Title, compared.FirstLength, compared.AlikeInFirst);
        Dance(json, "second", files.Second, second.Title, compared.SecondLength, compared.AlikeInSecond);
        LikeJson.Verdict(json, verdict);
        json.WriteStartArray("rows");
        foreach (var row in LaidOut.Of(first, second, compared))
        {
            json.WriteStartObject();
            json.WriteString("fate", row.Fate switch { Fate.Alike => "alike", Fate.Near => "near", Fate.Other => "other", _ => "alone" });
            json.WriteNumber("counts", row.Counts);
            json.Text("first", row.First);
            json.WriteString("firstWords", row.FirstWords);
            json.Text("second", row.Second);
            json.WriteString("secondWords", row.SecondWords);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Dance(Utf8JsonWriter json, string name, string file, string title, int counts, int alike)
    {
        json.WriteStartObject(name);
        json.WriteString("file", file);
        json.WriteString("title", title);
        json.WriteNumber("counts", counts);
        json.WriteNumber("alike", alike);
        json.WriteEndObject();
    }
}
