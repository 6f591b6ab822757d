using Surefoot.Dance.Basics;

namespace Surefoot.Draw.Feet;

/// <summary>A turn as an arc along the edge of the panel: it begins where the dancer looked and ends, with a head, where the dancer looks.</summary>
internal static class Dial
{
    /// <param name="radius">In picture units.</param>
    public static string Draw(Palette palette, Facing from, Turn turn, double x, double y, double radius)
    {
        if (turn.IsNone) return "";
        var side = Math.Sign(turn.Eighths);
        // A full turn or more is drawn as a ring with a gap, or its beginning would be hidden under its end.
        var eighths = Math.Min(Math.Abs(turn.Eighths), 7);
        var end = from + turn;
        var begin = end + new Turn(-side * eighths);
        var (x1, y1) = On(begin, x, y, radius);
        var (x2, y2) = On(end, x, y, radius);
        var large = eighths > 4 ? 1 : 0;
        var sweep = side > 0 ? 0 : 1;
        var line = $"<path d=\"M{Svg.N(x1)} {Svg.N(y1)}A{Svg.N(radius)} {Svg.N(radius)} 0 {large} {sweep} {Svg.N(x2)} {Svg.N(y2)}\" "
            + $"fill=\"none\" stroke=\"{palette.Ink}\" stroke-width=\"2.6\"/>";
        var start = $"<circle cx=\"{Svg.N(x1)}\" cy=\"{Svg.N(y1)}\" r=\"3.4\" fill=\"{palette.Ink}\"/>";
        // Along the ring at its end; screen y grows downwards, and a turn to the left runs against the clock.
        var head = Arrow.Head(palette.Ink, x2, y2, -side * end.Cosine, side * end.Sine, 9);
        return line + start + head;
    }

    private static (double X, double Y) On(Facing facing, double x, double y, double radius) =>
        (x - (facing.Sine * radius), y - (facing.Cosine * radius));
}
