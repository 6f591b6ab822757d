using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>What a check may look at: the page, its score, its motion and the words in force.</summary>
/// <param name="Couple">How the couple was solved, or null.</param>
public sealed record DanceCase(Page Page, DanceScore Score, DanceMotion Motion, FigureBook Book, CoupleSolution? Couple = null)
{
    /// <summary>How messages write lengths and numbers.</summary>
    public Measures Measures { get; init; } = Measures.Usual;

    /// <summary>The words of the page at a stretch.</summary>
    public string Words(TextSpan span) => Page.Source.Words(span);

    /// <summary>The part and the count in it, numbered as the page numbers them, of a count of the repeat.</summary>
    public (string? Part, string Count) Place(Count at)
    {
        if (Score.PartAt(at) is not { } place) return (null, at.Name);
        return (LabelOf(place.Part), (place.InPart + Beats.Of(place.Part.CountOffset)).Name);
    }

    /// <summary>A count of a part as the page numbers it.</summary>
    public string CountIn(int part, Count at) => (at + Beats.Of(Score.Parts[part].CountOffset)).Name;

    public string? LabelIn(int part) => part >= 0 && part < Score.Parts.Count ? LabelOf(Score.Parts[part]) : null;

    /// <summary>
    /// True when words, counts or feet of the page are in doubt already. What follows from that, such as
    /// a dance that does not lead into its start, is not reported a second time.
    /// </summary>
    public bool InDoubt { get; init; }

    /// <summary>What moving brings to light of a couple that was solved, else null.</summary>
    public CoupleMoving? Moving { get; init; }

    /// <summary>How the dancer of a role stands once every action up to a moment is done.</summary>
    public static RoleStart StandingAt(RoleScore role, Count at)
    {
        var done = StanceAt(role, at);
        return done == 0 ? role.Start : new(role.Role, role.Steps[done - 1].Facing, role.Steps[done - 1].Weight);
    }

    /// <summary>The index of the last stance at or before a moment, which is the number of actions done by then.</summary>
    public static int StanceAt(RoleScore role, Count at)
    {
        var low = 0;
        var high = role.Steps.Count;
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (role.Steps[middle].At <= at) low = middle + 1;
            else high = middle;
        }

        return low;
    }

    private static string? LabelOf(PartScore part) => part.Label.Length > 0 ? part.Label : null;
}

/// <summary>One thing to look for. Each stands alone, in its own file, with its own examples in the corpus.</summary>
public interface ICheck
{
    /// <summary>The stable name of the problem it finds.</summary>
    string Name { get; }

    IEnumerable<Problem> Find(DanceCase dance);
}

/// <summary>
/// A check that says something only of a dance that is written to its end. A page that stops before the counts it
/// states is not asked; one that states none may still be growing, and what is found then holds so far.
/// </summary>
public interface IWholeDanceCheck : ICheck;
