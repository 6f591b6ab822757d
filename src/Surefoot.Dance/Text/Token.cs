using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Text;

public enum TokenKind : byte
{
    Word,
    /// <summary>A whole number; its value is in <see cref="Token.Value"/>.</summary>
    Number,
    /// <summary>A number with decimals, in thousandths.</summary>
    Decimal,
    /// <summary>A part of a turn, in eighths.</summary>
    Fraction,
    /// <summary>A wall by the clock; the value is its facing in eighths to the left of 12:00.</summary>
    Clock,
    Amp,
    Dash,
    Comma,
    Semicolon,
    Period,
    Colon,
    Open,
    Close,
    Slash,
    Plus,
    Other,
}

/// <summary>A word, number or mark of the page.</summary>
/// <param name="Word">For words: the number of the word in the vocabulary, or -1 when it is not known.</param>
/// <param name="Joined">True when nothing but a hyphen stands between this and the token before.</param>
public readonly record struct Token(TokenKind Kind, int Start, int Length, int Word, int Value, bool Joined, bool SpaceBefore)
{
    public int End => Start + Length;

    public TextSpan Span => new(Start, Length);
}
