namespace Surefoot.Solver;

/// <content>Which unknown comes in for the one that leaves.</content>
internal sealed partial class DualSimplex
{
    // What every unknown outside the basis counts for in the row that leaves.
    private void Across()
    {
        foreach (var j in _touched) (_across[j], _isTouched[j]) = (0, false);
        _touched.Clear();
        for (var r = 0; r < _matrix.Rows; r++)
        {
            var weight = _weights[r];
            if (Math.Abs(weight) < Nothing) continue;
            var (columns, values) = (_matrix[r].Columns, _matrix[r].Values);
            for (var i = 0; i < columns.Length; i++)
            {
                var j = columns[i];
                if (_place[j] != Outside) continue;
                if (!_isTouched[j]) Touch(j);
                _across[j] += weight * values[i];
            }

            var own = _columns + r;
            if (_place[own] != Outside) continue;
            _across[own] = weight;
            Touch(own);
        }
    }

    private void Touch(int j)
    {
        _isTouched[j] = true;
        _touched.Add(j);
    }

    // The unknown that gets dearer first once the row leaves. Those that can make up for little are passed over to their other bound.
    private int Entering(double missing)
    {
        var sign = Math.Sign(missing);
        var count = 0;
        foreach (var j in _touched)
        {
            var across = _across[j] * sign;
            if (Math.Abs(across) <= Nothing || _lower[j] == _upper[j]) continue;
            if (_at[j] == _lower[j] ? across > 0 : _at[j] == _upper[j] ? across < 0 : IsFree(j)) _candidates[count++] = (j, Math.Max(0, _reduced[j] / across));
        }

        var slope = Math.Abs(missing);
        var flips = false;
        while (count > 0)
        {
            var candidates = _candidates.AsSpan(0, count);
            var least = double.PositiveInfinity;
            foreach (var (_, ratio) in candidates) least = Math.Min(least, ratio);
            var (entering, pivot, passed) = (Outside, 0.0, slope);
            foreach (var (j, ratio) in candidates)
            {
                if (ratio > least + Alike) continue;
                passed -= Math.Abs(_across[j]) * (_upper[j] - _lower[j]);
                if (Math.Abs(_across[j]) > pivot) (entering, pivot) = (j, Math.Abs(_across[j]));
            }

            if (passed < 0)
            {
                if (flips) Flip();
                return pivot < LeastPivot ? Outside : entering;
            }

            if (!flips) Array.Clear(_flipped, 0, _matrix.Rows);
            (slope, flips, count) = (passed, true, 0);
            foreach (var (j, ratio) in candidates)
            {
                if (ratio > least + Alike)
                {
                    candidates[count++] = (j, ratio);
                    continue;
                }

                var other = _at[j] == _lower[j] ? _upper[j] : _lower[j];
                _matrix.AddTo(_flipped, j, _at[j] - other);
                _at[j] = other;
            }
        }

        return None;
    }

    // What changed outside the basis changes what is in it.
    private void Flip()
    {
        _factors.Forwards(_flipped);
        for (var r = 0; r < _matrix.Rows; r++)
        {
            if (_flipped[r] == 0) continue;
            _at[_basic[r]] += _flipped[r];
            Note(r);
        }
    }
}
