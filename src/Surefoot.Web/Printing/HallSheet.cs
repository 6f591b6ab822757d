using Surefoot.Draw;
using Surefoot.Library;

namespace Surefoot.Web.Printing;

/// <summary>A sheet as a notebook's settings want it.</summary>
internal static class HallSheet
{
    public static SheetOptions Of(NotebookSettings settings) => new()
    {
        LeadWord = settings.LeadWord,
        FollowWord = settings.FollowWord,
        Paper = PaperOf(settings),
    };

    public static PaperSize PaperOf(NotebookSettings settings) => settings.Paper == Paper.Letter ? PaperSize.Letter : PaperSize.A4;
}
