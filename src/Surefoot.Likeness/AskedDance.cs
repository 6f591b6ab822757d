namespace Surefoot.Likeness;

/// <summary>A dance that others are compared with, one after the other: the points of each count of theirs are reckoned once and kept.</summary>
internal sealed class AskedDance(DanceSteps dance, CountBook book)
{
    private readonly DanceSteps[] _ways = [dance, dance.Mirrored];
    private readonly sbyte[]?[][] _known = [new sbyte[]?[book.Size], new sbyte[]?[book.Size]];
    private sbyte[] _there = [];
    private sbyte[] _back = [];
    private (int, int)[] _work = [];

    /// <summary>What they have in common, from 0 to 1, as they are or begun on other feet, whichever is more.</summary>
    /// <param name="other">Its counts by their numbers in the book.</param>
    /// <param name="plain">Whether to look as they are.</param>
    /// <param name="turned">Whether to look at them begun on other feet.</param>
    public double Share(int[] other, bool plain, bool turned)
    {
        if (dance.Length == 0 || other.Length == 0) return 0;
        var points = Math.Max(plain ? Points(other, 0) : 0, turned ? Points(other, 1) : 0);
        return Reckoning.Share(points, dance.Length, other.Length);
    }

    /// <summary>Half of the work: how much of another is found in this one, as if as much of this one were found in it.</summary>
    public double ShareOneWay(int[] other, bool plain, bool turned)
    {
        if (dance.Length == 0 || other.Length == 0) return 0;
        var points = Math.Max(plain ? Back(other, 0) : 0, turned ? Back(other, 1) : 0);
        return Reckoning.Share(2 * points, dance.Length, other.Length);
    }

    private int Points(int[] other, int way)
    {
        var back = Back(other, way);
        var (rows, columns) = (dance.Length, other.Length);
        for (var j = 0; j < columns; j++)
        {
            for (var i = 0; i < rows; i++) _there[(i * columns) + j] = _back[(j * rows) + i];
        }

        return back + Passages.Best(_there.AsSpan(0, rows * columns), rows, columns, Gaps.Usual, ref _work);
    }

    private int Back(int[] other, int way)
    {
        var (rows, columns) = (dance.Length, other.Length);
        if (_back.Length < rows * columns) (_there, _back) = (new sbyte[rows * columns], new sbyte[rows * columns]);
        for (var j = 0; j < columns; j++) (_known[way][other[j]] ??= Reckon(other[j], way)).CopyTo(_back, j * rows);
        return Passages.Best(_back.AsSpan(0, rows * columns), columns, rows, Gaps.Usual, ref _work);
    }

    private sbyte[] Reckon(int number, int way)
    {
        var points = new sbyte[dance.Length];
        for (var i = 0; i < points.Length; i++) points[i] = (sbyte)Nearness.Of(_ways[way].Counts[i], book[number]);
        return points;
    }
}
