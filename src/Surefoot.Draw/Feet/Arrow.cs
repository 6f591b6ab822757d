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
    /// <param name="box">Width and height of the box it is drawn in, from 0; a way from outside then begins inside the box's edge.</param>
    public static string Line(string ink, double x1, double y1, double x2, double y2, double bendX, double bendY, (double Width, double Height)? box = null)
    {
        var (cx, cy) = ((x1 + x2) / 2 + bendX, (y1 + y2) / 2 + bendY);
        var (dx, dy) = (x2 - cx, y2 - cy);
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        if (length < 1) return "";
        (dx, dy) = (dx / length, dy / length);
        var (ex, ey) = (x2 - (dx * 8), y2 - (dy * 8));
        if (box is { } room)
        {
            var t = Entry(room, x1, y1, cx, cy, ex, ey);
            ((x1, y1), (cx, cy)) = (On(t, x1, y1, cx, cy, ex, ey), (cx + ((ex - cx) * t), cy + ((ey - cy) * t)));
        }

        return $"<path d=\"M{Svg.N(x1)} {Svg.N(y1)}Q{Svg.N(cx)} {Svg.N(cy)} {Svg.N(ex)} {Svg.N(ey)}\" fill=\"none\" "
            + $"stroke=\"{ink}\" stroke-width=\"2.2\"/>" + Head(ink, ex, ey, dx, dy, 7);
    }

    /// <summary>Room between the box's edge and the beginning of a way that comes from outside, in picture units.</summary>
    private const double Inset = 5;

    /// <summary>Steps in which a way is searched for its entry into the box; finer ones cannot be seen.</summary>
    private const int Search = 64;

    /// <summary>The share of a bent way, 0 to 1, at which it comes into a box; 0 when it never does.</summary>
    private static double Entry((double Width, double Height) box, double x1, double y1, double cx, double cy, double x2, double y2)
    {
        for (var i = 0; i < Search; i++)
        {
            var t = i / (double)Search;
            var (x, y) = On(t, x1, y1, cx, cy, x2, y2);
            if (x >= Inset && x <= box.Width - Inset && y >= Inset && y <= box.Height - Inset) return t;
        }

        return 0;
    }

    /// <summary>A place on the way: a quadratic curve.</summary>
    private static (double X, double Y) On(double t, double x1, double y1, double cx, double cy, double x2, double y2)
    {
        var (a, b, c) = ((1 - t) * (1 - t), 2 * t * (1 - t), t * t);
        return ((a * x1) + (b * cx) + (c * x2), (a * y1) + (b * cy) + (c * y2));
    }
}
