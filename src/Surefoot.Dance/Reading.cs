using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Dance;

/// <summary>
/// Everything Surefoot knows of one page: its text as a tree, the score, the motion and the problems,
/// each made from the one before. Sheets, pictures and printers read these four and nothing else.
/// </summary>
/// <param name="Couple">How the couple was solved, or null for one dancer, or where nobody solved it.</param>
/// <param name="Moving">How near the two come to each other and to the couples around them; only where they can dance it.</param>
public sealed record Reading(Page Page, DanceScore Score, DanceMotion Motion, ValueList<Problem> Problems, CoupleSolution? Couple = null, CoupleMoving? Moving = null)
{
    /// <summary>What is called before each figure.</summary>
    public CallSheet Calls { get; init; } = CallSheet.None;
}
