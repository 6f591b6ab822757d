using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Which joined hands the page's words mean: "right hands", "his left hand", "both", "inside hands".</summary>
public static class PairWords
{
    /// <summary>Partners turned at least this many eighths from each other take hands as face to face.</summary>
    private const int FaceToFace = 3;

    /// <param name="joined">What is joined when the words come.</param>
    public static Pairs Meant(HandWords words, Pairs joined) => joined & words.Pair switch
    {
        HandPair.Right when words.Whose is null && joined.HasFlag(Pairs.RightRight) => Pairs.RightRight,
        HandPair.Left when words.Whose is null && joined.HasFlag(Pairs.LeftLeft) => Pairs.LeftLeft,
        // Unless told whose, "the left hand" is the lead's: he is the one who raises it.
        HandPair.Right => words.Whose == Role.Follow ? Pairs.LeftRight | Pairs.RightRight : Pairs.RightLeft | Pairs.RightRight,
        HandPair.Left => words.Whose == Role.Follow ? Pairs.RightLeft | Pairs.LeftLeft : Pairs.LeftRight | Pairs.LeftLeft,
        // Side by side with her on his right; the other way round the inner hands are the other two.
        HandPair.Inside => joined.HasFlag(Pairs.RightLeft) ? Pairs.RightLeft : Pairs.LeftRight,
        HandPair.Outside => joined.HasFlag(Pairs.LeftRight) ? Pairs.LeftRight : Pairs.RightLeft,
        _ => joined,
    };

    /// <param name="apart">The follow's facing against the lead's when hands are taken.</param>
    /// <param name="onHisLeft">True when she is on the lead's left then.</param>
    public static Pairs Taken(HandWords words, Pairs joined, Turn apart, bool onHisLeft)
    {
        var facing = Math.Abs(apart.Eighths) >= FaceToFace;
        return words.Pair switch
        {
            HandPair.Right when words.Whose is null => Pairs.RightRight,
            HandPair.Left when words.Whose is null => Pairs.LeftLeft,
            HandPair.Right => !facing ? Pairs.RightRight : words.Whose == Role.Lead ? Pairs.RightLeft : Pairs.LeftRight,
            HandPair.Left => !facing ? Pairs.LeftLeft : words.Whose == Role.Lead ? Pairs.LeftRight : Pairs.RightLeft,
            HandPair.Inside => onHisLeft ? Pairs.LeftRight : Pairs.RightLeft,
            HandPair.Outside => onHisLeft ? Pairs.RightLeft : Pairs.LeftRight,
            // The hand that is free joins its partner's free hand.
            _ => Other(joined) ?? (facing ? Pairs.Facing : Pairs.Alike),
        };
    }

    private static Pairs? Other(Pairs joined) => joined switch
    {
        Pairs.LeftRight or Pairs.RightLeft => Pairs.Facing,
        Pairs.RightRight or Pairs.LeftLeft => Pairs.Alike,
        _ => null,
    };
}
