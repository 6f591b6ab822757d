using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>Dances the text of a figure once by itself, so that using it is only playing it back.</summary>
internal static class FigureDancer
{
    [ThreadStatic]
    private static int _depth;

    // A figure made of figures made of figures: deeper than this, one of them contains itself.
    private const int Deepest = 8;

    /// <summary>The rhythm of the version that a move asks for.</summary>
    public static FigureDance Rhythm(Figure figure, Move move, Role role, FigureBook book)
    {
        var version = Choose(figure, move.Way, 0, false, out _);
        return version is null ? FigureDance.Nothing : Of(figure, version, role, book);
    }

    /// <summary>
    /// The version that goes the way asked for and turns the side asked for.
    /// </summary>
    /// <param name="turnSide">+1 left, -1 right, seen from a left-foot start; 0 when not said.</param>
    /// <param name="exact">False when the figure has no version going that way.</param>
    public static FigureVersion? Choose(Figure figure, Direction? way, int turnSide, bool turns, out bool exact)
    {
        FigureVersion? best = null;
        var bestScore = -1;
        exact = way is null;
        foreach (var version in figure.Versions)
        {
            var going = way is null ? version.Going == figure.Versions[0].Going : version.Going == way || (version.Going is null && figure.Versions.Count == 1);
            var turning = version.Turning == 0 ? !turns : turns && (turnSide == 0 || version.Turning == turnSide);
            var score = (going ? 4 : 0) + (turning ? 2 : 0) + (version.Turning == 0 ? 1 : 0);
            exact |= way is not null && version.Going == way;
            if (score <= bestScore) continue;
            best = version;
            bestScore = score;
        }

        return best;
    }

    public static FigureDance Of(Figure figure, FigureVersion version, Role role, FigureBook book)
    {
        if (version.Danced[(int)role] is { } known) return known;
        if (_depth >= Deepest) return FigureDance.Nothing;
        _depth++;
        try
        {
            var dance = Dance(version, role, book);
            if (_depth == 1 || dance.Steps.Count > 0) version.Danced[(int)role] = dance;
            return dance;
        }
        finally
        {
            _depth--;
        }
    }

    /// <summary>True when dancing the figure meets the figure itself.</summary>
    public static bool ContainsItself(Figure figure)
    {
        return Meets(figure, [], figure);

        static bool Meets(Figure at, HashSet<Figure> seen, Figure sought)
        {
            foreach (var line in at.Versions.SelectMany(v => v.Lines))
            {
                foreach (var piece in line.Segments.SelectMany(s => s.Pieces))
                {
                    if (piece is not MovePiece { Move.Figure: { } used }) continue;
                    if (ReferenceEquals(used, sought) || (seen.Add(used) && Meets(used, seen, sought))) return true;
                }
            }

            return false;
        }
    }

    private static FigureDance Dance(FigureVersion version, Role role, FigureBook book)
    {
        var dancer = new Dancer(role, new(role, Facing.Front, Weight.Right), book);
        var byRole = false;
        var last = Count.First;
        foreach (var line in version.Lines)
        {
            var moves = new List<Move>();
            foreach (var segment in line.Segments)
            {
                byRole |= segment.Role is not null;
                // Danced alone, a figure of a couple is the lead's.
                if (segment.Role is { } only && only != (role == Role.Dancer ? Role.Lead : role)) continue;
                foreach (var piece in segment.Pieces)
                {
                    if (piece is MovePiece move) moves.Add(move.Move);
                }
            }

            var (placed, _) = LineLayer.Lay(moves, line.Group, role, book, out _);
            foreach (var one in placed) dancer.Dance(new(one.Move, one.Times, line.Group.End, false, line.Span, false));
            if (line.Group.End > last) last = line.Group.End;
        }

        var steps = dancer.Steps.ToValueList();
        return new(steps, steps.Select(s => s.At - Count.First).ToValueList(), last - Count.First, byRole);
    }
}
