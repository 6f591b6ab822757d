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
        // A heading left out makes every line after it name a count anew: one cause, told at the first.
        foreach (var same in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.Overlap).GroupBy(f => (f.Part, f.Role)))
        {
            var fault = same.First();
            var from = new Count(fault.From.Value + Beats.Of(dance.Score.Parts[fault.Part].CountOffset));
            var related = same.Skip(1).Take(3).Select(f => new RelatedSpan(f.Span, "given twice as well")).ToList();
            if (fault.Other is { Length: > 0 } other) related.Insert(0, new(other, "the count was given here already"));
            yield return new(
                Name, Severity.Error, fault.Span, dance.LabelIn(fault.Part), from.Name, fault.Role,
                $"Count {from.Name} is given twice to {Say.Who(fault.Role)}.",
                same.Count() > 1
                    ? $"{same.Count()} lines of this part name counts that were given before; perhaps a new part begins here."
                    : "Two lines of the same part name it; one of them probably belongs to a later count.",
                related.ToValueList());
        }
    }
}
