using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>A count is given twice to a role.</summary>
public sealed class CountOverlap : ICheck
{
    public string Name => "count-overlap";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.Overlap))
        {
            var from = new Count(fault.From.Value + Beats.Of(dance.Score.Parts[fault.Part].CountOffset));
            ValueList<RelatedSpan> related = fault.Other is { Length: > 0 } other ? [new(other, "the count was given here already")] : default;
            yield return new(
                Name, Severity.Error, fault.Span, dance.LabelIn(fault.Part), from.Name, fault.Role,
                $"Count {from.Name} is given twice to {Say.Who(fault.Role)}.",
                "Two lines of the same part name it; one of them probably belongs to a later count.",
                related);
        }
    }
}
