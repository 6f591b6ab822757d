using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>A count has no action for a role.</summary>
public sealed class CountGap : ICheck
{
    public string Name => "count-gap";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.Gap))
        {
            var from = new Count(fault.From.Value + Beats.Of(dance.Score.Parts[fault.Part].CountOffset));
            var stretch = Say.Stretch(from, from + fault.Named);
            var one = fault.Named == Beats.One;
            var partner = fault.Role switch { Role.Lead => Role.Follow, Role.Follow => Role.Lead, _ => (Role?)null };
            yield return new(
                Name, Severity.Error, fault.Span, dance.LabelIn(fault.Part), from.Name, fault.Role,
                $"{Say.Who(fault.Role, start: true)} {Say.Verb(fault.Role, "has", "have")} nothing to do on {(one ? "count" : "counts")} {stretch}.",
                partner is { } other
                    ? $"Only {Say.Who(other)} is told what to do there; write {Say.Who(fault.Role)}'s steps too, or leave the role word away when both do the same."
                    : "Every count needs a step; write \"hold\" where nobody moves.");
        }
    }
}
