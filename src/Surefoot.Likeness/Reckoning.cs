namespace Surefoot.Likeness;

/// <summary>The arithmetic that comparing two dances and looking through many share.</summary>
internal static class Reckoning
{
    /// <summary>The share of both dances that is in the points of both ways: 1 where every count of each is found alike in the other.</summary>
    public static double Share(int points, int first, int second) =>
        first + second == 0 ? 0 : Math.Clamp((double)points / (Nearness.Alike * (first + second)), 0, 1);

    /// <summary>Points of each pair of counts, a row for each count of the first.</summary>
    public static sbyte[] Points(DanceSteps first, DanceSteps second)
    {
        var points = new sbyte[first.Length * second.Length];
        for (var i = 0; i < first.Length; i++)
        {
            for (var j = 0; j < second.Length; j++) points[(i * second.Length) + j] = (sbyte)Nearness.Of(first.Counts[i], second.Counts[j]);
        }

        return points;
    }

    /// <summary>Rows for columns.</summary>
    public static sbyte[] Turned(ReadOnlySpan<sbyte> points, int rows, int columns)
    {
        var turned = new sbyte[points.Length];
        for (var i = 0; i < rows; i++)
        {
            for (var j = 0; j < columns; j++) turned[(j * rows) + i] = points[(i * columns) + j];
        }

        return turned;
    }
}
