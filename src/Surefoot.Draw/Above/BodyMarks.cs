using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Draw.Feet;

namespace Surefoot.Draw.Above;

/// <summary>Feet, trunks and heads. The lead is full and square-booted, the follow hatched and pointed.</summary>
internal static class BodyMarks
{
    public static string Feet(PictureStyle style, View view, MovingDancer dancer, DancerMoved at)
    {
        var text = new StringBuilder();
        foreach (var foot in (Foot[])[Foot.Left, Foot.Right])
        {
            var place = at.Foot(foot);
            var mark = place.Weight > 0.5 - 1e-9 ? SoleMark.Weighted
                : place.Up > 0.025 ? SoleMark.InAir
                : place.Toe > 10 ? SoleMark.HeelOnly
                : place.Toe < -10 ? SoleMark.ToeOnly
                : SoleMark.Flat;
            text.Append(Sole.DrawTurned(style, dancer.Role, foot, mark, place.Angle, view.X(place.At), view.Y(place.At), style.SoleScale * dancer.Stature / Body.ReferenceStature));
        }

        return text.ToString();
    }

    public static string Trunk(PictureStyle style, View view, MovingDancer dancer, DancerMoved at)
    {
        var (p, k) = (style.Palette, dancer.Stature * view.Scale);
        var fill = dancer.Role == Role.Follow ? $"url(#{style.Prefix}s)" : p.Soft;
        return $"<ellipse transform=\"{Stand(view, at)}\" rx=\"{Svg.N(Body.HalfBreadth * k)}\" ry=\"{Svg.N(Body.HalfDepth * k)}\" fill=\"{fill}\" fill-opacity=\"0.5\" stroke=\"{p.Ink}\" stroke-width=\"4\"/>";
    }

    public static string Head(PictureStyle style, View view, MovingDancer dancer, DancerMoved at)
    {
        var (p, k) = (style.Palette, dancer.Stature * view.Scale);
        var (rx, ry) = (Body.HeadAside * k, Body.HeadAhead * k);
        var (fill, rim) = dancer.Role == Role.Follow ? (p.Paper, p.Ink) : (p.Ink, p.Ink);
        // The nose says which way the dancer looks.
        return $"<g transform=\"{Stand(view, at)}\"><path d=\"M{Svg.N(-rx * 0.45)} {Svg.N(-ry * 0.85)}L0 {Svg.N(-ry * 1.4)}L{Svg.N(rx * 0.45)} {Svg.N(-ry * 0.85)}Z\" fill=\"{rim}\" stroke=\"{rim}\" stroke-width=\"4\" stroke-linejoin=\"round\"/>"
            + $"<ellipse rx=\"{Svg.N(rx)}\" ry=\"{Svg.N(ry)}\" fill=\"{fill}\" stroke=\"{rim}\" stroke-width=\"5\"/></g>";
    }

    // Up on the picture is the floor's first direction, and angles count to the left.
    private static string Stand(View view, DancerMoved at) => $"translate({Svg.N(view.X(at.Middle))} {Svg.N(view.Y(at.Middle))})rotate({Svg.N(-at.Angle)})";
}
