using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Text;

/// <summary>
/// The page exactly as it came, with its lines found. Lines end with LF, CR LF, CR, or the Unicode
/// line and paragraph marks that mails bring along; nothing is changed, so every place stays true.
/// </summary>
public sealed class SourceText
{
    private readonly int[] _starts;
    private readonly int[] _ends;

    public SourceText(string text)
    {
        Text = text;
        var starts = new List<int>(64) { 0 };
        var ends = new List<int>(64);
        for (var i = 0; i < text.Length; i++)
        {
            if (!IsLineEnd(text[i])) continue;
            ends.Add(i);
            if (text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n') i++;
            starts.Add(i + 1);
        }

        ends.Add(text.Length);
        _starts = [.. starts];
        _ends = [.. ends];
    }

    public string Text { get; }

    public int LineCount => _starts.Length;

    /// <summary>A line without its end mark; lines count from 0.</summary>
    public TextSpan Line(int index) => TextSpan.Between(_starts[index], _ends[index]);

    /// <summary>The line a place stands in, from 0.</summary>
    public int LineOf(int place)
    {
        var found = Array.BinarySearch(_starts, place);
        return found >= 0 ? found : ~found - 1;
    }

    /// <summary>Line and column of a place, both from 1, columns in UTF-16 characters.</summary>
    public (int Line, int Column) Place(int place)
    {
        var line = LineOf(place);
        return (line + 1, place - _starts[line] + 1);
    }

    public ReadOnlySpan<char> Slice(TextSpan span) => Text.AsSpan(span.Start, span.Length);

    public string Words(TextSpan span) => Text.Substring(span.Start, span.Length);

    private static bool IsLineEnd(char c) => c is '\n' or '\r' or '\u2028' or '\u2029' or '\u0085';
}
