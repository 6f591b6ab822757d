using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Draw;
using Surefoot.Library;
using Surefoot.Web.Live;

namespace Surefoot.Web.Printing;

/// <summary>What was chosen for a printed sheet, as it stands in the page's address.</summary>
internal sealed record PrintChoice(bool Large, bool FeetOnly, Role? Only, PaperSize Paper, bool Pictures, bool Calls)
{
    /// <summary>Places in doubt that are named on a sheet.</summary>
    private const int MostPlaces = 3;

    /// <param name="settings">The notebook's, which hold where the address says nothing.</param>
    public static PrintChoice Of(IQueryCollection query, NotebookSettings settings) => new(
        query["type"] == "large",
        query["words"] == "feet",
        query["role"].ToString() switch { "lead" => Role.Lead, "follow" => Role.Follow, _ => null },
        query["paper"].ToString() switch { "letter" => PaperSize.Letter, "a4" => PaperSize.A4, _ => HallSheet.PaperOf(settings) },
        query["pictures"] != "none",
        query["sheet"] == "calls");

    /// <param name="forCouples">A dance without partners has one sheet for everybody.</param>
    public SheetOptions Options(NotebookSettings settings, bool forCouples, IReadOnlyList<Problem> errors) => HallSheet.Of(settings) with
    {
        LargePrint = Large,
        FeetOnly = FeetOnly,
        Only = forCouples ? Only : null,
        Paper = Paper,
        Pictures = Pictures,
        Doubts = errors.Count,
        DoubtsAt = At(errors, settings),
    };

    // On paper nothing stands beside the text: the places are named.
    private static string At(IReadOnlyList<Problem> errors, NotebookSettings settings)
    {
        var places = errors.Select(e => ReadingJson.Place(e, settings)).Where(p => p.Length > 0).Distinct(StringComparer.Ordinal).ToList();
        return places.Count == 0 ? "Surefoot says why beside its text" : $"look at {string.Join("; ", places.Take(MostPlaces))}{(places.Count > MostPlaces ? " and more" : "")}";
    }
}
