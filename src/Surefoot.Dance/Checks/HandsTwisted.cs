using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>Both pairs of hands pass over the same dancer in one turn.</summary>
public sealed class HandsTwisted : ICheck
{
    public string Name => "hands-twisted";

    public IEnumerable<Problem> Find(DanceCase dance) => ArmWords.Of(dance, HandTroubleKind.Twisted, (trouble, hands, count) => new(
        Name, Severity.Warning, default, null, null, trouble.Role,
        $"The arms end twisted: {hands} pass over {Say.Who(trouble.Role)} in the turn that begins on count {count}.",
        "Two pairs that go over one head together cross each other on the way. Let go of one pair for the turn, and take it again after it."));
}
