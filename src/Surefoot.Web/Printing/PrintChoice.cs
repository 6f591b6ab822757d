using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Library;

namespace Surefoot.Web.Printing;

/// <summary>What was chosen for a printed sheet, as it stands in the page's address.</summary>
internal sealed record PrintChoice(bool Large, bool FeetOnly, Role? Only, PaperSize Paper, bool Pictures, bool Calls)
{
    /// <param name="settings">The notebook's, which hold where the address says nothing.</param>
    public static PrintChoice Of(IQueryCollection query, NotebookSettings settings) => new(
        query["type"] == "large",
        query["words"] == "feet",
        query["role"].ToString() switch { "lead" => Role.Lead, "follow" => Role.Follow, _ => null },
        query["paper"].ToString() switch { "letter" => PaperSize.Letter, "a4" => PaperSize.A4, _ => HallSheet.PaperOf(settings) },
        query["pictures"] != "none",
        query["sheet"] == "calls");

    /// <param name="forCouples">A dance without partners has one sheet for everybody.</param>
    public SheetOptions Options(NotebookSettings settings, bool forCouples, int doubts) => HallSheet.Of(settings) with
    {
        LargePrint = Large,
        FeetOnly = FeetOnly,
        Only = forCouples ? Only : null,
        Paper = Paper,
        Pictures = Pictures,
        Doubts = doubts,
        DoubtsAt = "the problems beside its text say why",
    };
}
