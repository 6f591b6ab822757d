namespace Surefoot.Solver;

/// <content>Where it stands before it searches: rows taken in and let go, and the basis it begins with.</content>
internal sealed partial class DualSimplex
{
    // Rows that were let go since are gone as if they had never been, where they came after what was found first.
    private bool GoBack()
    {
        var same = 0;
        while (same < _matrix.Rows && ReferenceEquals(_matrix[same], _program.Rows[_matrix.NumberOf(same)])) same++;
        if (same == _matrix.Rows) return true;
        if (_first is null || same < _first.Rows) return false;
        while (_matrix.Rows > _first.Rows) _matrix.RemoveLast();
        _factors.BackTo(_first.Steps);
        _looked = _first.Looked;
        _first.At.CopyTo(_at, 0);
        _first.Reduced.CopyTo(_reduced, 0);
        _first.Place.CopyTo(_place, 0);
        _first.Basic.CopyTo(_basic, 0);
        _first.Steepness.CopyTo(_steepness, 0);
        Array.Clear(_missing);
        Array.Clear(_said);
        return true;
    }

    // A row is in the basis by itself. False for what is no row of the program.
    private bool Take(int number)
    {
        var said = _program.Rows[number];
        if (double.IsNegativeInfinity(said.Lower) && double.IsPositiveInfinity(said.Upper)) return true;
        if (_matrix.Rows == _basic.Length) Resize(2 * (_matrix.Rows + 32));
        var (row, sum) = (_matrix.Rows, 0.0);
        for (var i = 0; i < said.Columns.Length; i++)
        {
            var j = said.Columns[i];
            if (j < 0 || j >= _columns || _said[j] == number + 1) return false;
            _said[j] = number + 1;
            sum += said.Values[i] * _at[j];
            if (_place[j] != Outside) _factors.Keep(_place[j], said.Values[i]);
        }

        _factors.Added(row);
        _matrix.Add(said, number);
        var own = _columns + row;
        (_lower[own], _upper[own], _at[own], _reduced[own], _place[own]) = (-said.Upper, -said.Lower, -sum, 0, row);
        (_basic[row], _steepness[row]) = (own, 1);
        Note(row);
        return true;
    }

    // Unknowns without bounds that a row says how to work out are worked out by it: in the order in which they were
    // named no row then stands in another's way.
    private bool Begin()
    {
        var says = new List<(int Column, int Row)>();
        var named = new HashSet<int>();
        for (var r = 0; r < _matrix.Rows; r++)
        {
            if (_matrix[r].Lower != _matrix[r].Upper) continue;
            foreach (var j in _matrix[r].Columns)
            {
                if (!IsFree(j) || !named.Add(j)) continue;
                says.Add((j, r));
                break;
            }
        }

        says.Sort();
        var dear = false;
        foreach (var (j, r) in says)
        {
            Array.Clear(_column, 0, _matrix.Rows);
            _matrix.AddTo(_column, j, 1);
            _factors.Forwards(_column);
            if (Math.Abs(_column[r]) < GoodPivot) continue;
            _factors.Enter(r, _column, _matrix.Rows);
            var own = _basic[r];
            (_basic[r], _place[j], _place[own], _at[own]) = (j, r, Outside, _lower[own]);
            dear |= _program.Cost[j] != 0;
        }

        if (dear) Price();
        for (var j = 0; j < _columns; j++)
        {
            if (_place[j] != Outside) continue;
            _at[j] = Cheapest(j);
            if (_reduced[j] != 0 && _at[j] != (_reduced[j] > 0 ? _lower[j] : _upper[j])) return false;
        }

        WorkOut();
        return true;
    }

    private double Cheapest(int j) =>
        double.IsFinite(_lower[j]) && (_reduced[j] >= 0 || !double.IsFinite(_upper[j])) ? _lower[j] : double.IsFinite(_upper[j]) ? _upper[j] : 0;

    private void Resize(int rows)
    {
        var all = _columns + rows;
        Array.Resize(ref _lower, all);
        Array.Resize(ref _upper, all);
        Array.Resize(ref _at, all);
        Array.Resize(ref _reduced, all);
        Array.Resize(ref _across, all);
        Array.Resize(ref _isTouched, all);
        Array.Resize(ref _place, all);
        Array.Resize(ref _candidates, all);
        Array.Resize(ref _basic, rows);
        Array.Resize(ref _steepness, rows);
        Array.Resize(ref _missing, rows);
        Array.Resize(ref _weights, rows);
        Array.Resize(ref _column, rows);
        Array.Resize(ref _flipped, rows);
    }
}
