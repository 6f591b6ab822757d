using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Draw.Above;
using Surefoot.Draw.Feet;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>
/// Everybody seen from above at one moment: bodies, feet with their weight, arms and hands, as SVG that stands by
/// itself. The line of dance (or 12:00) is up and the centre of the circle to the left, as in foot pictures; all
/// measures are true to one scale.
/// </summary>
public static class MomentPicture
{
    /// <summary>Picture units for a metre of floor: at print size a metre is 50 mm.</summary>
    private const double Scale = 50 * Svg.Millimetre;

    /// <summary>Floor around the dancers that is shown as well, in metres.</summary>
    private const double Around = 0.62;

    /// <summary>Least side of the floor that is shown, in metres.</summary>
    private const double Least = 1.7;

    /// <summary>How far from a body's middle its name stands, in metres.</summary>
    private const double NameAway = 0.46;

    private const double TextSize = 38, LineHeight = 50, Margin = 30, Advance = 0.52;

    /// <param name="caption">What the moment is, in words: first the count, then what everybody does.</param>
    /// <param name="count">The moment; dancers set out for count 1 at 0.</param>
    public static string Of(MovingDance dance, double count, IReadOnlyList<string> caption, FootPictureOptions? options = null)
    {
        options ??= new();
        var names = new RoleNames(options.LeadWord, options.FollowWord);
        var style = new PictureStyle(options.Dark ? Palette.Dark : Palette.Light, "a", Scale / PictureStyle.FeetLarger, 0);
        var dancers = dance.Dancers.Where(d => options.Only is null || d.Role == options.Only).ToList();
        var bodies = dancers.Select(d => (Dancer: d, At: d.At(count), Hands: dance.Hands(d.Role, count))).ToList();
        var (low, high) = Floor(bodies.SelectMany(b => (Spot[])[b.At.Middle, b.At.Left.At, b.At.Right.At, b.Hands.Left.At, b.Hands.Right.At]));
        var view = new View(low, high, Scale, Margin);
        var lines = caption.SelectMany(l => Wrapped(l, (view.Width - (2 * Margin)) / (TextSize * Advance))).ToList();
        var height = view.Height + (lines.Count * LineHeight) + Margin;
        var text = new StringBuilder();
        text.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {Svg.N(view.Width)} {Svg.N(height)}\" width=\"{Svg.N(view.Width / Svg.Millimetre)}mm\" height=\"{Svg.N(height / Svg.Millimetre)}mm\" ")
            .Append("role=\"img\" font-family=\"'DejaVu Sans',Verdana,sans-serif\">")
            .Append($"<title>{Svg.Escape(dance.Score.Title)}, seen from above</title><desc>{Svg.Escape(string.Join(" ", caption))}</desc>")
            .Append(Sole.Definitions(style.Prefix, style.Palette))
            .Append($"<rect width=\"{Svg.N(view.Width)}\" height=\"{Svg.N(height)}\" fill=\"{style.Palette.Paper}\"/>")
            .Append(FloorMarks.Draw(style.Palette, view, dance.Score.Facts.Floor));
        foreach (var (dancer, at, _) in bodies) text.Append(BodyMarks.Feet(style, view, dancer, at));
        // Seen from above, whatever is lower lies beneath: arms at the waist, trunks, arms at the shoulder, heads, arms overhead.
        foreach (var (dancer, at, hands) in bodies) text.Append(ArmMarks.Draw(style, view, dancer, at, hands, ArmLevel.Waist));
        foreach (var (dancer, at, _) in bodies) text.Append(BodyMarks.Trunk(style, view, dancer, at));
        foreach (var (dancer, at, hands) in bodies) text.Append(ArmMarks.Draw(style, view, dancer, at, hands, ArmLevel.Shoulder));
        foreach (var (dancer, at, _) in bodies) text.Append(BodyMarks.Head(style, view, dancer, at));
        foreach (var (dancer, at, hands) in bodies) text.Append(ArmMarks.Draw(style, view, dancer, at, hands, ArmLevel.Overhead));
        text.Append(ArmMarks.Joints(style, view, bodies.SelectMany(b => (HandMoved[])[b.Hands.Left, b.Hands.Right])));
        if (bodies.Count == 2) text.Append(Name(bodies[0].Dancer.Role, bodies[0].At, bodies[1].At)).Append(Name(bodies[1].Dancer.Role, bodies[1].At, bodies[0].At));
        for (var i = 0; i < lines.Count; i++)
        {
            text.Append(Svg.Text(lines[i], Margin, view.Height + ((i + 0.7) * LineHeight), TextSize, style.Palette.Ink, "start", bold: i == 0));
        }

        return text.Append("</svg>\n").ToString();

        // On the far side of the partner, where nothing else is drawn.
        string Name(Role role, DancerMoved own, DancerMoved other)
        {
            var way = own.Middle - other.Middle;
            var at = own.Middle + (way.Length < 0.01 ? new Spot(-NameAway, 0) : way * (NameAway / way.Length));
            var name = names.Title(role).ToLowerInvariant();
            // A rim of floor lifts the name off a foot beneath it.
            return $"<g stroke=\"{style.Palette.Floor}\" stroke-width=\"14\" stroke-linejoin=\"round\">{Svg.Text(name, view.X(at), view.Y(at) + 12, TextSize, style.Palette.Floor)}</g>"
                + Svg.Text(name, view.X(at), view.Y(at) + 12, TextSize, style.Palette.Ink);
        }
    }

    private static (Spot Low, Spot High) Floor(IEnumerable<Spot> places)
    {
        var (low, high) = (new Spot(double.MaxValue, double.MaxValue), new Spot(double.MinValue, double.MinValue));
        foreach (var place in places)
        {
            low = new(Math.Min(low.X, place.X), Math.Min(low.Y, place.Y));
            high = new(Math.Max(high.X, place.X), Math.Max(high.Y, place.Y));
        }

        var (middle, side) = ((low + high) * 0.5, new Spot(Math.Max(Least, high.X - low.X + (2 * Around)), Math.Max(Least, high.Y - low.Y + (2 * Around))));
        return (middle - (side * 0.5), middle + (side * 0.5));
    }

    private static IEnumerable<string> Wrapped(string text, double letters)
    {
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (line.Length > 0 && line.Length + 1 + word.Length > letters)
            {
                yield return line.ToString();
                line.Clear();
            }

            if (line.Length > 0) line.Append(' ');
            line.Append(word);
        }

        if (line.Length > 0) yield return line.ToString();
    }
}
