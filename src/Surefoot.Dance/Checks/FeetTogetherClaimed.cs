using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>The page says that the feet are together, or apart, and the steps leave them otherwise.</summary>
public sealed class FeetTogetherClaimed : ICheck
{
    /// <summary>Feet this much further apart than side by side still count as together, in metres. Working value.</summary>
    private const double Allowance = 0.10;

    public string Name => "feet-together-claim";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var (claim, role, found) in ClaimTimes.Failing(dance, (c, m, r) => Fails(dance, c, m, r)))
        {
            var together = ((FeetClaim)claim.Claim).Together;
            yield return new(
                Name, Severity.Error, claim.Span, dance.LabelIn(claim.Part), ClaimTimes.CountOf(dance, claim), role,
                together
                    ? $"The page says the feet are together, and the steps leave them about {dance.Measures.Length(found.Metres)} apart."
                    : "The page says the feet are apart, and the steps leave them side by side.",
                together ? "The last step did not close; a step or touch together would." : "The last step closed the feet.");
        }
    }

    private static Apart? Fails(DanceCase dance, Claim claim, ClaimTimes.Moment moment, Role role)
    {
        if (claim is not FeetClaim feet || moment.Stance < 0 || dance.Motion.Of(role) is not { } motion) return null;
        var stance = motion.Stances[moment.Stance];
        var apart = (stance.Left.At - stance.Right.At).Length;
        var together = apart <= (2 * Body.HalfStance * Body.ReferenceStature) + Allowance;
        return together == feet.Together ? null : new(Math.Round(apart, 2));
    }

    private sealed record Apart(double Metres);
}
