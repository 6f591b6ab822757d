using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring;

/// <summary>One action of a whole song.</summary>
/// <param name="At">The count of the song, from 1 at the first count of the first repeat.</param>
/// <param name="Wall">Which repeat, from 1; a tag belongs to the repeat before it.</param>
/// <param name="Step">The action as the score has it, its facing turned to where the song has brought the dancer.</param>
/// <param name="InTag">True when it belongs to a tag or bridge between two repeats.</param>
public sealed record SongStep(Count At, int Wall, ScoreStep Step, bool InTag);

/// <summary>Dances a score wall after wall, with its tags and restarts where they fall.</summary>
public static class Unrolled
{
    /// <param name="walls">How many repeats, from 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than one wall.</exception>
    public static IEnumerable<SongStep> Of(DanceScore score, Role role, int walls)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(walls, 1);
        return score.Of(role) is { } steps ? Walk(score, steps, walls) : [];
    }

    private static IEnumerable<SongStep> Walk(DanceScore score, RoleScore role, int walls)
    {
        var turned = Turn.None;
        var start = Count.First;
        for (var wall = 1; wall <= walls; wall++)
        {
            var restart = Event(score, PassEventKind.Restart, wall);
            var length = restart is { AfterCount: > 0 } && Beats.Of(restart.AfterCount) < score.Counts ? Beats.Of(restart.AfterCount) : score.Counts;
            var stands = role.Start.Facing;
            foreach (var step in role.Steps)
            {
                if (step.At - Count.First >= length) break;
                stands = step.Facing;
                yield return new(start + (step.At - Count.First), wall, step with { Facing = step.Facing + turned }, false);
            }

            turned += stands - role.Start.Facing;
            start += length;
            if (restart is not null || Event(score, PassEventKind.Tag, wall) is not { Part: >= 0 } tag) continue;
            var extra = score.Extras.FirstOrDefault(e => e.Part == tag.Part && e.AfterWall == wall)?.Roles.FirstOrDefault(r => r.Role == role.Role);
            if (extra is null) continue;
            var ahead = role.Start.Facing + turned - extra.Start.Facing;
            foreach (var step in extra.Steps) yield return new(start + (step.At - Count.First), wall, step with { Facing = step.Facing + ahead }, true);
            turned += extra.End.Facing - extra.Start.Facing;
            start += score.Parts[tag.Part].Length;
        }
    }

    private static PassEvent? Event(DanceScore score, PassEventKind kind, int wall)
    {
        foreach (var one in score.Events)
        {
            if (one.Kind == kind && one.Wall == wall) return one;
        }

        return null;
    }
}
