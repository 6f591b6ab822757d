using System.Text;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Draw.Words;

/// <summary>One action in as few words as say it: "L rock forward", "R recover", "pivot ½ right".</summary>
public static class StepWords
{
    /// <param name="spelled">True where the words are heard, not seen: "left" and "right" for L and R.</param>
    /// <param name="before">The weight before the action, to tell where a pivot moves it.</param>
    public static string Of(ScoreStep step, Weight before, bool spelled = false)
    {
        var words = new StringBuilder();
        if (step.Foot.Single() is { } foot) words.Append(spelled ? foot.Word() : foot.Letter()).Append(' ');
        else if (step.Foot == FootUse.Both) words.Append("both feet ");
        if (step.Kind != ActionKind.Step) words.Append(step.Kind.Word()).Append(' ');
        if (DirectionWord(step) is { } direction) words.Append(direction).Append(' ');
        if (!step.Turn.IsNone)
        {
            var named = step.Kind is ActionKind.Turn or ActionKind.Pivot;
            words.Append(named ? "" : "turning ").Append(step.Turn.ToString()).Append(' ');
        }

        // A sway names the foot it goes onto already.
        if (!step.ChangesWeight && step.Weight != before && step.Weight.Free() is { } free && step.Foot.Single() != free.Other())
        {
            words.Append(spelled ? $"onto the {free.Other().Word()} " : $"onto {free.Other().Letter()} ");
        }

        return words.ToString().TrimEnd();
    }

    private static string? DirectionWord(ScoreStep step)
    {
        if (step.Kind == ActionKind.Step) return step.Direction.Word();
        return step.Direction == Direction.InPlace || step.Kind is ActionKind.Recover or ActionKind.Drop or ActionKind.Hold
            ? null
            : step.Direction.Word();
    }
}
