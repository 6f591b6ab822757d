using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Feet;
using Surefoot.Draw.Words;

namespace Surefoot.Draw;

/// <summary>
/// The feet of a dance seen from above, one panel a moment, as SVG that stands by itself. The line of dance
/// (or 12:00) is up on the page and the centre of the circle to the left. Places are those of the motion; only
/// the feet themselves are drawn a little larger, so that a letter fits on them.
/// </summary>
public static class FootPicture
{
    /// <summary>One dancing of a part.</summary>
    /// <param name="section">Index into the score's sections.</param>
    public static string Svg(DanceScore score, DanceMotion motion, int section, FootPictureOptions? options = null)
    {
        options ??= new();
        return OfSections(score, motion, [section], options, options.Dark ? Palette.Dark : Palette.Light, "s", Setting.Alone, options.Key).Svg;
    }

    /// <summary>All parts under each other with headings; a part that is danced again in the same way is drawn once.</summary>
    public static string SvgOfDance(DanceScore score, DanceMotion motion, FootPictureOptions? options = null)
    {
        options ??= new();
        var sections = Enumerable.Range(0, score.Sections.Count).ToList();
        return OfSections(score, motion, sections, options, options.Dark ? Palette.Dark : Palette.Light, "s", Setting.Dance, options.Key).Svg;
    }

    /// <summary>
    /// For a sheet, with heights in millimetres: tones come from the page around, ids are kept apart by
    /// <paramref name="prefix"/>. One picture, or several of whole lines where one would be higher than there is room.
    /// </summary>
    /// <param name="room">What is left of the page on which it begins.</param>
    /// <param name="page">What there is on the next ones.</param>
    internal static IReadOnlyList<(string Svg, double Height)> OnPage(
        DanceScore score, DanceMotion motion, int section, FootPictureOptions options, string prefix, double room, double page)
    {
        var whole = OfSections(score, motion, [section], options, Palette.Page, prefix, Setting.Page, options.Key);
        if (whole.Height <= room) return [whole];
        // Not even a line fits any more: the next page takes it.
        if (Piece(0, 1, 0).Height > room) room = page;
        if (whole.Height <= room) return [whole];
        var pieces = new List<(string, double)>();
        var layout = PictureLayout.Of(score, motion, options, Palette.Page, prefix);
        var count = PictureLines.Of(score, motion, section, options, layout.CountsPerLine, layout.PanelsPerLine).Count;
        var first = 0;
        while (first < count)
        {
            var next = first + 1;
            var piece = Piece(first, next, count);
            while (next < count && Piece(first, next + 1, count) is var longer && longer.Height <= room) (piece, next) = (longer, next + 1);
            pieces.Add(piece);
            (first, room) = (next, page);
        }

        return pieces.Count > 0 ? pieces : [whole];

        // The key stands under the last line and is counted with it.
        (string Svg, double Height) Piece(int from, int to, int last) => OfSections(
            score, motion, [section], options, Palette.Page, $"{prefix}-{from}", Setting.Page, options.Key && to == last, from..to);
    }

    /// <summary>Sections in order of which none repeats an earlier one in the same way.</summary>
    internal static IReadOnlyList<int> WorthDrawing(DanceScore score)
    {
        var kept = new List<int>();
        for (var i = 0; i < score.Sections.Count; i++)
        {
            if (SameEarlier(score, i) < 0) kept.Add(i);
        }

        return kept;
    }

    private enum Setting
    {
        Alone,
        Dance,
        Page,
    }

