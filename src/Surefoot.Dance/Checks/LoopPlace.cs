using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The couple cannot end the repeat where the next one has to begin.</summary>
public sealed class LoopPlace : IWholeDanceCheck
{
    public string Name => "loop-place";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Couple is not { } couple) yield break;
        foreach (var place in couple.Impossible)
        {
            var step = PlaceWords.LastStep(dance, place.At);
            var (part, count) = dance.Place(place.At);
            var far = dance.Measures.Length(Math.Round(place.Metres, 1));
            if (place.Kind == OutOfPlaceKind.Loop)
            {
                yield return new(
                    Name, Severity.Error, step.Source, part, count, null,
                    $"The dance cannot begin again: the partners end {far} from where the {place.Hold ?? "first"} hold of count 1 has them.",
                    $"{PlaceWords.Travel(dance, place)} Over the whole repeat both have to come equally far, and back to the same side of each other. {RepairWords.Sentence(dance, place)}",
                    Fixes: RepairEdits.Fixes(dance, place));
            }
            else if (place.Kind == OutOfPlaceKind.Track)
            {
                yield return new(
                    Name, Severity.Error, step.Source, part, count, null,
                    $"The couple leaves its lane: each repeat ends at least {far} {(Inwards(dance) ? "nearer to the middle of the room" : "nearer to the wall")} than it began, whatever steps they take.",
                    "Steps towards the middle and towards the wall should cancel out within a repeat, or the couple meets the next lane. "
                        + RepairWords.Sentence(dance, place),
                    Fixes: RepairEdits.Fixes(dance, place));
            }
        }
    }

    private static bool Inwards(DanceCase dance) => Motion.OneDancer.Follow(dance.Score).Of(Role.Lead)!.Travel.Y > 0;
}
