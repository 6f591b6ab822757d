namespace Surefoot.Dance.Couple;

/// <summary>
/// Minimise cost over unknowns between bounds, subject to rows of sums between bounds. Infinite bounds are
/// allowed. Rows and columns keep the order in which they were added, so that the same dance always makes
/// the same program.
/// </summary>
public sealed class LinearProgram
{
    private readonly List<double> _cost = [];
    private readonly List<double> _lower = [];
    private readonly List<double> _upper = [];
    private readonly List<LinearRow> _rows = [];

    public int Columns => _cost.Count;

    public IReadOnlyList<double> Cost => _cost;

    public IReadOnlyList<double> Lower => _lower;

    public IReadOnlyList<double> Upper => _upper;

    public IReadOnlyList<LinearRow> Rows => _rows;

    /// <returns>The number of the new unknown.</returns>
    public int AddColumn(double lower, double upper, double cost)
    {
        _lower.Add(lower);
        _upper.Add(upper);
        _cost.Add(cost);
        return _cost.Count - 1;
    }

    public void AddRow(double lower, double upper, int[] columns, double[] values) => _rows.Add(new(lower, upper, columns, values));

    /// <summary>Lets a row go: from now on it asks nothing.</summary>
    public void LetGo(int row) => _rows[row] = _rows[row] with { Lower = double.NegativeInfinity, Upper = double.PositiveInfinity };
}

/// <summary>lower ≤ Σ value × unknown ≤ upper, over the columns named; no column twice.</summary>
public sealed record LinearRow(double Lower, double Upper, int[] Columns, double[] Values);

/// <param name="Solved">False when no values satisfy all rows and bounds, or the cost has no least.</param>
public sealed record LinearSolution(bool Solved, double Objective, double[] Values);
