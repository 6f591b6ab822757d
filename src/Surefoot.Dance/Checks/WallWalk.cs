using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>Walks through the repeats of a song, wall after wall, with the tags and restarts on the way.</summary>
internal static class WallWalk
{
    /// <param name="Facing">Where the first role looks when the event comes.</param>
    /// <param name="PerWall">What one whole repeat turns them.</param>
    /// <param name="NextStart">The count of the song, from 0, at which the dance begins anew after the event.</param>
    public sealed record Moment(PassEvent Event, Facing Facing, Turn PerWall, int NextStart);

    public static IEnumerable<Moment> Of(DanceScore score)
    {
        if (score.Events.Count == 0 || score.Roles.Count == 0) yield break;
        var role = score.Roles[0];
        var perWall = role.End.Facing - role.Start.Facing;
        var facing = role.Start.Facing;
        var at = 0;
        var last = Math.Min(64, score.Events.Max(e => e.Wall));
        for (var wall = 1; wall <= last; wall++)
        {
            var restart = score.Events.FirstOrDefault(e => e.Kind == PassEventKind.Restart && e.Wall == wall);
            if (restart is not null)
            {
                var stands = DanceCase.StandingAt(role, Before(restart));
                var there = facing + (stands.Facing - role.Start.Facing);
                at += restart.AfterCount;
                yield return new(restart, there, perWall, at);
                facing = there;
                continue;
            }

            facing += perWall;
            at += score.Counts.Ceiling;
            foreach (var tag in score.Events.Where(e => e.Kind == PassEventKind.Tag && e.Wall == wall))
            {
                var extra = score.Extras.FirstOrDefault(x => x.Part == tag.Part);
                at += tag.Part >= 0 ? score.Parts[tag.Part].Length.Ceiling : 0;
                yield return new(tag, facing, perWall, at);
                if (extra is { Roles.Count: > 0 }) facing += extra.Roles[0].End.Facing - extra.Roles[0].Start.Facing;
            }
        }
    }

    /// <summary>The last moment that is danced before a restart cuts the repeat off.</summary>
    public static Count Before(PassEvent restart) => Count.At(restart.AfterCount + 1) - Beats.Of(1, 64);
}
