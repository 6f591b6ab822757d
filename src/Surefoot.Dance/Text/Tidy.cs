using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>Prints a page in its usual form: the same words in the same order, spelled and spaced the usual way.</summary>
public static class Tidy
{
    private static readonly string[] Fractions = ["", "⅛", "¼", "⅜", "½", "⅝", "¾", "⅞"];

    // Spellings that are only abbreviations are written out; other words stay the writer's own.
    private static readonly SenseKind[] Spelled = [SenseKind.Way, SenseKind.Verb, SenseKind.Foot, SenseKind.Weight, SenseKind.Facing];

    /// <summary>A stretch of a line with abbreviations written out, fractions as signs and single spaces.</summary>
    public static string Words(SourceText source, TextSpan span, FigureBook book)
    {
        var tokens = new List<Token>();
        Tokenizer.Read(source.Text, span, book.Lexicon, tokens);
        var text = new StringBuilder(span.Length + 16);
        var end = span.Start;
        for (var i = 0; i < tokens.Count; i++)
        {
            var token = tokens[i];
            if (token.Kind is TokenKind.Comma or TokenKind.Semicolon && token.Start >= end)
            {
                // "R , L" and "R,L" are both written "R, L".
            }
            else if (i > 0 && token.Start == end && tokens[i - 1].Kind is TokenKind.Comma or TokenKind.Semicolon)
            {
                text.Append(' ');
            }
            else if (token.Start > end)
            {
                // Between tokens stand blanks, joining hyphens and marks that carry no word.
                var between = source.Text[end..token.Start];
                if (between.Contains('-', StringComparison.Ordinal) && token.Joined) text.Append('-');
                else if (text.Length > 0) text.Append(' ');
            }

            text.Append(Spell(source, token, book));
            end = token.End;
        }

        return text.ToString();
    }

    private static string Spell(SourceText source, Token token, FigureBook book)
    {
        switch (token.Kind)
        {
            case TokenKind.Fraction:
                var whole = token.Value / 8;
                return token.Value % 8 == 0 ? (token.Value == 8 ? "full turn" : $"{token.Value * 45}°") : (whole > 0 ? $"{whole}" : "") + Fractions[token.Value % 8];
            case TokenKind.Dash:
                return "-";
            case TokenKind.Word when token.Word >= 0:
                return Abbreviations.Full(source.Slice(token.Span), token, book) ?? Plain(source.Slice(token.Span));
            case TokenKind.Word:
                return Plain(source.Slice(token.Span));
            default:
                return source.Words(token.Span);
        }
    }

    private static string Plain(ReadOnlySpan<char> word) => word.ToString().Replace('\u2019', '\'').Replace('\u2018', '\'');

    internal static bool IsSpelled(SenseKind kind) => Array.IndexOf(Spelled, kind) >= 0;
}
