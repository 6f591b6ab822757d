using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>Reads "Repeat 1-8", "Repeat Part A starting right", "9-16 Repeat 1-8, but".</summary>
internal static class RepeatReader
{
    /// <param name="rest">Where a count line goes on after "but" on the same line.</param>
    public static RepeatLine? Read(
        SourceText source, LineReader lines, FigureBook book, ReadOnlySpan<Token> tokens, CountGroup? group, TextSpan line, out TextSpan? rest)
    {
        rest = null;
        if (tokens.Length == 0 || tokens[0].Kind != TokenKind.Word) return null;
        var words = Opener(source, book, tokens, out var mirroredOpener);
        if (words == 0) return null;
        var i = words;
        int? from = null;
        int? to = null;
        string? part = null;
        Foot? starting = null;
        var mirrored = mirroredOpener;
        var times = 1;
        TextSpan? unread = null;
        var but = false;
        var startingSaid = false;
        var pieces = new List<Piece>();
        var what = tokens[0].Span;
        var last = false;
        var first = false;
        while (i < tokens.Length)
        {
            var token = tokens[i];
            var next = i;
            if (token.Kind == TokenKind.Number && !but && CountGroup.Read(source.Text, tokens, book.Lexicon, ref next) is { } counts && from is null)
            {
                if (first)
                {
                    // "Repeat the first 8 counts".
                    (from, to) = (1, counts.First.Whole);
                }
                else if (last)
                {
                    // "Repeat the last 8 counts".
                    to = -counts.First.Whole;
                    from = to;
                }
                else
                {
                    from = counts.FirstWhole;
                    to = counts.Slots[^1].Whole;
                }

                what = counts.Span;
                i = next;
                continue;
            }

            if (token.Kind == TokenKind.Word)
            {
                var spelled = source.Slice(token.Span);
                if (IsHeadingWord(spelled) && part is null)
                {
                    part = spelled.ToString();
                    if (i + 1 < tokens.Length && tokens[i + 1].Kind is TokenKind.Word or TokenKind.Number
                        && (tokens[i + 1].Length <= 2 || tokens[i + 1].Kind == TokenKind.Number))
                    {
                        var key = source.Words(tokens[i + 1].Span).ToUpperInvariant();
                        part = PageKey(part, key);
                        what = token.Span.Join(tokens[i + 1].Span);
                        i++;
                    }
                    else
                    {
                        what = token.Span;
                    }

                    i++;
                    continue;
                }

                if (IsAny(spelled, "last", "above", "previous", "preceding", "first"))
                {
                    first |= IsAny(spelled, "first");
                    last |= !first;
                    i++;
                    continue;
                }

                var count = book.Lexicon.Longest(tokens, i, out var senses);
                if (count == 0)
                {
                    if (!IsPlain(spelled)) pieces.Add(new UnknownPiece(spelled.ToString(), token.Span));
                    i++;
                    continue;
                }

                foreach (var sense in senses)
                {
                    switch (sense.Kind)
                    {
                        case SenseKind.Starting:
                            startingSaid = true;
                            break;
                        case SenseKind.Side when senses.Count == 1 || startingSaid:
                        case SenseKind.Foot when sense.Value < 2:
                            // "Starting right", "to the left", "on left foot".
                            starting ??= (Foot)sense.Value;
                            break;
                        case SenseKind.Mirrored:
                            mirrored = true;
                            break;
                        case SenseKind.Times:
                            times = sense.Value;
                            break;
                        case SenseKind.But:
                            but = true;
                            break;
                    }
                }

                // A verb, a figure, a turn: the repeat asks for something other than what it repeats.
                if (!but && senses.TrueForAll(s => s.Kind is SenseKind.Verb or SenseKind.Figure or SenseKind.Way or SenseKind.Amount or SenseKind.Role or SenseKind.Face or SenseKind.Hold or SenseKind.HandVerb or SenseKind.Weight) && !(IsAny(spelled, "all", "both")))
                {
                    unread = TextSpan.Between(token.Start, line.End);
                    break;
                }

                i += count;
                if (but && i < tokens.Length)
                {
                    while (i < tokens.Length && tokens[i].Kind is TokenKind.Colon or TokenKind.Comma) i++;
                    if (i < tokens.Length) rest = TextSpan.Between(tokens[i].Start, line.End);
                    break;
                }

                continue;
            }

            if (token.Kind == TokenKind.Fraction && !but)
            {
                unread = TextSpan.Between(token.Start, line.End);
                break;
            }

            if (token.Kind == TokenKind.Open)
            {
                var close = i;
                while (close < tokens.Length && tokens[close].Kind != TokenKind.Close) close++;
                pieces.AddRange(lines.Pieces(tokens[i..Math.Min(close + 1, tokens.Length)]));
                i = close + 1;
                continue;
            }

            i++;
        }

        if (rest is { } after && !char.IsAsciiDigit(source.Text[after.Start]) && source.Text[after.Start] != '&')
        {
            (unread, rest) = (after, null);
        }

        if (unread is { } said && ClaimsOnly(lines, tokens, said.Start) is { } claims)
        {
            // "Repeat 1-8 facing the back wall" states a fact.
            pieces.AddRange(claims);
            unread = null;
        }

        return new(group, from, to, part, mirrored, starting, times, but, what, line)
        {
            Pieces = pieces,
            WholeDance = from is null && part is null && !last && starting is null && !mirrored && unread is null,
            Unread = unread,
        };
    }

