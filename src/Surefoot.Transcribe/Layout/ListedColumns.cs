using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "count;foot;action;where;notes" over "1;R;step;fwd diag R;": a spreadsheet saved as text. What is done, with which foot and
/// whereto become one cell of a drawn table, so that <see cref="DrawnTable"/> reads it as any other.
/// </summary>
internal static class ListedColumns
{
    // Fewer rows under a head are chance.
    private const int Enough = 3;

    private const RegexOptions Plain = RegexOptions.IgnoreCase | RegexOptions.CultureInvariant;

    private static readonly Regex Foot = new(@"^(?:foot|ft|feet|which foot)\.?$", Plain);

    private static readonly Regex Action = new(@"^(?:action|steps?|what|do|movements?|moves?)\.?$", Plain);

    private static readonly Regex Where = new(@"^(?:where(?:to)?|direction|dir|way|place|to|position)\.?$", Plain);

    /// <summary>Draws such tables with strokes.</summary>
    public static void In(List<SheetLine> lines)
    {
        for (var head = 0; head < lines.Count; head++)
        {
            foreach (var stop in (char[])[';', ','])
            {
                if (Cells(lines[head].Plain, stop) is not { Count: > 2 } columns || !columns.Exists(DrawnTable.IsCounts) || !columns.Exists(c => Action.IsMatch(c)) || columns.Exists(c => c.Contains(' ', StringComparison.Ordinal))) continue;
                var rows = lines.Skip(head + 1).TakeWhile(l => Cells(l.Plain, stop).Count == columns.Count).ToList();
                if (rows.Count < Enough) continue;
                lines[head] = Drawn(lines[head], columns, columns.ConvertAll(c => Action.IsMatch(c) ? "steps" : c));
                for (var i = 1; i <= rows.Count; i++) lines[head + i] = Drawn(lines[head + i], columns, Cells(lines[head + i].Plain, stop));
                break;
            }
        }
    }

    private static List<string> Cells(string plain, char stop) => [.. plain.Split(stop).Select(c => c.Trim())];

    // "step R fwd diag R": what, with which foot, whereto; the other columns as they are.
    private static SheetLine Drawn(SheetLine line, List<string> columns, List<string> cells)
    {
        var head = columns.FindIndex(c => Action.IsMatch(c)) is var action && cells[action] == "steps";
        var drawn = new List<string>();
        for (var c = 0; c < columns.Count; c++)
        {
            if (c != action && cells[c].Equals("clap", StringComparison.OrdinalIgnoreCase)) drawn.Add("");
            else if (c == action) drawn.Add(head ? cells[c] : string.Join(' ', new[] { cells[c] }.Concat(Of(Foot)).Concat(Of(Where)).Concat(cells.Exists(w => w.Equals("clap", StringComparison.OrdinalIgnoreCase)) ? ["with a clap"] : Array.Empty<string>()).Where(w => w.Length > 0)));
            else if (!Foot.IsMatch(columns[c]) && !Where.IsMatch(columns[c])) drawn.Add(cells[c]);
        }

        return line with { Plain = $"| {string.Join(" | ", drawn.Select(d => d.Replace('|', '/')))} |" };

        IEnumerable<string> Of(Regex column) => columns.Select((name, i) => (name, i)).Where(n => column.IsMatch(n.name)).Select(n => cells[n.i]);
    }
}
