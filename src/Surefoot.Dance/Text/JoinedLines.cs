using Surefoot.Dance.Basics;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>
/// Finds where another line of counts begins inside a line, as when a line end was lost in pasting:
/// "1-2 Walk L, R 3-4 Walk L, R".
/// </summary>
internal static class JoinedLines
{
    /// <summary>
    /// Where the later lines' counts begin. Only a group of several counts ("3-4", "3&amp;4") that goes on just where the
    /// one before ended, outside brackets and with words after it: "walk 2", "hold 2 counts" and "x3" stay as they are.
    /// </summary>
    public static List<int> In(string text, ReadOnlySpan<Token> tokens, Lexicon lexicon)
    {
        var found = new List<int>();
        var at = 0;
        if (CountGroup.Read(text, tokens, lexicon, ref at) is not { Lengths.Count: 0 } before) return found;
        var depth = 0;
        for (; at < tokens.Length; at++)
        {
            if (tokens[at].Kind == TokenKind.Open) depth++;
            else if (tokens[at].Kind == TokenKind.Close) depth--;
            if (depth != 0 || tokens[at].Kind is not (TokenKind.Number or TokenKind.Amp) || !Apart(tokens, at)) continue;
            var next = at;
            if (CountGroup.Read(text, tokens, lexicon, ref next) is not { Lengths.Count: 0, Slots.Count: > 1 } group || next - at < 2) continue;
            while (next < tokens.Length && tokens[next].Kind is TokenKind.Colon or TokenKind.Period) next++;
            if (Count.At(group.FirstWhole) != before.End || next >= tokens.Length || tokens[next].Kind is not (TokenKind.Word or TokenKind.Fraction)) continue;
            found.Add(tokens[at].Start);
            before = group;
            at = next - 1;
        }

        return found;
    }

    // After a blank or a mark that ends a phrase, and not as the second half of a stretch.
    private static bool Apart(ReadOnlySpan<Token> tokens, int at) =>
        at > 0 && tokens[at - 1].Kind is not (TokenKind.Number or TokenKind.Dash or TokenKind.Amp or TokenKind.Plus)
        && (tokens[at].SpaceBefore || tokens[at - 1].Kind is TokenKind.Comma or TokenKind.Semicolon or TokenKind.Period or TokenKind.Close);
}
