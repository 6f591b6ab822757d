using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Feet;

/// <summary>
/// A line of panels: the counts run along its middle, the lead's feet above them and the follow's below;
/// one strip below the counts when both do the same.
/// </summary>
internal static class LineDrawing
{
    /// <summary>Height of the counts and of the words outside the panels, in picture units.</summary>
    private const double CountsHeight = 36, WordsHeight = 25;

    /// <summary>The roles' names stand on their side in a strip of its own, which grows with nothing.</summary>
    private const double MostStripName = 1.2;

    /// <summary>Height of a line that only says which counts are danced again.</summary>
    private const double SaysHeight = 40;

    public static (string Text, double Height) Draw(
        DanceScore score, DanceMotion motion, int section, PictureLine line, PictureLayout layout, RoleNames names, IReadOnlyList<Role> roles, double y)
    {
        var style = layout.Style;
        var ink = style.Palette.Ink;
        var first = layout.StartWidth + PictureLayout.NameWidth;
        if (line.OnlyWords)
        {
            var says = string.Join("; ", line.Columns.Select(c => c.Says));
            return (Svg.Text("Counts " + says, first, y + 26, 24, ink, "start"), SaysHeight);
        }

        var two = roles.Count == 2 && !line.Together;
        var panel = style.PanelSize;
        var words = style.Words;
        var upper = y + (two && HasWords(line, 0) ? WordsHeight * words : 4);
        var counts = two ? upper + panel : y;
        var lower = counts + (CountsHeight * words);
        var height = lower + panel + (HasWords(line, two ? 1 : 0) ? WordsHeight * words : 4) - y;
        var text = new StringBuilder();
        var stanceSize = Math.Min(layout.StartWidth - 6, height);
        var stanceTop = two ? y + ((height - stanceSize) / 2) : lower + panel - stanceSize;
        text.Append(StanceDrawing.Draw(style, Stances(score, motion, section, line, roles), score.Facts.Floor, names, 0, Math.Max(y, stanceTop), stanceSize));
        if (two) text.Append(StripName(names.Title(roles[0]), first, upper + (panel / 2), ink, words));
        if (roles.Count == 2) text.Append(StripName(two ? names.Title(roles[1]) : "both", first, lower + (panel / 2), ink, words));
        var x = first;
        foreach (var column in line.Columns)
        {
            var width = column.Width * panel;
            if (column.Says is { } says)
            {
                text.Append(Says(says, x + (width / 2), counts, ink, width - 8, words));
            }
            else
            {
                var beat = column.At.Value.IsWhole;
                text.Append(Svg.Text(column.CountName, x + (panel / 2), counts + (27 * words), (beat ? 27 : 23) * words, ink, bold: beat));
                if (two) text.Append(Strip(style, column.Frames[0], false, x, upper, upper - (8 * words)));
                text.Append(Strip(style, column.Frames[two ? 1 : 0], line.Together, x, lower, lower + panel + (18 * words)));
            }

            x += width;
        }

        return (text.ToString(), height);
    }

    private static bool HasWords(PictureLine line, int strip) =>
        line.Columns.Any(c => c.Says is null && c.Frames[strip] is { } frame && FrameWords.Of(frame).Length > 0);

    private static string Strip(PictureStyle style, Frame? frame, bool together, double x, double y, double wordsY)
    {
        var panel = FrameDrawing.Draw(style, frame, together, x, y);
        var words = frame is null ? "" : FrameWords.Of(frame);
        return words.Length == 0
            ? panel
            : panel + Svg.Text(words, x + (style.PanelSize / 2), wordsY, 19 * style.Words, style.Palette.Ink, room: style.PanelSize - 2);
    }

    /// <summary>"9–14" over the counts' line and "as 1–6" under it, so that it reads in either number of strips.</summary>
    private static string Says(string says, double x, double counts, string ink, double room, double words)
    {
        var at = says.IndexOf(" as ", StringComparison.Ordinal);
        return Svg.Text(says[..at], x, counts + (27 * words), 25 * words, ink, bold: true, room: room)
            + Svg.Text(says[(at + 1)..], x, counts + (CountsHeight * words) + (32 * words), 22 * words, ink, room: room);
    }

    private static string StripName(string name, double x, double y, string ink, double words) =>
        $"<g transform=\"translate({Svg.N(x - 9)} {Svg.N(y)})rotate(-90)\">{Svg.Text(name.ToLowerInvariant(), 0, 0, 21 * Math.Min(words, MostStripName), ink, room: 150)}</g>";

    /// <summary>How each drawn role stands before the first drawn moment of the line.</summary>
    private static List<(Role, Stance)> Stances(DanceScore score, DanceMotion motion, int section, PictureLine line, IReadOnlyList<Role> roles)
    {
        var drawn = line.Columns.FirstOrDefault(c => c.Says is null) ?? line.Columns[0];
        var at = drawn.At + (score.Sections[section].Start - Count.First);
        var stances = new List<(Role, Stance)>();
        foreach (var role in roles)
        {
            if (score.Of(role) is not { } steps || motion.Of(role) is not { } moved) continue;
            var next = 0;
            while (next < steps.Steps.Count && steps.Steps[next].At < at) next++;
            stances.Add((role, moved.Stances[next]));
        }

        return stances;
    }
}
