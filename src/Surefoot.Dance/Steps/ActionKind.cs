namespace Surefoot.Dance.Steps;

/// <summary>The atoms: what a dancer can do on a count. Every figure is written in these.</summary>
public enum ActionKind
{
    Step,
    Rock,
    Recover,
    /// <summary>Lowers a touched heel or toe into weight where it stands.</summary>
    Drop,
    Stomp,
    Leap,
    Hop,
    Jump,
    Sway,
    Bump,
    Touch,
    Tap,
    Point,
    Heel,
    Toe,
    Kick,
    Flick,
    Hook,
    Hitch,
    Brush,
    Scuff,
    Sweep,
    Drag,
    Fan,
    StompUp,
    Swivel,
    Turn,
    Pivot,
    Hold,
    Clap,
    Snap,
    Bounce,
}

/// <summary>What an atom does to the weight.</summary>
public enum WeightRule
{
    /// <summary>The free foot acts and takes the weight.</summary>
    Takes,

    /// <summary>The weight goes back to the foot that stayed.</summary>
    Returns,

    /// <summary>The free foot acts, the weight stays.</summary>
    FreeFootActs,

    /// <summary>Whoever stands keeps standing; no foot is asked for.</summary>
    Stays,

    /// <summary>Ends on both feet.</summary>
    Evens,

    /// <summary>Weight goes to the named side's foot where that is the free one; otherwise it is styling.</summary>
    Leans,
}

public static class ActionKinds
{
    public static WeightRule Rule(this ActionKind kind) => kind switch
    {
        ActionKind.Step or ActionKind.Rock or ActionKind.Stomp or ActionKind.Leap or ActionKind.Drop => WeightRule.Takes,
        ActionKind.Recover => WeightRule.Returns,
        ActionKind.Jump => WeightRule.Evens,
        ActionKind.Sway or ActionKind.Bump => WeightRule.Leans,
        ActionKind.Hop or ActionKind.Swivel or ActionKind.Turn or ActionKind.Pivot or ActionKind.Hold
            or ActionKind.Clap or ActionKind.Snap or ActionKind.Bounce => WeightRule.Stays,
        _ => WeightRule.FreeFootActs,
    };

    /// <summary>True when the acting foot ends somewhere else on the floor and stays there.</summary>
    public static bool PlacesFoot(this ActionKind kind) => kind.Rule() is WeightRule.Takes or WeightRule.Evens
        || kind is ActionKind.Touch or ActionKind.Tap or ActionKind.Point or ActionKind.Heel or ActionKind.Toe
            or ActionKind.StompUp or ActionKind.Drag or ActionKind.Fan;

    /// <summary>True when the acting foot is in the air.</summary>
    public static bool InTheAir(this ActionKind kind) =>
        kind is ActionKind.Kick or ActionKind.Flick or ActionKind.Hook or ActionKind.Hitch or ActionKind.Brush
            or ActionKind.Scuff or ActionKind.Sweep;

    /// <summary>The word in lower case, as schema and sheets write it: "step", "stomp up".</summary>
    public static string Word(this ActionKind kind) => kind switch
    {
        ActionKind.StompUp => "stomp up",
        ActionKind.Heel => "heel",
        _ => Words[(int)kind],
    };

    private static readonly string[] Words = [.. Enum.GetNames<ActionKind>().Select(n => n.ToLowerInvariant())];
}
