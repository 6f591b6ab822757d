using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Dance.Insight;

/// <summary>Counts of one part, as they are danced in one place of the dance.</summary>
/// <param name="Section">Which dancing of the part it is, or null for a tag and the like, which stand outside the repeat.</param>
/// <param name="From">The first count within the part, from 0.</param>
public sealed record BiteStretch(int? Section, int Part, int From, int Counts);

/// <summary>What is taught in one go: a bite with something new in it, and what follows it and costs nothing.</summary>
/// <param name="Name">Its part and, where the part has several, its number in it: "A", "B2".</param>
/// <param name="New">Counts to be learned, by the role that has more.</param>
/// <param name="Mirrored">Counts danced again with the other foot.</param>
/// <param name="RolesDiffer">True where lead and follow have different steps, so that they are taught one after the other.</param>
/// <param name="Stretches">The first is what is taught; those after it are danced again as they are known.</param>
public sealed record TeachingBite(string Name, int New, int Mirrored, bool RolesDiffer, ValueList<BiteStretch> Stretches)
{
    /// <summary>All its counts, what is danced again included.</summary>
    public int Counts => Stretches.Sum(s => s.Counts);

    /// <summary>The bites of a dance in the order in which they are danced, tags and the like after the repeat.</summary>
    /// <param name="known">Dances the class knows: what comes from them is not new.</param>
    public static ValueList<TeachingBite> Of(DanceScore score, IReadOnlyList<DanceScore> known) => new TeachingBites(score, known).All();
}
