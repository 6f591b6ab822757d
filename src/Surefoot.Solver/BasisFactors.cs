using System.Runtime.InteropServices;

namespace Surefoot.Solver;

/// <summary>
/// The inverse of the basis of a simplex method as a product of simple steps (product form, Dantzig and
/// Orchard-Hays 1954): one for each unknown that came in and one for each row that was added. At the start every
/// row has its own unknown and the inverse is one. Programs of couples need some hundreds of steps of a few numbers
/// each, fewer than would be worth sorting anew.
/// </summary>
internal sealed class BasisFactors
{
    private readonly List<Step> _steps = [];
    private int[] _row = new int[1024];
    private double[] _value = new double[1024];
    private int _numbers;

    /// <param name="Row">The row that changes hands, or that was added.</param>
    /// <param name="Pivot">What the unknown that came in counts for in that row; nought for an added row.</param>
    /// <param name="Begin">Where the other numbers of the step begin.</param>
    /// <param name="End">Where they end.</param>
    private readonly record struct Step(int Row, double Pivot, int Begin, int End);

    public int Count => _steps.Count;

    /// <summary>An unknown comes into the basis in a row.</summary>
    /// <param name="column">What it counts for in each row, by the basis as it was.</param>
    public void Enter(int row, double[] column, int rows)
    {
        var begin = _numbers;
        for (var i = 0; i < rows; i++)
        {
            if (i != row && column[i] != 0) Keep(i, column[i]);
        }

        _steps.Add(new(row, column[row], begin, _numbers));
    }

    /// <summary>Keeps one number of a row that is being added: what the unknown in the basis there counts for in it.</summary>
    public void Keep(int row, double value)
    {
        if (_numbers == _row.Length)
        {
            Array.Resize(ref _row, 2 * _numbers);
            Array.Resize(ref _value, 2 * _numbers);
        }

        (_row[_numbers], _value[_numbers]) = (row, value);
        _numbers++;
    }

    /// <summary>Ends a row whose numbers were kept since a step ended.</summary>
    public void Added(int row)
    {
        var begin = _steps.Count == 0 ? 0 : _steps[^1].End;
        if (begin < _numbers) _steps.Add(new(row, 0, begin, _numbers));
    }

    /// <summary>Goes back to the first steps.</summary>
    public void BackTo(int count)
    {
        _steps.RemoveRange(count, _steps.Count - count);
        _numbers = count == 0 ? 0 : _steps[^1].End;
    }

    /// <summary>Makes of numbers by row those of the unknowns in the basis (the inverse times a column).</summary>
    public void Forwards(double[] numbers)
    {
        foreach (ref readonly var step in CollectionsMarshal.AsSpan(_steps))
        {
            if (step.Pivot == 0)
            {
                var sum = numbers[step.Row];
                for (var k = step.Begin; k < step.End; k++) sum -= _value[k] * numbers[_row[k]];
                numbers[step.Row] = sum;
                continue;
            }

            if (numbers[step.Row] == 0) continue;
            var share = numbers[step.Row] / step.Pivot;
            numbers[step.Row] = share;
            for (var k = step.Begin; k < step.End; k++) numbers[_row[k]] -= _value[k] * share;
        }
    }

    /// <summary>Makes of numbers by unknown in the basis weights of the rows (a row times the inverse).</summary>
    public void Backwards(double[] numbers)
    {
        var steps = CollectionsMarshal.AsSpan(_steps);
        for (var s = steps.Length - 1; s >= 0; s--)
        {
            ref readonly var step = ref steps[s];
            if (step.Pivot == 0)
            {
                var share = numbers[step.Row];
                if (share == 0) continue;
                for (var k = step.Begin; k < step.End; k++) numbers[_row[k]] -= _value[k] * share;
                continue;
            }

            var sum = numbers[step.Row];
            for (var k = step.Begin; k < step.End; k++) sum -= _value[k] * numbers[_row[k]];
            numbers[step.Row] = sum / step.Pivot;
        }
    }
}
