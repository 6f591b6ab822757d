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

        // Tags and the like are counted on behind the repeat.
        var extras = score.Extras.DistinctBy(e => e.Part).Select(e => (e.Part, Before: score.BeforeExtra(e.Part)!.Value, Sheet: sheet.Extras.FirstOrDefault(x => x.Part == e.Part))).ToList();
        foreach (var (part, _, _) in extras)
        {
            for (var count = 1; count <= score.Parts[part].Length.Ceiling; count++) json.WriteStringValue((Count.At(count) + Beats.Of(score.Parts[part].CountOffset)).Name);
        }

        json.WriteEndArray();
        json.WriteNumber("repeat", score.Counts.Ceiling);
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
        foreach (var step in sheet.Danced) Danced(step, 0);
        foreach (var (_, before, extra) in extras)
        {
            foreach (var step in extra?.Danced ?? []) Danced(step, before);
        }

        json.WriteEndArray();
        json.WriteStartArray("calls");
        foreach (var call in sheet.Calls) Called(call, 0);
        foreach (var (_, before, extra) in extras)
        {
            foreach (var call in extra?.Calls ?? []) Called(call, before);
        }

        json.WriteEndArray();
        json.WriteEndObject();

        void Danced(NamedStep step, int before)
        {
            json.WriteStartObject();
            json.WriteNumber("at", before + step.At.Value.ToDouble());
            json.WriteString("words", Said(step.Role, step.Words));
            json.WriteEndObject();
        }

        void Called(Call call, int before)
        {
            json.WriteStartObject();
            json.WriteNumber("from", before + call.From);
            json.WriteNumber("counts", call.Counts);
            json.WriteNumber("step", before + call.Step.Value.ToDouble());
            json.WriteString("words", Said(call.Role, call.Words));
            json.WriteEndObject();
        }

        string Said(Role? role, string words)
        {
            var said = CallWords.For(words, lead, follow);
            return role is { } one && one != Role.Dancer ? $"{HallRoles.Of(one, settings)}: {said}" : said;
        }
    }
}
