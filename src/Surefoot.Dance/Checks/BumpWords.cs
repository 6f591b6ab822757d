using Surefoot.Dance.Basics;
using Surefoot.Dance.Moving;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>Where a bump is told, and once for each line of the page.</summary>
internal static class BumpWords
{
    /// <summary>The action that leads into a moment: that of whoever acts first from then on.</summary>
    public static ScoreStep Into(DanceCase dance, double moment)
    {
        ScoreStep? into = null;
        foreach (var role in dance.Score.Roles)
        {
            foreach (var step in role.Steps)
            {
                if (step.At.Value.ToDouble() < moment - 1e-9) continue;
                if (into is null || step.At < into.At) into = step;
                break;
            }
        }

        return into ?? dance.Score.Roles[0].Steps[^1];
    }

    /// <summary>All bumps of one kind as problems, each line of the page once.</summary>
    public static IEnumerable<Problem> Of(DanceCase dance, bool bodies, Func<Bump, string, (string Says, string Why)> words, string name)
    {
        if (dance.InDoubt || dance.Moving is not { } moving) yield break;
        var told = new HashSet<int>();
        foreach (var bump in moving.Bumps)
        {
            if (bump.OfBodies != bodies) continue;
            var step = Into(dance, bump.At);
            if (!told.Add(dance.Page.Source.LineOf(step.Source.Start))) continue;
            var (part, count) = dance.Place(step.At);
            var (says, why) = words(bump, step.At.Value.ToDouble() - bump.At > 0.3 ? $"on the way to count {count}" : $"on count {count}");
            yield return new(name, Severity.Error, step.Source, part, count, null, says, why);
        }
    }
}
