namespace Surefoot.Dance.Couple;

/// <summary>A row of a program while it is summed up from several places that share unknowns: each stands in it once.</summary>
internal sealed class RowSum(LinearProgram program)
{
    private readonly List<int> _columns = [];
    private readonly List<double> _values = [];

    // Where each unknown stands in the row, counted from one.
    private int[] _stands = [];

    /// <summary>What is fixed of the sum.</summary>
    public double Known { get; private set; }

    public void Add(int column, double value)
    {
        if (value == 0) return;
        if (column >= _stands.Length) Array.Resize(ref _stands, Math.Max(2 * program.Columns, column + 1));
        if (_stands[column] == 0)
        {
            _columns.Add(column);
            _values.Add(value);
            _stands[column] = _columns.Count;
        }
        else
        {
            _values[_stands[column] - 1] += value;
        }
    }

    public void AddKnown(double value) => Known += value;

    /// <summary>Puts the row into the program, between two bounds with what is fixed of it, and begins the next.</summary>
    public void Into(double lower, double upper)
    {
        foreach (var column in _columns) _stands[column] = 0;
        // What cancels out is left out.
        for (var i = _columns.Count - 1; i >= 0; i--)
        {
            if (_values[i] != 0) continue;
            _columns.RemoveAt(i);
            _values.RemoveAt(i);
        }

        // No negative nought, which a mirror would bring in.
        program.AddRow(lower - Known + 0.0, upper - Known + 0.0, [.. _columns], [.. _values]);
        _columns.Clear();
        _values.Clear();
        Known = 0;
    }
}
