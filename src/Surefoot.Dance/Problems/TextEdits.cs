using System.Text;
using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Problems;

/// <summary>Applies edits to a page's text.</summary>
public static class TextEdits
{
    /// <summary>The whole text with the edits applied. Edits that overlap one already applied are left out.</summary>
    public static string Apply(string text, IEnumerable<TextEdit> edits) => Apply(text, edits, new(0, text.Length));

    /// <summary>A stretch of the text as it would read with the edits applied.</summary>
    public static string Apply(string text, IEnumerable<TextEdit> edits, TextSpan within)
    {
        var result = new StringBuilder(within.Length + 16);
        var at = within.Start;
        foreach (var edit in edits.OrderBy(e => e.Span.Start).ThenBy(e => e.Span.Length))
        {
            if (edit.Span.Start < at || edit.Span.End > within.End) continue;
            result.Append(text, at, edit.Span.Start - at).Append(edit.Text);
            at = edit.Span.End;
        }

        return result.Append(text, at, within.End - at).ToString();
    }
}
