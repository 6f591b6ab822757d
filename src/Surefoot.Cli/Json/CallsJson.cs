using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;

namespace Surefoot.Cli.Json;

/// <summary>What is called in a dance; the shape is docs/calls.schema.json.</summary>
internal static class CallsJson
{
    public static void Write(Utf8JsonWriter json, Reading reading)
    {
        var (score, sheet) = (reading.Score, reading.Calls);
        json.WriteStartObject();
        json.WriteString("title", score.Title);
        json.WriteString("meter", score.Facts.Meter.ToString());
        json.WriteNumber("counts", score.Counts.Ceiling);
        json.WriteStartArray("before");
        Calls(json, sheet.Opening, reading, inRepeat: false);
        json.WriteStartArray("calls");
        Calls(json, sheet.Calls, reading, inRepeat: true);
        json.WriteStartArray("extras");
        foreach (var extra in sheet.Extras)
        {
            json.WriteStartObject();
            json.WriteString("part", score.Parts[extra.Part].Label);
            if (extra.AfterWall is { } wall) json.WriteNumber("afterRepeat", wall);
            json.WriteStartArray("calls");
            Calls(json, extra.Calls, reading, inRepeat: false);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("once");
        foreach (var one in sheet.Walls)
        {
            json.WriteStartObject();
            json.WriteNumber("repeat", one.Wall);
            json.WriteStartArray("calls");
            Calls(json, [one.Call], reading, inRepeat: true);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    // Fills the array that was begun and ends it.
    private static void Calls(Utf8JsonWriter json, ValueList<Call> calls, Reading reading, bool inRepeat)
    {
        foreach (var (call, says) in CallVoice.Over(calls, Role.Lead.Word(), Role.Follow.Word()))
        {
            json.WriteStartObject();
            json.WriteNumber("from", call.From);
            json.WriteNumber("counts", call.Counts);
            json.WriteString("step", call.Step.Name);
            if (inRepeat && reading.Score.PartAt(Count.At(call.From)) is { } place)
            {
                json.WriteString("part", place.Part.Label);
                json.WriteString("count", (place.InPart + Beats.Of(place.Part.CountOffset)).Name);
            }

            json.WriteString("role", call.Role is { } role && role != Role.Dancer ? role.Word() : "all");
            json.WriteString("words", CallWords.Plain(call.Words));
            json.WriteString("says", says);
            json.WriteBoolean("written", call.Written);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
