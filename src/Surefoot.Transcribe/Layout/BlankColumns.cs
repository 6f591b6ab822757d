using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "Count   Steps          Hands" over rows with as many columns, parted by blanks alone: each row is drawn with strokes, so
/// that <see cref="DrawnTable"/> reads it as any other table.
/// </summary>
internal static class BlankColumns
{
    // Fewer rows under a head are chance.
    private const int Enough = 3;

    private static readonly Regex Cell = new(@"\S+(?: \S+)*", RegexOptions.CultureInvariant);

    private static readonly Regex Ruler = new(@"^[-=_~\s]*[-=_~]{3}[-=_~\s]*$", RegexOptions.CultureInvariant);

    // How far his words may push the counts aside.
    private const int Pushed = 12;

    // "His words run long  7&8   hers": the counts stand near their column, and blanks part hers from them.
    private static List<string>? Between(SheetLine line, int counts) =>
        InTheMiddle.Match(line.Plain) is { Success: true } row && Math.Abs(row.Groups["counts"].Index + line.Text.Length - line.Text.TrimStart().Length - counts) <= Pushed
            ? [row.Groups["his"].Value, row.Groups["counts"].Value, row.Groups["hers"].Value]
            : null;

    private static readonly Regex InTheMiddle = new(@"^(?<his>\S.*?)\s+(?<counts>\d{1,2}(?:-\d{1,2}|(?:&\d{0,2})+)?)\s{2,}(?<hers>\S.*)$", RegexOptions.CultureInvariant);

    private static readonly Regex CountsLast = new(@"^(?<words>\S.*) (?<counts>\d[\d&-]*)$", RegexOptions.CultureInvariant);

    /// <summary>Draws such tables where their head names more than his and her columns.</summary>
    public static void In(List<SheetLine> lines)
    {
        for (var head = 0; head < lines.Count; head++)
        {
            if (lines[head].Plain.Length == 0) continue;
            if (lines[head].Text.Contains('\t', StringComparison.Ordinal))
            {
                head = ByTabs(lines, head);
                continue;
            }

            var columns = Cell.Matches(SheetText.OneSpace(lines[head].Text)).Select(c => (c.Value, c.Index)).ToList();
            if (columns.Count < 3 || !DrawnTable.IsHeadOf([.. columns.Select(c => c.Value.Trim(':', '.'))])) continue;
            // A bar and its beats under it are read where they stand.
            if (columns.Count(c => DrawnTable.IsCounts(c.Value)) > 1) continue;
            // His and hers by themselves are read where they stand, unless their counts stand between them.
            var between = columns.Count == 3 && DrawnTable.IsCounts(columns[1].Value);
            if (!between && columns.Count == 3 && columns.Count(c => RoleWords.IsHeading(c.Value, out var role) && role is not null) == 2) continue;
            var rows = lines.Skip(head + 1).TakeWhile((l, i) => l.Plain.Length == 0 || Ruler.IsMatch(l.Text) || (between && DrawnTable.IsAside(l.Plain)) || ((Cut(l, columns) ?? (between ? Between(l, columns[1].Index) : null)) is { } cells && !(between && cells[1].Length == 0 && lines[head + i].Plain.Length == 0))).ToList();
            if (rows.Count(r => r.Plain.Length > 0 && !Ruler.IsMatch(r.Text)) < Enough) continue;
            lines[head] = Drawn(lines[head], [.. columns.Select(c => c.Value.Trim(':', '.'))]);
            for (var i = head + 1; i <= head + rows.Count; i++)
            {
                if (lines[i].Plain.Length > 0 && !Ruler.IsMatch(lines[i].Text) && !(between && DrawnTable.IsAside(lines[i].Plain))) lines[i] = Drawn(lines[i], Cut(lines[i], columns) ?? Between(lines[i], columns[1].Index)!);
            }

            head += rows.Count;
        }
    }

    // From a spreadsheet: a tab between every two cells.
    private static int ByTabs(List<SheetLine> lines, int head)
    {
        var columns = Cells(lines[head]);
        if (columns.Length < 2 || !DrawnTable.IsHeadOf([.. columns.Select(c => c.Trim(':', '.'))])) return head;
        var rows = lines.Skip(head + 1).TakeWhile(l => l.Plain.Length == 0 || (l.Text.Contains('\t', StringComparison.Ordinal) && Cells(l).Length <= columns.Length)).ToList();
        if (rows.Count(r => r.Plain.Length > 0) < Enough) return head;
        lines[head] = Drawn(lines[head], [.. columns.Select(c => c.Trim(':', '.'))]);
        for (var i = head + 1; i <= head + rows.Count; i++)
        {
            if (lines[i].Plain.Length > 0) lines[i] = Drawn(lines[i], [.. Cells(lines[i]).Concat(Enumerable.Repeat("", columns.Length)).Take(columns.Length)]);
        }

        return head + rows.Count;
    }

    // A tab is three blanks in the plain line, where what somebody told of its words stands as well.
    private static string[] Cells(SheetLine line) => line.Text.TrimEnd().Split('\t') is var cells && Cell.Matches(line.Plain) is var plain && plain.Count == cells.Count(c => c.Trim().Length > 0)
        ? [.. cells.Select((c, i) => c.Trim().Length == 0 ? "" : plain[cells.Take(i).Count(b => b.Trim().Length > 0)].Value)]
        : [.. cells.Select(c => c.Trim())];

    private static SheetLine Drawn(SheetLine line, IReadOnlyList<string> cells) => line with { Plain = $"| {string.Join(" | ", cells.Select(c => SheetText.PlainWords(c).Replace('|', '/').Trim()))} |" };

    // Each cell belongs to the column it begins in; a line whose words run across two columns is no row.
    private static List<string>? Cut(SheetLine line, List<(string Value, int Index)> columns)
    {
        var text = SheetText.OneSpace(line.Text);
        if (text.Contains('\t', StringComparison.Ordinal)) return null;
        var cells = columns.ConvertAll(_ => "");
        var stands = Cell.Matches(text);
        // What somebody told of its words stands in the plain line only, and takes less room there.
        var plain = Cell.Matches(line.Plain);
        for (var i = 0; i < stands.Count; i++)
        {
            var found = stands[i];
            // A cell may begin a little before its head.
            var at = columns.FindLastIndex(c => c.Index <= found.Index + 2);
            if (at < 0) return null;
            if (at + 1 < columns.Count && found.Index + found.Length > columns[at + 1].Index + 2)
            {
                // "... to face 31&32": one blank only before its counts.
                if (!DrawnTable.IsCounts(columns[at + 1].Value) || CountsLast.Match(found.Value) is not { Success: true } last || Math.Abs(found.Index + last.Groups["counts"].Index - columns[at + 1].Index) > 2) return null;
                cells[at] = last.Groups["words"].Value;
                cells[at + 1] = last.Groups["counts"].Value;
                continue;
            }

            cells[at] = $"{cells[at]}  {(plain.Count == stands.Count ? plain[i] : found).Value}".Trim();
        }

        return cells.Exists(c => c.Length > 0) ? cells : null;
    }
}
