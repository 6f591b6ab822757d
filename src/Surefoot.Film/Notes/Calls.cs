using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Film.Notes;

/// <summary>What is called for a stretch of the page.</summary>
public interface ICalls
{
    /// <param name="steps">All steps of one figure, or one action.</param>
    /// <param name="role">Who dances them.</param>
    string Of(Role role, ValueList<ScoreStep> steps);
}

/// <summary>
/// Calls in the words of the dance's call sheet, also where it leaves them out because the same goes on. Where the page has a
/// call of its own the name of the steps stands behind it: "your turn" alone tells nobody who watches what is danced.
/// </summary>
public sealed class SheetCalls(CallSheet sheet) : ICalls
{
    private static readonly StepCalls Plain = new();

    public string Of(Role role, ValueList<ScoreStep> steps)
    {
        var named = sheet.FromSteps.FirstOrDefault(d => d.At == steps[0].At && (d.Role is null || d.Role == role));
        var name = named is null || named.Words.Length == 0 ? Plain.Of(role, steps) : CallWords.Plain(named.Words);
        var own = sheet.Calls.FirstOrDefault(c => c.Written && c.Step == steps[0].At && (c.Role is null || c.Role == role));
        return own is null || own.Words.Length == 0 ? name : $"{CallWords.Plain(own.Words)} ({name})";
    }
}

/// <summary>Calls by the figures' names and the actions' own words.</summary>
public sealed class StepCalls : ICalls
{
    public string Of(Role role, ValueList<ScoreStep> steps)
    {
        var step = steps[0];
        var way = step.Direction is Direction.Forward or Direction.Back ? " " + step.Direction.Word() : "";
        if (step.Figure is { } figure) return figure + (steps.All(s => s.Direction == step.Direction) ? way : "");
        var turn = step.Turn.IsNone ? "" : " " + step.Turn;
        return step.Kind == ActionKind.Step ? step.Direction.Word() + turn : step.Kind.Word() + (step.Kind == ActionKind.Recover ? "" : way) + turn;
    }
}
