using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Cli.Json;

/// <summary>Every action of one repeat; the shape is docs/steps.schema.json.</summary>
internal static class StepsJson
{
    public static void Write(Utf8JsonWriter json, Reading reading)
    {
        var score = reading.Score;
        json.WriteStartObject();
        json.WriteString("title", score.Title);
        json.WriteString("meter", score.Facts.Meter.ToString());
        json.WriteNumber("counts", score.Counts.Ceiling);
        json.WriteStartArray("roles");
        foreach (var role in score.Roles)
        {
            json.WriteStartObject();
            json.WriteString("role", role.Role.Word());
            json.WriteStartArray("steps");
            foreach (var step in role.Steps)
            {
                json.WriteStartObject();
                Action(json, step, score.Facts.Floor);
                json.Text("part", score.Parts[score.Sections[step.Section].Part].Label);
                json.WriteNumber("line", reading.Page.Source.Place(step.Source.Start).Line);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>The fields that say what is done.</summary>
    /// <param name="floor">Null where it does not matter which way they look.</param>
    public static void Action(Utf8JsonWriter json, ScoreStep step, Floor? floor)
    {
        json.WriteString("count", step.At.Name);
        json.WriteString("foot", step.Foot switch { FootUse.Left => "left", FootUse.Right => "right", FootUse.Both => "both", _ => "none" });
        json.WriteString("kind", step.Kind.Word());
        json.WriteString("direction", step.Direction.Word());
        json.WriteNumber("turn", step.Turn.Eighths);
        if (floor is { } frame) json.WriteString("facing", step.Facing.Name(frame));
        json.WriteString("weight", step.Weight switch { Weight.Left => "left", Weight.Right => "right", _ => "both" });
    }
}
