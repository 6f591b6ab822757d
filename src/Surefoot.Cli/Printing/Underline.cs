using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Text;

namespace Surefoot.Cli.Printing;

/// <summary>A line of the page as it stands, and the line of carets under a stretch of it.</summary>
internal static class Underline
{
    /// <returns>Both lines, or null when there is nothing on the line to show.</returns>
    public static (string Line, string Carets)? Of(SourceText source, TextSpan span)
    {
        var line = source.Line(source.LineOf(span.Start));
        if (source.Slice(line).IsWhiteSpace()) return null;
        // Of a stretch over several lines the first is shown.
        var start = Math.Min(span.Start, line.End);
        var end = Math.Clamp(span.End, start, line.End);
        var before = source.Slice(TextSpan.Between(line.Start, start));
        var under = source.Slice(TextSpan.Between(start, end));
        var carets = new StringBuilder();
        Mark(carets, before, ' ');
        var from = carets.Length;
        Mark(carets, under, '^');
        if (carets.Length == from || carets.ToString(from, carets.Length - from).IndexOf('^') < 0) carets.Append('^');
        return (Cells.Harmless(source.Slice(line)).TrimEnd(), carets.ToString());
    }

    // A tab stays a tab, so that both lines agree however wide the terminal makes it.
    private static void Mark(StringBuilder marks, ReadOnlySpan<char> text, char mark)
    {
        while (text.Length > 0)
        {
            var tab = text.IndexOf('\t');
            marks.Append(mark, Cells.Width(Cells.Harmless(tab < 0 ? text : text[..tab])));
            if (tab < 0) return;
            marks.Append('\t');
            text = text[(tab + 1)..];
        }
    }
}
