using Surefoot.Dance.Couple;

namespace Surefoot.Solver;

/// <summary>
/// The bounded dual simplex method in revised form, for programs whose unknowns cost least where they rest on a
/// bound: those of couples, where usual steps cost nothing. It goes on from where it stood when rows are added.
/// It only looks for an answer: whether that is one is for <see cref="Proof"/> to say, and wherever it loses its way
/// it says so and stops.
/// </summary>
/// <remarks>
/// Sources, from memory: Lemke 1954 (the dual method), Forrest and Goldfarb 1992 (which row leaves), Maros 2003 (the
/// ratio test that lets unknowns pass from one bound to the other).
/// </remarks>
internal sealed partial class DualSimplex
{
    /// <summary>How far an unknown may overstep its bound while there is more to do, in the program's unit; a tenth of what is proven.</summary>
    private const double Overstep = 1e-10;

    /// <summary>What an unknown must count for in a row to come into it, to begin in it, and to be looked at at all.</summary>
    private const double LeastPivot = 1e-7, GoodPivot = 0.1, Nothing = 1e-11;

    /// <summary>Ratios as near as this are alike.</summary>
    private const double Alike = 1e-12;

    /// <summary>So many changes for each row and unknown are more than any program of a couple needs; then it goes round in circles.</summary>
    private const int MostChanges = 10;

    private readonly LinearProgram _program;
    private readonly int _columns;
    private readonly SparseColumns _matrix;
    private readonly BasisFactors _factors = new();

    // By unknown: those of the program, then one for each row, which is what the sum lacks to nought.
    private double[] _lower = [];
    private double[] _upper = [];
    private double[] _at = [];
    private double[] _reduced = [];

    // By unknown: the row in which it is in the basis, or that it is outside.
    private int[] _place = [];

    // By row.
    private int[] _basic = [];
    private double[] _steepness = [];
    private double[] _missing = [];
    private double[] _weights = [];
    private double[] _column = [];
    private double[] _flipped = [];

    // The row that leaves, by unknown, and where it is not nought.
    private double[] _across = [];
    private bool[] _isTouched = [];
    private readonly List<int> _touched = [];
    private (int Unknown, double Ratio)[] _candidates = [];

    // The last row in which each unknown stood, counted from one: once in a row is enough.
    private readonly int[] _said;

    // True once it ended without an answer: then it stands nowhere from where it could go on.
    private bool _over;

    // How many rows of the program were looked at, and where the search stood when it first found something.
    private int _looked;
    private Standing? _first;

    private const int Outside = -1, None = -2;

    public DualSimplex(LinearProgram program)
    {
        _program = program;
        _columns = program.Columns;
        _matrix = new(_columns);
        _said = new int[_columns];
        Resize(2 * program.Rows.Count);
        for (var j = 0; j < _columns; j++)
        {
            (_lower[j], _upper[j], _reduced[j], _place[j]) = (program.Lower[j], program.Upper[j], program.Cost[j], Outside);
            _at[j] = Cheapest(j);
        }
    }

    private sealed record Standing(int Looked, int Rows, int Steps, double[] At, double[] Reduced, int[] Place, int[] Basic, double[] Steepness);

    /// <summary>How the search ended. After any end but the first whoever asks again has to begin anew.</summary>
    public enum End
    {
        /// <summary>Nothing oversteps a bound and nothing could cost less.</summary>
        Found,

        /// <summary>A row cannot be kept, whatever the unknowns are.</summary>
        Impossible,

        /// <summary>Nothing is known.</summary>
        Lost,
    }

    /// <summary>What the unknowns of the program are.</summary>
    public double[] Values() => _at[.._columns];

    /// <summary>Weights of the program's rows that prove what was found, or that nothing can be.</summary>
    public double[] Weights()
    {
        var weights = new double[_program.Rows.Count];
        for (var r = 0; r < _matrix.Rows; r++) weights[_matrix.NumberOf(r)] = _weights[r];
        return weights;
    }

    public End Solve()
    {
        var end = _over ? End.Lost : Search();
        _over = end != End.Found;
        return end;
    }

