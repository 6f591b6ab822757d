using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Text;

/// <summary>Reads single lines: counts, then the actions of each role.</summary>
public sealed class LineReader(SourceText source, FigureBook book, Floor floor)
{
    private readonly PhraseReader _phrases = new(source.Text, book, floor);
    private readonly List<Token> _tokens = new(64);

    public IReadOnlyList<Token> Tokens => _tokens;

    /// <summary>Cuts a line into tokens; they stay until the next line is cut.</summary>
    public ReadOnlySpan<Token> Cut(TextSpan line)
    {
        _tokens.Clear();
        Tokenizer.Read(source.Text, line, book.Lexicon, _tokens);
        return System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_tokens);
    }

    /// <summary>The line as counts and actions, or null when it does not start with counts.</summary>
    public CountLine? CountLine(TextSpan line)
    {
        var tokens = Cut(line);
        var next = 0;
        if (CountGroup.Read(source.Text, tokens, book.Lexicon, ref next) is not { } group) return null;
        while (next < tokens.Length && tokens[next].Kind is TokenKind.Colon or TokenKind.Period or TokenKind.Close or TokenKind.Dash) next++;
        return new(group, Segments(tokens[next..], line), line);
    }

    /// <summary>A line's actions by role.</summary>
    public List<Segment> Segments(ReadOnlySpan<Token> tokens, TextSpan line, Move? earlier = null)
    {
        var segments = new List<Segment>(2);
        Role? role = null;
        TextSpan? roleSpan = null;
        var from = 0;
        var depth = 0;
        for (var i = 0; i < tokens.Length; i++)
        {
            if (depth == 0 && i + 2 < tokens.Length && tokens[i].Kind == TokenKind.Open && tokens[i + 2].Kind == TokenKind.Close && tokens[i + 1].Length >= 3
                && RoleOf(tokens[i + 1]) is { Role: { } bracketed })
            {
                // "(Man) walk L, R (Lady) turn …"
                Close(tokens[from..i]);
                role = bracketed;
                roleSpan = tokens[i].Span.Join(tokens[i + 2].Span);
                i += 2;
                from = i + 1;
                continue;
            }

            if (tokens[i].Kind == TokenKind.Open) depth++;
            else if (tokens[i].Kind == TokenKind.Close) depth--;
            if (depth > 0 || RoleAt(tokens, i, StartsPhrase(tokens, i)) is not { } found) continue;
            // "He rocks forward left while she rocks back": what joins the two is no step of his.
            var joins = i;
            while (joins > from && IsOne(Joining, tokens[joins - 1])) joins--;
            Close(tokens[from..joins]);
            role = found.Role;
            roleSpan = tokens[joins].Span.Join(tokens[found.Last].Span);
            i = found.Last;
            from = i + 1;
        }

        Close(tokens[from..]);
        return segments;

        void Close(ReadOnlySpan<Token> stretch)
        {
            if (stretch.Length == 0 && roleSpan is null) return;
            var span = stretch.Length == 0 ? roleSpan!.Value : stretch[0].Span.Join(stretch[^1].Span);
            segments.Add(new(role, roleSpan, _phrases.Read(stretch, roleSpan is null ? earlier : null), span));
        }
    }

    /// <summary>The pieces of a stretch that belongs to no role, such as a heading.</summary>
    public List<Piece> Pieces(ReadOnlySpan<Token> tokens) => _phrases.Read(tokens);

    /// <summary>A role word at a token: "Lead:", "Man's part:", or "Lady" at the start of a phrase that goes on with a move.</summary>
    public (Role? Role, int Last)? RoleAt(ReadOnlySpan<Token> tokens, int i, bool startsPhrase)
    {
        if (tokens[i].Kind != TokenKind.Word) return null;
        var words = book.Lexicon.Longest(tokens, i, out var senses);
        if (words != 1) return null;
        var sense = senses.Find(s => s.Kind == SenseKind.Role);
        if (sense.Kind != SenseKind.Role) return null;
        Role? role = sense.Value switch { 0 => Role.Lead, 1 => Role.Follow, _ => null };
        for (var j = i + 1; j < tokens.Length && j <= i + 2; j++)
        {
            if (tokens[j].Kind == TokenKind.Colon) return (role, j);
            if (tokens[j].Kind != TokenKind.Word || !IsPartWord(tokens[j])) break;
        }

        if (!startsPhrase || i + 1 >= tokens.Length || tokens[i + 1].Kind is not (TokenKind.Word or TokenKind.Fraction)) return null;
        var spelled = source.Slice(tokens[i].Span);
        // "Both hands" are no dancers; "both shuffle" are.
        if (senses.Exists(s => s.Kind is SenseKind.Pair or SenseKind.Verb) && !spelled.Equals("both", StringComparison.OrdinalIgnoreCase)) return null;
        // Of the short ones only "he" is a word and no letter.
        if ((spelled.Length < 3 && !spelled.Equals("he", StringComparison.OrdinalIgnoreCase)) || spelled.Contains('\'') || spelled.Contains('\u2019') || spelled.Equals("his", StringComparison.OrdinalIgnoreCase)
            || spelled.Equals("him", StringComparison.OrdinalIgnoreCase) || spelled.Equals("her", StringComparison.OrdinalIgnoreCase)
            || spelled.Equals("each", StringComparison.OrdinalIgnoreCase) || spelled.Equals("all", StringComparison.OrdinalIgnoreCase)) return null;
        var next = i + 1;
        while (next < tokens.Length && IsOne(Does, tokens[next])) next++;
        // "She does", and what is not written yet.
        if (next == tokens.Length) return (role, i);
        if (tokens[next].Kind == TokenKind.Fraction) return (role, i);
        return book.Lexicon.Longest(tokens, next, out var after) > 0
            && after.Exists(s => s.Kind is SenseKind.Verb or SenseKind.Figure or SenseKind.Way or SenseKind.Amount)
            ? (role, i)
            : next > i + 1 ? (role, i) : null;
    }

    /// <summary>The role that a word by itself names.</summary>
    public (Role? Role, int Last)? RoleOf(Token token)
    {
        Span<Token> one = [token];
        if (book.Lexicon.Longest(one, 0, out var senses) != 1) return null;
        var sense = senses.Find(s => s.Kind == SenseKind.Role);
        return sense.Kind == SenseKind.Role ? (sense.Value switch { 0 => Role.Lead, 1 => Role.Follow, _ => null }, 0) : null;
    }

    // "She does a full turn".
    private static readonly string[] Does = ["do", "does", "doing", "make", "makes", "making", "dance", "dances", "dancing", "a", "an", "the", "her", "his", "just", "also", "only"];

    /// <summary>Words between what one dancer does and what the other does.</summary>
    internal static readonly string[] Joining = ["while", "as", "and", "but", "the"];

    private bool IsOne(string[] words, Token token)
    {
        if (token.Kind != TokenKind.Word) return false;
        var said = source.Slice(token.Span);
        foreach (var word in words)
        {
            if (said.Equals(word, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    private bool StartsPhrase(ReadOnlySpan<Token> tokens, int i)
    {
        if (i == 0 || tokens[i - 1].Kind is TokenKind.Comma or TokenKind.Semicolon or TokenKind.Period) return true;
        var before = source.Slice(tokens[i - 1].Span);
        if (before.Equals("the", StringComparison.OrdinalIgnoreCase)) return StartsPhrase(tokens, i - 1);
        return before.Equals("while", StringComparison.OrdinalIgnoreCase) || before.Equals("as", StringComparison.OrdinalIgnoreCase)
            || before.Equals("and", StringComparison.OrdinalIgnoreCase) || before.Equals("but", StringComparison.OrdinalIgnoreCase);
    }

    private bool IsPartWord(Token token)
    {
        var word = source.Slice(token.Span);
        return word.Equals("part", StringComparison.OrdinalIgnoreCase) || word.Equals("steps", StringComparison.OrdinalIgnoreCase)
            || word.Equals("step", StringComparison.OrdinalIgnoreCase);
    }
}
