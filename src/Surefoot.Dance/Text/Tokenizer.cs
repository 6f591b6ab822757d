using Surefoot.Dance.Basics;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>
/// Cuts a stretch of the page into tokens. Hard spaces, typographic quotes and dashes pasted from a mail
/// count as the plain ones; a byte order mark is skipped.
/// </summary>
public static class Tokenizer
{
    public static void Read(string text, TextSpan span, Lexicon lexicon, List<Token> into)
    {
        var i = span.Start;
        var end = span.End;
        var joined = false;
        var space = false;
        Span<char> buffer = stackalloc char[48];
        while (i < end)
        {
            var c = text[i];
            if (IsSpace(c))
            {
                space = true;
                joined = false;
                i++;
                continue;
            }

            var start = i;
            if (char.IsLetter(c))
            {
                i = WordEnd(text, i, end);
                // "f/w", "w/" and "b/w" are one word each where the vocabulary has them.
                if (i < end && text[i] == '/' && i - start <= 2)
                {
                    var far = i + 1;
                    while (far < end && char.IsLetter(text[far])) far++;
                    if (lexicon.WordOf(Plain(text, start, far, buffer)) >= 0) i = far;
                    else if (lexicon.WordOf(Plain(text, start, i + 1, buffer)) >= 0) i++;
                }

                var word = lexicon.WordOf(Plain(text, start, i, buffer));
                if (word < 0 && i - start is > 1 and <= 8 && text.AsSpan(start, i - start).IndexOfAnyExcept('L', 'R') < 0)
                {
                    // "RLR" is three feet.
                    for (var k = start; k < i; k++) into.Add(new(TokenKind.Word, k, 1, lexicon.WordOf(text[k] == 'L' ? "l" : "r"), 0, joined || k > start, space && k == start));
                }
                else
                {
                    into.Add(new(TokenKind.Word, start, i - start, word, 0, joined, space));
                }
            }
            else if (char.IsAsciiDigit(c))
            {
                // "turn 1 1/2" is one and a half; in "1-2 1/2 turn" the 2 is a count.
                var mixed = into.Count > 0 && into[^1].Kind is TokenKind.Word or TokenKind.Open;
                into.Add(ReadNumber(text, ref i, end, joined, space, mixed));
            }
            else if (EighthsOf(c) is var eighths and > 0)
            {
                i++;
                into.Add(new(TokenKind.Fraction, start, 1, -1, eighths, joined, space));
            }
            else
            {
                i++;
                var kind = KindOf(c);
                if (kind == TokenKind.Dash && IsJoiner(text, start, span.Start, end))
                {
                    joined = true;
                    space = false;
                    continue;
                }

                if (c != '\uFEFF') into.Add(new(kind, start, 1, -1, c, joined, space));
            }

            joined = false;
            space = false;
        }
    }

    public static bool IsSpace(char c) => c is ' ' or '\t' or '\u00A0' or '\u202F' or '\u2007' or '\u2009' or '\u200B' or '\uFEFF' || char.IsWhiteSpace(c);

    public static bool IsDash(char c) => c is '-' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2212';

    public static int EighthsOf(char c) => c switch
    {
        '¼' => 2,
        '½' => 4,
        '¾' => 6,
        '⅛' => 1,
        '⅜' => 3,
        '⅝' => 5,
        '⅞' => 7,
        _ => 0,
    };

