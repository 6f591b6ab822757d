namespace Surefoot.Dance.Basics;

/// <summary>A stretch of the page: where it starts, in UTF-16 characters from the top, and how long it is.</summary>
public readonly record struct TextSpan(int Start, int Length)
{
    public int End => Start + Length;

    public static TextSpan Between(int start, int end) => new(start, end - start);

    /// <summary>The smallest stretch that holds both.</summary>
    public TextSpan Join(TextSpan other) => Between(Math.Min(Start, other.Start), Math.Max(End, other.End));

    public bool Contains(int place) => place >= Start && place < End;
}
