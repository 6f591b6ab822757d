using Surefoot.Dance.Text;

namespace Surefoot.Lessons.Text;

/// <summary>Words of a line with their place in the text.</summary>
internal readonly record struct Piece(string Words, TextSpan Span)
{
    public bool IsEmpty => string.IsNullOrEmpty(Words);

    public static Piece Of(SourceText source, TextSpan span)
    {
        var (start, end) = (span.Start, span.End);
        while (start < end && IsBlank(source.Text[start])) start++;
        while (end > start && IsBlank(source.Text[end - 1])) end--;
        return new(source.Text[start..end], TextSpan.Between(start, end));
    }

    /// <summary>What stands from so many letters on, without blanks around it.</summary>
    public Piece From(int at)
    {
        while (at < Words.Length && IsBlank(Words[at])) at++;
        return new(Words[at..], new(Span.Start + at, Span.Length - at));
    }

    /// <summary>The first so many letters, without blanks around them.</summary>
    public Piece Until(int at)
    {
        while (at > 0 && IsBlank(Words[at - 1])) at--;
        return new(Words[..at], new(Span.Start, at));
    }

    public List<Piece> Split(char mark)
    {
        var pieces = new List<Piece>();
        var rest = this;
        while (rest.Words.IndexOf(mark, StringComparison.Ordinal) is var at and >= 0)
        {
            pieces.Add(rest.Until(at));
            rest = rest.From(at + 1);
        }

        pieces.Add(rest);
        pieces.RemoveAll(p => p.IsEmpty);
        return pieces;
    }

    /// <summary>Split where a word stands by itself: "and", "to".</summary>
    public List<Piece> SplitAt(string word)
    {
        var pieces = new List<Piece>();
        var rest = this;
        while (rest.Words.IndexOf($" {word} ", StringComparison.OrdinalIgnoreCase) is var at and >= 0)
        {
            pieces.Add(rest.Until(at));
            rest = rest.From(at + word.Length + 2);
        }

        pieces.Add(rest);
        return pieces;
    }

    /// <summary>What follows a word at the beginning, or null where it does not begin so.</summary>
    public Piece? After(string word) =>
        Words.StartsWith(word, StringComparison.OrdinalIgnoreCase) && (Words.Length == word.Length || IsBlank(Words[word.Length])) ? From(word.Length) : null;

    private static bool IsBlank(char c) => c is ' ' or '\t' or '\u00A0' or '\uFEFF';
}
