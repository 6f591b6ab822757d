using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>The feet listed for a figure do not come in the order in which the figure uses them.</summary>
public sealed class FeetOrder : ICheck
{
    public string Name => "feet-order";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var found in Conflicts.Of(dance, Conflict.FeetListed))
        {
            var step = found.Step;
            var (part, count) = found.Place(dance, step);
            var danced = string.Concat(found.Steps.Where(s => s.Source == step.Source && s.Section == step.Section && s.Foot.Single() is not null && !s.Repeated)
                .Select(s => " " + s.Foot.Single()!.Value.Letter()));
            yield return new(
                Name, Severity.Error, step.Source, part, count, found.Role,
                $"The feet listed for the {step.Figure} are not the ones it uses: danced from here it goes{danced}.",
                "In this figure the feet take their turns in a fixed order, and the list names one twice or leaves one out.");
        }
    }
}
