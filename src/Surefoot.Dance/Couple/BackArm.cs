using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>
/// Whose arm lies round a back? A pair that winds round somebody's back is one path from shoulder to shoulder,
/// and where on that path the hands meet decides. When the partner's arm is long enough to come round to the
/// wound dancer's own side, the own hand stays by the own hip or shoulder, as in sweetheart and skaters. When it
/// is not, the own hand has to go behind the own back to meet it, and that is a hammerlock.
/// </summary>
public static class BackArm
{
    /// <summary>How far the own hand has to go round the own back, in degrees from straight ahead to its own side: 90 at the own side, 180 at the spine.</summary>
    /// <param name="wind">Where the partner's joined shoulder is, wound past the own back.</param>
    /// <param name="apart">Between the joined shoulders, in metres.</param>
    /// <param name="arm">How far the partner's arm reaches across the floor, in metres.</param>
    public static double HandBehind(double wind, double apart, double stature, double arm)
    {
        // Seen by the wound dancer, x ahead and y to the side of the joined arm.
        var own = new Spot(0, Body.HalfShoulders * stature);
        var theirs = Theirs(wind, apart, own.Y);
        var back = new Spot(-Body.HalfDepth * stature, 0);
        // Does the straight way from shoulder to shoulder pass before the back? Then the arm lies against it.
        var through = theirs.Y < 0 && own.X + ((theirs.X - own.X) * (own.Y / (own.Y - theirs.Y))) > back.X;
        var bend = through ? back : own;
        var first = (bend - theirs).Length;
        var hand = arm <= first ? Along(theirs, bend, arm / first)
            : through && arm - first < (own - back).Length ? Along(back, own, (arm - first) / (own - back).Length)
            : own;
        var degrees = Math.Atan2(hand.Y, hand.X) * 180 / Math.PI;
        return degrees < 0 ? degrees + 360 : degrees;
    }

    // The shoulder lies in the direction of the wind, at the distance that leaves the two shoulders as far apart as they are.
    private static Spot Theirs(double wind, double apart, double half)
    {
        var (sine, cosine) = Angles.SineAndCosine(wind);
        var away = (half * sine) + Math.Sqrt(Math.Max(0, (apart * apart) - (half * half * cosine * cosine)));
        return new(away * cosine, away * sine);
    }

    private static Spot Along(Spot from, Spot to, double part) => from + ((to - from) * part);
}
