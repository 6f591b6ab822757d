using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>A line dance walks off the floor.</summary>
public sealed class Drift : IWholeDanceCheck
{
    /// <summary>Net way over all walls, in metres, from which dancers notice. Working value.</summary>
    private const double AllWalls = 1.0;

    /// <summary>Net way of one repeat, in metres, from which lines run into each other. Working value.</summary>
    private const double OneWall = 2.5;

    public string Name => "drift";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Score.Facts.Floor != Floor.Walls || dance.Motion.Roles.Count == 0 || dance.Score.Roles[0].Steps.Count == 0) yield break;
        var role = dance.Score.Roles[0];
        var travel = dance.Motion.Roles[0].Travel;
        var turn = (role.End.Facing - role.Start.Facing).Eighths;
        var walls = turn switch { 0 => 1, 4 or -4 => 2, _ => 4 };
        var net = Spot.Origin;
        for (var wall = 0; wall < walls; wall++) net = net.Moved(new(turn * wall), travel.X, travel.Y);
        if (net.Length <= AllWalls && travel.Length <= OneWall) yield break;
        var title = dance.Page.TitleSpan ?? role.Steps[0].Source;
        yield return new(
            Name, Severity.Warning, title, null, null, null,
            net.Length > AllWalls
                ? $"The dance walks off: with usual steps {(walls == 1 ? "every repeat" : $"{walls} walls")} ends {dance.Measures.Length(net.Length)} from where it began, {Way(net)}."
                : $"One repeat ends {dance.Measures.Length(travel.Length)} from where it began, {Way(travel)}, before the next wall leads back.",
            $"One repeat: {dance.Measures.Length(Math.Abs(travel.X))} towards {(travel.X < 0 ? "6:00" : "12:00")} and {dance.Measures.Length(Math.Abs(travel.Y))} towards {(travel.Y < 0 ? "3:00" : "9:00")}, taking usual step lengths.");
    }

    private static string Way(Spot net)
    {
        var ahead = net.X > 0.2 ? "forward" : net.X < -0.2 ? "back" : "";
        var aside = net.Y > 0.2 ? "left" : net.Y < -0.2 ? "right" : "";
        return ahead.Length > 0 && aside.Length > 0 ? $"{ahead} and to the {aside}" : ahead.Length > 0 ? ahead : $"to the {(aside.Length > 0 ? aside : "side")}";
    }
}
