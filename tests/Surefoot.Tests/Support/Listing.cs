using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Text;

namespace Surefoot.Tests.Support;

/// <summary>Steps and problems as lines of text, the form in which the corpus keeps them.</summary>
internal static class Listing
{
    public static string Steps(DanceScore score)
    {
        var text = new StringBuilder();
        foreach (var role in score.Roles)
        {
            foreach (var step in role.Steps) text.Append(Step(role.Role, step, score.Facts.Floor)).Append('\n');
        }

        return text.ToString();
    }

    public static string Step(Role role, ScoreStep step, Floor floor) =>
        $"{step.At.Name} {role.Word()} {step.Foot.ToString().ToLowerInvariant()} {step.Kind.Word()} {step.Direction.Word()} {step.Turn.Eighths} {step.Facing.Name(floor)} {step.Weight.ToString().ToLowerInvariant()}";

    public static string Problems(SourceText source, IEnumerable<Problem> problems)
    {
        var text = new StringBuilder();
        foreach (var problem in problems)
        {
            var (line, column) = source.Place(problem.Span.Start);
            text.Append($"{problem.Severity.ToString().ToLowerInvariant()} {problem.Name} {line}:{column} {problem.Span.Length} | {problem.Part ?? "-"} | {problem.Count ?? "-"} | {problem.Role?.Word() ?? "-"} | {problem.Message}\n");
        }

        return text.ToString();
    }
}
