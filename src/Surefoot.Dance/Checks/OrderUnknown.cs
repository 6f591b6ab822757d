using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>The order line names a part that is not there.</summary>
public sealed class OrderUnknown : ICheck
{
    public string Name => "order-unknown";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.OrderOfNothing))
        {
            var parts = dance.Page.Parts.Where(p => p.Key.Length > 0).Select(p => p.Key).ToList();
            yield return new(
                Name, Severity.Error, fault.Span, null, null, null,
                $"The order line names \"{dance.Words(fault.Span)}\", and the page has no such part.",
                parts.Count > 0 ? $"The page has: {string.Join(", ", parts)}." : "The page has no parts with names.");
        }
    }
}
