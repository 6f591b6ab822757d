using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>Only up and over a head would do, and the page keeps the hands down.</summary>
public sealed class ArmOverhead : ICheck
{
    public string Name => "arm-overhead";

    public IEnumerable<Problem> Find(DanceCase dance) => ArmWords.Of(dance, HandTroubleKind.Overhead, (trouble, hands, count) => new(
        Name, Severity.Error, default, null, null, trouble.Role,
        $"{ArmWords.Sentence(hands)} cannot stay down and joined on count {count}: {ArmWords.Arm(trouble)} would be wound {trouble.Amount:0} degrees round the body.",
        $"Raise {hands} for the turn, so that they pass over the head, or let them go.{ArmWords.OrHammerlock(trouble)}"));
}
