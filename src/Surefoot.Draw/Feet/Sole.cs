using System.Text;
using Surefoot.Dance.Basics;

namespace Surefoot.Draw.Feet;

/// <summary>How a sole is drawn: what the foot does in this panel.</summary>
internal enum SoleMark
{
    /// <summary>Takes the weight: both pieces full.</summary>
    Weighted,

    /// <summary>Carries the weight meanwhile: both pieces grey.</summary>
    Standing,

    /// <summary>On the floor, without weight and without part in this count: a thin line.</summary>
    Resting,

    /// <summary>Placed flat without weight: both pieces empty.</summary>
    Flat,

    /// <summary>Toe or ball on the floor: the front piece empty, the heel dotted.</summary>
    ToeOnly,

    /// <summary>Heel on the floor: the heel piece empty, the front dotted.</summary>
    HeelOnly,

    /// <summary>In the air: all dotted.</summary>
    InAir,

    /// <summary>Where the foot came from.</summary>
    Left,
}

/// <summary>
/// Boot soles in two pieces, front and heel, so that a heel or a toe on the floor can be told without words.
/// The roles differ by the tip: round for everybody, square for the lead, pointed and hatched for the follow.
/// Drawn for the right foot, inner side to the left, 100 units long with the toe up; the left foot is its mirror.
/// </summary>
internal static class Sole
{
    /// <summary>Length of the drawn sole in its own units.</summary>
    public const double Length = 100;

    /// <summary>Half its breadth across the ball, in its own units; a little broader than a foot so that a letter fits.</summary>
    public const double HalfBreadth = 22;

    private const string RoundFront =
        "M-14 11C-20-3-23-17-20-31C-17-43-12-50-5-50C8-50 19-37 22-20C23-8 19 3 15 11C6 15-6 15-14 11Z";

    private const string SquareFront =
        "M-14 11C-20-3-23-17-22-31L-20-46Q-19-50-15-50L0-50Q4-50 7-47L18-32C22-26 23-19 22-13C21-4 18 4 15 11C6 15-6 15-14 11Z";

    private const string PointedFront =
        "M-13 11C-18-2-21-14-19-25C-17-36-13-46-9-54C-1-49 12-38 18-24C21-12 17 2 13 11C6 14-6 14-13 11Z";

    private const string BlockHeel = "M-13 22C-5 25 6 25 14 22L16 36C15 46 9 50 1 50C-8 50-14 46-15 37Z";

    private const string SlimHeel = "M-9 23C-4 25 5 25 10 23L12 37C11 46 6 50 1 50C-5 50-10 46-11 37Z";

    /// <summary>The pieces and the hatching as definitions; <paramref name="prefix"/> keeps pictures on one page apart.</summary>
    public static string Definitions(string prefix, Palette palette)
    {
        var text = new StringBuilder("<defs>");
        foreach (var (key, front, heel) in new[] { ("d", RoundFront, BlockHeel), ("l", SquareFront, BlockHeel), ("f", PointedFront, SlimHeel) })
        {
            text.Append($"<path id=\"{prefix}{key}t\" d=\"{front}\"/><path id=\"{prefix}{key}h\" d=\"{heel}\"/>");
        }

        foreach (var (key, line) in new[] { ("i", palette.Ink), ("s", palette.Soft) })
        {
            text.Append($"<pattern id=\"{prefix}{key}\" width=\"9\" height=\"9\" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(-45)\">")
                .Append($"<rect width=\"9\" height=\"9\" fill=\"{palette.Paper}\"/><rect width=\"9\" height=\"5.6\" fill=\"{line}\"/></pattern>");
        }

        return text.Append("</defs>").ToString();
    }

    /// <param name="x">Middle of the sole on the picture.</param>
    /// <param name="scale">Picture units for one unit of the sole.</param>
    public static string Draw(PictureStyle style, Role role, Foot foot, SoleMark mark, Facing facing, double x, double y, double scale) =>
        DrawTurned(style, role, foot, mark, 45.0 * facing.Eighths, x, y, scale);

