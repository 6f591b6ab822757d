using Surefoot.Dance.Basics;
using Surefoot.Dance.Moving;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The couple ahead or behind, dancing the same at the usual distance, would be hit.</summary>
public sealed class BumpCouple : ICheck
{
    public string Name => "bump-couple";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Score.Facts.Floor != Floor.Track || dance.Moving is not { } moving || moving.Spacing is not { } spacing) yield break;
        if (spacing.Metres <= Neighbours.UsualSpacing) yield break;
        var step = BumpWords.Into(dance, spacing.At);
        var (part, count) = dance.Place(step.At);
        yield return new(
            Name, Severity.Warning, step.Source, part, count, null,
            $"Couples need {dance.Measures.Length(Math.Round(spacing.Metres, 1, MidpointRounding.ToPositiveInfinity))} from one lead to the next: on count {count} the {spacing.Behind.Word()} behind comes as near as that to the {spacing.Ahead.Word()} ahead.",
            $"Couples usually line up about {dance.Measures.Length(Neighbours.UsualSpacing)} apart. Tell them to leave more room, or keep that figure shorter.");
    }
}
