using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>How far the same dance has to be apart from itself, along the line of dance, for nobody to be bumped into.</summary>
/// <param name="Metres">From one lead to the next.</param>
/// <param name="At">The count that needs it, 0 before the first action.</param>
/// <param name="Behind">Who of the couple behind would bump, and who of the couple ahead.</param>
public sealed record Spacing(double Metres, double At, Role Behind, Role Ahead);

/// <summary>The couples ahead and behind, who dance the same counts at the same time.</summary>
public static class Neighbours
{
    /// <summary>Metres between couples in a circle dance where nobody says otherwise. Working value, from memory.</summary>
    public const double UsualSpacing = 2.5;

    /// <summary>Looks between the counts as often as this. Working value: nobody comes half a body nearer in an eighth of a count.</summary>
    internal const int LooksACount = 8;

    /// <summary>Follows everybody through the repeat, on a straight line of dance.</summary>
    public static Spacing Least(MovingDance dance)
    {
        var least = new Spacing(0, 0, dance.Dancers[0].Role, dance.Dancers[0].Role);
        var looks = (int)(dance.End * LooksACount);
        Span<Outline> outlines = stackalloc Outline[dance.Dancers.Count];
        for (var i = 0; i < looks; i++)
        {
            var now = (double)i / LooksACount;
            for (var d = 0; d < outlines.Length; d++) outlines[d] = Outlines.Room(dance.Dancers[d].At(now));
            for (var behind = 0; behind < outlines.Length; behind++)
            {
                for (var ahead = 0; ahead < outlines.Length; ahead++)
                {
                    // Whatever way they look, they take up no more than that.
                    if (outlines[behind].Middle.X - outlines[ahead].Middle.X + Body.EllipseAcross <= least.Metres) continue;
                    var metres = Outline.ClearAhead(outlines[behind], outlines[ahead], least.Metres);
                    if (metres > least.Metres + 1e-9) least = new(metres, now, dance.Dancers[behind].Role, dance.Dancers[ahead].Role);
                }
            }
        }

        return least;
    }
}
