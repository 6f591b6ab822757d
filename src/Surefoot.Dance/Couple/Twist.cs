using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Couple;

/// <summary>How two joined pairs of hands lie to each other after a turn.</summary>
/// <param name="Halves">
/// Half twists; a full turn of one dancer under both pairs is two. Two hands have none, crossed hands one,
/// counted up with the right hands over the left and down with the left over the right.
/// </param>
/// <param name="Hindered">The hold that is named next and needs the arms otherwise, or null.</param>
/// <param name="Needed">When; the count before the first where the repeat begins again.</param>
public readonly record struct Twist(int Halves, string? Hindered, Count Needed);
