using Surefoot.Dance.Couple;

namespace Surefoot.Tests.Solver;

/// <summary>
/// The simplex method as a first course teaches it: a dense table, two phases, and Bland's rule, which cannot
/// go round in circles. Slow, short, and sharing nothing with the solver that is tested against it.
/// </summary>
internal static class TextbookSimplex
{
    /// <summary>Below this a number of the table counts as nothing; programs in the tests are made of small whole numbers.</summary>
    private const double Nothing = 1e-9;

    /// <returns>The least cost, or null when no values satisfy the rows or the cost has no least.</returns>
    public static double? Least(LinearProgram program)
    {
        var (columns, constant) = Shift(program);
        var rows = Inequalities(program, columns);
        var (table, basis) = Table(rows, columns.Count);

        // First phase: drive out the sum of the artificial unknowns, which stand last.
        var width = columns.Count + rows.Count;
        var artificial = new double[width + rows.Count];
        Array.Fill(artificial, 1, width, rows.Count);
        if (!Improve(table, basis, artificial, artificial.Length)) throw new InvalidOperationException("A sum of numbers above zero has a least.");
        if (Cost(table, basis, artificial) > 1e-7) return null;
        LeaveArtificial(table, basis, width);

        var cost = new double[width + rows.Count];
        for (var i = 0; i < columns.Count; i++) cost[i] = columns[i].Sign * program.Cost[columns[i].Of];
        return Improve(table, basis, cost, width) ? constant + Cost(table, basis, cost) : null;
    }

    /// <summary>Unknowns that start at zero: shifted from a bound, mirrored from an upper one, or the difference of two.</summary>
    private static (List<(int Of, double Sign, double From)> Columns, double Constant) Shift(LinearProgram program)
    {
        var columns = new List<(int, double, double)>();
        var constant = 0.0;
        for (var i = 0; i < program.Columns; i++)
        {
            if (double.IsFinite(program.Lower[i])) columns.Add((i, 1, program.Lower[i]));
            else if (double.IsFinite(program.Upper[i])) columns.Add((i, -1, program.Upper[i]));
            else columns.AddRange([(i, 1, 0), (i, -1, 0)]);
            constant += program.Cost[i] * columns[^1].Item3;
        }

        return (columns, constant);
    }

    /// <summary>Everything that is asked, as sums that are at most a number.</summary>
    private static List<(double[] Sum, double AtMost)> Inequalities(LinearProgram program, List<(int Of, double Sign, double From)> columns)
    {
        var result = new List<(double[], double)>();
        foreach (var row in program.Rows)
        {
            var dense = new double[program.Columns];
            for (var i = 0; i < row.Columns.Length; i++) dense[row.Columns[i]] = row.Values[i];
            Add(dense, row.Lower, row.Upper);
        }

        for (var i = 0; i < program.Columns; i++)
        {
            var dense = new double[program.Columns];
            dense[i] = 1;
            Add(dense, program.Lower[i], program.Upper[i]);
        }

        return result;

        void Add(double[] dense, double lower, double upper)
        {
            var from = columns.Where((c, i) => i == 0 || columns[i - 1].Of != c.Of).Sum(c => dense[c.Of] * c.From);
            if (double.IsFinite(upper)) result.Add(([.. columns.Select(c => c.Sign * dense[c.Of])], upper - from));
            if (double.IsFinite(lower)) result.Add(([.. columns.Select(c => -c.Sign * dense[c.Of])], from - lower));
        }
    }

    /// <summary>Unknowns, then one slack a row, then one artificial unknown a row, then the right side, never below zero.</summary>
    private static (double[][] Table, int[] Basis) Table(List<(double[] Sum, double AtMost)> rows, int unknowns)
    {
        var table = new double[rows.Count][];
        var basis = new int[rows.Count];
        for (var r = 0; r < rows.Count; r++)
        {
            var sign = rows[r].AtMost < 0 ? -1 : 1;
            var line = new double[unknowns + 2 * rows.Count + 1];
            for (var i = 0; i < unknowns; i++) line[i] = sign * rows[r].Sum[i];
            line[unknowns + r] = sign;
            basis[r] = unknowns + rows.Count + r;
            line[basis[r]] = 1;
            line[^1] = sign * rows[r].AtMost;
            table[r] = line;
        }

        return (table, basis);
    }

    /// <returns>False when the cost has no least.</returns>
    private static bool Improve(double[][] table, int[] basis, double[] cost, int width)
    {
        while (true)
        {
            var entering = Enumerable.Range(0, width).FirstOrDefault(
                c => cost[c] - table.Select((line, r) => cost[basis[r]] * line[c]).Sum() < -Nothing, -1);
            if (entering < 0) return true;
            var leaving = -1;
            for (var r = 0; r < table.Length; r++)
            {
                if (table[r][entering] <= Nothing) continue;
                var closer = leaving < 0 ? -1 : table[r][^1] / table[r][entering] - table[leaving][^1] / table[leaving][entering];
                if (closer < -Nothing || (Math.Abs(closer) <= Nothing && basis[r] < basis[leaving])) leaving = r;
            }

            if (leaving < 0) return false;
            Pivot(table, basis, leaving, entering);
        }
    }

    /// <summary>Artificial unknowns still in the basis stand at zero; swap them, so that the second phase cannot raise them.</summary>
    private static void LeaveArtificial(double[][] table, int[] basis, int width)
    {
        for (var r = 0; r < table.Length; r++)
        {
            if (basis[r] < width) continue;
            var column = Array.FindIndex(table[r], 0, width, v => Math.Abs(v) > Nothing);
            if (column >= 0) Pivot(table, basis, r, column);
        }
    }

    private static void Pivot(double[][] table, int[] basis, int row, int column)
    {
        var by = table[row][column];
        for (var c = 0; c < table[row].Length; c++) table[row][c] /= by;
        for (var r = 0; r < table.Length; r++)
        {
            var times = table[r][column];
            if (r == row || times == 0) continue;
            for (var c = 0; c < table[r].Length; c++) table[r][c] -= times * table[row][c];
        }

        basis[row] = column;
    }

    private static double Cost(double[][] table, int[] basis, double[] cost) => table.Select((line, r) => cost[basis[r]] * line[^1]).Sum();
}
