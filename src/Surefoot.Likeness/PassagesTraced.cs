namespace Surefoot.Likeness;

/// <summary>A count of one row with the count of the other that stands for it, both from 0.</summary>
internal readonly record struct Paired(int Row, int Column);

/// <summary>The same search as <see cref="Passages"/>, which also says what stands for what.</summary>
internal static class PassagesTraced
{
    private const int Never = int.MinValue / 4;

    private enum From : byte
    {
        Start,
        Diagonal,
        Leap,
        Across,
        Down,
    }

    /// <returns>The points, and the pairs in the order of the rows.</returns>
    public static (int Points, List<Paired> Pairs) Best(ReadOnlySpan<sbyte> points, int rows, int columns, Gaps gaps)
    {
        var came = new From[rows * columns];
        // Whether a gap goes on, for each of the two ways.
        var acrossOn = new bool[rows * columns];
        var downOn = new bool[rows * columns];
        var above = new int[columns];
        var down = new int[columns];
        Array.Fill(above, Never);
        Array.Fill(down, Never);
        // Before each row: the best place so far, to which a leap goes back.
        var bests = new int[rows + 1];
        bests[0] = -1;
        var best = 0;
        for (var i = 0; i < rows; i++)
        {
            bests[i + 1] = bests[i];
            var leap = gaps.Leap is { } price && bests[i] >= 0 ? best - price : Never;
            var diagonal = gaps.Round && columns > 0 ? above[columns - 1] : Never;
            var (across, here, top) = (Never, Never, best);
            for (var j = 0; j < columns; j++)
            {
                var at = (i * columns) + j;
                var over = above[j];
                acrossOn[at] = across - gaps.More > here - gaps.Open;
                across = Math.Max(here - gaps.Open, across - gaps.More);
                downOn[at] = down[j] - gaps.More > over - gaps.Open;
                down[j] = Math.Max(over - gaps.Open, down[j] - gaps.More);
                // Going straight on is preferred to everything that is worth as much.
                var (value, from) = (diagonal, From.Diagonal);
                if (leap > value) (value, from) = (leap, From.Leap);
                if (value < 0) (value, from) = (0, From.Start);
                value += points[at];
                if (across > value) (value, from) = (across, From.Across);
                if (down[j] > value) (value, from) = (down[j], From.Down);
                came[at] = from;
                diagonal = over;
                above[j] = here = value;
                if (here <= top) continue;
                top = here;
                bests[i + 1] = at;
            }

            best = top;
        }

        return (best, Back(came, acrossOn, downOn, bests, rows, columns));
    }

    private static List<Paired> Back(From[] came, bool[] acrossOn, bool[] downOn, int[] bests, int rows, int columns)
    {
        var pairs = new List<Paired>();
        var at = rows == 0 ? -1 : bests[rows];
        while (at >= 0)
        {
            var (i, j) = (at / columns, at % columns);
            switch (came[at])
            {
                case From.Across:
                    for (var on = true; on; at--) on = acrossOn[at];
                    continue;
                case From.Down:
                    for (var on = true; on; at -= columns) on = downOn[at];
                    continue;
                default:
                    pairs.Add(new(i, j));
                    break;
            }

            at = came[at] switch
            {
                From.Diagonal => ((i - 1) * columns) + (j == 0 ? columns - 1 : j - 1),
                From.Leap => bests[i],
                _ => -1,
            };
        }

        pairs.Reverse();
        return pairs;
    }
}
