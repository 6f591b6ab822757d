namespace Surefoot.Likeness;

/// <summary>
/// The best order of passages in which one row is found again in another: local alignment with affine gaps (Smith and
/// Waterman 1981; Gotoh 1982), in which a passage may follow another at a price, wherever it stands in the other row.
/// So parts in another order, and counts that were put in, are found in one pass. Time and memory go with the product
/// of both lengths.
/// </summary>
internal static class Passages
{
    // Far below every sum of points, far above where sums would wrap round.
    private const int Never = int.MinValue / 4;

    /// <summary>The points of the best order, without saying which it is.</summary>
    /// <param name="points">Points of each pair, one row of <paramref name="columns"/> after the other.</param>
    public static int Best(ReadOnlySpan<sbyte> points, int rows, int columns, Gaps gaps, ref (int Here, int Down)[] work)
    {
        if (rows == 0 || columns == 0) return 0;
        if (work.Length < columns) work = new (int, int)[columns];
        // The row above: the best that ends there, and the best that ends there in a gap going down.
        var above = work.AsSpan(0, columns);
        above.Fill((Never, Never));
        var (best, leap) = (0, gaps.Leap ?? int.MaxValue / 4);
        for (var i = 0; i < rows; i++)
        {
            var row = points.Slice(i * columns, columns);
            var start = Math.Max(0, best - leap);
            var diagonal = gaps.Round ? above[^1].Here : Never;
            var (across, here) = (Never, Never);
            for (var j = 0; j < above.Length; j++)
            {
                ref var cell = ref above[j];
                across = Math.Max(here - gaps.Open, across - gaps.More);
                var fall = Math.Max(cell.Here - gaps.Open, cell.Down - gaps.More);
                here = Math.Max(Math.Max(diagonal, start) + row[j], Math.Max(across, fall));
                diagonal = cell.Here;
                cell = (here, fall);
                if (here > best) best = here;
            }
        }

        return best;
    }
}
