using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Feet;

/// <summary>What the marks mean, each shown once with a few words beside it.</summary>
internal static class PictureKey
{
    /// <summary>Size of a mark's panel, of its words and of the step from row to row, in picture units.</summary>
    private const double Mark = 84, Size = 21, RowHeight = 94;

    /// <summary>Least room for a mark with its words, in picture units.</summary>
    private const double LeastCell = 340;

    public static (string Text, double Height) Draw(
        PictureLayout layout, IReadOnlyList<PictureLine> lines, IReadOnlyList<Role> roles, RoleNames names, double y)
    {
        // In large print the marks and what they mean grow with the other words.
        var larger = layout.Style.Words;
        var (mark, size, rowHeight, leastCell) = (Mark * larger, Size * larger, RowHeight * larger, LeastCell * larger);
        var style = layout.Style with { UnitsPerMetre = 138 };
        var ink = style.Palette.Ink;
        var cells = Cells(style, lines, roles, names);
        var across = Math.Max(1, (int)(layout.Width / leastCell));
        var width = layout.Width / across;
        var text = new StringBuilder();
        for (var i = 0; i < cells.Count; i++)
        {
            var (x, top) = (i % across * width, y + (i / across * rowHeight));
            text.Append($"<rect x=\"{Svg.N(x)}\" y=\"{Svg.N(top)}\" width=\"{Svg.N(mark)}\" height=\"{Svg.N(mark)}\" rx=\"7\" fill=\"{style.Palette.Floor}\"/>");
            text.Append($"<g transform=\"translate({Svg.N(x + (mark / 2))} {Svg.N(top + (mark / 2))})scale({Svg.N(larger)})\">{cells[i].Mark}</g>");
            var words = cells[i].Says.Split('\n');
            var baseline = top + (mark / 2) + (7 * larger) - ((words.Length - 1) * size * 0.6);
            foreach (var line in words)
            {
                text.Append(Svg.Text(line, x + mark + 10, baseline, size, ink, "start", room: width - mark - 18));
                baseline += size * 1.2;
            }
        }

        return (text.ToString(), Math.Ceiling(cells.Count / (double)across) * rowHeight);
    }

    private static List<(string Mark, string Says)> Cells(PictureStyle style, IReadOnlyList<PictureLine> lines, IReadOnlyList<Role> roles, RoleNames names)
    {
        var p = style.Palette;
        var role = roles.Count == 1 ? roles[0] : Role.Dancer;
        string One(SoleMark mark, double x = 0, double y = 0, Foot foot = Foot.Right) =>
            Sole.Draw(style, role, foot, mark, Facing.Front, x, y, style.SoleScale);
        var frames = lines.SelectMany(l => l.Columns).SelectMany(c => c.Frames).OfType<Frame>().ToList();
        bool Uses(SoleMark mark) => frames.Exists(f => f.Mark(Foot.Left) == mark || f.Mark(Foot.Right) == mark);
        var cells = new List<(string, string)>
        {
            (One(SoleMark.Weighted), "full: takes\nthe weight"),
            (One(SoleMark.Standing), "grey: the foot\nstood on so far"),
            (One(SoleMark.Left, -16, 14) + One(SoleMark.Weighted, 14, -10) + Arrow.Line(p.Ink, -16, 14, 2, -2, 0, 0), "dashed: where\nthe foot was"),
        };
        if (frames.Exists(f => f.WeightComesBack(Foot.Left) || f.WeightComesBack(Foot.Right)))
        {
            var ring = Sole.Ring(style, role, Foot.Right, Facing.Front, 0, 0);
            cells.Add((ring + One(SoleMark.Weighted), "ringed: the foot stays,\nthe weight comes to it"));
        }

        if (Uses(SoleMark.ToeOnly)) cells.Add((One(SoleMark.ToeOnly), "toe down,\nno weight"));
        if (Uses(SoleMark.HeelOnly)) cells.Add((One(SoleMark.HeelOnly), "heel down,\nno weight"));
        if (Uses(SoleMark.Flat)) cells.Add((One(SoleMark.Flat), "flat down,\nno weight"));
        if (Uses(SoleMark.InAir)) cells.Add((One(SoleMark.InAir), "dotted: in\nthe air"));
        if (Uses(SoleMark.Resting)) cells.Add((One(SoleMark.Resting), "thin line:\nat rest"));
        if (frames.Exists(f => !f.Turned.IsNone))
        {
            cells.Add((One(SoleMark.Weighted) + Dial.Draw(p, Facing.Front, new Turn(-4), 0, 0, 34), "the body turns:\nfrom dot to head"));
        }

        if (roles.Count == 2)
        {
            cells.Add((Sole.Draw(style, Role.Lead, Foot.Right, SoleMark.Weighted, Facing.Front, 0, 0, style.SoleScale), $"{names.The(Role.Lead)}:\nsquare, plain"));
            cells.Add((Sole.Draw(style, Role.Follow, Foot.Right, SoleMark.Weighted, Facing.Front, 0, 0, style.SoleScale), $"{names.The(Role.Follow)}:\npointed, striped"));
            if (lines.Any(l => l.Together && !l.OnlyWords)) cells.Add((One(SoleMark.Weighted), "both the same:\nround"));
        }

        return cells;
    }
}
