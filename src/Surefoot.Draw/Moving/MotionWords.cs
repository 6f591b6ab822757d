using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>The words of a motion file: parts, steps, holds and joined hands, each with the count from which it holds.</summary>
internal static class MotionWords
{
    public static void Write(Utf8JsonWriter json, Reading reading)
    {
        Parts(json, reading);
        Steps(json, reading);
        Holds(json, reading.Couple);
        Hands(json, reading.Couple);
    }

    private static void Parts(Utf8JsonWriter json, Reading reading)
    {
        json.WriteStartArray("parts");
        foreach (var section in reading.Score.Sections)
        {
            var part = reading.Score.Parts[section.Part];
            json.WriteStartObject();
            json.WriteNumber("from", section.Start.Value.ToDouble());
            json.WriteNumber("counts", part.Length.ToDouble());
            json.WriteString("label", part.Label);
            json.WriteString("name", part.Name);
            json.WriteBoolean("mirrored", section.Mirrored);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Steps(Utf8JsonWriter json, Reading reading)
    {
        json.WriteStartArray("steps");
        foreach (var role in reading.Score.Roles)
        {
            var before = role.Start.Weight;
            foreach (var step in role.Steps)
            {
                json.WriteStartObject();
                json.WriteString("role", role.Role.Word());
                json.WriteNumber("at", step.At.Value.ToDouble());
                json.WriteString("count", InPart(reading, step.At));
                json.WriteString("words", StepWords.Of(step, before, spelled: true));
                if (step.Figure is { } figure) json.WriteString("figure", figure);
                json.WriteEndObject();
                before = step.Weight;
            }
        }

        json.WriteEndArray();
    }

    // As dancers count it: within its part.
    private static string InPart(Reading reading, Count at) =>
        reading.Score.PartAt(at) is { } place ? (place.InPart + Beats.Of(place.Part.CountOffset)).Name : at.Name;

    private static void Holds(Utf8JsonWriter json, CoupleSolution? couple)
    {
        json.WriteStartArray("holds");
        string? before = null;
        foreach (var moment in couple?.Moments ?? default)
        {
            var hold = moment.Where.Wide && moment.Joined != Pairs.None ? "" : moment.Where.Hold ?? "";
            if (hold == before) continue;
            json.WriteStartObject();
            json.WriteNumber("from", moment.At.Value.ToDouble());
            json.WriteString("hold", hold);
            json.WriteEndObject();
            before = hold;
        }

        json.WriteEndArray();
    }

    private static void Hands(Utf8JsonWriter json, CoupleSolution? couple)
    {
        json.WriteStartArray("hands");
        foreach (var track in couple?.Hands?.Pairs ?? default)
        {
            HandHeight? before = null;
            for (var m = 0; m < track.Heights.Count; m++)
            {
                if (track.Heights[m] == before) continue;
                before = track.Heights[m];
                json.WriteStartObject();
                json.WriteNumber("from", couple!.Moments[m].At.Value.ToDouble());
                json.WriteString("lead", track.Pair.LeadHand().Word());
                json.WriteString("follow", track.Pair.FollowHand().Word());
                json.WriteString("are", before switch { null => "apart", HandHeight.Low => "low", HandHeight.Shoulder => "at the shoulder", _ => "raised" });
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
    }
}
