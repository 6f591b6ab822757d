using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The couple cannot be where their hold needs them, however long or short their steps.</summary>
public sealed class HoldPlace : ICheck
{
    public string Name => "hold-place";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Couple is not { } couple) yield break;
        foreach (var place in couple.Impossible)
        {
            if (place.Kind is not (OutOfPlaceKind.Hold or OutOfPlaceKind.Reach)) continue;
            var step = PlaceWords.LastStep(dance, place.At);
            var (part, count) = dance.Place(place.At);
            var hold = place.Hold is { } name ? $"the {name} hold" : "what they hold";
            var far = dance.Measures.Length(Math.Round(place.Metres, 1));
            var worst = place.Worst == place.At ? "then they are" : $"by count {dance.Place(place.Worst).Count} they are";
            yield return new(
                Name, Severity.Error, step.Source, part, count, null,
                place.Kind == OutOfPlaceKind.Reach
                    ? $"The couple cannot keep hold of each other {PlaceWords.Stretch(dance, place)}: {worst} {far} too far apart, even with their most fitting steps."
                    : $"The couple cannot keep {hold} {PlaceWords.Stretch(dance, place)}: {worst} {far} from where it has them, even with their most fitting steps.",
                $"{RepairWords.Figures(dance, place)} {RepairWords.Sentence(dance, place)}",
                Fixes: RepairEdits.Fixes(dance, place));
        }
    }
}
