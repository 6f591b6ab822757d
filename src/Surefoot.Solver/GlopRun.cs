using Google.OrTools.LinearSolver;
using Surefoot.Dance.Couple;
using Row = Google.OrTools.LinearSolver.Constraint;
using Unknown = Google.OrTools.LinearSolver.Variable;

namespace Surefoot.Solver;

/// <summary>
/// A program solved several times while rows are added: the simplex method goes on from where it stood, which
/// takes a third of the time. The library does so only where columns stay what they were; where they do not,
/// and where it lost too many digits, the whole is solved anew.
/// </summary>
internal sealed class GlopRun(LinearProgram program, GlopSolver anew, string parameters, double clockLimit) : ILinearRun
{
    /// <summary>The library writes out a name for whatever comes without one, which takes time; nobody asks for them.</summary>
    private const string Unnamed = "-";

    private Google.OrTools.LinearSolver.Solver? _native;
    private Unknown[] _unknowns = [];
    private readonly List<(LinearRow Said, Row Native)> _rows = [];

    public LinearSolution Solve()
    {
        if (_native is null || _unknowns.Length != program.Columns) Begin();
        BringRows();
        switch (_native!.Solve())
        {
            case Google.OrTools.LinearSolver.Solver.ResultStatus.OPTIMAL:
                return new(true, _native.Objective().Value(), [.. _unknowns.Select(u => u.SolutionValue())]);
            case Google.OrTools.LinearSolver.Solver.ResultStatus.INFEASIBLE or Google.OrTools.LinearSolver.Solver.ResultStatus.UNBOUNDED:
                return new(false, 0, []);
            default:
                return anew.Solve(program);
        }
    }

    public void Dispose() => _native?.Dispose();

    private void Begin()
    {
        _native?.Dispose();
        _rows.Clear();
        _native = Google.OrTools.LinearSolver.Solver.CreateSolver("GLOP");
        _native.SetTimeLimit((long)(clockLimit * 1000));
        _native.SetSolverSpecificParametersAsString(parameters);
        _unknowns = new Unknown[program.Columns];
        var objective = _native.Objective();
        for (var column = 0; column < _unknowns.Length; column++)
        {
            var unknown = _native.MakeNumVar(GlopSolver.Bound(program.Lower[column]), GlopSolver.Bound(program.Upper[column]), Unnamed);
            _unknowns[column] = Lent(unknown);
            if (program.Cost[column] != 0) objective.SetCoefficient(unknown, program.Cost[column]);
        }
    }

    private void BringRows()
    {
        for (var r = 0; r < program.Rows.Count; r++)
        {
            var row = program.Rows[r];
            if (r == _rows.Count) _rows.Add((row, Made(row)));
            else if (!ReferenceEquals(row, _rows[r].Said))
            {
                // Only bounds change once a row was said.
                _rows[r].Native.SetBounds(row.Lower, row.Upper);
                _rows[r] = (row, _rows[r].Native);
            }
        }
    }

    private Row Made(LinearRow row)
    {
        var made = Lent(_native!.MakeConstraint(GlopSolver.Bound(row.Lower), GlopSolver.Bound(row.Upper), Unnamed));
        for (var i = 0; i < row.Columns.Length; i++) made.SetCoefficient(_unknowns[row.Columns[i]], row.Values[i]);
        return made;
    }

    // It belongs to the solver, which frees it: thousands waiting to be finalized for nothing take longer than solving.
#pragma warning disable CA1816 // These objects are only handles, and come without another way to say so.
    private static T Lent<T>(T handle)
        where T : class
    {
        GC.SuppressFinalize(handle);
        return handle;
    }
#pragma warning restore CA1816
}
