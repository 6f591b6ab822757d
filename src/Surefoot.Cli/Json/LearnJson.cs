using System.Text.Json;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Scoring;

namespace Surefoot.Cli.Json;

/// <summary>What there is to learn in a dance, and how hard it is; the shape is docs/learn.schema.json.</summary>
internal static class LearnJson
{
    /// <param name="known">The dances the class knows; null where nobody said any.</param>
    public static void Write(Utf8JsonWriter json, string file, DanceScore score, Difficulty difficulty, IReadOnlyList<DanceScore>? known)
    {
        json.WriteStartObject();
        json.WriteString("file", file);
        json.WriteString("title", score.Title);
        json.WriteNumber("counts", score.Counts.Ceiling);
        if (known is null) json.WriteNull("dancesKnown");
        else json.WriteNumber("dancesKnown", known.Count);
        json.WriteStartArray("roles");
        foreach (var role in score.Roles.Where(r => r.Steps.Count > 0))
        {
            json.WriteStartObject();
            json.WriteString("role", role.Role.Word());
            json.WriteStartArray("bites");
            foreach (var load in LearningLoad.AtEverySize(score, role.Role, known)) Load(json, load, known is not null);
            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("suggested", difficulty.Suggested.Word());
        json.Text("stated", Levels.Read(score.Facts.Level)?.Word());
        json.WriteStartArray("reasons");
        foreach (var reason in difficulty.Reasons)
        {
            json.WriteStartObject();
            json.WriteString("level", reason.Level.Word());
            json.WriteString("says", reason.Says);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Load(Utf8JsonWriter json, LearningLoad load, bool known)
    {
        json.WriteStartObject();
        json.WriteNumber("bite", load.Bite);
        json.WriteNumber("new", load.New);
        json.WriteNumber("mirrored", load.Mirrored);
        json.WriteNumber("changed", load.Changed);
        if (known) json.WriteNumber("known", load.Known);
        else json.WriteNull("known");
        json.WriteEndObject();
    }
}
