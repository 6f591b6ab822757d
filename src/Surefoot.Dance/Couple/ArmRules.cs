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

    /// <summary>A hand so far behind the own back makes a hammerlock; nobody's shoulder goes past the second.</summary>
    private const double Hammerlock = 130, HammerlockMost = 200;

    /// <summary>Joined shoulders so near, in metres for 1.70 m, are a close hold.</summary>
    private const double CloseBy = 0.75;

    private readonly double _close;
    private readonly ArmSpan[] _spans;

    public ArmRules((double Lead, double Follow) statures, CoupleLimits limits)
    {
        Statures = statures;
        _close = CloseBy * (statures.Lead + statures.Follow) / 2 / Body.ReferenceStature * limits.Arms;
        _spans = [ArmSpan.Of(HandHeight.Low, statures, limits), ArmSpan.Of(HandHeight.Shoulder, statures, limits), ArmSpan.Of(HandHeight.Raised, statures, limits)];
    }

    public (double Lead, double Follow) Statures { get; }

    /// <summary>How far two straight arms reach from shoulder to shoulder with their hands at a height, in metres.</summary>
    public double Reach(HandHeight height) => _spans[(int)height].Both;

    /// <summary>True when a pair can be held so.</summary>
    /// <param name="hammerlock">True where the page asks for one.</param>
    /// <param name="turning">True in the middle of a turn.</param>
    public bool Allows(Wind wind, HandHeight height, bool hammerlock, bool turning)
    {
        var give = turning ? Passing : Tolerance;
        if (wind.Apart > Reach(height)) return false;
        if (height == HandHeight.Raised) return true;
        var (lead, follow) = (Comfortable(wind.Lead, give), Comfortable(wind.Follow, give));
        if (lead && follow) return true;
        if (!lead && !follow) return false;
        var (wound, other) = lead ? (wind.Follow, wind.Lead) : (wind.Lead, wind.Follow);
        // Across the own front, or round the back: then the partner's arm has to reach out to its own side.
        if (wound < 0) return wind.Apart <= _close && wound >= -Close - give && other >= -give;
        var (stature, arm) = lead ? (Statures.Follow, _spans[(int)height].Lead) : (Statures.Lead, _spans[(int)height].Follow);
        var hand = BackArm.HandBehind(wound, wind.Apart, stature, arm);
        if (hand <= Hammerlock) return wind.Apart <= _close && wound <= Close + give && other >= -give;
        // A hammerlock is held low, and never past what a shoulder can do: no give for the one it hurts.
        return hammerlock && height == HandHeight.Low && hand <= HammerlockMost && wound <= Close + give;
    }

    private static bool Comfortable(double wind, double give) => wind >= Across - give && wind <= Behind + give;
}
