using Surefoot.Dance.Checks;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Dance;

/// <summary>The whole way from a page's text to everything known of it.</summary>
public static class DanceReader
{
    /// <param name="text">The page, in any of the ways people write.</param>
    /// <param name="book">The words and figures in force; those that come with Surefoot when null.</param>
    public static Reading Read(string text, FigureBook? book = null)
    {
        var (page, own) = PageReader.Read(text, book ?? FigureBook.Shipped);
        var score = ScoreMaker.Make(page, own);
        var motion = OneDancer.Follow(score);
        return new(page, score, motion, AllChecks.Run(new(page, score, motion, own)));
    }
}
