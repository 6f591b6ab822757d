using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Feet;

/// <summary>
/// Draws one moment of one dancer in a panel. One action a panel is what keeps a rock or a triple in place
/// readable: the same spot of floor is never drawn on twice.
/// </summary>
internal static class FrameDrawing
{
    /// <summary>Shorter ways than this, in metres, are not drawn as ways: the foot stayed where it was.</summary>
    private const double Stayed = 0.05;

    /// <param name="x">Left edge of the panel.</param>
    /// <param name="y">Upper edge of the panel.</param>
    public static string Draw(PictureStyle style, Frame? frame, bool together, double x, double y)
    {
        var size = style.PanelSize;
        var gap = 2.0;
        var inner = size - (2 * gap);
        var text = new StringBuilder();
        text.Append($"<rect x=\"{Svg.N(x + gap)}\" y=\"{Svg.N(y)}\" width=\"{Svg.N(inner)}\" height=\"{Svg.N(size)}\" rx=\"7\" fill=\"{style.Palette.Floor}\"/>");
        if (frame is null)
        {
            var middle = Svg.N(x + (size / 2));
            text.Append($"<circle cx=\"{middle}\" cy=\"{Svg.N(y + (size / 2))}\" r=\"3\" fill=\"{style.Palette.Faint}\"/>");
            return text.ToString();
        }

        // The panel cuts off what reaches beyond it: a walk comes from outside.
        text.Append($"<svg x=\"{Svg.N(x + gap)}\" y=\"{Svg.N(y)}\" width=\"{Svg.N(inner)}\" height=\"{Svg.N(size)}\">");
        text.Append(Inside(style, frame, together, (inner, size)));
        text.Append(Dial.Draw(style.Palette, frame.Before.Facing, frame.Turned, inner / 2, size / 2, (inner / 2) - 8));
        return text.Append("</svg>").ToString();
    }

    private static string Inside(PictureStyle style, Frame frame, bool together, (double Width, double Height) box)
    {
        var (cx, cy) = (box.Width / 2, box.Height / 2);
        var role = together ? Role.Dancer : frame.Role;
        var (left, right) = (frame.Place(Foot.Left), frame.Place(Foot.Right));
        var centre = (left.At + right.At) * 0.5;
        var text = new StringBuilder();
        foreach (var foot in new[] { Foot.Left, Foot.Right })
        {
            var (from, to) = (frame.Before.Foot(foot), frame.Place(foot));
            // A sliver of a sole at the edge would look like a mark of its own.
            var seen = X(from.At) >= 0 && X(from.At) <= box.Width && Y(from.At) >= 0 && Y(from.At) <= box.Height;
            if (seen && IsActing(frame.Mark(foot)) && (to.At - from.At).Length > Stayed) text.Append(Sole.Draw(style, role, foot, SoleMark.Left, from.Facing, X(from.At), Y(from.At), style.SoleScale));
        }

        var acting = IsActing(frame.Mark(Foot.Left)) ? Foot.Left : Foot.Right;
        var overlap = (left.At - right.At).Length < 0.32;
        foreach (var foot in new[] { acting.Other(), acting })
        {
            var place = frame.Place(foot);
            var mark = frame.Mark(foot);
            if (frame.WeightComesBack(foot)) text.Append(Sole.Ring(style, role, foot, place.Facing, X(place.At), Y(place.At)));
            else if (overlap && foot == acting && IsActing(mark)) text.Append(Sole.Halo(style, role, foot, place.Facing, X(place.At), Y(place.At)));
            text.Append(Sole.Draw(style, role, foot, mark, place.Facing, X(place.At), Y(place.At), style.SoleScale));
        }

        foreach (var foot in new[] { Foot.Left, Foot.Right })
        {
            if (IsActing(frame.Mark(foot))) text.Append(Way(style, frame, foot, frame.Before.Foot(foot).At));
        }

        return text.ToString();

        double X(Spot at) => cx - ((at.Y - centre.Y) * style.UnitsPerMetre);
        double Y(Spot at) => cy - ((at.X - centre.X) * style.UnitsPerMetre);

        string Way(PictureStyle s, Frame f, Foot foot, Spot from)
        {
            var to = f.Place(foot);
            var moved = to.At - from;
            if (moved.Length <= Stayed) return "";
            var edge = Edge(s, to, moved) + 5;
            var length = moved.Length * s.UnitsPerMetre;
            if (length - edge < 6) return "";
            var keep = (length - edge) / length;
            var bend = Bend(f.Main.Direction) * s.UnitsPerMetre;
            var look = f.After.Facing;
            var (x1, y1) = (X(from), Y(from));
            return Arrow.Line(
                s.Palette.Ink,
                x1,
                y1,
                x1 + ((X(to.At) - x1) * keep),
                y1 + ((Y(to.At) - y1) * keep),
                -look.Sine * bend,
                -look.Cosine * bend,
                box);
        }
    }

    private static bool IsActing(SoleMark mark) => mark is not (SoleMark.Standing or SoleMark.Resting or SoleMark.Left);

    /// <summary>How far a way bows forward, in metres, to lead round the standing foot.</summary>
    private static double Bend(Direction direction) => direction switch
    {
        Direction.Across or Direction.ForwardAcross or Direction.LockFront => 0.14,
        Direction.Behind or Direction.LockBehind => -0.14,
        _ => 0,
    };

    /// <summary>From the middle of a sole to its edge along a way, in picture units; the sole taken as an ellipse.</summary>
    private static double Edge(PictureStyle style, FootPlace place, Spot way)
    {
        var length = way.Length;
        var along = ((way.X * place.Facing.Cosine) + (way.Y * place.Facing.Sine)) / length / (Sole.Length / 2);
        var across = ((way.Y * place.Facing.Cosine) - (way.X * place.Facing.Sine)) / length / Sole.HalfBreadth;
        return style.SoleScale / Math.Sqrt((along * along) + (across * across));
    }
}
