using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Text;

/// <summary>Says where a place that belongs to a problem is: "7&amp;8: the last turn".</summary>
public static class RelatedPlace
{
    /// <param name="homePart">The part of the problem itself, which is not named again.</param>
    public static string Told(Page page, RelatedSpan related, string? homePart) => $"{CountsAt(page, related.Span, homePart)}: {related.Says}";

    /// <summary>"3&amp;4", with the part before it when that is another one; "line 7" away from the counts.</summary>
    private static string CountsAt(Page page, TextSpan span, string? homePart)
    {
        foreach (var part in page.Parts)
        {
            foreach (var line in part.Lines)
            {
                // A role's words may stand on a line of their own below the counts.
                if (!Holds(line.Span, span) && !(line is CountLine below && below.Segments.Exists(s => Holds(s.Span, span)))) continue;
                var group = line switch
                {
                    CountLine counted => counted.Group,
                    RepeatLine repeat => repeat.Group,
                    _ => null,
                };
                if (group is null) break;
                var counts = page.Source.Words(group.Span);
                return part.Label == homePart || homePart is null ? counts : $"{part.Label}, {counts}";
            }
        }

        return $"line {page.Source.Place(span.Start).Line}";
    }

    private static bool Holds(TextSpan outer, TextSpan inner) => outer.Start <= inner.Start && inner.End <= outer.End;
}
