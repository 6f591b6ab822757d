using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>The page counts on through the dance in one part and starts from 1 in another.</summary>
public sealed class CountsMixed : ICheck
{
    public string Name => "counts-mixed";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.CountsMixed))
        {
            var running = fault.Taken != Beats.One;
            yield return new(
                Name, Severity.Warning, fault.Span, dance.LabelIn(fault.Part), fault.Taken.ToString(), null,
                running
                    ? $"This part counts on from {fault.Taken}, and the one before it started again from 1."
                    : "This part starts again from 1, and the parts before it counted on through the dance.",
                "Both ways are usual, but a page that mixes them is easily misread.");
        }
    }
}
