namespace Surefoot.Dance.Couple;

/// <summary>
/// How far a couple gives, in metres for two dancers of 1.70 m. Working values; everything scales with stature.
/// Larger values make fewer dances impossible, never more.
/// </summary>
public sealed record CoupleLimits
{
    public static CoupleLimits Usual { get; } = new();

    /// <summary>Partners are this far from a hold's centre at most, ahead and aside. Common practice, from memory.</summary>
    public double HoldGive { get; init; } = 0.15;

    /// <summary>While a pair is up but nobody turns yet, and on the way into a hold. Working value.</summary>
    public double RaisedGive { get; init; } = 0.30;

    /// <summary>
    /// From the lead's middle to the follow's while somebody turns or passes: two arms of 0.50 m from the
    /// shoulder to a grip just above a head (the straight arm of 0.66 m, a quarter of stature higher up).
    /// </summary>
    public double TurnReach { get; init; } = 0.95;

    /// <summary>A foot gives to the side of its way by so much at most. Learned from turns on the spot, which shift a dancer by a hip's width.</summary>
    public double Aside { get; init; } = 0.15;

    /// <summary>A repeat may end so far towards or away from the centre of the room of where it began. Working value.</summary>
    public double Radial { get; init; } = 0.30;

    /// <summary>Least and most step lengths are spread by this factor around the usual ones; 1 as in the table.</summary>
    public double Steps { get; init; } = 1;

    /// <summary>Arms against the table's; 1 as in <see cref="Motion.Body.ArmToGrip"/>.</summary>
    public double Arms { get; init; } = 1;
}
