using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Steps;

namespace Surefoot.Likeness;

/// <summary>Actions that stand in for one another in versions of a dance: a touch for a scuff, a stomp for a step.</summary>
internal enum Kin
{
    None,
    Steps,
    Returns,
    Gestures,
    Turns,
    Sounds,
}

internal static class ActionKin
{
    public static Kin Of(CountStep step) => step.IsNothing ? Kin.None : step.Kind.Rule() switch
    {
        WeightRule.Takes or WeightRule.Evens or WeightRule.Leans => Kin.Steps,
        WeightRule.Returns => Kin.Returns,
        WeightRule.FreeFootActs => Kin.Gestures,
        _ => step.Kind is ActionKind.Clap or ActionKind.Snap or ActionKind.Bounce ? Kin.Sounds : Kin.Turns,
    };

    /// <summary>The step with what may differ between kin taken off: one action for each kin, and no way where it is a gesture's.</summary>
    public static CountStep Plain(CountStep step) => Of(step) switch
    {
        Kin.None or Kin.Sounds => CountStep.Nothing,
        Kin.Steps => CountStep.Of(ActionKind.Step, step.Direction, step.Turn, step.Foot),
        Kin.Returns => CountStep.Of(ActionKind.Recover, Direction.InPlace, step.Turn, step.Foot),
        Kin.Gestures => CountStep.Of(ActionKind.Touch, Direction.InPlace, step.Turn, step.Foot),
        _ => CountStep.Of(ActionKind.Turn, Direction.InPlace, step.Turn, FootUse.None),
    };

    public static CountSteps Plain(CountSteps steps)
    {
        var plain = default(CountSteps);
        for (var m = 0; m < CountSteps.Moments; m++) plain = plain.And(m, Plain(steps[m]));
        return plain;
    }
}
