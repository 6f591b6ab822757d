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
            var step = dance.Score.Roles.SelectMany(r => r.Steps).Where(s => s.At <= place.At && s.At >= place.From).MaxBy(s => s.At) ?? dance.Score.Roles[0].Steps[0];
            var (part, count) = dance.Place(place.At);
            var from = dance.Place(place.From).Count;
            var stretch = from == count ? $"on count {count}" : $"on counts {from} to {count}";
            var apart = Say.Metres(Math.Round(place.Metres, 2));
            var moved = Moved(dance, place);
            yield return new(
                Name, Severity.Error, step.Source, part, count, null,
                place.Reach
                    ? $"The couple cannot stay within reach of each other {stretch}: they end {apart} m too far apart."
                    : $"The couple cannot keep {(place.Hold is { } hold ? $"the {hold} hold" : "what they hold")} {stretch}: even with their most fitting steps they end {apart} m out of it.",
                $"With usual steps the lead moves {Say.Metres(moved.Lead)} m there and the follow {Say.Metres(moved.Follow)} m. Have both travel alike, or release the hands.");
        }
    }

    private static (double Lead, double Follow) Moved(DanceCase dance, OutOfPlace place)
    {
        var alone = Motion.OneDancer.Follow(dance.Score);
        return (Way(Role.Lead), Way(Role.Follow));

        double Way(Role role)
        {
            var (steps, stances) = (dance.Score.Of(role)!, alone.Of(role)!.Stances);
            var from = stances[DanceCase.StanceAt(steps, place.From - Beats.Of(1, 64))].Middle;
            return Math.Round((stances[DanceCase.StanceAt(steps, place.At)].Middle - from).Length, 1);
        }
    }
}
