using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Feet;

/// <summary>
/// How everybody stands before a line of panels, on the floor with its directions: the line of dance and the
/// centre of the circle, or the four walls. Here, and only here, partners are seen side by side. Where the places
/// of the two cannot be true together, each dancer gets a small map alone, and nothing is said of the distance.
/// </summary>
internal static class StanceDrawing
{
    /// <summary>Usual size of the direction names, in picture units; about five points on paper. They grow with the other words, as far as there is room.</summary>
    private const double Usual = 18, Most = 1.35;

    /// <summary>
    /// Metres between the middles of partners who can be drawn on one floor: nearer they would stand in each other,
    /// further no hold reaches. Working values.
    /// </summary>
    private const double Nearest = 0.35, Furthest = 1.6;

    /// <summary>Metres between two soles of different dancers below which they would be drawn over each other. Working value.</summary>
    private const double SolesApart = 0.2;

    /// <param name="size">Side of the square it may fill, in picture units.</param>
    public static string Draw(PictureStyle style, IReadOnlyList<(Role Role, Stance Stance)> dancers, Floor floor, RoleNames names, double x, double y, double size)
    {
        if (dancers.Count == 0) return "";
        var nameSize = Usual * Math.Min(style.Words, Most);
        if (dancers.Count == 2 && !StandTogether(dancers[0].Stance, dancers[1].Stance)) return Apart(style, dancers, floor, names, x, y, size, nameSize);
        var text = new StringBuilder();
        text.Append($"<rect x=\"{Svg.N(x)}\" y=\"{Svg.N(y)}\" width=\"{Svg.N(size)}\" height=\"{Svg.N(size)}\" rx=\"7\" fill=\"none\" stroke=\"{style.Palette.Faint}\" stroke-width=\"2\"/>");
        text.Append(floor == Floor.Walls ? Walls(style.Palette, x, y, size, nameSize) : Circle(style.Palette, x, y, size, nameSize));
        var feet = dancers.SelectMany(d => new[] { d.Stance.Left.At, d.Stance.Right.At }).ToList();
        var (minX, maxX, minY, maxY) = (feet.Min(f => f.X), feet.Max(f => f.X), feet.Min(f => f.Y), feet.Max(f => f.Y));
        var stacked = dancers.Count > 1 && maxX - minX > maxY - minY;
        // Partners one behind the other have their names at their right, so they move over to make room.
        var (cx, cy) = (x + (size / 2) - (stacked ? 24 : 0), y + (size / 2));
        var spread = Math.Max(maxX - minX, maxY - minY);
        // Feet that came far apart must still fit, at the price of being smaller than in the panels.
        var room = size - (2 * nameSize) - (dancers.Count > 1 ? 20 : 4);
        var scale = Math.Min(style.UnitsPerMetre, room / (spread + 0.34));
        var own = style with { UnitsPerMetre = scale };
        foreach (var (role, stance) in dancers)
        {
            text.Append(Soles(own, role, stance, X, Y));
            if (dancers.Count > 1) text.Append(Name(role, stance));
        }

        return text.ToString();

        double X(Spot at) => cx - ((at.Y - ((minY + maxY) / 2)) * scale);
        double Y(Spot at) => cy - ((at.X - ((minX + maxX) / 2)) * scale);

        string Name(Role role, Stance stance)
        {
            // Below those side by side, both on one line and each on the dancer's own side; beside those one behind the other, where below would be the partner's place.
            var side = (0.18 * scale) + 4;
            var onLeft = dancers.All(d => d.Stance.Middle.Y <= stance.Middle.Y);
            var word = names.Title(role).ToLowerInvariant();
            return stacked
                ? Svg.Text(word, X(stance.Middle) + side, Y(stance.Middle) + 5, nameSize, style.Palette.Ink, "start", room: x + size - X(stance.Middle) - side - 20)
                : Svg.Text(word, cx + (onLeft ? -4 : 4), Y(new(minX, 0)) + (0.17 * scale) + nameSize, nameSize, style.Palette.Ink, onLeft ? "end" : "start", room: (size / 2) - 24);
        }
    }

