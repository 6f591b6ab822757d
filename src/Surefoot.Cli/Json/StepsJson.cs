using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw;

namespace Surefoot.Cli.Json;

/// <summary>Every action of one repeat; the shape is docs/steps.schema.json.</summary>
internal static class StepsJson
{
    public static void Write(Utf8JsonWriter json, Reading reading)
    {
        var score = reading.Score;
        var holds = reading.Couple is { } couple ? HoldInForce.All(couple).ToDictionary(h => h.At) : [];
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
                if (holds.TryGetValue(step.At, out var hold)) Hold(json, hold);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Hold(Utf8JsonWriter json, HoldInForce hold)
    {
        json.WriteString("hold", hold.Name ?? hold.InFull);
        json.WriteBoolean("named", hold.Name is not null);
        json.WriteStartArray("hands");
        foreach (var (pair, height) in hold.Hands)
        {
            json.WriteStartObject();
            json.WriteString("lead", pair.LeadHand().Word());
            json.WriteString("follow", pair.FollowHand().Word());
            if (height is { } high) json.WriteString("height", high switch { HandHeight.Raised => "overhead", HandHeight.Shoulder => "shoulder", _ => "low" });
            json.WriteEndObject();
        }

        json.WriteEndArray();
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
