using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;

namespace Surefoot.Web.Deeds;

/// <summary>What a page is called where only its text is at hand.</summary>
internal static class Titles
{
    public static string Of(string? text, string otherwise) =>
        text is not null && PageReader.Read(text, FigureBook.Shipped).Page.Title is { Length: > 0 } title ? title : otherwise;
}
