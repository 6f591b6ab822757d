using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Steps;

/// <summary>What the page says happens with hands, as a value.</summary>
/// <param name="Pair">Which joined pair, from the words "right", "left", "both", "inside".</param>
/// <param name="Hold">For <see cref="HandVerb.Into"/>: the hold's name.</param>
/// <param name="Whose">Whose hand the words name ("his left hand"); null when they name a joined pair.</param>
public sealed record HandWords(HandVerb Verb, HandPair Pair, string? Hold, Role? Whose = null)
{
    /// <summary>The same words for the mirrored dance.</summary>
    public HandWords Mirrored() => this with
    {
        Pair = Pair switch { HandPair.Left => HandPair.Right, HandPair.Right => HandPair.Left, _ => Pair },
    };
}

public enum HandVerb
{
    Raise,
    Lower,
    Release,
    Take,
    Keep,
    /// <summary>Somebody passes under the pair.</summary>
    Under,
    /// <summary>The pair goes over somebody's head.</summary>
    Over,
    /// <summary>The couple goes into a named hold.</summary>
    Into,
    /// <summary>Said in words that name a place of a hand, kept for the sheet.</summary>
    Placed,
}

public enum HandPair
{
    Unsaid,
    Right,
    Left,
    Both,
    Inside,
    Outside,
}