    /// <param name="degrees">Which way the toe looks, to the left of up.</param>
    /// <inheritdoc cref="Draw"/>
    public static string DrawTurned(PictureStyle style, Role role, Foot foot, SoleMark mark, double degrees, double x, double y, double scale)
    {
        var id = style.Prefix + Key(role);
        var mirror = foot == Foot.Left ? "-1 1" : "1 1";
        var turn = degrees == 0 ? "" : $"rotate({Svg.N(-degrees)})";
        var text = new StringBuilder(
            $"<g transform=\"translate({Svg.N(x)} {Svg.N(y)}){turn}scale({scale.ToString("0.###")})\"><g transform=\"scale({mirror})\">");
        var (front, heel) = Paint(style, role, mark);
        text.Append($"<use href=\"#{id}t\" {front}/><use href=\"#{id}h\" {heel}/></g>");
        if (mark != SoleMark.Left && scale >= SmallestLettered) text.Append(Letter(style.Palette, role, foot, mark, degrees));
        return text.Append("</g>").ToString();
    }

    /// <summary>A rim in the colour of the floor that lifts a sole off another one beneath it.</summary>
    public static string Halo(PictureStyle style, Role role, Foot foot, Facing facing, double x, double y) =>
        Rim(style, role, foot, facing, x, y, (style.Palette.Floor, 13));

    /// <summary>A line all round a sole: the foot stays where it is and the weight comes back to it.</summary>
    public static string Ring(PictureStyle style, Role role, Foot foot, Facing facing, double x, double y) =>
        Rim(style, role, foot, facing, x, y, (style.Palette.Ink, 22), (style.Palette.Floor, 15));

    private static string Rim(PictureStyle style, Role role, Foot foot, Facing facing, double x, double y, params ReadOnlySpan<(string Tone, int Width)> lines)
    {
        var id = style.Prefix + Key(role);
        var k = style.SoleScale;
        var turn = facing.Eighths == 0 ? "" : $"rotate({-45 * facing.Eighths})";
        var scale = $"scale({(foot == Foot.Left ? -k : k).ToString("0.###")} {k.ToString("0.###")})";
        var text = new StringBuilder($"<g transform=\"translate({Svg.N(x)} {Svg.N(y)}){turn}{scale}\" stroke-linejoin=\"round\">");
        foreach (var (tone, width) in lines)
        {
            text.Append($"<g fill=\"{tone}\" stroke=\"{tone}\" stroke-width=\"{width}\"><use href=\"#{id}t\"/><use href=\"#{id}h\"/></g>");
        }

        return text.Append("</g>").ToString();
    }

    private static string Key(Role role) => role switch { Role.Lead => "l", Role.Follow => "f", _ => "d" };

    /// <summary>Below this the letter would print smaller than four points and only smudge the sole.</summary>
    private const double SmallestLettered = 0.42;

    private static (string Front, string Heel) Paint(PictureStyle style, Role role, SoleMark mark)
    {
        var p = style.Palette;
        var hatched = role == Role.Follow;
        var bold = $"fill=\"{p.Paper}\" stroke=\"{p.Ink}\" stroke-width=\"5\"";
        var dotted = $"fill=\"none\" stroke=\"{p.Ink}\" stroke-width=\"3\" stroke-dasharray=\"1 6\" stroke-linecap=\"round\"";
        var same = mark switch
        {
            SoleMark.Weighted => $"fill=\"{(hatched ? $"url(#{style.Prefix}i)" : p.Ink)}\" stroke=\"{p.Ink}\" stroke-width=\"{(hatched ? 5 : 2)}\"",
            SoleMark.Standing => $"fill=\"{(hatched ? $"url(#{style.Prefix}s)" : p.Soft)}\" stroke=\"{p.Soft}\" stroke-width=\"{(hatched ? 4 : 2)}\"",
            SoleMark.Resting => $"fill=\"{p.Floor}\" stroke=\"{p.Soft}\" stroke-width=\"2.5\"",
            SoleMark.Left => $"fill=\"none\" stroke=\"{p.Faint}\" stroke-width=\"2.5\" stroke-dasharray=\"5 5\"",
            SoleMark.InAir => $"fill=\"{p.Paper}\" stroke=\"{p.Ink}\" stroke-width=\"4.5\" stroke-dasharray=\"0.5 8\" stroke-linecap=\"round\"",
            _ => bold,
        };
        return mark switch
        {
            SoleMark.ToeOnly => (bold, dotted),
            SoleMark.HeelOnly => (dotted, bold),
            _ => (same, same),
        };
    }

    /// <summary>L or R on the front piece, upright whatever way the foot looks.</summary>
    private static string Letter(Palette p, Role role, Foot foot, SoleMark mark, double degrees)
    {
        var onDark = mark is SoleMark.Weighted or SoleMark.Standing;
        var disc = onDark && role == Role.Follow;
        var fill = mark == SoleMark.Resting ? p.Soft : onDark && !disc ? p.Paper : mark == SoleMark.Standing ? p.Soft : p.Ink;
        // Rotated back about the middle of the front piece, 18 units ahead of the sole's own middle.
        var back = degrees == 0 ? "" : $" transform=\"rotate({Svg.N(degrees)} 0 -18)\"";
        var ground = disc ? $"<circle cy=\"-18\" r=\"17\" fill=\"{p.Paper}\"/>" : "";
        return $"<g{back}>{ground}<text y=\"-7\" font-size=\"31\" font-weight=\"bold\" text-anchor=\"middle\" fill=\"{fill}\">{foot.Letter()}</text></g>";
    }
}

/// <summary>What all marks of one picture share.</summary>
/// <param name="Prefix">Put before every id, so that several pictures can stand on one page.</param>
/// <param name="UnitsPerMetre">Picture units for a metre of floor inside a panel.</param>
/// <param name="PanelSize">Side of a panel, in picture units.</param>
/// <param name="Words">How much larger than usual counts and words are.</param>
internal sealed record PictureStyle(Palette Palette, string Prefix, double UnitsPerMetre, double PanelSize, double Words = 1)
{
    /// <summary>
    /// Feet are drawn longer than they are against the floor, so that a letter fits on them: working value.
    /// Larger values make feet that stand together overlap.
    /// </summary>
    public const double FeetLarger = 1.35;

    /// <summary>Units of the picture for one unit of a sole.</summary>
    public double SoleScale => UnitsPerMetre * FeetLarger * Dance.Motion.Body.FootLength * Dance.Motion.Body.ReferenceStature / Sole.Length;
}
