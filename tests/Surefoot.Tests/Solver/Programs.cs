using CsCheck;
using Surefoot.Dance.Couple;

namespace Surefoot.Tests.Solver;

/// <summary>Linear programs for the tests, by hand and by chance.</summary>
internal static class Programs
{
    private const double NoBound = double.PositiveInfinity;

    /// <summary>Up to 8 unknowns and 8 rows of small whole numbers, about half of them impossible.</summary>
    public static Gen<LinearProgram> Small { get; } = Any(Gen.Int[0, 9].Select(_ => false));

    /// <summary>As <see cref="Small"/>, but bounds may be missing, so that some have no least cost.</summary>
    public static Gen<LinearProgram> SmallWithOpenBounds { get; } = Any(Gen.Int[0, 3].Select(i => i == 0));

    /// <summary>As large as a couple's: places one step apart near usual lengths, nearby places within reach.</summary>
    public static Gen<LinearProgram> Couples { get; } =
        from steps in Gen.Int[10, 60]
        from usual in Gen.Int[-700, 700].Select(millimetres => millimetres / 1000.0).Array[steps]
        from weight in Gen.Int[50, 200].Select(hundredths => hundredths / 100.0).Array[steps]
        from reach in Gen.Int[300, 1200].Select(millimetres => millimetres / 1000.0)
        select Couple(usual, weight, reach);

    /// <summary>A couple's program of 200 steps.</summary>
    public static LinearProgram Long { get; } = Couple(
        [.. Enumerable.Range(0, 200).Select(i => i * 37 % 101 / 100.0 - 0.5)], [.. Enumerable.Range(0, 200).Select(i => 1 + i / 200.0)], 0.8);

    /// <summary>Numbers sixteen powers of ten apart, which no solver keeps all digits of.</summary>
    public static Gen<LinearProgram> FarApart { get; } =
        from columns in Gen.Select(Far(), Far(), Far()).Array[2, 20]
        from rows in Gen.Select(Far(), Far(), Far().Array[columns.Length]).Array[1, 20]
        select Apart(columns, rows);

    /// <summary>Programs without an answer, each for another reason.</summary>
    public static TheoryData<string> Impossible => ["crossed bounds", "crossed row", "row out of reach", "two rows apart", "empty row", "only an empty row", "no least", "no least and no rows", "no least and out of reach", "beyond everything"];

    public static LinearProgram Named(string name)
    {
        var program = new LinearProgram();
        if (name != "only an empty row") program.AddColumn(name == "crossed bounds" ? 2 : 0, name.StartsWith("no least", StringComparison.Ordinal) ? NoBound : 1, name == "crossed bounds" ? 1 : -1);
        switch (name)
        {
            case "crossed row": program.AddRow(3, 2, [0], [1]); break;
            case "row out of reach": program.AddRow(3, 4, [0], [1]); break;
            case "two rows apart":
                program.AddColumn(0, 1, 1);
                program.AddRow(-NoBound, 0.5, [0, 1], [1, 1]);
                program.AddRow(0.6, NoBound, [0, 1], [1, 1]);
                break;
            case "empty row" or "only an empty row": program.AddRow(1, 2, [], []); break;
            case "no least":
                program.AddColumn(0, NoBound, 0);
                program.AddRow(0, 1, [0, 1], [1, -1]);
                break;
            case "no least and out of reach":
                program.AddColumn(0, 1, 0);
                program.AddRow(3, 4, [1], [1]);
                break;
            case "beyond everything": program.AddColumn(NoBound, NoBound, 0); break;
        }

        return program;
    }

    /// <summary>A program as it stands, whatever becomes of it afterwards.</summary>
    public static LinearProgram Copy(LinearProgram program)
    {
        var copy = new LinearProgram();
        for (var i = 0; i < program.Columns; i++) copy.AddColumn(program.Lower[i], program.Upper[i], program.Cost[i]);
        foreach (var row in program.Rows) copy.AddRow(row.Lower, row.Upper, row.Columns, row.Values);
        return copy;
    }

    /// <summary>For the message of a test that failed.</summary>
    public static string Written(LinearProgram program) => string.Join('\n', [
        .. Enumerable.Range(0, program.Columns).Select(i => $"{program.Lower[i]} ≤ x{i} ≤ {program.Upper[i]}, cost {program.Cost[i]}"),
        .. program.Rows.Select(r => $"{r.Lower} ≤ {string.Join(" + ", r.Columns.Select((c, i) => $"{r.Values[i]} x{c}"))} ≤ {r.Upper}")]);

    private static Gen<LinearProgram> Any(Gen<bool> open) =>
        from columns in Gen.Select(Gen.Int[-4, 4], Gen.Int[0, 6], Gen.Int[-3, 3], open, open).Array[1, 8]
        from rows in Gen.Select(Gen.Int[-6, 6], Gen.Int[0, 4], Gen.Int[0, 3], Gen.Int[-5, 3].Array[columns.Length]).Array[0, 8]
        select Whole(columns, rows);

    private static Gen<double> Far() => Gen.Select(Gen.Double[-1, 1], Gen.Int[-8, 8]).Select((digits, power) => digits * Math.Pow(10, power));

    private static LinearProgram Apart((double Lower, double Width, double Cost)[] columns, (double Lower, double Width, double[] Values)[] rows)
    {
        var program = new LinearProgram();
        foreach (var c in columns) program.AddColumn(c.Lower, c.Lower + Math.Abs(c.Width), c.Cost);
        foreach (var r in rows) program.AddRow(r.Lower, r.Lower + Math.Abs(r.Width), [.. Enumerable.Range(0, columns.Length)], r.Values);
        return program;
    }

    private static LinearProgram Whole((int Lower, int Width, int Cost, bool Down, bool Up)[] columns, (int Lower, int Width, int Kind, int[] Values)[] rows)
    {
        var program = new LinearProgram();
        foreach (var c in columns) program.AddColumn(c.Down ? -NoBound : c.Lower, c.Up ? NoBound : c.Lower + c.Width, c.Cost);
        foreach (var r in rows)
        {
            // Numbers below -3 stand for an unknown that the row does not name.
            int[] named = [.. Enumerable.Range(0, columns.Length).Where(i => r.Values[i] >= -3)];
            var (lower, upper) = r.Kind switch
            {
                0 => (-NoBound, r.Lower),
                1 => (r.Lower, NoBound),
                2 => ((double)r.Lower, (double)r.Lower),
                _ => (r.Lower, r.Lower + r.Width),
            };
            program.AddRow(lower, upper, named, [.. named.Select(i => (double)r.Values[i])]);
        }

        return program;
    }

    private static LinearProgram Couple(double[] usual, double[] weight, double reach)
    {
        var program = new LinearProgram();
        for (var step = 0; step < usual.Length; step++)
        {
            program.AddColumn(-10, 10, 0);
            program.AddColumn(0, NoBound, weight[step]);
            program.AddColumn(0, NoBound, 1);
            if (step == 0) program.AddRow(0, 0, [0], [1]);
            else program.AddRow(usual[step], usual[step], [3 * step, 3 * step - 3, 3 * step + 1, 3 * step + 2], [1, -1, -1, 1]);
            if (step >= 5) program.AddRow(-reach, reach, [3 * step, 3 * (step - 5)], [1, -1]);
            // Now and then a place is asked for; with a short reach it cannot always be had.
            if (step % 9 == 8) program.AddRow(0.15 * step, NoBound, [3 * step], [1]);
        }

        return program;
    }
}