    // "Repeat", "same as", "do 1-8 again", "mirror 1-4": how many words open it.
    private static int Opener(SourceText source, FigureBook book, ReadOnlySpan<Token> tokens, out bool mirrored)
    {
        mirrored = false;
        if (Is(book, tokens, 0, SenseKind.Repeat, out var words)) return words;
        var first = source.Slice(tokens[0].Span);
        var then = tokens.Length > 1 ? tokens[1] : default;
        if (IsAny(first, "mirror") && then.Kind == TokenKind.Number)
        {
            mirrored = true;
            return 1;
        }

        if (IsAny(first, "do", "dance") && then.Kind == TokenKind.Number && IsAny(source.Slice(tokens[^1].Span), "again")) return 1;
        return IsAny(first, "same") && (then.Kind == TokenKind.Number || (then.Kind == TokenKind.Word && IsAny(source.Slice(then.Span), "as", "to", "with", "starting", "on"))) ? 1 : 0;
    }

    private static List<Piece>? ClaimsOnly(LineReader lines, ReadOnlySpan<Token> tokens, int from)
    {
        var start = 0;
        while (start < tokens.Length && tokens[start].Start < from) start++;
        var read = lines.Pieces(tokens[start..]);
        return read.Count > 0 && read.TrueForAll(p => p is ClaimPiece) ? read : null;
    }

    private static bool IsAny(ReadOnlySpan<char> word, params ReadOnlySpan<string> words)
    {
        foreach (var one in words)
        {
            if (word.Equals(one, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    internal static string PageKey(string heading, string key) =>
        heading.Equals("tag", StringComparison.OrdinalIgnoreCase) || heading.Equals("bridge", StringComparison.OrdinalIgnoreCase)
            ? char.ToUpperInvariant(heading[0]) + heading[1..].ToLowerInvariant() + " " + key
            : key;

    private static bool IsHeadingWord(ReadOnlySpan<char> word)
    {
        foreach (var heading in PageReader.HeadingWords)
        {
            if (word.Equals(heading, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    private static bool IsPlain(ReadOnlySpan<char> word) =>
        word.Equals("above", StringComparison.OrdinalIgnoreCase) || word.Equals("beginning", StringComparison.OrdinalIgnoreCase)
        || word.Equals("dance", StringComparison.OrdinalIgnoreCase) || word.Equals("before", StringComparison.OrdinalIgnoreCase)
        || word.Equals("more", StringComparison.OrdinalIgnoreCase) || word.Equals("once", StringComparison.OrdinalIgnoreCase);

    private static bool Is(FigureBook book, ReadOnlySpan<Token> tokens, int i, SenseKind kind, out int words)
    {
        words = book.Lexicon.Longest(tokens, i, out var senses);
        return words > 0 && senses.Exists(s => s.Kind == kind);
    }
}
