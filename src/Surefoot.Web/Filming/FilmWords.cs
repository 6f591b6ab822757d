using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Film.Captions;
using Surefoot.Film.Hearing;
using Surefoot.Film.Notes;
using Surefoot.Library;
using Surefoot.Web.Listing;

namespace Surefoot.Web.Filming;

/// <summary>What the film's room says, and how it tells its times to the script beside it.</summary>
internal static class FilmWords
{
    /// <summary>Seconds, as an address and the script read them: "8.2".</summary>
    public static string Seconds(FilmTime at) => at.Seconds.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>Stretches for the script: "8.2-11 52-60.5".</summary>
    public static string Spans(IEnumerable<(FilmTime From, FilmTime To)> stretches) => string.Join(' ', stretches.Select(s => $"{Seconds(s.From)}-{Seconds(s.To)}"));

    /// <summary>
    /// Where a time leads without a script: into the film's own file where it has an address (W3C, Media Fragments URI 1.0),
    /// else to this page again, which takes the film there once it was chosen.
    /// </summary>
    public static string Way(FilmShown shown, FilmTime at) =>
        $"{(shown.Kept is { Address.Length: > 0 } film ? film.Address.Split('#')[0] : $"/dance/{shown.Page.Id}/film")}#t={Seconds(at)}";

    public static string Of(Stretch stretch, NotebookSettings settings)
    {
        if (stretch.Part is not { } part) return "Talk.";
        var words = new List<string> { part, stretch.FromCount == stretch.ToCount ? $"count {stretch.FromCount}" : $"counts {stretch.FromCount} to {stretch.ToCount}" };
        words.Add(stretch.Role is { } role ? $"for the {HallRoles.Of(role, settings)}" : "for everybody");
        if (Of(stretch.Side) is { Length: > 0 } side) words.Add(side);
        words.Add(stretch.How switch { ShownHow.AtTempo => "at tempo", ShownHow.Counted => "with counts", _ => "step by step" });
        if (stretch.Tempo is { } tempo) words.Add($"{tempo} counts a minute");
        return $"{string.Join(", ", words)}.{Heard(stretch.Sure)}";
    }

    public static string Where(Difference difference, NotebookSettings settings) =>
        $"{difference.Part}{(difference.Counts.Length > 0 ? $", count {difference.Counts}" : "")}{(difference.Role is { } role ? $", {HallRoles.Of(role, settings)}" : "")}";

    // Where all was heard nothing need be said.
    private static string Heard(double sure) => Math.Round(sure * 10) switch
    {
        >= 10 => "",
        < 1 => " Hardly any of its counts were heard.",
        var tenths => string.Create(CultureInfo.InvariantCulture, $" About {tenths} of 10 counts were heard."),
    };

    private static string Of(FilmSide side) => side switch
    {
        FilmSide.Back => "from the back",
        FilmSide.Front => "from the front",
        FilmSide.Side => "from the side",
        FilmSide.Above => "from above",
        _ => "",
    };
}
