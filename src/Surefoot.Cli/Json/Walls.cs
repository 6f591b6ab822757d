using Surefoot.Dance;
using Surefoot.Dance.Basics;

namespace Surefoot.Cli.Json;

/// <summary>How many walls a line dance is danced to.</summary>
internal static class Walls
{
    /// <returns>What the page says, else what one repeat turns the dancers; null where there are no walls or no steps.</returns>
    public static int? Of(Reading reading)
    {
        var facts = reading.Score.Facts;
        if (facts.Floor != Floor.Walls || facts.ForCouples) return null;
        if (facts.Walls is { } said) return said;
        if (reading.Score.Roles.Count == 0 || reading.Score.Roles[0].Steps.Count == 0) return null;
        var role = reading.Score.Roles[0];
        return (role.End.Facing - role.Start.Facing).Eighths switch
        {
            0 => 1,
            4 or -4 => 2,
            2 or -2 or 6 or -6 => 4,
            _ => 8,
        };
    }
}
