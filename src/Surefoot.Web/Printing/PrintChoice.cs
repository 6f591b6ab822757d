using Surefoot.Dance.Basics;
using Surefoot.Draw;
using Surefoot.Library;

namespace Surefoot.Web.Printing;

/// <summary>What was chosen for a printed sheet, as it stands in the page's address.</summary>
internal sealed record PrintChoice(bool Large, bool FeetOnly, Role? Only, PaperSize Paper, bool Pictures)
{
    public static PrintChoice Of(IQueryCollection query) => new(
        query["type"] == "large",
        query["words"] == "feet",
        query["role"].ToString() switch { "lead" => Role.Lead, "follow" => Role.Follow, _ => null },
        query["paper"] == "letter" ? PaperSize.Letter : PaperSize.A4,
        query["pictures"] != "none");

    /// <param name="forCouples">A dance without partners has one sheet for everybody.</param>
    public SheetOptions Options(NotebookSettings settings, bool forCouples, int doubts) => new()
    {
        LargePrint = Large,
        FeetOnly = FeetOnly,
        Only = forCouples ? Only : null,
        Paper = Paper,
        Pictures = Pictures,
        LeadWord = settings.LeadWord,
        FollowWord = settings.FollowWord,
        Doubts = doubts,
    };
}
