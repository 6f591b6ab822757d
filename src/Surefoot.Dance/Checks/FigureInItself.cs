using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>A figure of the page uses itself.</summary>
public sealed class FigureInItself : ICheck
{
    public string Name => "figure-in-itself";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.FigureInItself))
        {
            yield return new(
                Name, Severity.Error, fault.Span, $"Figure: {fault.Words}", null, null,
                $"The figure \"{fault.Words}\" is described by itself, so it never ends.",
                "A figure is described in steps or in other figures.");
        }
    }
}
