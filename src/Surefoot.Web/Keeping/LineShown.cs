using Surefoot.Library;

namespace Surefoot.Web.Keeping;

/// <summary>A line of a difference as it is shown; long stretches that stayed are one line that says how many.</summary>
/// <param name="Before">Its number in the earlier text.</param>
/// <param name="After">Its number in the later text.</param>
/// <param name="Alike">How many lines this one stands for; 0 for a line itself.</param>
internal sealed record LineShown(LineFate Fate, int Before, int After, string Text, int Alike)
{
    /// <summary>Lines that stayed and are shown around what changed: enough to see where one is. Working value.</summary>
    private const int Around = 2;

    public static List<LineShown> Of(IReadOnlyList<TextLine> lines)
    {
        var shown = new List<LineShown>();
        for (var at = 0; at < lines.Count;)
        {
            var end = at;
            while (end < lines.Count && lines[end].Fate == LineFate.Stayed) end++;
            var from = at == 0 ? at : Math.Min(end, at + Around);
            var to = end == lines.Count ? end : Math.Max(from, end - Around);
            for (var i = at; i < from; i++) shown.Add(One(lines[i]));
            if (to - from > 0) shown.Add(new(LineFate.Stayed, 0, 0, "", to - from));
            for (var i = to; i < end; i++) shown.Add(One(lines[i]));
            for (at = end; at < lines.Count && lines[at].Fate != LineFate.Stayed; at++) shown.Add(One(lines[at]));
        }

        return shown;
    }

    private static LineShown One(TextLine line) => new(line.Fate, line.Before, line.After, line.Text, 0);
}
