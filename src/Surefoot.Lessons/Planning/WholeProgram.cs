namespace Surefoot.Lessons.Planning;

/// <summary>A linear program over whole numbers: columns within bounds, each with its cost; sums of columns within bounds.</summary>
public sealed class WholeProgram
{
    private readonly List<int> _lower = [];
    private readonly List<int> _upper = [];
    private readonly List<long> _cost = [];
    private readonly List<WholeRow> _rows = [];
    private readonly Dictionary<int, int> _hints = [];

    public int Columns => _lower.Count;

    public IReadOnlyList<int> Lower => _lower;

    public IReadOnlyList<int> Upper => _upper;

    public IReadOnlyList<long> Cost => _cost;

    public IReadOnlyList<WholeRow> Rows => _rows;

    /// <summary>Values to try first; they decide nothing.</summary>
    public IReadOnlyDictionary<int, int> Hints => _hints;

    public int AddColumn(int lower, int upper)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(lower, upper);
        _lower.Add(lower);
        _upper.Add(upper);
        _cost.Add(0);
        return _lower.Count - 1;
    }

    public void AddCost(int column, long cost) => _cost[column] += cost;

    /// <summary>Costs nothing from here on: only whether there is an answer is asked.</summary>
    public void ForgetCosts()
    {
        for (var column = 0; column < _cost.Count; column++) _cost[column] = 0;
    }

    public void Hint(int column, int value) => _hints[column] = value;

    /// <summary>What an answer costs.</summary>
    public long CostOf(ValueList<int> values)
    {
        var cost = 0L;
        for (var column = 0; column < Columns; column++) cost += _cost[column] * values[column];
        return cost;
    }

    /// <summary>The same program with some columns held at what they are in an answer, and the answer as what is tried first.</summary>
    public WholeProgram Holding(IEnumerable<int> columns, ValueList<int> values)
    {
        var held = Holding(columns.Select(c => (c, values[c])));
        for (var column = 0; column < Columns; column++) held._hints[column] = values[column];
        return held;
    }

    /// <summary>The same program with some columns held.</summary>
    public WholeProgram Holding(IEnumerable<(int Column, int Value)> columns)
    {
        var held = new WholeProgram();
        held._lower.AddRange(_lower);
        held._upper.AddRange(_upper);
        held._cost.AddRange(_cost);
        held._rows.AddRange(_rows);
        foreach (var (column, value) in columns) (held._lower[column], held._upper[column]) = (value, value);
        return held;
    }

    public void AddRow(int lower, int upper, IEnumerable<(int Column, int Times)> sum)
    {
        var terms = sum.GroupBy(t => t.Column).Select(g => (g.Key, g.Sum(t => t.Times))).Where(t => t.Item2 != 0).ToArray();
        _rows.Add(new(lower, upper, terms));
    }
}

/// <param name="Terms">Columns and how often each counts.</param>
public sealed record WholeRow(int Lower, int Upper, IReadOnlyList<(int Column, int Times)> Terms)
{
    /// <summary>As a bound: none.</summary>
    public const int Open = int.MaxValue;
}
