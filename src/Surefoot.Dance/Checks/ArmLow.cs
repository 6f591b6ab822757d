using Surefoot.Dance.Basics;
using Surefoot.Dance.Couple;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>Whoever goes under is too tall for the partner's raised hand.</summary>
public sealed class ArmLow : ICheck
{
    public string Name => "arm-low";

    public IEnumerable<Problem> Find(DanceCase dance) => ArmWords.Of(dance, HandTroubleKind.Low, (trouble, hands, count) =>
    {
        var facts = dance.Score.Facts;
        var (under, over) = (trouble.Role!.Value, trouble.Role == Role.Follow ? Role.Lead : Role.Follow);
        var (tall, raiser) = (OneDancer.StatureOf(facts, under), OneDancer.StatureOf(facts, over));
        return new(
            Name, Severity.Warning, default, null, null, under,
            $"{Say.Who(under, start: true)} is too tall to go under {hands} on count {count}: {dance.Measures.Length(Math.Round(tall, 2))} under a hand that {Say.Who(over)} raises to {dance.Measures.Length(Math.Round(Body.RaisedGrip * raiser, 2))}.",
            $"Let {Say.Who(under)} bend the knees, or let go of {hands} for the turn.");
    });
}
