using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The dance ends looking another way than it began, or between the walls.</summary>
public sealed class LoopFacing : IWholeDanceCheck
{
    public string Name => "loop-facing";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt) yield break;
        var floor = dance.Score.Facts.Floor;
        var wrong = dance.Score.Roles.Where(r => r.Steps.Count > 0 && IsWrong(r.Start.Facing, r.End.Facing, floor)).ToList();
        var alike = wrong.Count == dance.Score.Roles.Count && wrong.All(r => r.End.Facing == wrong[0].End.Facing && r.Start.Facing == wrong[0].Start.Facing);
        foreach (var role in alike ? wrong.Take(1) : wrong)
        {
            Role? who = alike && wrong.Count > 1 ? null : role.Role;
            var turning = role.Steps.LastOrDefault(s => !s.Turn.IsNone) ?? role.Steps[^1];
            var (part, count) = dance.Place(role.Steps[^1].At);
            yield return new(
                Name, Severity.Error, turning.Source, part, count, who,
                floor == Floor.Track
                    ? $"The dance cannot begin again: {Say.Who(who)} {Say.Verb(who, "ends", "end")} facing {role.End.Facing.Name(floor)}, and count 1 needs {role.Start.Facing.Name(floor)}."
                    : $"The dance ends facing {role.End.Facing.Name(floor)}, between two walls.",
                $"All turns of one repeat come to {new Turn(role.Steps.Sum(s => s.Turn.Eighths))}"
                    + (floor == Floor.Track ? "; they should come to none, or to whole turns." : "; they should come to a whole number of quarter turns."),
                [new(turning.Source, "the last turn")]);
        }
    }

    private static bool IsWrong(Facing start, Facing end, Floor floor) =>
        floor == Floor.Track ? start != end : (end - start).Eighths % 2 != 0;
}
