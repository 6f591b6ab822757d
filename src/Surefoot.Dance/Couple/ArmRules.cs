using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>
/// What two joined arms can do, in degrees of wind and metres. Common practice; working values. Wider values
/// make fewer dances a problem.
/// </summary>
internal sealed class ArmRules
{
    /// <summary>Comfortable winds: across the own front, and out behind the own shoulder. The 25° are the tolerance of every hold.</summary>
    private const double Across = -110, Behind = 120, Tolerance = 25;

    /// <summary>The tolerance in the middle of a turn, where nobody stays.</summary>
    private const double Passing = 45;

    /// <summary>In a close hold one of the two may be wound so far: with the partner's arm round the back, or the own arm across the front.</summary>
    private const double Close = 270;

    /// <summary>A low pair so far behind the own back is a hammerlock; nobody's shoulder goes past the second.</summary>
    public const double Hammerlock = 130, HammerlockMost = 200;

    /// <summary>Joined shoulders so near, in metres for 1.70 m, are a close hold.</summary>
    private const double CloseBy = 0.75;

    private readonly double _reach;
    private readonly double _close;

    public ArmRules((double Lead, double Follow) statures, CoupleLimits limits)
    {
        Statures = statures;
        _reach = Body.ArmToGrip * (statures.Lead + statures.Follow) * limits.Arms;
        _close = CloseBy * (statures.Lead + statures.Follow) / 2 / Body.ReferenceStature * limits.Arms;
    }

    public (double Lead, double Follow) Statures { get; }

    /// <summary>How far two straight arms reach from shoulder to shoulder, in metres.</summary>
    public double Reach => _reach;

    /// <summary>True when a pair can be held so.</summary>
    /// <param name="hammerlock">True where the page asks for one.</param>
    /// <param name="turning">True in the middle of a turn.</param>
    public bool Allows(Wind wind, HandHeight height, bool hammerlock, bool turning)
    {
        var give = turning ? Passing : Tolerance;
        if (wind.Apart > _reach) return false;
        if (height == HandHeight.Raised) return true;
        var (lead, follow) = (Comfortable(wind.Lead, give), Comfortable(wind.Follow, give));
        if (lead && follow) return true;
        if (!lead && !follow) return false;
        var (wound, other) = lead ? (wind.Follow, wind.Lead) : (wind.Lead, wind.Follow);
        if (hammerlock && height == HandHeight.Low && wound > Hammerlock && wound <= HammerlockMost + give) return true;
        // The arm that lies round the other has to reach out to its own side; across its own front it is too short.
        return wind.Apart <= _close && Math.Abs(wound) <= Close + give && other >= -give;
    }

    private static bool Comfortable(double wind, double give) => wind >= Across - give && wind <= Behind + give;
}
