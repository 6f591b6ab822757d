using Surefoot.Draw.Sheet.Plan;

namespace Surefoot.Draw.Sheet.Html;

/// <summary>
/// Chooses the type size at which a dance fits one page. An estimate from letter counts: browsers and fonts
/// differ, so it leaves a reserve, and a dance that does not fit at the smallest size simply takes two pages.
/// </summary>
internal static class SheetFit
{
    /// <summary>Usual and least type size of the rows in points. Below nine points nobody reads a sheet from a music stand.</summary>
    private const double Usual = 11.5, Least = 9;

    /// <summary>
    /// Most, usual and least type size in points for large print. Guides for readers with low vision ask for 16
    /// at least; a dance that would fill two pages anyway takes the usual size.
    /// </summary>
    private const double MostLarge = 18, UsualLarge = 17, LeastLarge = 16;

    /// <summary>Millimetres in a point.</summary>
    private const double Point = 0.3528;

    /// <summary>Mean advance of a letter over type size; broad system faces reach this.</summary>
    private const double Advance = 0.52;

    /// <summary>Share of the page's height that the estimate may fill.</summary>
    private const double Reserve = 0.94;

    /// <summary>Width and height of the printed area in millimetres, margins of 14 at the sides and 13 above and below taken off.</summary>
    public static (double Width, double Height) Area(PaperSize paper) => paper == PaperSize.Letter ? (187.9, 253.4) : (182, 271);

    public static double TypeSize(SheetPlan plan, SheetOptions options)
    {
        var (most, least) = options.LargePrint ? (MostLarge, LeastLarge) : (Usual, Least);
        var (width, height) = Area(options.Paper);
        for (var size = most; size >= least; size -= 0.25)
        {
            if (Height(plan, size, width) <= height * Reserve) return size;
        }

        return options.LargePrint ? UsualLarge : Least;
    }

    /// <summary>Millimetres left under the words on the first page, or 0 where they take more than one.</summary>
    public static double Left(SheetPlan plan, SheetOptions options)
    {
        var (width, height) = Area(options.Paper);
        return Math.Max(0, (height * Reserve) - Height(plan, TypeSize(plan, options), width));
    }

    /// <summary>Height of the text in millimetres at a type size in points.</summary>
    private static double Height(SheetPlan plan, double size, double width)
    {
        var line = size * Point * HtmlStyle.LineHeight;
        var em = size * Point;
        var around = (2.6 * em) + (Lines(plan.Opening, width, em * 1.08) * line * 1.15) + em
            + (plan.Doubt.Length == 0 ? 0 : (Lines(plan.Doubt, width - (2 * em), em) * line) + (1.6 * em))
            + (Lines(plan.Order, width, em) * line) + (plan.Notes.Sum(n => Lines(n, width, em)) * line)
            + (Lines(plan.Care, width, em) * line) + (3 * em)
            + (plan.Key.Length == 0 ? 0 : (Lines(plan.Key, width, em * HtmlStyle.OursSize) * line * HtmlStyle.OursSize) + (0.6 * em));
        return around + plan.Parts.Sum(p => Height(p, line, em, width, plan.HasSides));
    }

    private static double Height(PartPlan part, double line, double em, double width, bool sides)
    {
        var right = width * (sides ? HtmlStyle.SideShare : HtmlStyle.WordsShare);
        var left = width * (sides ? HtmlStyle.SideShare : HtmlStyle.HeadShare);
        var beside = PartMarkup.RowsBesideHeading(part);
        var head = (1.5 * line) + (Lines(part.Start, beside == 0 ? width : left, em * 0.94) * line);
        var covered = 0.0;
        var below = 0.0;
        for (var i = 0; i < part.Rows.Count; i++)
        {
            var row = part.Rows[i];
            var lines = row.HasSides
                ? Math.Max(Lines(row.Lead, left, em), Lines(row.Follow, right, em))
                : row.Ours.Count > 0 ? HtmlStyle.OursSize * row.Ours.Sum(o => Lines(o.ToString(), right, em * HtmlStyle.OursSize))
                : Lines(row.Both ?? row.Note ?? "", right, em);
            var height = (lines * line) + (HtmlStyle.RowPadding * (row.Ours.Count > 0 ? 1 : 2) * em);
            if (i < beside) covered += height;
            else below += height;
        }

        return Math.Max(head, covered) + below + (HtmlStyle.PartGap * em);
    }

    private static int Lines(string text, double width, double em) =>
        text.Length == 0 ? 0 : (int)Math.Ceiling(text.Length * em * Advance / width);
}
