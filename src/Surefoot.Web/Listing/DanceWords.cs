using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Library;

namespace Surefoot.Web.Listing;

/// <summary>What a list says of a dance.</summary>
internal static class DanceWords
{
    public static string Title(ShelfItem dance) => dance.Title.Length > 0 ? dance.Title : dance.Name;

    public static string Kind(ShelfItem dance) => dance switch
    {
        { ForCouples: true, Floor: Floor.Track } => "Couples, circle",
        { ForCouples: true } => "Couples",
        { Walls: { } walls } => walls == 1 ? "Line, 1 wall" : $"Line, {walls} walls",
        _ => "Line",
    };

    public static string Tempo(ShelfItem dance) => dance switch
    {
        { TempoFrom: { } from, TempoTo: { } to } when from != to => $"{from}–{to} a minute",
        { TempoFrom: { } one } => $"{one} a minute",
        { TempoTo: { } one } => $"{one} a minute",
        _ => "",
    };

    public static string Counts(ShelfItem dance) => dance.Counts == 1 ? "1 count" : $"{dance.Counts} counts";

    /// <summary>How sound it is, with the name of the sign that stands before it.</summary>
    public static (string Sign, string Says) State(ShelfItem dance) => dance switch
    {
        { Errors: > 0 } => ("error", dance.Errors == 1 ? "1 place cannot be danced" : $"{dance.Errors} places cannot be danced"),
        { Warnings: > 0 } => ("warning", dance.Warnings == 1 ? "1 warning" : $"{dance.Warnings} warnings"),
        _ => ("clean", "Clean"),
    };

    /// <summary>What becomes of the dances of a notebook that goes into the bin.</summary>
    public static string WithIt(int dances) => dances switch
    {
        0 => "There are no dances in it.",
        1 => "Its one dance goes there with it.",
        _ => $"Its {dances} dances go there with it.",
    };

    public static string Size(long bytes, Measures measures) => bytes < 1 << 20
        ? $"{Math.Max(1, bytes >> 10)} kB"
        : $"{measures.Number(bytes / 1048576.0, "0.#")} MB";

    public static string Moment(DateTimeOffset moment) => moment.ToLocalTime().ToString("d MMMM yyyy, HH:mm", CultureInfo.InvariantCulture);
}
