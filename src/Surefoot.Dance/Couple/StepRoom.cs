using Surefoot.Dance.Motion;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>How long each step of a role may be, in metres.</summary>
internal static class StepRoom
{
    /// <param name="mean">Mean stature of the two, in metres.</param>
    public static StepLength[] Of(Footwork work, double mean, CoupleLimits limits)
    {
        var room = new StepLength[work.Role.Steps.Count];
        for (var i = 0; i < room.Length; i++) room[i] = Of(work.Role.Steps[i], work.Stature, mean, limits.Steps);
        return room;
    }

    private static StepLength Of(ScoreStep step, double stature, double mean, double spread)
    {
        // A length that the page gives is danced as it stands.
        if (step.Size.Metres > 0) return new(step.Size.Metres, step.Size.Metres, step.Size.Metres);
        var own = StepLengths.Usual.For(step).Scaled(stature / Body.ReferenceStature);
        // A foot that closes may end a little ahead or behind as well.
        if (step.Direction is Direction.InPlace or Direction.Together or Direction.LockBehind or Direction.LockFront) return new(0, -own.Most * spread, own.Most * spread);
        // Partners match each other: both aim at the length that suits the mean of the two.
        var usual = Math.Clamp(StepLengths.Usual.Chosen(step, mean), own.Least, own.Most);
        return new(usual, usual - ((usual - own.Least) * spread), usual + ((own.Most - usual) * spread));
    }
}
