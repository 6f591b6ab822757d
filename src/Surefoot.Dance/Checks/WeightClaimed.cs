using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>The page says which foot has the weight or is free, and the steps say otherwise.</summary>
public sealed class WeightClaimed : ICheck
{
    public string Name => "weight-claim";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.Score.Roles.Any(r => r.Steps.Any(s => s.Conflict != Conflict.None))) yield break;
        foreach (var (claim, role, found) in ClaimTimes.Failing(dance, Fails))
        {
            var stated = ((WeightClaim)claim.Claim).Weight;
            yield return new(
                Name, Severity.Error, claim.Span, dance.LabelIn(claim.Part), ClaimTimes.CountOf(dance, claim), role,
                dance.Words(claim.Span).Contains("free", StringComparison.OrdinalIgnoreCase) && stated.Free() is { } free && found.Weight.Free() is { } left
                    ? $"The page says the {free.Word()} foot is free, and the steps leave {Say.Who(role)} with the {left.Word()} foot free."
                    : $"The page says the weight is {Say.Weight(stated)}, and the steps leave {Say.Who(role)} {Say.Weight(found.Weight)}.",
                found.Weight == Weight.Both
                    ? "The last step ends on both feet."
                    : $"The last foot that took weight is the {found.Weight.Free()!.Value.Other().Word()}; the {found.Weight.Free()!.Value.Word()} foot is free.");
        }

        static Stood? Fails(Claim claim, ClaimTimes.Moment moment, Role role) =>
            claim is WeightClaim { Weight: var weight } && weight != moment.Stands.Weight ? new(moment.Stands.Weight) : null;
    }

    private sealed record Stood(Weight Weight);
}
