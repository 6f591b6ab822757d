using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Insight;

/// <summary>What makes a dance easy or hard for one role, counted over one repeat.</summary>
/// <param name="ToLearn">New counts, in the usual bites.</param>
/// <param name="HalfCounts">Counts with something between them and the next.</param>
/// <param name="QuarterCounts">Counts with something on the "e" or the "a"; among the half-counts too.</param>
/// <param name="QuarterTurns">Turns of less than a half, figure by figure.</param>
/// <param name="HalfTurns">Turns from a half to less than a whole.</param>
/// <param name="FullTurns">Whole turns and more.</param>
/// <param name="Steps">Changes of weight.</param>
/// <param name="Figures">What is danced, figure by figure or action by action, each once, and how demanding it is by itself.</param>
public sealed record RoleDifficulty(
    Role Role, int ToLearn, int HalfCounts, int QuarterCounts, int QuarterTurns, int HalfTurns, int FullTurns, int Steps, ValueList<FigureDemand> Figures)
{
    internal static RoleDifficulty Of(DanceScore score, RoleScore role)
    {
        var counts = CountSteps.Of(role, score.Counts);
        var turns = new int[3];
        var figures = new Dictionary<string, Level>(StringComparer.Ordinal);
        foreach (var done in Done.In(role))
        {
            var turned = Math.Abs(done.Turn.Eighths);
            if (turned > 0) turns[turned >= 8 ? 2 : turned >= 4 ? 1 : 0]++;
            if (done.Name is null) continue;
            figures[done.Name] = Levels.Harder(figures.GetValueOrDefault(done.Name), done.Demands);
        }

        return new(
            role.Role,
            LearningLoad.Of(score, role.Role).New,
            counts.Count(c => c.IsSplit),
            counts.Count(c => !c[1].IsNothing || !c[3].IsNothing),
            turns[0], turns[1], turns[2],
            role.Steps.AsSpan().ToArray().Count(s => s.ChangesWeight),
            figures.OrderBy(f => f.Value).ThenBy(f => f.Key, StringComparer.Ordinal).Select(f => new FigureDemand(f.Key, f.Value)).ToValueList());
    }
}

/// <summary>A figure and how demanding it is by itself, seen from its steps and not from its name.</summary>
public sealed record FigureDemand(string Name, Level Level);

/// <summary>What makes a dance easy or hard, with the level that suggests. A level is a judgement; this is what to judge by.</summary>
/// <param name="Counts">Length of one repeat.</param>
/// <param name="Tempo">The fastest the page says, in counts a minute, or null.</param>
/// <param name="HandChanges">Moments at which a couple takes, lets go, raises or changes hands, in one repeat; as far as the page tells.</param>
/// <param name="Suggested">What all of it comes to.</param>
/// <param name="Reasons">Each thing that was looked at, hardest first.</param>
public sealed record Difficulty(int Counts, int? Tempo, int HandChanges, ValueList<RoleDifficulty> Roles, Level Suggested, ValueList<LevelReason> Reasons)
{
    /// <summary>The evidence of a dance, or null when it has no steps.</summary>
    public static Difficulty? Of(DanceScore score)
    {
        if (score.Counts <= Beats.Zero || score.Roles.Count == 0 || score.Roles.All(r => r.Steps.Count == 0)) return null;
        var roles = score.Roles.Select(r => RoleDifficulty.Of(score, r)).ToValueList();
        var tempo = score.Facts.TempoTo ?? score.Facts.TempoFrom;
        var hands = HandsOf(score);
        var reasons = LevelReasons.Of(score.Counts.Ceiling, tempo, hands, roles).ToValueList();
        return new(score.Counts.Ceiling, tempo, hands, roles, LevelReasons.Together(reasons), reasons);
    }

    private static int HandsOf(DanceScore score)
    {
        var changes = 0;
        foreach (var section in score.Sections)
        {
            changes += score.Hands
                .Where(h => h.Part == section.Part && h.Words.Verb is not (HandVerb.Keep or HandVerb.Placed))
                .Select(h => h.At).Distinct().Count();
        }

        return changes;
    }
}
