namespace Surefoot.Dance.Moving;

/// <summary>Curves of time.</summary>
internal static class Easing
{
    /// <summary>
    /// How far a hand or a foot has come on its way after a share of the time: the path of least jerk, which is
    /// how people move from rest to rest (Flash and Hogan 1985, from memory).
    /// </summary>
    public static double LeastJerk(double share)
    {
        var s = Math.Clamp(share, 0, 1);
        return s * s * s * (10 + (s * ((6 * s) - 15)));
    }

    /// <summary>The same between two moments; done at once where they are one.</summary>
    public static double LeastJerk(double now, double from, double to) => to <= from ? (now < from ? 0 : 1) : LeastJerk((now - from) / (to - from));

    /// <summary>0 at either end, 1 in the middle, flat at the ends.</summary>
    public static double Arc(double share)
    {
        var s = Math.Clamp(share, 0, 1);
        var bow = 4 * s * (1 - s);
        return bow * bow;
    }

    /// <summary>Index of the last number that is not above another; -1 where all are.</summary>
    public static int Last(double[] rising, double now)
    {
        var (low, high) = (0, rising.Length);
        while (low < high)
        {
            var middle = (low + high) >> 1;
            if (rising[middle] <= now) low = middle + 1;
            else high = middle;
        }

        return low - 1;
    }
}
