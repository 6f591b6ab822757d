using Surefoot.Dance.Basics;
using Surefoot.Dance.Checks;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Moving;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Dance;

/// <summary>The whole way from a page's text to everything known of it.</summary>
public static class DanceReader
{
    /// <param name="text">The page, in any of the ways people write.</param>
    /// <param name="book">The words and figures in force; those that come with Surefoot when null.</param>
    /// <param name="solver">Solves the couple's places; without one each dancer is followed alone.</param>
    /// <param name="heights">How tall the partners are where the page does not say.</param>
    /// <param name="measures">How messages write lengths and numbers; in metres with a point when null.</param>
    /// <param name="before">What was read before an edit, with the same solver: what did not change is not solved again. The answer is the same with it and without.</param>
    public static Reading Read(
        string text, FigureBook? book = null, ILinearSolver? solver = null, UsualHeights heights = default, Measures? measures = null, Reading? before = null)
    {
        var (page, own) = PageReader.Read(text, book ?? FigureBook.Shipped);
        var score = heights.On(ScoreMaker.Make(page, own));
        var (motion, couple, moving) = before is not null && SameSteps(before.Score, score) ? (before.Motion, before.Couple, before.Moving) : Danced(score, solver);
        var problems = AllChecks.Run(new(page, score, motion, own, couple) { Moving = moving, Measures = measures ?? Measures.Usual });
        return new Reading(page, score, motion, problems, couple, moving).Called(own);
    }

    private static (DanceMotion Motion, CoupleSolution? Couple, CoupleMoving? Moving) Danced(DanceScore score, ILinearSolver? solver)
    {
        var couple = solver is not null && score.Facts is { ForCouples: true, Hold: not null } ? Solved(score, solver) : null;
        // Where no lengths will do, everybody is shown with usual steps: that is what would happen. A couple
        // that only leaves its lane is shown as it dances.
        var motion = couple is { InPlace: true } ? couple.Motion : OneDancer.Follow(score);
        return (motion, couple, couple is { Impossible.Count: 0 } ? CoupleMoving.Of(MovingDance.Of(score, motion, couple)) : null);
    }

    // Another title and other notes move nobody. Places in the text count as well: what was found points to them.
    private static bool SameSteps(DanceScore before, DanceScore now) => before with { Title = now.Title, Notes = now.Notes } == now;

    // A solver that gives up leaves the couple unplaced; reading a page never fails for it.
    private static CoupleSolution? Solved(DanceScore score, ILinearSolver solver)
    {
        try
        {
            return CoupleSolve.Of(score, solver);
        }
        catch (Exception gaveUp) when (gaveUp is TimeoutException or ArithmeticException)
        {
            return null;
        }
    }
}
