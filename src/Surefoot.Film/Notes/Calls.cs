using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Film.Notes;

/// <summary>What is called for a stretch of the page. A call sheet may stand behind it.</summary>
public interface ICalls
{
    /// <param name="steps">All steps of one figure, or one action.</param>
    string Of(ValueList<ScoreStep> steps);
}

/// <summary>Calls by the figures' names and the actions' own words.</summary>
public sealed class StepCalls : ICalls
{
    public string Of(ValueList<ScoreStep> steps)
    {
        var step = steps[0];
        var way = step.Direction is Direction.Forward or Direction.Back ? " " + step.Direction.Word() : "";
        if (step.Figure is { } figure) return figure + (steps.All(s => s.Direction == step.Direction) ? way : "");
        var turn = step.Turn.IsNone ? "" : " " + step.Turn;
        return step.Kind == ActionKind.Step ? step.Direction.Word() + turn : step.Kind.Word() + (step.Kind == ActionKind.Recover ? "" : way) + turn;
    }
}
