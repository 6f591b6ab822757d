using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Feet;

/// <summary>
/// How everybody stands before a line of panels, on the floor with its directions: the line of dance and the
/// centre of the circle, or the four walls. Here, and only here, partners are seen side by side.
/// </summary>
internal static class StanceDrawing
{
    /// <summary>Size of the direction names, in picture units; about five points on paper.</summary>
    private const double NameSize = 18;

    /// <param name="size">Side of the square it may fill, in picture units.</param>
    public static string Draw(PictureStyle style, IReadOnlyList<(Role Role, Stance Stance)> dancers, Floor floor, RoleNames names, double x, double y, double size)
    {
        if (dancers.Count == 0) return "";
        var text = new StringBuilder();
        text.Append($"<rect x=\"{Svg.N(x)}\" y=\"{Svg.N(y)}\" width=\"{Svg.N(size)}\" height=\"{Svg.N(size)}\" rx=\"7\" fill=\"none\" stroke=\"{style.Palette.Faint}\" stroke-width=\"2\"/>");
        text.Append(floor == Floor.Walls ? Walls(style.Palette, x, y, size) : Circle(style.Palette, x, y, size));
        var feet = dancers.SelectMany(d => new[] { d.Stance.Left.At, d.Stance.Right.At }).ToList();
        var (minX, maxX, minY, maxY) = (feet.Min(f => f.X), feet.Max(f => f.X), feet.Min(f => f.Y), feet.Max(f => f.Y));
        var stacked = dancers.Count > 1 && maxX - minX > maxY - minY;
        // Partners one behind the other have their names at their right, so they move over to make room.
        var (cx, cy) = (x + (size / 2) - (stacked ? 24 : 0), y + (size / 2));
        var spread = Math.Max(maxX - minX, maxY - minY);
        // Feet that came far apart must still fit, at the price of being smaller than in the panels.
        var room = size - (2 * NameSize) - (dancers.Count > 1 ? 20 : 4);
        var scale = Math.Min(style.UnitsPerMetre, room / (spread + 0.34));
        var own = style with { UnitsPerMetre = scale };
        foreach (var (role, stance) in dancers)
        {
            foreach (var foot in new[] { Foot.Left, Foot.Right })
            {
                var place = stance.Foot(foot);
                var stands = stance.Weight.Free() != foot;
                var facing = stands ? stance.Facing : place.Facing;
                text.Append(Sole.Draw(own, role, foot, stands ? SoleMark.Standing : SoleMark.Flat, facing, X(place.At), Y(place.At), own.SoleScale));
            }

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
                ? Svg.Text(word, X(stance.Middle) + side, Y(stance.Middle) + 5, NameSize, style.Palette.Ink, "start", room: x + size - X(stance.Middle) - side - 20)
                : Svg.Text(word, cx + (onLeft ? -4 : 4), Y(new(minX, 0)) + (0.17 * scale) + NameSize, NameSize, style.Palette.Ink, onLeft ? "end" : "start", room: (size / 2) - 24);
        }
    }

    private static string Walls(Palette p, double x, double y, double size)
    {
        var (cx, cy) = (x + (size / 2), y + (size / 2));
        return Svg.Text("12:00", cx, y + NameSize, NameSize, p.Ink, bold: true)
            + Svg.Text("6:00", cx, y + size - 5, NameSize, p.Ink)
            + Upright("3:00", x + size - 5, cy, -90, p.Ink)
            + Upright("9:00", x + NameSize - 2, cy, -90, p.Ink);
    }

    private static string Circle(Palette p, double x, double y, double size)
    {
        var right = x + size - 12;
        var line = $"<path d=\"M{Svg.N(right)} {Svg.N(y + size - 10)}V{Svg.N(y + 26)}\" stroke=\"{p.Ink}\" stroke-width=\"2.4\"/>";
        return line
            + Arrow.Head(p.Ink, right, y + 18, 0, -1, 8)
            + Svg.Text("LOD", right - 9, y + NameSize, NameSize, p.Ink, "end", bold: true)
            + Upright("centre", x + NameSize - 2, y + (size / 2), -90, p.Ink)
            + Arrow.Head(p.Ink, x + 11, y + (size / 2) - 42, -1, 0, 6);
    }

    private static string Upright(string text, double x, double y, int degrees, string ink) =>
        $"<g transform=\"translate({Svg.N(x)} {Svg.N(y)})rotate({degrees})\">{Svg.Text(text, 0, 0, NameSize, ink)}</g>";
}
