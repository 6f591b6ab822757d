using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Draw;
using Surefoot.Library;
using Surefoot.Web.Listing;

namespace Surefoot.Web.OnTheFloor;

/// <summary>All that the screen for the dance floor knows of a dance: counts, bites, calls and what is danced. It lies in the page itself.</summary>
internal static class FloorData
{
    public static void Write(Utf8JsonWriter json, long page, Reading reading, NotebookSettings settings)
    {
        var (score, sheet) = (reading.Score, reading.Calls);
        var (lead, follow) = (HallRoles.Of(Role.Lead, settings), HallRoles.Of(Role.Follow, settings));
        json.WriteStartObject();
        json.WriteNumber("page", page);
        json.WriteString("title", score.Title);
        json.WriteNumber("beats", score.Facts.Meter.Beats);
        json.WriteNumber("tempo", MotionFile.TempoOf(reading, settings.UsualTempo));
        json.WriteStartArray("counts");
        for (var count = 1; count <= score.Counts.Ceiling; count++)
        {
            json.WriteStringValue(score.PartAt(Count.At(count)) is { } place ? (place.InPart + Beats.Of(place.Part.CountOffset)).Name : $"{count}");
        }

        json.WriteEndArray();
        json.WriteStartArray("bites");
        foreach (var bite in FloorBites.Of(score))
        {
            json.WriteStartObject();
            json.WriteString("name", bite.Name);
            json.WriteNumber("from", bite.From);
            json.WriteNumber("to", bite.To);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("opening");
        foreach (var call in sheet.Opening) json.WriteStringValue(Said(call.Role, call.Words));
        json.WriteEndArray();
        json.WriteStartArray("danced");
        foreach (var step in sheet.Danced)
        {
            json.WriteStartObject();
            json.WriteNumber("at", step.At.Value.ToDouble());
            json.WriteString("words", Said(step.Role, step.Words));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("calls");
        foreach (var call in sheet.Calls)
        {
            json.WriteStartObject();
            json.WriteNumber("from", call.From);
            json.WriteNumber("counts", call.Counts);
            json.WriteNumber("step", call.Step.Value.ToDouble());
            json.WriteString("words", Said(call.Role, call.Words));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();

        string Said(Role? role, string words)
        {
            var said = CallWords.For(words, lead, follow);
            return role is { } one && one != Role.Dancer ? $"{HallRoles.Of(one, settings)}: {said}" : said;
        }
    }
}
