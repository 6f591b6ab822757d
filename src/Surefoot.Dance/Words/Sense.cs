namespace Surefoot.Dance.Words;

/// <summary>What a word or name can be.</summary>
public enum SenseKind : byte
{
    Verb,
    Way,
    Side,
    Foot,
    FootNoun,
    Rotation,
    Amount,
    Part,
    Slow,
    Quick,
    Times,
    Number,
    Multiply,
    And,
    Then,
    Small,
    Large,
    Starting,
    Mirrored,
    Repeat,
    But,
    With,
    Role,
    Face,
    Facing,
    Relation,
    OClock,
    WallWord,
    Weight,
    Even,
    Free,
    NoWeight,
    Feet,
    Counts,
    HandVerb,
    HandNoun,
    Head,
    Pair,
    Hold,
    Filler,
    Style,
    Figure,
}

/// <summary>One meaning of a name.</summary>
/// <param name="Value">Depends on the kind: an action kind, a direction, a side, eighths, a hold's number …</param>
/// <param name="Second">For verbs: the direction that comes with the word, or -1. For facings: 0 track, 1 walls.</param>
public readonly record struct Sense(SenseKind Kind, int Value, int Second);
