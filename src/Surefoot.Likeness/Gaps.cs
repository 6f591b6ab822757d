namespace Surefoot.Likeness;

/// <summary>What an alignment costs beside the counts that do not fit, in points (see <see cref="Nearness"/>).</summary>
/// <param name="Open">The first count that only one of the two has.</param>
/// <param name="More">Each further count of the same gap.</param>
/// <param name="Leap">Going on anywhere else in the other dance, whatever is left out of both; null where one stretch is looked for.</param>
/// <param name="Round">True where the other dance begins anew after its last count, as dances do.</param>
internal readonly record struct Gaps(int Open, int More, int? Leap, bool Round)
{
    /// <summary>
    /// For dances. A leap costs what three counts danced alike are worth, so that shorter passages, which any two dances
    /// have, count for nothing. Working values.
    /// </summary>
    public static Gaps Usual => new(Nearness.Alike, 3, 3 * Nearness.Alike, Round: true);
}
