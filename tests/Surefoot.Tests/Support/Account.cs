using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Tests.Support;

/// <summary>
/// Answers for every word of a page: it must stand in something that was understood, kept as a note or
/// reported. Marks between words (commas, dashes) need no answer, and neither do "and" and "then".
/// </summary>
internal static class Account
{
    public static List<TextSpan> Missed(Page page)
    {
        var answered = new bool[page.Source.Text.Length];
        foreach (var line in page.Lines)
        {
            switch (line)
            {
                case CountLine counted:
                    // Before the counts there is room for a role ("Lead: 1-2 …") and the word "counts" only.
                    Mark(answered, TextSpan.Between(counted.Span.Start, counted.Group.Span.End));
                    foreach (var segment in counted.Segments)
                    {
                        if (segment.RoleSpan is { } role) Mark(answered, role);
                        foreach (var piece in segment.Pieces) Mark(answered, piece.Span);
                    }

                    break;
                case StrayLine { Pieces.Count: 0 }:
                    // Its words went to the count line above, which answers for them.
                    break;
                default:
                    Mark(answered, line.Span);
                    break;
            }
        }

        var missed = new List<TextSpan>();
        var tokens = new List<Token>();
        Tokenizer.Read(page.Source.Text, new(0, page.Source.Text.Length), FigureBook.Shipped.Lexicon, tokens);
        for (var i = 0; i < tokens.Count; i++)
        {
            var token = tokens[i];
            if (token.Kind is not (TokenKind.Word or TokenKind.Number or TokenKind.Fraction or TokenKind.Decimal or TokenKind.Clock)) continue;
            if (answered[token.Start] || IsJoint(tokens, i)) continue;
            missed.Add(token.Span);
        }

        return missed;
    }

    private static bool IsJoint(List<Token> tokens, int at)
    {
        for (var i = Math.Max(0, at - 2); i <= at; i++)
        {
            var length = FigureBook.Shipped.Lexicon.Longest(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(tokens), i, out var senses);
            if (i + length > at && senses.Exists(s => s.Kind is SenseKind.And or SenseKind.Then or SenseKind.Counts)) return true;
        }

        return false;
    }

    private static void Mark(bool[] answered, TextSpan span) => Array.Fill(answered, true, span.Start, span.Length);
}
