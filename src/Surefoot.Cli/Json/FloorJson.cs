using System.Text.Json;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;

namespace Surefoot.Cli.Json;

/// <summary>What a dance needs of a floor; the shape is docs/floor.schema.json. Metres and seconds.</summary>
internal static class FloorJson
{
    public static void Write(Utf8JsonWriter json, Reading reading, FloorFigures figures, Room? room, int tempo)
    {
        var (score, seconds) = (reading.Score, reading.Score.Counts.ToDouble() * 60 / tempo);
        json.WriteStartObject();
        json.WriteString("title", score.Title);
        json.WriteString("floor", score.Facts.Floor == Floor.Track ? "track" : "walls");
        json.WriteNumber("tempo", tempo);
        json.WriteNumber("secondsPerRepeat", R(seconds));
        json.WriteNumber("travelAhead", R(figures.Travel.X));
        json.WriteNumber("travelLeft", R(figures.Travel.Y));
        json.WriteNumber("roomRight", R(figures.Out));
        json.WriteNumber("roomLeft", R(figures.In));
        json.WriteNumber("roomBack", R(figures.Back));
        json.WriteNumber("roomAhead", R(figures.Ahead));
        if (score.Facts.Floor == Floor.Track)
        {
            json.WriteNumber("leastSpacing", R(figures.Spacing.Metres));
            json.WriteNumber("leastSpacingCount", R(figures.Spacing.At));
        }

        if (room is not null) InRoom(json, score.Facts.Floor, figures, room, seconds);
        json.WriteEndObject();
    }

    private static void InRoom(Utf8JsonWriter json, Floor floor, FloorFigures figures, Room room, double seconds)
    {
        json.WriteStartObject("room");
        json.WriteNumber("short", R(room.Short));
        json.WriteNumber("long", R(room.Long));
        json.WriteNumber("occupantLoadAt7SquareFeet", room.OccupantLoad(7));
        json.WriteNumber("occupantLoadAt15SquareFeet", room.OccupantLoad(15));
        json.WriteString("caution", "Occupant load is set by local codes and the fire authority; these two figures only compare.");
        if (floor == Floor.Track)
        {
            json.WriteNumber("spacing", R(figures.Apart));
            json.WriteStartArray("rings");
            foreach (var ring in figures.Rings(room, 2))
            {
                json.WriteStartObject();
                json.WriteNumber("lap", R(ring.Lap));
                json.WriteNumber("couples", ring.Couples(figures.Apart));
                if (figures.Travels) json.WriteNumber("secondsPerLap", R(ring.Lap / Math.Abs(figures.Travel.X) * seconds));
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        json.WriteEndObject();
    }

    private static decimal R(double value) => Math.Round((decimal)value, 3) is var rounded && rounded == 0 ? 0 : rounded;
}
