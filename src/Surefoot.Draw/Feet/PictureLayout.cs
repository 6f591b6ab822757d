using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Feet;

/// <summary>Sizes that all pictures of a dance share, so that a step looks as long in the last part as in the first.</summary>
/// <param name="CountsPerLine">Two bars, or four in 3/4, unless the panels would get too small.</param>
/// <param name="PanelsPerLine">How many panels of the least width fit side by side.</param>
/// <param name="StartWidth">Room for the stance at the beginning of a line, in picture units.</param>
internal sealed record PictureLayout(PictureStyle Style, int CountsPerLine, double PanelsPerLine, double Width, double StartWidth)
{
    /// <summary>Strip for the role's name beside the panels, in picture units.</summary>
    public const double NameWidth = 28;

    /// <summary>Below this, in millimetres, a panel's letters cannot be read on paper; the line is broken instead.</summary>
    private const double LeastPanel = 13;

    /// <summary>Least and most metres of floor across a panel: less would make standing feet giants, more would make walks dwarfs.</summary>
    private const double LeastFloor = 0.84, MostFloor = 1.25;

    public static PictureLayout Of(DanceScore score, DanceMotion motion, FootPictureOptions options, Palette palette, string prefix)
    {
        var width = options.Width * Svg.Millimetre;
        var start = Math.Min(width * 0.2, options.Panel * 1.12 * Svg.Millimetre);
        var room = width - start - NameWidth;
        var most = room / (LeastPanel * Svg.Millimetre);
        // Waltzes, and dances built of sixes, are broken at sixes.
        var sixes = score.Facts.Meter.Beats % 3 == 0 || (score.Parts.Count > 0 && score.Parts.All(p => p.Length.Ceiling % 6 == 0));
        var perLine = sixes ? 12 : 8;
        // A few crowded lines are broken by themselves; where most are, all lines are made shorter alike.
        while (perLine > 3 && MostAreCrowded(AllLines(score, motion, options, perLine, double.MaxValue), most)) perLine /= 2;
        var widest = AllLines(score, motion, options, perLine, most).Select(l => l.Width).DefaultIfEmpty(1).Max();
        var panel = Math.Min(options.Panel * Svg.Millimetre, room / Math.Max(1, widest));
        var style = new PictureStyle(palette, prefix, panel / Floor(score, motion, options), panel, options.Words);
        return new(style, perLine, most, width, start);
    }

    private static bool MostAreCrowded(IEnumerable<PictureLine> lines, double most)
    {
        var (crowded, all) = (0, 0);
        foreach (var line in lines)
        {
            all++;
            if (line.Width > most) crowded++;
        }

        return crowded * 2 > all;
    }

    private static double Floor(DanceScore score, DanceMotion motion, FootPictureOptions options)
    {
        var spread = AllLines(score, motion, options, 8, double.MaxValue).SelectMany(l => l.Columns).SelectMany(c => c.Frames)
            .Select(f => f?.Spread ?? 0).DefaultIfEmpty(0).Max();
        var foot = Body.FootLength * Body.ReferenceStature * PictureStyle.FeetLarger;
        return Math.Clamp(spread + foot + 0.07, LeastFloor, MostFloor);
    }

    private static IEnumerable<PictureLine> AllLines(DanceScore score, DanceMotion motion, FootPictureOptions options, int perLine, double widest) =>
        Enumerable.Range(0, score.Sections.Count).SelectMany(s => PictureLines.Of(score, motion, s, options, perLine, widest));
}
