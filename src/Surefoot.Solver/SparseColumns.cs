using Surefoot.Dance.Couple;

namespace Surefoot.Solver;

/// <summary>
/// A program's rows seen by column: what each unknown counts for in each row. Rows are added at the end and the
/// last ones taken away again. An unknown of its own for each row, what is missing to make its sum nought, comes
/// after those of the program.
/// </summary>
internal sealed class SparseColumns(int columns)
{
    // Entries of a column hang together from its newest to its oldest, so that a row is added without moving any.
    private readonly int[] _newest = Filled(columns);
    private readonly List<(LinearRow Row, int Number)> _rows = [];
    private int[] _older = new int[(4 * columns) + 16];
    private int[] _row = new int[(4 * columns) + 16];
    private double[] _value = new double[(4 * columns) + 16];
    private int _entries;

    public int Rows => _rows.Count;

    public LinearRow this[int row] => _rows[row].Row;

    /// <summary>The number of a row in the program.</summary>
    public int NumberOf(int row) => _rows[row].Number;

    public void Add(LinearRow row, int number)
    {
        while (_entries + row.Columns.Length > _row.Length)
        {
            Array.Resize(ref _older, 2 * _older.Length);
            Array.Resize(ref _row, 2 * _row.Length);
            Array.Resize(ref _value, 2 * _value.Length);
        }

        for (var i = 0; i < row.Columns.Length; i++)
        {
            var column = row.Columns[i];
            (_older[_entries], _row[_entries], _value[_entries]) = (_newest[column], _rows.Count, row.Values[i]);
            _newest[column] = _entries++;
        }

        _rows.Add((row, number));
    }

    public void RemoveLast()
    {
        var row = _rows[^1].Row;
        for (var i = row.Columns.Length - 1; i >= 0; i--) _newest[row.Columns[i]] = _older[--_entries];
        _rows.RemoveAt(_rows.Count - 1);
    }

    /// <summary>Adds a multiple of a column to a sum over rows.</summary>
    public void AddTo(double[] sum, int column, double share)
    {
        if (column >= columns)
        {
            sum[column - columns] += share;
            return;
        }

        for (var e = _newest[column]; e >= 0; e = _older[e]) sum[_row[e]] += share * _value[e];
    }

    /// <summary>The sum over rows of what a column counts there times a weight of the row.</summary>
    public double Dot(double[] weights, int column)
    {
        if (column >= columns) return weights[column - columns];
        var sum = 0.0;
        for (var e = _newest[column]; e >= 0; e = _older[e]) sum += _value[e] * weights[_row[e]];
        return sum;
    }

    private static int[] Filled(int length)
    {
        var none = new int[length];
        Array.Fill(none, -1);
        return none;
    }
}
