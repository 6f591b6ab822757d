using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>Joined hands further apart than two arms reach at their height, or nearly so.</summary>
public sealed class ArmReach : ICheck
{
    public string Name => "arm-reach";

    // Where even the couple's places cannot be found there are no hands to ask about, and hold-place says so alone.
    public IEnumerable<Problem> Find(DanceCase dance) => ArmWords.Of(dance, HandTroubleKind.Reach, (trouble, hands, count) => TooFar(dance.Measures, trouble, hands, count)).Concat(ArmWords.Of(dance, HandTroubleKind.Stretched, Stretched));

    private Problem TooFar(Measures measures, HandTrouble trouble, string hands, string count) => new(
        Name, Severity.Error, default, null, null, null,
        $"{ArmWords.Sentence(hands)} cannot stay joined on count {count}: the two shoulders are {measures.Length(Math.Max(0.01, Math.Round(trouble.Amount, 2)))} further apart than two straight arms reach {At(trouble.Height)}.",
        $"Keep closer together, or let go of {hands}.");

    private Problem Stretched(HandTrouble trouble, string hands, string count) => new(
        Name, Severity.Warning, default, null, null, null,
        $"{ArmWords.Sentence(hands)} are at arm's length on count {count}: it takes {trouble.Amount * 100:0} percent of what two arms reach {At(trouble.Height)}.",
        $"Take smaller steps away from each other, or let go of {hands}.");

    private static string At(HandHeight height) => height switch
    {
        HandHeight.Low => "at the waist",
        HandHeight.Shoulder => "at the shoulder",
        _ => "over a head",
    };
}
