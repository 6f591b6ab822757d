using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>"Repeat" names something that is not there.</summary>
public sealed class RepeatUnknown : ICheck
{
    public string Name => "repeat-unknown";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.RepeatSaysMore))
        {
            yield return new(
                Name, Severity.Error, fault.Span, dance.LabelIn(fault.Part), dance.CountIn(fault.Part, fault.From), null,
                $"The repeat says something more that is not danced from here: \"{fault.Words}\".",
                "Write \"Repeat 1-8, but\" and under it the counts that differ, each with its steps.");
        }

        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.RepeatOfNothing))
        {
            yield return new(
                Name, Severity.Error, fault.Span, dance.LabelIn(fault.Part), dance.CountIn(fault.Part, fault.From), null,
                $"There is nothing called \"{fault.Words}\" before this line to repeat.",
                "A repeat names counts that stand before it, as in \"Repeat 1-8\", or a part, as in \"Repeat Part A\".");
        }
    }
}
