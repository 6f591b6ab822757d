using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>A change that lets a couple be in place again, the most modest first.</summary>
public enum RepairKind
{
    /// <summary>Steps whose length the page names are danced as long as they have to be.</summary>
    OwnLength,

    /// <summary>Steps go back instead of forward, or forward instead of back.</summary>
    OtherWay,

    /// <summary>Steps that travel are danced on the spot.</summary>
    OnTheSpot,

    /// <summary>Two counts become a shuffle, which is one step more and travels further.</summary>
    Shuffles,

    /// <summary>One dances what the partner dances on the same counts.</summary>
    AsThePartner,

    /// <summary>All hands are let go and taken again later.</summary>
    LetGo,
}

/// <summary>A change that was tried and works.</summary>
/// <param name="Role">Whose steps change; null for both.</param>
/// <param name="From">First count that changes.</param>
/// <param name="To">Last count that changes; for hands the count on which they are taken again.</param>
/// <param name="Forward">For shuffles and the other way: true when the new steps go forward.</param>
/// <param name="Whole">True when the whole repeat can be danced then; else only as far as the trouble went.</param>
public sealed record Repair(RepairKind Kind, Role? Role, Count From, Count To, bool Forward, bool Whole);

/// <summary>How far one dancer's steps are from what would be needed, with the partner's most fitting ones.</summary>
/// <param name="Steps">How many of the dancer's steps have that direction.</param>
/// <param name="Needed">Metres they would have to cover together; below nought when they would have to go the other way.</param>
/// <param name="Limit">Metres they cover together at most, or at least.</param>
/// <param name="TooFar">True when they cannot be short enough, false when they cannot be long enough.</param>
public sealed record Shortfall(Role Role, int Steps, Steps.Direction Direction, double Needed, double Limit, bool TooFar);
