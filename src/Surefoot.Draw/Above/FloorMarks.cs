using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Draw.Feet;

namespace Surefoot.Draw.Above;

/// <summary>The floor under the dancers: its ground, which way is which, and a measure.</summary>
internal static class FloorMarks
{
    private const double TextSize = 30;

    /// <summary>Length of the measure in metres.</summary>
    private const double Measure = 0.5;

    public static string Draw(Palette p, View view, Floor floor)
    {
        var (left, top, right, bottom) = (view.Margin, view.Margin, view.Width - view.Margin, view.Height - view.Margin);
        var text = new StringBuilder($"<rect x=\"{Svg.N(left)}\" y=\"{Svg.N(top)}\" width=\"{Svg.N(right - left)}\" height=\"{Svg.N(bottom - top)}\" rx=\"14\" fill=\"{p.Floor}\"/>");
        var (x, y) = (right - 24, top + 22);
        text.Append($"<path d=\"M{Svg.N(x)} {Svg.N(y + 120)}V{Svg.N(y + 12)}\" stroke=\"{p.Ink}\" stroke-width=\"4\"/>").Append(Arrow.Head(p.Ink, x, y, 0, -1, 14));
        text.Append(Svg.Text(floor == Floor.Track ? "line of dance" : "12:00", x - 18, y + 20, TextSize, p.Ink, "end"));
        if (floor == Floor.Track) text.Append(Svg.Text("← centre", left + 14, y + 20, TextSize, p.Ink, "start"));
        var (from, to) = (left + 20, left + 20 + (Measure * view.Scale));
        text.Append($"<path d=\"M{Svg.N(from)} {Svg.N(bottom - 34)}v20M{Svg.N(from)} {Svg.N(bottom - 24)}H{Svg.N(to)}M{Svg.N(to)} {Svg.N(bottom - 34)}v20\" fill=\"none\" stroke=\"{p.Ink}\" stroke-width=\"3\"/>");
        return text.Append(Svg.Text("½ m", to + 14, bottom - 15, TextSize, p.Ink, "start")).ToString();
    }
}
