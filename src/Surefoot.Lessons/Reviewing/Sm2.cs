namespace Surefoot.Lessons.Reviewing;

/// <summary>
/// When a dance is danced again: Woźniak's SM-2, a published rule of spaced repetition. It asks for the first
/// review after a day, the second after six, and then each time for the last interval times a factor, which
/// grows with what went well and shrinks with what did not.
/// </summary>
/// <param name="Times">How often in a row it went well enough.</param>
/// <param name="Factor">The easiness factor, in hundredths, so that no rounding hides in it; 250 at first and never below 130.</param>
/// <param name="Interval">Days until the next review; 0 before the first.</param>
public readonly record struct Sm2(int Times, int Factor, int Interval)
{
    private const int FirstFactor = 250, LeastFactor = 130;

    /// <summary>The mark that is expected of a review to come: it goes well.</summary>
    public const int Expected = 4;

    /// <summary>A mark below this is no pass: the intervals begin again.</summary>
    public const int Passed = 3;

    public static Sm2 New => new(0, FirstFactor, 0);

    /// <summary>
    /// After a review with a mark from 0 to 5. The factor changes by 0.1 − (5 − q)(0.08 + (5 − q) 0.02); a mark below 3
    /// leaves it and begins the intervals again. Intervals are rounded up.
    /// </summary>
    public Sm2 After(int quality)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(quality);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(quality, 5);
        if (quality < Passed) return this with { Times = 1, Interval = 1 };
        var short_ = 5 - quality;
        var factor = Math.Max(LeastFactor, Factor + 10 - (short_ * (8 + (2 * short_))));
        return new(Times + 1, factor, Times switch
        {
            0 => 1,
            1 => 6,
            _ => ((Interval * factor) + 99) / 100,
        });
    }
}
