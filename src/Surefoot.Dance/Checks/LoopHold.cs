using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The repeat ends with other hands joined than those in which it begins.</summary>
public sealed class LoopHold : IWholeDanceCheck
{
    public string Name => "loop-hold";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Couple is not { } couple || Holds.Named(dance.Score.Facts.Hold) is not { } start) yield break;
        var end = couple.Moments[couple.Moments.Count - 1];
        var (missing, left) = (start.Joined & ~end.Joined, end.Joined & ~start.Joined);
        if (missing == Pairs.None && left == Pairs.None) yield break;
        var step = PlaceWords.LastStep(dance, end.At);
        var (part, count) = dance.Place(end.At);
        // The words that let go or took last are where to look.
        var last = LastWords(dance, couple, missing | left);
        yield return new(
            Name, Severity.Error, last ?? step.Source, part, count, null,
            $"The dance cannot begin again: count 1 needs the {start.Name} hold, and at the end {Ends(missing, left)}.",
            missing != Pairs.None
                ? $"Take {Hands(missing)} again before the end, or begin the dance in the hold in which it ends."
                : $"Let go of {Hands(left)} before the end, or begin the dance in the hold in which it ends.");
    }

    private static string Ends(Pairs missing, Pairs left) => (missing, left) switch
    {
        (_, Pairs.None) => $"{Hands(missing)} are apart",
        (Pairs.None, _) => $"{Hands(left)} are still joined",
        _ => $"{Hands(left)} are joined instead of {Hands(missing)}",
    };

    /// <summary>"right hands", "both hands", for any number of pairs.</summary>
    internal static string Hands(Pairs pairs) => pairs switch
    {
        Pairs.Alike or Pairs.Facing => "both hands",
        _ => string.Join(" and ", PairsOf.Each.Where(p => pairs.HasFlag(p)).Select(p => p.Words())),
    };

    private static TextSpan? LastWords(DanceCase dance, CoupleSolution couple, Pairs changed)
    {
        for (var m = couple.Moments.Count - 1; m > 0; m--)
        {
            if (((couple.Moments[m].Joined ^ couple.Moments[m - 1].Joined) & changed) == Pairs.None) continue;
            return HandTimes.Of(dance.Score).Where(h => h.At <= couple.Moments[m].At).Select(h => (TextSpan?)h.Span).LastOrDefault();
        }

        return null;
    }
}
