namespace Surefoot.Draw.Feet;

/// <summary>Arrows: the way a foot takes.</summary>
internal static class Arrow
{
    /// <param name="dx">Direction the head looks, of length one.</param>
    /// <param name="size">Half its breadth, in picture units.</param>
    public static string Head(string fill, double x, double y, double dx, double dy, double size)
    {
        var (bx, by) = (x - (dx * size * 1.3), y - (dy * size * 1.3));
        return $"<path d=\"M{Svg.N(x + (dx * size * 0.7))} {Svg.N(y + (dy * size * 0.7))}"
            + $"L{Svg.N(bx - (dy * size * 0.8))} {Svg.N(by + (dx * size * 0.8))}"
            + $"L{Svg.N(bx + (dy * size * 0.8))} {Svg.N(by - (dx * size * 0.8))}Z\" fill=\"{fill}\"/>";
    }

    /// <summary>A line from one place to another with a head, bent by <paramref name="bendX"/>, <paramref name="bendY"/> at its middle.</summary>
    public static string Line(string ink, double x1, double y1, double x2, double y2, double bendX, double bendY)
    {
        var (cx, cy) = ((x1 + x2) / 2 + bendX, (y1 + y2) / 2 + bendY);
        var (dx, dy) = (x2 - cx, y2 - cy);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length < 1) return "";
        (dx, dy) = (dx / length, dy / length);
        var (ex, ey) = (x2 - (dx * 8), y2 - (dy * 8));
        return $"<path d=\"M{Svg.N(x1)} {Svg.N(y1)}Q{Svg.N(cx)} {Svg.N(cy)} {Svg.N(ex)} {Svg.N(ey)}\" fill=\"none\" "
            + $"stroke=\"{ink}\" stroke-width=\"2.2\"/>" + Head(ink, ex, ey, dx, dy, 7);
    }
}
