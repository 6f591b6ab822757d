using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>
/// "| 3 &amp; 4 | shuffle L R L | shuffle R L R | both |" under "| Count | Man | Lady | Hands |": a table drawn with strokes.
/// Each of its rows becomes a line that has its counts first and says whose the steps are.
/// </summary>
internal sealed class DrawnTable
{
    private static readonly Regex Ruler = new(@"^[-+|=_:\s]*[-=_]{3}[-+|=_:\s]*$|^\|(?:\s*:?-+:?\s*\|)+$", RegexOptions.CultureInvariant);

    private static readonly Regex CountsCell = new(@"^(?:counts?|cts?|beats?|bars?|meas\w*|when)\.?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex BarsCell = new(@"^(?:bars?|meas\w*)\.?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex StepsCell = new(@"^(?:both|everybody|everyone|all|steps?|what|movements?|dance|figures?|description|footwork|action|what to do|you do)\.?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // With which foot what stands beside it begins.
    private static readonly Regex FootCell = new(@"^(?:foot|ft|feet|lead(?:ing)? (?:foot|ft)|start(?:ing|s)?(?: (?:foot|ft|on))?)\.?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex FeetOnly = new(@"^(?:left|right|L|R|LF|RF)(?:[ ,/-]+(?:left|right|L|R|LF|RF))*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Ditto = new(@"^(?:same|ditto|do\.?|"")$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "-": nothing stands there.
    private static readonly Regex Nothing = new(@"^[-\s]*$", RegexOptions.CultureInvariant);

    // "3 & 4" and "1 2" as labels have them: "3&4", "1-2".
    private static readonly Regex Joint = new(@"\s*&\s*", RegexOptions.CultureInvariant);

    private static readonly Regex Apart = new(@"(?<=[0-9])\s+(?=[0-9])", RegexOptions.CultureInvariant);

    /// <summary>Lines that only draw the table or say what its columns are.</summary>
    public HashSet<int> Frame { get; } = [];

    /// <summary>Rows that go on with what stands above them.</summary>
    public HashSet<int> Joined { get; } = [];

    /// <summary>What stands in columns that are nobody's steps, by the number of its line.</summary>
    public Dictionary<int, string> Beside { get; } = [];

    /// <summary>Makes the rows of all such tables lines as other sheets have them; nothing where none is found.</summary>
    public static DrawnTable In(List<SheetLine> lines)
    {
        var table = new DrawnTable();
        for (var from = 0; lines.FindIndex(from, IsHead) is var head and >= 0;) from = table.Rows(lines, head);
        // A stroke at the left of any other line is a bullet.
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].Plain is ['|', ..] plain) lines[i] = lines[i] with { Plain = plain.TrimStart('|', ' ') };
        }

        return table;
    }

    private static bool IsHead(SheetLine line) => Cells(line) is { } cells ? IsHeadOf(cells) : IsOpenHead(line);

    // "Bar | Gentleman | Lady": strokes between the columns, and none around them.
    private static bool IsOpenHead(SheetLine line) => Open(line) is { Count: > 2 } open && CountsCell.IsMatch(open[0]) && open.Count(c => RoleWords.IsHeading(c, out var role) && role is not null) == 2;

    /// <summary>A line that stands in brackets as a whole: said of the rows around it, and no row.</summary>
    public static bool IsAside(string plain) => plain is ['(', .., ')'] && plain.IndexOf(')', StringComparison.Ordinal) == plain.Length - 1;

    /// <summary>Whether these are the heads of a table's columns: some counts, and somebody's steps.</summary>
    public static bool IsHeadOf(List<string> cells) => cells.Exists(c => CountsCell.IsMatch(c)) && cells.Exists(IsSteps);

    // Where the sheet goes on after the table under this head.
    private int Rows(List<SheetLine> lines, int head)
    {
        var open = IsOpenHead(lines[head]);
        var columns = (open ? Open(lines[head]) : Cells(lines[head]))!;
        var counts = Enumerable.Range(0, columns.Count).Where(c => CountsCell.IsMatch(columns[c])).ToList();
        Frame.Add(lines[head].Number);
        for (var above = head - 1; above >= 0 && lines[above].Plain.Contains('+') && Ruler.IsMatch(lines[above].Plain); above--) Frame.Add(lines[above].Number);
        List<string>? row = null;
        var rowAt = -1;
        var i = head + 1;
        for (; i < lines.Count; i++)
        {
            if (lines[i].Plain.Length == 0) continue;
            if (Ruler.IsMatch(lines[i].Plain) || Ruler.IsMatch(lines[i].Text))
            {
                Frame.Add(lines[i].Number);
                continue;
            }

            if (IsAside(lines[i].Plain)) continue;
            // Under the table the sheet goes on as it likes.
            if (IsHead(lines[i]) || (open ? Open(lines[i]) : Cells(lines[i])) is not { } cells || cells.Count != columns.Count) break;
            if (counts.TrueForAll(c => cells[c].Length == 0) && cells.FindAll(c => c.Length > 0) is [var named] && PlanReader.IsShouted(named))
            {
                // The name of a part stands among the steps.
                (lines[i], row) = (lines[i] with { Plain = named }, null);
                continue;
            }

            if (row is not null && counts.TrueForAll(c => cells[c].Length == 0))
            {
                row = [.. row.Zip(cells, (above, below) => $"{above} {below}".Trim())];
                Joined.Add(lines[i].Number);
            }
            else
            {
                // "Bar | Count": a bar is named once and meant for the counts under it.
                if (row is not null && counts.Count > 1 && cells[counts[0]].Length == 0) cells[counts[0]] = row[counts[0]];
                (row, rowAt) = (cells, i);
            }

            Write(lines, rowAt, columns, row);
        }

        return i;
    }

    /// <summary>Whether a column under this head has counts.</summary>
    public static bool IsCounts(string cell) => CountsCell.IsMatch(cell);

    private static bool IsSteps(string cell) => StepsCell.IsMatch(cell) || RoleWords.IsHeading(cell, out var role) && role is not null;

    private static List<string>? Cells(SheetLine line) =>
        line.Plain is { Length: > 4 } row && row[0] == '|' && row[^1] == '|' ? [.. row[1..^1].Split('|').Select(c => c.Trim())] : null;

    // A row without strokes around it; those at the left may have been taken for bullets.
    private static List<string>? Open(SheetLine line)
    {
        var row = new string('|', Math.Max(0, Leading(line.Text) - Leading(line.Plain))) + line.Plain;
        return row.Contains('|', StringComparison.Ordinal) ? [.. row.Split('|').Select(c => c.Trim())] : null;
    }

    private static int Leading(string text) => text.TakeWhile(c => c is '|' or ' ').Count(c => c == '|');

    private void Write(List<SheetLine> lines, int at, List<string> columns, List<string> row)
    {
        string counts = "", first = "", beside = "";
        var said = new List<(string Who, string Words)>();
        for (var c = 0; c < columns.Count; c++)
        {
            var cell = row[c];
            if (CountsCell.IsMatch(columns[c])) counts += $"{(counts.Length > 0 ? "  " : "")}{Apart.Replace(Joint.Replace(cell, "&"), "-")}";
            else if (Nothing.IsMatch(cell)) continue;
            else if (FootCell.IsMatch(columns[c]) && FeetOnly.IsMatch(cell) && said.Count > 0) said[^1] = (said[^1].Who, first = cell.Contains(' ', StringComparison.Ordinal) ? $"{said[^1].Words.TrimEnd('.')} {cell}" : $"with the {cell} foot, {said[^1].Words}");
            else if (!IsSteps(columns[c])) beside += $"{(beside.Length > 0 ? "; " : "")}{columns[c]}: {cell}";
            else if (Ditto.IsMatch(cell)) said.Add((columns[c], first));
            else said.Add((columns[c], first = cell));
        }

        if (columns.Count(c => CountsCell.IsMatch(c)) == 1 && columns.Exists(c => BarsCell.IsMatch(c)) && counts.Length > 0) counts = "bar " + counts;
        if (beside.Length > 0) Beside[lines[at].Number] = beside;
        var same = said.Count > 1 && said.TrueForAll(s => s.Words == first);
        var words = same || said is [var one] && StepsCell.IsMatch(one.Who) ? first : string.Join(". ", said.Select(s => StepsCell.IsMatch(s.Who) ? s.Words.TrimEnd('.') : $"{s.Who}: {s.Words.TrimEnd('.')}"));
        lines[at] = lines[at] with { Plain = $"{counts}  {words}".Trim() };
    }
}