    private static bool StandTogether(Stance first, Stance second)
    {
        if ((first.Middle - second.Middle).Length is < Nearest or > Furthest) return false;
        foreach (var one in (Spot[])[first.Left.At, first.Right.At])
        {
            foreach (var other in (Spot[])[second.Left.At, second.Right.At])
            {
                if ((one - other).Length < SolesApart) return false;
            }
        }

        return true;
    }

    private static string Soles(PictureStyle style, Role role, Stance stance, Func<Spot, double> x, Func<Spot, double> y)
    {
        var text = new StringBuilder();
        foreach (var foot in new[] { Foot.Left, Foot.Right })
        {
            var place = stance.Foot(foot);
            var stands = stance.Weight.Free() != foot;
            var facing = stands ? stance.Facing : place.Facing;
            text.Append(Sole.Draw(style, role, foot, stands ? SoleMark.Standing : SoleMark.Flat, facing, x(place.At), y(place.At), style.SoleScale));
        }

        return text.ToString();
    }

    /// <summary>Two small maps with a frame each, between the same names of directions.</summary>
    private static string Apart(PictureStyle style, IReadOnlyList<(Role Role, Stance Stance)> dancers, Floor floor, RoleNames names, double x, double y, double size, double nameSize)
    {
        const double Gap = 6;
        var text = new StringBuilder(floor == Floor.Walls ? Walls(style.Palette, x, y, size, nameSize) : Circle(style.Palette, x, y, size, nameSize));
        var edge = nameSize + 6;
        var (width, height) = ((size - (2 * edge) - Gap) / 2, size - (2 * edge));
        for (var i = 0; i < dancers.Count; i++)
        {
            var (role, stance) = dancers[i];
            var left = x + edge + (i * (width + Gap));
            var top = y + edge;
            text.Append($"<rect x=\"{Svg.N(left)}\" y=\"{Svg.N(top)}\" width=\"{Svg.N(width)}\" height=\"{Svg.N(height)}\" rx=\"7\" fill=\"none\" stroke=\"{style.Palette.Faint}\" stroke-width=\"2\"/>");
            var spread = Math.Max(Math.Abs(stance.Left.At.X - stance.Right.At.X), Math.Abs(stance.Left.At.Y - stance.Right.At.Y));
            var scale = Math.Min(style.UnitsPerMetre, (width - 6) / (spread + 0.4));
            var (middle, cx, cy) = ((stance.Left.At + stance.Right.At) * 0.5, left + (width / 2), top + ((height - nameSize) / 2));
            text.Append(Soles(style with { UnitsPerMetre = scale }, role, stance, at => cx - ((at.Y - middle.Y) * scale), at => cy - ((at.X - middle.X) * scale)));
            text.Append(Svg.Text(names.Title(role).ToLowerInvariant(), cx, top + height - 7, nameSize, style.Palette.Ink, room: width - 8));
        }

        return text.ToString();
    }

    private static string Walls(Palette p, double x, double y, double size, double nameSize)
    {
        var (cx, cy) = (x + (size / 2), y + (size / 2));
        return Svg.Text("12:00", cx, y + nameSize, nameSize, p.Ink, bold: true)
            + Svg.Text("6:00", cx, y + size - 5, nameSize, p.Ink)
            + Upright("3:00", x + size - 5, cy, -90, p.Ink, nameSize)
            + Upright("9:00", x + nameSize - 2, cy, -90, p.Ink, nameSize);
    }

    private static string Circle(Palette p, double x, double y, double size, double nameSize)
    {
        var right = x + size - 12;
        var line = $"<path d=\"M{Svg.N(right)} {Svg.N(y + size - 10)}V{Svg.N(y + 26)}\" stroke=\"{p.Ink}\" stroke-width=\"2.4\"/>";
        return line
            + Arrow.Head(p.Ink, right, y + 18, 0, -1, 8)
            + Svg.Text("LOD", right - 9, y + nameSize, nameSize, p.Ink, "end", bold: true)
            + Upright("centre", x + nameSize - 2, y + (size / 2), -90, p.Ink, nameSize)
            + Arrow.Head(p.Ink, x + 11, y + (size / 2) - (42 * nameSize / Usual), -1, 0, 6);
    }

    private static string Upright(string text, double x, double y, int degrees, string ink, double nameSize) =>
        $"<g transform=\"translate({Svg.N(x)} {Svg.N(y)})rotate({degrees})\">{Svg.Text(text, 0, 0, nameSize, ink)}</g>";
}
