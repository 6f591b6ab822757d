namespace Surefoot.Likeness;

/// <summary>Makes of the pairs of an alignment a list of rows in which no count of either dance is missing.</summary>
internal static class SideBySide
{
    public static List<Beside> Rows(List<Paired> pairs, int first, int second, Func<Paired, int> points)
    {
        var rows = new List<Beside>();
        var shown = new bool[second];
        var (row, column) = (0, 0);
        // Where passages come in another order, what is passed over here has its place elsewhere.
        var used = pairs.Select(p => p.Column).ToHashSet();
        foreach (var pair in pairs)
        {
            // Between two pairs: what either has alone, side by side as long as both have something.
            var own = new List<int>();
            if (pair.Column >= column)
            {
                for (var j = column; j < pair.Column; j++)
                {
                    if (!shown[j] && !used.Contains(j)) own.Add(j);
                }
            }

            Between(row, pair.Row, own);
            shown[pair.Column] = true;
            rows.Add(new(pair.Row, pair.Column, FateOf(points(pair))));
            (row, column) = (pair.Row + 1, pair.Column + 1);
        }

        // What is left of the second, and was not met anywhere.
        Between(row, first, [.. Enumerable.Range(0, second).Where(j => !shown[j] && !used.Contains(j))]);
        return rows;

        void Between(int from, int to, List<int> own)
        {
            for (var i = from; i < to || own.Count > 0; i++)
            {
                int? there = own.Count > 0 ? own[0] : null;
                if (there is { } j)
                {
                    own.RemoveAt(0);
                    shown[j] = true;
                }

                rows.Add(new(i < to ? i : null, there, i < to && there is not null ? Fate.Other : Fate.Alone));
            }
        }
    }

    private static Fate FateOf(int points) => points == Nearness.Alike ? Fate.Alike : points > 0 ? Fate.Near : Fate.Other;
}
