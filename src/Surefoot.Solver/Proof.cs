using Surefoot.Dance.Couple;

namespace Surefoot.Solver;

/// <summary>
/// Whether an answer to a program is one, worked out from the program and nothing else: weights of its rows show
/// that no values cost less (duality), or that none will do (Farkas 1902).
/// </summary>
internal static class Proof
{
    /// <summary>How far rows and bounds may be overstepped, and by what share of its size a cost may differ from the least: what is asked of the library too.</summary>
    private const double Tolerance = 1e-9;

    /// <summary>What is left of nought after summing up some hundred numbers of about one.</summary>
    private const double Rounding = 1e-11;

    /// <summary>The values keep all bounds and rows, and nothing costs less.</summary>
    public static bool IsLeast(LinearProgram program, double[] values, double[] weights, out double cost)
    {
        cost = 0;
        var least = 0.0;
        var reduced = new double[values.Length];
        for (var j = 0; j < values.Length; j++)
        {
            if (!Within(program.Lower[j], values[j], program.Upper[j])) return false;
            cost += program.Cost[j] * values[j];
            reduced[j] = program.Cost[j];
        }

        for (var r = 0; r < weights.Length; r++)
        {
            var row = program.Rows[r];
            var sum = 0.0;
            for (var i = 0; i < row.Columns.Length; i++)
            {
                sum += row.Values[i] * values[row.Columns[i]];
                reduced[row.Columns[i]] -= weights[r] * row.Values[i];
            }

            if (!Within(row.Lower, sum, row.Upper)) return false;
            least += Least(weights[r], row.Lower, row.Upper, Tolerance);
        }

        for (var j = 0; j < values.Length; j++) least += Least(reduced[j], program.Lower[j], program.Upper[j], Tolerance);
        return cost - least <= Tolerance * (1 + Math.Abs(cost));
    }

    /// <summary>No values keep all bounds and rows: the rows, weighted, contradict each other.</summary>
    public static bool IsImpossible(LinearProgram program, double[] weights)
    {
        // Rows say that the weighted sum lies between two numbers, bounds that it lies between two others.
        var (sums, size) = (new double[program.Columns], 0.0);
        var (rowsLeast, rowsMost) = (0.0, 0.0);
        for (var r = 0; r < weights.Length; r++)
        {
            if (weights[r] == 0) continue;
            var row = program.Rows[r];
            size = Math.Max(size, Math.Abs(weights[r]));
            for (var i = 0; i < row.Columns.Length; i++) sums[row.Columns[i]] += weights[r] * row.Values[i];
            rowsLeast += Least(weights[r], row.Lower, row.Upper, Rounding);
            rowsMost -= Least(-weights[r], row.Lower, row.Upper, Rounding);
        }

        var (boundsLeast, boundsMost) = (0.0, 0.0);
        for (var j = 0; j < sums.Length; j++)
        {
            boundsLeast += Least(sums[j], program.Lower[j], program.Upper[j], Rounding);
            boundsMost -= Least(-sums[j], program.Lower[j], program.Upper[j], Rounding);
        }

        var apart = Tolerance * Math.Max(1, size);
        return rowsLeast > boundsMost + apart || boundsLeast > rowsMost + apart;
    }

    private static bool Within(double lower, double value, double upper) => value >= lower - Tolerance && value <= upper + Tolerance;

    // The least that something between two bounds comes to at a price.
    private static double Least(double price, double lower, double upper, double nought)
    {
        var bound = price > 0 ? lower : upper;
        if (double.IsFinite(bound)) return price * bound;
        return Math.Abs(price) <= nought ? 0 : double.NegativeInfinity;
    }
}
