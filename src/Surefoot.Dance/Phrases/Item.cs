using Surefoot.Dance.Basics;
using Surefoot.Dance.Text;
using Surefoot.Dance.Words;

namespace Surefoot.Dance.Phrases;

/// <summary>A known name, a number or a mark in a line, with everything it may mean.</summary>
public readonly struct Item(List<Sense>? senses, Token token, TextSpan span, bool known)
{
    public TokenKind Kind => token.Kind;

    public int Value => token.Value;

    public bool Joined => token.Joined;

    public TextSpan Span => span;

    /// <summary>False for a word that the vocabulary does not have.</summary>
    public bool Known => known;

    public bool Is(SenseKind kind) => Is(kind, out _);

    public bool Is(SenseKind kind, out Sense sense)
    {
        if (senses is not null)
        {
            foreach (var one in senses)
            {
                if (one.Kind != kind) continue;
                sense = one;
                return true;
            }
        }

        sense = default;
        return false;
    }

    public bool HasSenses => senses is { Count: > 0 };

    public bool IsOnly(SenseKind kind) => senses is { Count: 1 } && senses[0].Kind == kind;
}

/// <summary>Finds the names in a line of tokens, the longest first.</summary>
public static class Items
{
    public static void Read(ReadOnlySpan<Token> tokens, Lexicon lexicon, List<Item> into)
    {
        for (var i = 0; i < tokens.Length;)
        {
            if (tokens[i].Kind != TokenKind.Word)
            {
                into.Add(new(null, tokens[i], tokens[i].Span, true));
                i++;
                continue;
            }

            var words = lexicon.Longest(tokens, i, out var senses);
            if (words == 0)
            {
                into.Add(new(null, tokens[i], tokens[i].Span, false));
                i++;
                continue;
            }

            into.Add(new(senses, tokens[i], tokens[i].Span.Join(tokens[i + words - 1].Span), true));
            i += words;
        }
    }
}
