using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>An arm would have to go further round a body than arms go.</summary>
public sealed class ArmWind : ICheck
{
    public string Name => "arm-wind";

    public IEnumerable<Problem> Find(DanceCase dance) => ArmWords.Of(dance, HandTroubleKind.Wind, (trouble, hands, count) => new(
        Name, Severity.Error, default, null, null, trouble.Role,
        $"{ArmWords.Sentence(hands)} cannot stay joined on count {count}: {ArmWords.Arm(trouble)} would have to go {trouble.Amount:0} degrees round the body.",
        "An arm goes about 110 degrees across the front and 120 degrees out behind the shoulder; further only with the partner close by, whose arm then lies round the back."
            + (trouble.Repair is null ? "" : $" Let go of {hands} before the turn, and take them again after it.") + ArmWords.OrHammerlock(trouble)));
}