    private static (string Svg, double Height) OfSections(
        DanceScore score, DanceMotion motion, IReadOnlyList<int> sections, FootPictureOptions options, Palette palette, string prefix, Setting setting, bool key, Range? part = null)
    {
        var layout = PictureLayout.Of(score, motion, options, palette, prefix);
        var names = new RoleNames(options.LeadWord, options.FollowWord);
        var roles = PictureLines.DrawnRoles(score, options);
        var body = new StringBuilder();
        var told = new StringBuilder();
        var margin = setting is Setting.Alone or Setting.Dance ? 30.0 : 0;
        var y = margin;
        var headed = setting is Setting.Dance or Setting.Page;
        if (setting == Setting.Dance)
        {
            body.Append(Feet.Svg.Text(score.Title, 0, y + 40, 48, palette.Ink, "start", bold: true, room: layout.Width));
            y += 70;
        }

        foreach (var section in sections)
        {
            var earlier = headed ? SameEarlier(score, section) : -1;
            if (headed)
            {
                var goesOn = part is { Start.Value: > 0 } ? ", continued" : "";
                var heading = Heading(score, section) + goesOn + (earlier >= 0 ? ", danced again as before" : "");
                body.Append(Feet.Svg.Text(heading, 0, y + 28, 30, palette.Ink, "start", bold: true, room: layout.Width));
                y += 44;
            }

            if (earlier >= 0) continue;
            var lines = PictureLines.Of(score, motion, section, options, layout.CountsPerLine, layout.PanelsPerLine);
            if (part is { } some) lines = [.. lines.Take(some)];
            foreach (var line in lines)
            {
                var (text, height) = LineDrawing.Draw(score, motion, section, line, layout, names, roles, y);
                body.Append(text).Append('\n');
                y += height + 14;
            }

            told.Append(Heading(score, section)).Append(". ").Append(PictureText.Of(lines, roles, names)).Append(' ');
            y += 10;
        }

        if (key)
        {
            // The key serves all pictures of the dance, also where each stands in a document of its own.
            var all = LinesOf(score, motion, setting is Setting.Alone ? sections : WorthDrawing(score), options, layout);
            var (text, height) = PictureKey.Draw(layout, all, roles, names, y);
            body.Append(text);
            y += height;
        }

        var title = sections.Count == 1 ? $"{score.Title}, {Heading(score, sections[0])}" : score.Title;
        var ground = setting is Setting.Alone or Setting.Dance;
        var svg = Document(body, layout, y + margin, margin, title, told.ToString().TrimEnd(), palette, prefix, ground);
        return (svg, (y + margin) / Feet.Svg.Millimetre);
    }

    private static List<PictureLine> LinesOf(
        DanceScore score, DanceMotion motion, IReadOnlyList<int> sections, FootPictureOptions options, PictureLayout layout) =>
        [.. sections.SelectMany(s => PictureLines.Of(score, motion, s, options, layout.CountsPerLine, layout.PanelsPerLine))];

    private static string Document(
        StringBuilder body, PictureLayout layout, double height, double margin, string title, string told, Palette palette, string prefix, bool ground)
    {
        var width = layout.Width + (2 * margin);
        var (w, h) = (Feet.Svg.N(width), Feet.Svg.N(height));
        var text = new StringBuilder();
        text.Append($"<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" aria-labelledby=\"{prefix}-t {prefix}-d\" ")
            .Append($"viewBox=\"{Feet.Svg.N(-margin)} 0 {w} {h}\" width=\"{Feet.Svg.N(width / Feet.Svg.Millimetre)}mm\" ")
            .Append($"height=\"{Feet.Svg.N(height / Feet.Svg.Millimetre)}mm\" font-family=\"sans-serif\">")
            .Append($"<title id=\"{prefix}-t\">{Feet.Svg.Escape(title)}</title><desc id=\"{prefix}-d\">{Feet.Svg.Escape(told)}</desc>")
            .Append(Sole.Definitions(prefix, palette));
        if (ground) text.Append($"<rect x=\"{Feet.Svg.N(-margin)}\" width=\"{w}\" height=\"{h}\" fill=\"{palette.Paper}\"/>");
        return text.Append('\n').Append(body).Append("</svg>").ToString();
    }

    private static string Heading(DanceScore score, int section)
    {
        var part = score.Parts[score.Sections[section].Part];
        var mirrored = score.Sections[section].Mirrored ? ", begun on the other foot" : "";
        return (part.Name.Length == 0 ? part.Label : $"{part.Label}: {part.Name}") + mirrored;
    }

    /// <summary>An earlier section that looks the same: the same part, begun with the same facings and the same free feet; or -1.</summary>
    private static int SameEarlier(DanceScore score, int section)
    {
        for (var i = 0; i < section; i++)
        {
            var same = score.Sections[i].Part == score.Sections[section].Part && score.Sections[i].Mirrored == score.Sections[section].Mirrored;
            if (same && score.Roles.All(r => Standing.Before(r, i) == Standing.Before(r, section))) return i;
        }

        return -1;
    }
}
