using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>Both pairs of hands pass over the same dancer in one turn.</summary>
public sealed class HandsTwisted : ICheck
{
    public string Name => "hands-twisted";

    public IEnumerable<Problem> Find(DanceCase dance) => ArmWords.Of(dance, HandTroubleKind.Twisted, (trouble, hands, count) => new(
        Name, trouble.Twist.Hindered is null ? Severity.Warning : Severity.Error, default, null, null, trouble.Role,
        $"{Lie(trouble)}: {hands} pass over {Say.Who(trouble.Role)} in the turn that begins on count {count}{Needed(dance, trouble.Twist)}.",
        Crossed(trouble) && trouble.Twist.Hindered is not null
            ? $"Say \"{Arrangement(trouble.Twist)}\" where that is meant. Or let go of one pair for the turn, and take it again after it."
            : "Two pairs that go over one head together cross each other on the way. Let go of one pair for the turn, and take it again after it."));

    // Hands of the same side lie crossed when partners face each other; once over the other is no knot.
    private static bool Crossed(HandTrouble trouble) => trouble.Pair == Pairs.Alike && Math.Abs(trouble.Twist.Halves) == 1;

    private static string Arrangement(Twist twist) => twist.Halves > 0 ? "crossed hands" : "left crossed hands";

    private static string Lie(HandTrouble trouble) => Crossed(trouble)
        ? trouble.Twist.Halves > 0 ? "The hands end crossed, right over left" : "The hands end crossed, left over right"
        : Math.Abs(trouble.Twist.Halves) switch
        {
            2 => "The arms end twisted once round each other",
            3 => "The hands end crossed, and the arms twisted once round each other",
            _ => "The arms end twisted more than once round each other",
        };

    private static string Needed(DanceCase dance, Twist twist) => twist.Hindered is not { } hold ? ""
        : twist.Needed < Count.First ? $", and the dance begins again in the {hold} hold, which needs them clear"
        : $", and the {hold} hold on count {dance.Place(twist.Needed).Count} needs them clear";
}
