using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The steps give another number of walls than the page says.</summary>
public sealed class WallCount : IWholeDanceCheck
{
    public string Name => "wall-count";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Score.Facts is not { Floor: Floor.Walls, Walls: { } stated } || dance.Score.Roles.Count == 0) yield break;
        var role = dance.Score.Roles[0];
        if (role.Steps.Count == 0) yield break;
        var turned = role.End.Facing - role.Start.Facing;
        if (turned.Eighths % 2 != 0) yield break;
        var walls = turned.Eighths switch { 0 => 1, 4 or -4 => 2, _ => 4 };
        if (walls == stated) yield break;
        var header = dance.Page.Header("walls") ?? dance.Page.Header("kind");
        yield return new(
            Name, Severity.Error, header?.ValueSpan ?? role.Steps[^1].Source, null, null, null,
            $"The page says {Walls(stated)}, and the steps give {Walls(walls)}.",
            turned.IsNone ? "One repeat ends on the wall where it began." : $"One repeat turns {new Turn(role.Steps.Sum(s => s.Turn.Eighths))} in all, from 12:00 to {(Facing.Front + turned).Name(Floor.Walls)}.",
            default,
            Edit(dance, header?.ValueSpan, stated, walls));
    }

    private static string Walls(int walls) => walls == 1 ? "1 wall" : $"{walls} walls";

    private static ValueList<Fix> Edit(DanceCase dance, TextSpan? span, int stated, int walls)
    {
        if (span is not { } where) return default;
        var at = dance.Words(where).IndexOf(stated.ToString(), StringComparison.Ordinal);
        return at < 0 ? default : [new($"Say {walls} instead of {stated}", Sureness.Idea, [new(new(where.Start + at, stated.ToString().Length), walls.ToString())])];
    }
}
