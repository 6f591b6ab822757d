using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>After a restart or a tag the dance cannot go on: the wrong foot is free, or they look the wrong way.</summary>
public sealed class RestartWeight : ICheck
{
    public string Name => "restart-weight";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt) yield break;
        foreach (var happening in dance.Score.Events)
        {
            foreach (var role in dance.Score.Roles)
            {
                if (Ends(dance, happening, role) is not { } stands || role.Steps.Count == 0) continue;
                var what = happening.Kind == PassEventKind.Restart ? $"After {Say.Counts(happening.AfterCount)} of {Say.Repeat(dance)} {happening.Wall}" : $"After the tag that follows {Say.Repeat(dance)} {happening.Wall}";
                if (stands.Weight != role.Start.Weight)
                {
                    yield return new(
                        Name, Severity.Error, happening.Span, null, happening.Kind == PassEventKind.Restart ? $"{happening.AfterCount}" : null, role.Role,
                        $"{what} the dance cannot start again: the weight is {Say.Weight(stands.Weight)}, and count 1 needs it {Say.Weight(role.Start.Weight)}.",
                        "A touch in place of the last step, or a restart a count earlier or later, would free the foot that begins.");
                    break;
                }

                if (!Starts(dance.Score.Facts.Floor, stands.Facing, role.Start.Facing))
                {
                    var floor = dance.Score.Facts.Floor;
                    yield return new(
                        Name, Severity.Error, happening.Span, null, happening.Kind == PassEventKind.Restart ? $"{happening.AfterCount}" : null, role.Role,
                        $"{what} the dance cannot start again: {Say.Who(role.Role)} {(floor == Floor.Track ? $"faces {stands.Facing.Name(floor)}, and count 1 needs {role.Start.Facing.Name(floor)}" : "looks between two walls")}.",
                        "The turns up to there do not come out at a facing from which the dance begins.");
                    break;
                }
            }
        }
    }

    private static bool Starts(Floor floor, Facing stands, Facing start) =>
        floor == Floor.Track ? stands == start : (stands - start).Eighths % 2 == 0;

    private static RoleStart? Ends(DanceCase dance, PassEvent happening, RoleScore role)
    {
        if (happening.Kind == PassEventKind.Restart)
        {
            return happening.AfterCount > 0 && Beats.Of(happening.AfterCount) < dance.Score.Counts ? DanceCase.StandingAt(role, WallWalk.Before(happening)) : null;
        }

        var extra = dance.Score.Extras.FirstOrDefault(e => e.Part == happening.Part && e.AfterWall == happening.Wall);
        return extra?.Roles.FirstOrDefault(r => r.Role == role.Role)?.End;
    }
}
