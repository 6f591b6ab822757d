using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>Finds the words of the page that a step came from.</summary>
internal static class Moves
{
    /// <summary>The segment of a line that holds a stretch, and the counts in front of it.</summary>
    public static (Segment Segment, CountLine Line)? SegmentAt(Page page, TextSpan span)
    {
        foreach (var part in page.Parts)
        {
            foreach (var node in part.Lines)
            {
                if (node is not CountLine line) continue;
                foreach (var segment in line.Segments)
                {
                    if (segment.Span.Start <= span.Start && segment.Span.End >= span.End) return (segment, line);
                }
            }
        }

        return null;
    }

    public static IEnumerable<Move> In(Segment segment) => segment.Pieces.OfType<MovePiece>().Select(p => p.Move);

    /// <summary>Every move of the page with the count line it stands in.</summary>
    public static IEnumerable<(Move Move, Segment Segment, CountLine Line)> All(Page page)
    {
        foreach (var part in page.Parts)
        {
            foreach (var line in part.Lines.OfType<CountLine>())
            {
                foreach (var segment in line.Segments)
                {
                    foreach (var move in In(segment)) yield return (move, segment, line);
                }
            }
        }
    }
}
