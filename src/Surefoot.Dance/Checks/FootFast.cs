using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>A foot has to travel faster than feet do at the page's tempo.</summary>
public sealed class FootFast : ICheck
{
    /// <summary>
    /// Fastest comfortable average speed of a foot between two places, in metres a second. Working value,
    /// from memory: a foot swings at about two and a half times the speed of a walk of 1.4 m/s.
    /// </summary>
    private const double MetresPerSecond = 3.5;

    public string Name => "foot-fast";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        if (dance.InDoubt || dance.Score.Facts.TempoTo is not { } tempo) yield break;
        var told = new HashSet<int>();
        foreach (var role in dance.Score.Roles)
        {
            if (dance.Motion.Of(role.Role) is not { } motion) continue;
            for (var i = 1; i < role.Steps.Count; i++)
            {
                var step = role.Steps[i];
                if (step.Repeated || step.Foot.Single() is not { } foot || step.Kind.Rule() != WeightRule.Takes) continue;
                var way = (motion.Stances[i + 1].Foot(foot).At - motion.Stances[i].Foot(foot).At).Length;
                var seconds = (step.At - role.Steps[i - 1].At).ToDouble() * 60 / tempo;
                if (seconds <= 0 || way / seconds <= MetresPerSecond || !told.Add(dance.Page.Source.LineOf(step.Source.Start))) continue;
                var (part, count) = dance.Place(step.At);
                ValueList<Fix> smaller = Smaller(dance, step) is { } edit ? [new("Ask for small steps", Sureness.Idea, [edit])] : default;
                yield return new(
                    Name, Severity.Warning, step.Source, part, count, role.Role,
                    $"The {foot.Word()} foot has to travel {dance.Measures.Length(way)} in {dance.Measures.Number(seconds, "0.00")} s: {dance.Measures.Speed(way / seconds)} at {tempo} counts a minute.",
                    $"About {dance.Measures.Speed(MetresPerSecond)} is comfortable; smaller steps or slower music would do.",
                    default,
                    smaller);
            }
        }
    }

    // "Large step" becomes "small step"; where no size is named, "small" comes before the step.
    private static TextEdit? Smaller(DanceCase dance, ScoreStep step)
    {
        if (step.Size.Word == StepSizeWord.Small) return null;
        if (step.Size.Word != StepSizeWord.Large) return new(new(step.Source.Start, 0), "small ");
        var first = dance.Words(step.Source).Split(' ')[0];
        return dance.Book.Rows.Any(r => r.Kind == "large" && r.Spellings.Any(s => s.Equals(first, StringComparison.OrdinalIgnoreCase))) ? new(new(step.Source.Start, first.Length), char.IsUpper(first[0]) ? "Small" : "small") : null;
    }
}
