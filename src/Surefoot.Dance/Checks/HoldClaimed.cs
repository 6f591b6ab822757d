using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The page names a hold, and the steps and hands give another.</summary>
public sealed class HoldClaimed : ICheck
{
    public string Name => "hold-claim";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Couple is not { } couple) yield break;
        var told = new HashSet<TextSpan>();
        var floor = dance.Score.Facts.Floor;
        foreach (var moment in couple.Moments)
        {
            if (moment.Stated is not { Fits: false } stated || !told.Add(stated.Span)) continue;
            var (part, count) = dance.Place(moment.At);
            var hold = Holds.Named(stated.Hold)!;
            var looks = NearestHold.Looks(hold, moment.Apart);
            yield return new(
                Name, Severity.Error, stated.Span, part, count, null,
                looks
                    ? $"The page says {hold.Name}, and {LoopHold.Hands(stated.LetGo)} were let go and not taken again."
                    : $"The page says {hold.Name}, and the lead looks to {moment.Lead.Phrase(floor)} while the follow looks to {moment.Follow.Phrase(floor)}.",
                looks
                    ? $"Say where {LoopHold.Hands(stated.LetGo)} are taken: \"take {LoopHold.Hands(stated.LetGo)}\"."
                    : Needs(hold));
        }
    }

    private static string Needs(Hold hold) => hold.FollowTurn.Eighths switch
    {
        0 => $"In the {hold.Name} hold both look the same way.",
        4 => $"In the {hold.Name} hold partners look opposite ways.",
        _ => $"In the {hold.Name} hold the follow looks about a quarter turn to the left of the lead.",
    };
}
