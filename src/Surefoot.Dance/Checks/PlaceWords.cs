using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>Turns of phrase for places that cannot be reached.</summary>
internal static class PlaceWords
{
    /// <summary>The action that is danced last at a moment.</summary>
    public static ScoreStep LastStep(DanceCase dance, Count at)
    {
        ScoreStep? last = null;
        foreach (var role in dance.Score.Roles)
        {
            var done = DanceCase.StanceAt(role, at);
            if (done > 0 && (last is null || role.Steps[done - 1].At > last.At)) last = role.Steps[done - 1];
        }

        return last ?? dance.Score.Roles[0].Steps[0];
    }

    /// <summary>"on count 4", "on counts 1 to 4", "from count 9 of Part A to count 2 of Part B".</summary>
    public static string Stretch(DanceCase dance, OutOfPlace place) => Counts(dance, place.From, place.At);

    /// <inheritdoc cref="Stretch"/>
    public static string Counts(DanceCase dance, Count first, Count last)
    {
        var (fromPart, from) = dance.Place(first);
        var (part, count) = dance.Place(last);
        if (fromPart != part && fromPart is not null) return $"from count {from} of {fromPart} to count {count} of {part}";
        return from == count ? $"on count {count}" : $"on counts {from} to {count}";
    }

    /// <summary>How far each goes with usual steps over the stretch, as a sentence.</summary>
    public static string Travel(DanceCase dance, OutOfPlace place)
    {
        var (lead, follow) = (Way(dance, Role.Lead, place), Way(dance, Role.Follow, place));
        return $"With usual steps the lead moves {dance.Measures.Length(lead)} there and the follow {dance.Measures.Length(follow)}.";
    }

    private static double Way(DanceCase dance, Role role, OutOfPlace place)
    {
        var steps = dance.Score.Of(role)!;
        var alone = OneDancer.Follow(dance.Score).Of(role)!.Stances;
        var from = alone[DanceCase.StanceAt(steps, place.From - Beats.Of(1, 64))].Middle;
        return Math.Round((alone[DanceCase.StanceAt(steps, place.Worst)].Middle - from).Length, 1);
    }
}
