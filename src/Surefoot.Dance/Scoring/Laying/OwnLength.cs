using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>How long moves take where no counts are written beside them.</summary>
public static class OwnLength
{
    /// <returns>In counts, by each move's own rhythm; zero where one of them fills whatever it is given.</returns>
    public static Beats Of(IReadOnlyList<Move> moves, FigureBook book)
    {
        var whole = Beats.Zero;
        foreach (var move in moves)
        {
            foreach (var shape in Shape.Of(move, Role.Lead, book))
            {
                if (shape.Fills) return Beats.Zero;
                whole += shape.Length;
                break;
            }
        }

        return whole;
    }
}
