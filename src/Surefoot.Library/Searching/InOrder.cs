namespace Surefoot.Library.Searching;

/// <summary>Looks for things danced one after the other.</summary>
internal static class InOrder
{
    // Counts within which the next thing has to begin: one eight, which is how dances are remembered.
    private const float Within = 8;

    // What is lost for each other thing danced in between.
    private const double EachBetween = 0.15;

    /// <param name="fits">For each phrase how much every thing danced has of it.</param>
    /// <returns>How well the best place fits, 0 for none, and the count where it begins.</returns>
    public static (double Fit, double? At) Find(int[] danced, float[] at, List<double[]> fits)
    {
        var (best, where) = (0.0, (double?)null);
        for (var first = 0; first < danced.Length; first++)
        {
            var sum = fits[0][danced[first]];
            if (sum <= 0) continue;
            var here = first;
            for (var phrase = 1; phrase < fits.Count; phrase++)
            {
                var (next, fit) = Next(danced, at, fits[phrase], here);
                if (next < 0)
                {
                    sum = 0;
                    break;
                }

                sum += fit;
                here = next;
            }

            if (sum / fits.Count > best) (best, where) = (sum / fits.Count, at[first]);
        }

        return (best, where);
    }

    private static (int Place, double Fit) Next(int[] danced, float[] at, double[] fits, int after)
    {
        var (best, place) = (0.0, -1);
        // Moments between the two, not dancers: what his partner does on the same counts stands between nothing.
        var between = -1;
        var last = at[after];
        for (var i = after + 1; i < danced.Length && at[i] - at[after] <= Within; i++)
        {
            if (at[i] <= at[after]) continue;
            if (at[i] > last) (between, last) = (between + 1, at[i]);
            var fit = fits[danced[i]] * Math.Max(0.1, 1 - (EachBetween * between));
            if (fit > best) (best, place) = (fit, i);
        }

        return (place, best);
    }
}
