using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Figures;
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
    private Later Made { get; init; } = new(() => CallSheet.None);

    /// <summary>What is called before each figure. Made when first asked for: whoever writes at a page waits for its problems, not for its calls.</summary>
    public CallSheet Calls => Made.Calls;

    /// <summary>This with its calls to be made from the score and the book of figures the page was read with.</summary>
    internal Reading Called(FigureBook book)
    {
        var score = Score;
        return this with { Made = new(() => CallMaker.Make(score, book)) };
    }

    // Two of them are alike wherever scores are: they follow from those.
    private sealed class Later(Func<CallSheet> make) : IEquatable<Later>
    {
        private readonly Lazy<CallSheet> _calls = new(make);

        public CallSheet Calls => _calls.Value;

        public bool Equals(Later? other) => other is not null;

        public override bool Equals(object? other) => other is Later;

        public override int GetHashCode() => 0;
    }
}
