using System.Text;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Sheet.Plan;

namespace Surefoot.Draw.Sheet.Html;

/// <summary>
/// All pictures together under the words: on the first page where there is room, else on the second, which then
/// is the back of the sheet. The block does not break, so the printer decides by the room there really is.
/// </summary>
internal static class SheetPictures
{
    /// <summary>Widths of a panel in millimetres, largest first, of which the first that fits is taken.</summary>
    private static readonly double[] Panels = [19, 18, 17, 16, 15, 14];

    /// <summary>How much larger everything in the pictures is in large print: names and counts grow with the feet.</summary>
    private const double LargeZoom = 1.6;

    /// <summary>How much larger than that counts and words are then: stretched alone they would be smaller than usual type.</summary>
    private const double LargeWords = 1.45;

    /// <summary>Heading over all pictures and gaps between them, in millimetres; the styles of the sheet make them.</summary>
    private const double HeadingHeight = 13, Gap = 3.5;

    /// <summary>Share of a page's height that one picture may fill; browsers round and fonts differ.</summary>
    private const double PageShare = 0.96;

    private const string Heading = "<h2>In pictures</h2>\n";

    public static string Of(DanceScore score, DanceMotion motion, SheetPlan plan, SheetOptions options)
    {
        var sections = FootPicture.WorthDrawing(score);
        if (sections.Count == 0) return "";
        var page = SheetFit.Area(options.Paper).Height;
        var zoom = options.LargePrint ? LargeZoom : 1;
        // The rest of the first page is worth smaller panels; a page of their own is filled with what it holds.
        var pictures = Fitting(SheetFit.Left(plan, options)) ?? Fitting(page) ?? Drawn(Panels[0]);
        var text = new StringBuilder("<section class=\"pictures\">\n");
        // The heading stands inside the first figure, so that it goes where that goes.
        for (var i = 0; i < pictures.Count; i++)
        {
            text.Append("<figure>").Append(i == 0 ? Heading : "").Append(pictures[i].Svg).Append("</figure>\n");
        }

        return text.Append("</section>\n").ToString();

        List<(string Svg, double Height)>? Fitting(double room)
        {
            if (room < HeadingHeight * 3) return null;
            foreach (var panel in Panels)
            {
                var drawn = Drawn(panel);
                if (HeadingHeight + drawn.Sum(d => (d.Height * zoom) + Gap) <= room) return drawn;
            }

            return null;
        }

        List<(string Svg, double Height)> Drawn(double panel)
        {
            var look = new FootPictureOptions
            {
                Only = options.Only,
                // The sheet stretches pictures to its own width, which is what enlarges them.
                Width = SheetFit.Area(options.Paper).Width / zoom,
                Panel = panel,
                LeaveOutRepeats = true,
                Words = options.LargePrint ? LargeWords : 1,
                LeadWord = options.LeadWord,
                FollowWord = options.FollowWord,
            };
            // What is higher than the rest of its page is drawn in pieces, so that pages are full; the first one has the heading as well.
            var whole = page * PageShare;
            var left = whole - HeadingHeight;
            var drawn = new List<(string Svg, double Height)>();
            for (var i = 0; i < sections.Count; i++)
            {
                foreach (var piece in FootPicture.OnPage(score, motion, sections[i], look with { Key = i == sections.Count - 1 }, $"p{i}", left / zoom, whole / zoom))
                {
                    var height = (piece.Height * zoom) + Gap;
                    left = (height <= left + Gap ? left : whole) - height;
                    drawn.Add(piece);
                }
            }

            return drawn;
        }
    }
}
