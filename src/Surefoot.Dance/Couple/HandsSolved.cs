using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>Hands through a repeat, found by least effort.</summary>
/// <param name="Pairs">What each pair does at every moment.</param>
/// <param name="Suggestions">What the page leaves unsaid and the hands have to do.</param>
public sealed record HandsSolved(ValueList<PairTrack> Pairs, ValueList<HandSuggestion> Suggestions, ValueList<HandTrouble> Troubles)
{
    public static HandsSolved Of(Scoring.DanceScore score, Motion.DanceMotion motion, IReadOnlyList<Moment> moments, CoupleLimits limits) =>
        HandsSolve.Of(score, motion, moments, limits);
}

/// <param name="Heights">For each moment how high the hands are, or null while they are apart.</param>
/// <param name="Winds">For each moment how the arms lie, passes overhead counted.</param>
public sealed record PairTrack(Pairs Pair, ValueList<HandHeight?> Heights, ValueList<Wind> Winds);

/// <summary>Something the hands have to do at a count, which the page does not say.</summary>
/// <param name="Verb">Raise, release or take.</param>
public sealed record HandSuggestion(Count At, Pairs Pair, HandVerb Verb);

public enum HandTroubleKind
{
    /// <summary>The arm would have to go further round a body than arms go.</summary>
    Wind,

    /// <summary>The shoulders are further apart than two arms reach at the height of their hands.</summary>
    Reach,

    /// <summary>The hands are joined with arms all but straight.</summary>
    Stretched,

    /// <summary>Only up and over a head would do, and the page keeps the hands down.</summary>
    Overhead,

    /// <summary>Whoever goes under is too tall for the partner's raised hand.</summary>
    Low,

    /// <summary>Both pairs pass over the same dancer, and cross each other on the way.</summary>
    Twisted,
}

/// <param name="Role">Whose arm, or who goes under; null where it is both.</param>
/// <param name="Amount">Degrees of wind, metres missing, whichever the kind has.</param>
/// <param name="Repair">What would mend it, by relaxing what the page fixes; null where nothing was found.</param>
public sealed record HandTrouble(HandTroubleKind Kind, Count At, Pairs Pair, Role? Role, double Amount, HandVerb? Repair)
{
    /// <summary>True when a hammerlock, which the page does not ask for, would mend it.</summary>
    public bool Hammerlock { get; init; }

    /// <summary>How high the hands are, for what has to do with reach.</summary>
    public HandHeight Height { get; init; }

    /// <summary>How the arms lie afterwards, for hands that cross each other.</summary>
    public Twist Twist { get; init; }
}
