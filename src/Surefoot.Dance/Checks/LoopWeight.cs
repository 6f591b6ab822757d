using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The dance ends on a foot from which it cannot begin again.</summary>
public sealed class LoopWeight : IWholeDanceCheck
{
    public string Name => "loop-weight";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt) yield break;
        var wrong = dance.Score.Roles.Where(r => r.Steps.Count > 0 && r.Start.Weight != r.End.Weight).ToList();
        if (wrong.Count == 0) yield break;
        var alike = wrong.Count == dance.Score.Roles.Count && wrong.All(r => r.Start.Weight == wrong[0].Start.Weight && r.End.Weight == wrong[0].End.Weight);
        foreach (var role in alike ? wrong.Take(1) : wrong)
        {
            Role? who = alike && wrong.Count > 1 ? null : role.Role;
            var last = role.Steps[^1];
            var index = Conflicts.LastWeight(role.Steps, role.Steps.Count) ?? role.Steps.Count - 1;
            var (part, count) = dance.Place(last.At);
            yield return new(
                Name, Severity.Error, last.Source, part, count, who,
                $"The dance cannot begin again: {Say.Who(who)} {Say.Verb(who, "ends", "end")} {Say.Weight(role.End.Weight)}, and count 1 needs the weight {Say.Weight(role.Start.Weight)}.",
                $"The last weight change is \"{dance.Words(role.Steps[index].Source)}\" on {dance.Place(role.Steps[index].At).Count}; one weight change more or less, or a touch in place of a step, leads into the start.",
                [new(role.Steps[index].Source, "the last weight change")]);
        }
    }
}
