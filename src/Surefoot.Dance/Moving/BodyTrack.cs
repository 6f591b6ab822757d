using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Moving;

/// <summary>
/// The middle of a body and the way it looks, smooth through all stances: cubics that pass through each stance
/// at its count, keep going where the dancer keeps going and come to rest where the way turns back. Made with
/// lengths and angles only, so that a turned or mirrored dance moves as its image.
/// </summary>
internal sealed class BodyTrack
{
    /// <summary>Counts before an action at which a body that has been at rest sets out. Working value.</summary>
    private const double SetOut = 1;

    /// <summary>How much faster than its slower side a body may pass a stance; more would overshoot.</summary>
    private const double Keenest = 2;

    /// <summary>How far the body goes over the foot in a sway or with a hip, / stature. Working value: it is seen, and it is no show.</summary>
    private const double Sway = 0.03;

    private readonly double[] _times;
    private readonly Spot[] _places;
    private readonly Spot[] _speeds;
    private readonly double[] _angles;
    private readonly double[] _spins;

    public BodyTrack(RoleScore score, RoleMotion role, double stature)
    {
        var (times, places, angles) = (new List<double>(), new List<Spot>(), new List<double>());
        var angle = 45.0 * role.Stances[0].Facing.Eighths;
        foreach (var stance in role.Stances)
        {
            var at = stance.At.Value.ToDouble();
            angle += 45.0 * stance.Turned;
            if (times.Count > 0 && at - times[^1] > SetOut) Add(at - SetOut, places[^1], angles[^1]);
            // Two actions on one count are a fault of the page; the second is where they end.
            if (times.Count > 0 && at <= times[^1]) (places[^1], angles[^1]) = (stance.Middle + Swayed(stance), angle);
            else Add(at, stance.Middle + Swayed(stance), angle);
        }

        (_times, _places, _angles) = ([.. times], [.. places], [.. angles]);
        (_speeds, _spins) = (new Spot[_times.Length], new double[_times.Length]);
        for (var i = 1; i < _times.Length - 1; i++)
        {
            var (before, after) = (_times[i] - _times[i - 1], _times[i + 1] - _times[i]);
            _speeds[i] = Passing((_places[i] - _places[i - 1]) * (1 / before), (_places[i + 1] - _places[i]) * (1 / after), before, after);
            _spins[i] = Passing(new((_angles[i] - _angles[i - 1]) / before, 0), new((_angles[i + 1] - _angles[i]) / after, 0), before, after).X;
        }

        void Add(double at, Spot place, double looks)
        {
            times.Add(at);
            places.Add(place);
            angles.Add(looks);
        }

        // Towards the foot that carries: with closed feet nobody would see it otherwise.
        Spot Swayed(Stance stance)
        {
            if (stance.Step < 0 || score.Steps[stance.Step].Kind is not (ActionKind.Sway or ActionKind.Bump) || stance.Weight.Free() is not { } free) return Spot.Origin;
            var way = stance.Foot(free.Other()).At - stance.Middle;
            return way.Length > 0 ? way * (Sway * stature / way.Length) : Spot.Origin;
        }
    }

    public (Spot Middle, double Angle) At(double now)
    {
        var i = Easing.Last(_times, now);
        if (i < 0) return (_places[0], _angles[0]);
        if (i >= _times.Length - 1) return (_places[^1], _angles[^1]);
        var length = _times[i + 1] - _times[i];
        var s = (now - _times[i]) / length;
        // Hermite's cubics: where it was, where it will be, and how fast it passes both.
        var (there, early, late) = (s * s * (3 - (2 * s)), s * (1 - s) * (1 - s) * length, s * s * (s - 1) * length);
        return (
            _places[i] + ((_places[i + 1] - _places[i]) * there) + (_speeds[i] * early) + (_speeds[i + 1] * late),
            _angles[i] + ((_angles[i + 1] - _angles[i]) * there) + (_spins[i] * early) + (_spins[i + 1] * late));
    }

    // The more sharply the way bends, the slower the body passes; where it turns back, it stops.
    private static Spot Passing(Spot before, Spot after, double timeBefore, double timeAfter)
    {
        var (early, late) = (before.Length, after.Length);
        var straight = (before.X * after.X) + (before.Y * after.Y);
        if (straight <= 0) return Spot.Origin;
        straight /= early * late;
        var mean = ((before * timeAfter) + (after * timeBefore)) * (straight / (timeBefore + timeAfter));
        var most = Keenest * Math.Min(early, late);
        return mean.Length <= most ? mean : mean * (most / mean.Length);
    }
}
