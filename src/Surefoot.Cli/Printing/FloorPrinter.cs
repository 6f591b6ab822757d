using System.Globalization;
using Surefoot.Dance;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;

namespace Surefoot.Cli.Printing;

/// <summary>What a dance needs of a floor, in sentences.</summary>
internal static class FloorPrinter
{
    /// <summary>Net square feet a person of the International Building Code, Table 1004.5: concentrated, and with tables and chairs.</summary>
    private const int Concentrated = 7, WithTables = 15;

    /// <summary>A repeat that ends less than this, in metres, nearer to centre or wall keeps its lane. Working value.</summary>
    private const double Strays = 0.05;

    public static void Print(Screen screen, Reading reading, FloorFigures figures, Room? room, int tempo)
    {
        var score = reading.Score;
        screen.Out.WriteLine(screen.Skin.Title(Cells.Harmless(score.Title)));
        if (score.Facts.Floor == Floor.Track) Track(screen, reading, figures, room, tempo);
        else Walls(screen, figures, room);
        if (room is null) return;
        screen.Out.WriteLine();
        screen.Say($"The floor is {M(room.Short)} by {M(room.Long)} m, {Math.Round(room.Area)} square metres. All this is about room to dance.");
        screen.Say($"How many people may be in a room is set by local codes and the fire authority. For comparison only: by the occupant-load factors of the International Building Code, Table 1004.5, that floor counts for {room.OccupantLoad(Concentrated)} people close together ({Concentrated} square feet each) or {room.OccupantLoad(WithTables)} with tables ({WithTables} square feet each).");
    }

    private static void Track(Screen screen, Reading reading, FloorFigures figures, Room? room, int tempo)
    {
        var (along, seconds) = (figures.Travel.X, reading.Score.Counts.ToDouble() * 60 / tempo);
        screen.Say(!figures.Travels
            ? $"One repeat of {Prose.Number(reading.Score.Counts.Ceiling, "count")} ends where it began: the circle does not go round."
            : $"One repeat of {Prose.Number(reading.Score.Counts.Ceiling, "count")} goes {M(Math.Abs(along))} m {(along > 0 ? "along" : "against")} the line of dance, in {Math.Round(seconds)} seconds at {tempo} counts a minute.");
        if (Math.Abs(figures.Travel.Y) >= Strays) screen.Say($"Each repeat ends {M(Math.Abs(figures.Travel.Y))} m nearer to the {(figures.Travel.Y > 0 ? "centre" : "wall")}.");
        screen.Say($"Across the line of dance a couple needs {M(figures.Across)} m: {M(figures.Out)} m outwards of where the lead begins and {M(figures.In)} m inwards.");
        var spacing = figures.Spacing;
        screen.Say($"Couples can follow each other at {M(spacing.Metres)} m, from lead to lead; count {Named(reading, spacing.At)} needs it, where the {spacing.Behind.Word()} behind would meet the {spacing.Ahead.Word()} ahead. Nearer than {M(figures.Apart)} m is tight.");
        if (room is not null) Rings(screen, figures, room, seconds);
        screen.Say("Worked out on a straight line of dance, with everybody on the same count; corners and late starters need more.");
    }

    private static void Rings(Screen screen, FloorFigures figures, Room room, double seconds)
    {
        var rings = figures.Rings(room, 2);
        var spacing = figures.Apart;
        screen.Out.WriteLine();
        if (rings.Count == 0)
        {
            screen.Say("No ring of this dance fits into that room.");
            return;
        }

        for (var i = 0; i < rings.Count; i++)
        {
            var lap = rings[i].Lap;
            var name = i == 0 ? "outer ring" : "second ring, inside it,";
            screen.Say($"The {name} is {M(lap)} m round and holds {Prose.Number(rings[i].Couples(spacing), "couple")} at {M(spacing)} m{(!figures.Travels ? "" : $"; a lap takes {Math.Round(lap / Math.Abs(figures.Travel.X), 1).ToString("0.#", CultureInfo.InvariantCulture)} repeats, about {Time(lap / Math.Abs(figures.Travel.X) * seconds)}")}.");
        }

        if (rings.Count == 1) screen.Say("A second ring inside it does not fit.");
        else screen.Say($"Both rings together hold {Prose.Number(rings[0].Couples(spacing) + rings[1].Couples(spacing), "couple")}.");
    }

    private static void Walls(Screen screen, FloorFigures figures, Room? room)
    {
        var (across, along) = (figures.Across, figures.Back + figures.Ahead);
        screen.Say($"On its first wall a dancer covers {M(across)} m from side to side and {M(along)} m from front to back.");
        screen.Say($"Everybody moves alike, so neighbours may stand nearer than that; the room has to be kept free at the edges of the floor.");
        if (room is null) return;
        // Arms' room between neighbours, in metres: working values.
        const double Beside = 1.0, Behind = 1.2;
        var rows = 1 + Math.Max(0, (int)Math.Floor((room.Short - along) / Behind));
        var inRow = 1 + Math.Max(0, (int)Math.Floor((room.Long - across) / Beside));
        var fits = room.Short >= along && room.Long >= across;
        screen.Say(fits
            ? $"With {M(Beside)} m to the neighbour and {M(Behind)} m to the line ahead, {rows} lines of {inRow} fit: {Prose.Number(rows * inRow, "dancer")}."
            : "The dance itself does not fit into that room.");
    }

    private static string Named(Reading reading, double count) => count < 1 ? "1" : CountName(reading, count);

    private static string CountName(Reading reading, double count)
    {
        var at = Count.At((int)Math.Floor(count));
        return reading.Score.PartAt(at) is { } place && place.Part.Label.Length > 0
            ? $"{(place.InPart + Beats.Of(place.Part.CountOffset)).Name} of {Cells.Harmless(place.Part.Label)}" : at.Name;
    }

    private static string Time(double seconds) => seconds < 90 ? $"{Math.Round(seconds)} seconds" : $"{(int)Math.Round(seconds) / 60} min {(int)Math.Round(seconds) % 60} s";

    private static string M(double metres) => Math.Round(metres, 1).ToString("0.0", CultureInfo.InvariantCulture);
}
