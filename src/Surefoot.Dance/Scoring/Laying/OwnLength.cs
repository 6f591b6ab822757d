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
        for (var i = 0; i < moves.Count; i++)
        {
            foreach (var shape in Shape.Of(moves[i], Role.Lead, book))
            {
                if (shape.Fills) return Beats.Zero;
                whole += shape.Length;
                break;
            }

            // A touch said after a vine is the vine's own last count.
            if (i + 1 < moves.Count && LineLayer.Closes(moves[i], moves[i + 1])) i++;
        }

        return whole;
    }

    /// <returns>In counts, each move danced once: a figure that fills its counts takes as many as one of its steps does.</returns>
    public static Beats Once(IReadOnlyList<Move> moves, FigureBook book)
    {
        var whole = Beats.Zero;
        foreach (var move in moves)
        {
            foreach (var shape in Shape.Of(move, Role.Lead, book))
            {
                whole += shape.Length * Math.Max(1, shape.Fills ? Math.Max(move.Times, move.Units) : 1);
                break;
            }
        }

        return whole > Beats.Zero ? whole : Beats.One;
    }
}