    private static Token ReadNumber(string text, ref int i, int end, bool joined, bool space, bool mixed)
    {
        var start = i;
        var value = Digits(text, ref i, end);
        if (i < end && EighthsOf(text[i]) is var glyph and > 0 && value <= 4)
        {
            i++;
            return new(TokenKind.Fraction, start, i - start, -1, (value * 8) + glyph, joined, space);
        }

        if (i + 1 < end && text[i] == '/' && char.IsAsciiDigit(text[i + 1]) && value < 8)
        {
            var far = i + 1;
            var below = Digits(text, ref far, end);
            if (below is 2 or 4 or 8 && value < below)
            {
                i = far;
                return new(TokenKind.Fraction, start, i - start, -1, value * 8 / below, joined, space);
            }
        }

        // "1 1/2" and "1-1/2" are one and a half.
        if (mixed && value is >= 1 and <= 3 && i + 3 < end && (text[i] == ' ' || IsDash(text[i])) && text[i + 1] is >= '1' and <= '7' && text[i + 2] == '/' && text[i + 3] is '2' or '4' or '8')
        {
            var below = text[i + 3] - '0';
            var over = text[i + 1] - '0';
            if (over < below && (i + 4 >= end || !char.IsAsciiDigit(text[i + 4])))
            {
                i += 4;
                return new(TokenKind.Fraction, start, i - start, -1, (value * 8) + (over * 8 / below), joined, space);
            }
        }

        if (i + 2 < end && text[i] == ':' && char.IsAsciiDigit(text[i + 1]) && char.IsAsciiDigit(text[i + 2]) && value is >= 1 and <= 12)
        {
            var minutes = ((text[i + 1] - '0') * 10) + text[i + 2] - '0';
            if (minutes is 0 or 30 && ((value * 60) + minutes) % 90 == 0)
            {
                i += 3;
                return new(TokenKind.Clock, start, i - start, -1, EighthsOfClock((value * 60) + minutes), joined, space);
            }
        }

        if (i + 1 < end && text[i] == '.' && char.IsAsciiDigit(text[i + 1]))
        {
            i++;
            var scale = 100;
            var parts = value * 1000;
            while (i < end && char.IsAsciiDigit(text[i]))
            {
                parts += (text[i++] - '0') * scale;
                scale /= 10;
            }

            return new(TokenKind.Decimal, start, i - start, -1, parts, joined, space);
        }

        if (i < end && text[i] == '°' && value % 45 == 0 && value is > 0 and <= 1080)
        {
            i++;
            return new(TokenKind.Fraction, start, i - start, -1, value / 45, joined, space);
        }

        return new(TokenKind.Number, start, i - start, -1, value, joined, space);
    }

    /// <summary>Minutes on the clock face to eighths to the left of 12:00; 3:00 lies to the right.</summary>
    private static int EighthsOfClock(int minutes) => (8 - (minutes % 720 / 90)) % 8;

    private static int Digits(string text, ref int i, int end)
    {
        var value = 0;
        while (i < end && char.IsAsciiDigit(text[i]))
        {
            // A page counts no further than this; longer runs of digits are kept but not added up.
            if (value < 100_000) value = (value * 10) + text[i] - '0';
            i++;
        }

        return value;
    }

    private static int WordEnd(string text, int i, int end)
    {
        while (i < end && (char.IsLetter(text[i]) || (IsApostrophe(text[i]) && i + 1 < end && char.IsLetter(text[i + 1])))) i++;
        if (i < end && IsApostrophe(text[i]) && text[i - 1] is 's' or 'S') i++;
        return i;
    }

    private static bool IsApostrophe(char c) => c is '\'' or '\u2019' or '\u2018' or '\u02BC';

    // A hyphen inside "cha-cha" or "R-L-R" joins; one with blanks round it separates.
    private static bool IsJoiner(string text, int at, int from, int end) =>
        at > from && at + 1 < end && (char.IsLetter(text[at - 1]) || Tokenizer.EighthsOf(text[at - 1]) > 0 || char.IsAsciiDigit(text[at - 1])) && char.IsLetter(text[at + 1]);

    private static ReadOnlySpan<char> Plain(string text, int start, int end, Span<char> buffer)
    {
        var length = Math.Min(end - start, buffer.Length);
        for (var i = 0; i < length; i++)
        {
            var c = text[start + i];
            buffer[i] = IsApostrophe(c) ? '\'' : char.ToLowerInvariant(c);
        }

        return buffer[..length];
    }

    private static TokenKind KindOf(char c) => c switch
    {
        '&' => TokenKind.Amp,
        ',' => TokenKind.Comma,
        ';' => TokenKind.Semicolon,
        '.' or '\u2026' or '!' => TokenKind.Period,
        ':' => TokenKind.Colon,
        '(' or '[' or '{' => TokenKind.Open,
        ')' or ']' or '}' => TokenKind.Close,
        '/' => TokenKind.Slash,
        '+' => TokenKind.Plus,
        _ when IsDash(c) => TokenKind.Dash,
        _ => TokenKind.Other,
    };
}