    private End Search()
    {
        if (_columns != _program.Columns || !GoBack()) return End.Lost;
        var begin = _looked == 0;
        for (; _looked < _program.Rows.Count; _looked++)
        {
            if (!Take(_looked)) return End.Lost;
        }

        if (begin && !Begin()) return End.Lost;

        var most = MostChanges * (_columns + _matrix.Rows);
        var exact = false;
        for (var changes = 0; changes < most; changes++)
        {
            var leaving = Leaving();
            if (leaving < 0)
            {
                if (exact) return Found();
                // Rounding adds up: what is said at the end is worked out at once.
                WorkOut();
                exact = true;
                continue;
            }

            Array.Clear(_weights, 0, _matrix.Rows);
            _weights[leaving] = 1;
            _factors.Backwards(_weights);
            Across();
            var missing = _missing[leaving];
            var entering = Entering(missing);
            if (entering == None) return End.Impossible;
            if (entering == Outside || !Change(leaving, missing, entering)) return End.Lost;
            exact = false;
        }

        return End.Lost;
    }

    private End Found()
    {
        for (var r = 0; r < _matrix.Rows; r++) _weights[r] = CostOf(_basic[r]);
        _factors.Backwards(_weights);
        _first ??= new(_looked, _matrix.Rows, _factors.Count, [.. _at], [.. _reduced], [.. _place], [.. _basic], [.. _steepness]);
        return End.Found;
    }

    // What all costs, and what each unknown outside the basis adds to it.
    private void Price()
    {
        for (var r = 0; r < _matrix.Rows; r++) _weights[r] = CostOf(_basic[r]);
        _factors.Backwards(_weights);
        for (var j = 0; j < _columns + _matrix.Rows; j++) _reduced[j] = _place[j] == Outside ? CostOf(j) - _matrix.Dot(_weights, j) : 0;
    }

    // What is in the basis follows from what is outside.
    private void WorkOut()
    {
        Array.Clear(_column, 0, _matrix.Rows);
        for (var j = 0; j < _columns + _matrix.Rows; j++)
        {
            if (_place[j] == Outside && _at[j] != 0) _matrix.AddTo(_column, j, -_at[j]);
        }

        _factors.Forwards(_column);
        for (var r = 0; r < _matrix.Rows; r++)
        {
            _at[_basic[r]] = _column[r];
            Note(r);
        }
    }

    private double CostOf(int j) => j < _columns ? _program.Cost[j] : 0;

    private bool IsFree(int j) => double.IsNegativeInfinity(_lower[j]) && double.IsPositiveInfinity(_upper[j]);

    private void Note(int row)
    {
        var (j, at) = (_basic[row], _at[_basic[row]]);
        _missing[row] = at < _lower[j] - Overstep ? at - _lower[j] : at > _upper[j] + Overstep ? at - _upper[j] : 0;
    }

    // The row whose unknown oversteps its bound most, by how far it would have to go to matter.
    private int Leaving()
    {
        var (leaving, worst) = (-1, 0.0);
        for (var r = 0; r < _matrix.Rows; r++)
        {
            var missing = _missing[r];
            if (missing == 0 || missing * missing <= worst * _steepness[r]) continue;
            (leaving, worst) = (r, missing * missing / _steepness[r]);
        }

        return leaving;
    }

    private bool Change(int leaving, double missing, int entering)
    {
        var rows = _matrix.Rows;
        Array.Clear(_column, 0, rows);
        _matrix.AddTo(_column, entering, 1);
        _factors.Forwards(_column);
        var pivot = _column[leaving];
        // Both ways to the same number: where they differ too many digits were lost.
        if (Math.Abs(pivot) < LeastPivot || Math.Abs(pivot - _across[entering]) > 1e-7 * (1 + Math.Abs(pivot))) return false;

        var dearer = _reduced[entering] / pivot;
        // What is nought but for rounding.
        if (dearer * missing < 0) dearer = 0;
        foreach (var j in _touched) _reduced[j] -= dearer * _across[j];
        var left = _basic[leaving];
        (_reduced[entering], _reduced[left]) = (0, -dearer);

        // What was passed over may have brought it home, or nearly so.
        var bound = missing < 0 ? _lower[left] : _upper[left];
        var way = (_at[left] - bound) / pivot;
        var own = _steepness[leaving];
        for (var r = 0; r < rows; r++)
        {
            var share = _column[r];
            if (Math.Abs(share) < Nothing)
            {
                _column[r] = 0;
                continue;
            }

            if (r == leaving) continue;
            _at[_basic[r]] -= way * share;
            Note(r);
            _steepness[r] = Math.Max(_steepness[r], share / pivot * (share / pivot) * own);
        }

        _steepness[leaving] = Math.Max(1, own / (pivot * pivot));
        _at[left] = bound;
        _at[entering] += way;
        _factors.Enter(leaving, _column, rows);
        (_basic[leaving], _place[left], _place[entering]) = (entering, Outside, leaving);
        Note(leaving);
        return true;
    }
}
