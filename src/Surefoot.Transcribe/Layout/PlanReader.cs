using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;
using Surefoot.Transcribe.Trying;

namespace Surefoot.Transcribe.Layout;

/// <summary>Finds title, facts, parts, roles and labels in a sheet, line by line.</summary>
/// <param name="speaks">Tells whether words name something to dance.</param>
/// <param name="meant">What some sentences are tried as.</param>
internal sealed partial class PlanReader(List<SheetLine> lines, Func<string, bool> speaks, Meant meant)
{
    private static readonly Regex NotesHead = new(@"^#+\s.*\bnotes?\b|^(?:collector's\s+)?notes?\s*:?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex StepsToTheBar = new($@"\b(?<n>{NumberWords.Spelled}|[2346])\s+(?:steps|beats|counts)\s+(?:(?:to|in|per)\s+)?(?:(?:the|a|each|every)\s+)?(?:bar|measure)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NamesFoot = new(@"\b(?:left|right|L|R|LF|RF|l|r|(?:inside|outside) foot)\b", RegexOptions.CultureInvariant);

    private readonly SheetPlan _plan = new();
    private DrawnTable _drawn = new();
    private PlanPart? _part;
    private Role? _block;
    private bool _remarks;
    private bool _letter;
    private bool _bars;
    private bool _table;
    private int _beats;
    private int _bar;

    // Where the number of that bar stands.
    private int _barAt;

    // Where the head of the columns stands, or -1; and whether words in capitals stand out from the others.
    private int _head = -1;
    private bool _shouts;

    // Lines that say what a name stands for.
    private readonly HashSet<int> _explains = [];

    // Slows and quicks of every phrase, where the sheet says them once: "each phrase is quick, quick, slow, slow".
    private string _rhythm = "";

    private static readonly Regex EachPhrase = new(@"\b(?:each|every) (?:phrase|figure|measure|pattern|bar|part) is (?<all>(?:slow|quick)(?:,? (?:and )?(?:slow|quick))+)\b|\b(?:timing|rhythm)(?: is|:)? (?<all>(?-i:[SQ])(?:[ ,-]*(?-i:[SQ]))+)\b(?= throughout|\s*(?:$|[.;(]))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Numbers number paragraphs, and no counts.
    private bool _paragraphs;

    public SheetPlan Read()
    {
        _plan.Mended.AddRange(Slips.In(lines));
        LadyAsL.In(lines);
        BlankColumns.In(lines);
        ListedColumns.In(lines);
        _drawn = DrawnTable.In(lines);
        SaidAsOne.In(lines);
        FeetOfEach.In(lines);
        WaysOfEach.In(lines);
        EachInTheirWay.In(lines);
        HersInBrackets.In(lines);
        if (MirroredFeet.In(lines)) _plan.Opposite = true;
        Hours.In(lines);
        _joined.UnionWith(CountRows.In(lines));
        _explains.UnionWith(NamesExplained.In(lines));
        LengthsAtTheEnd.In(lines);
        RunningTotals.In(lines, speaks);
        ProseBars.In(lines);
        _joined.UnionWith(_drawn.Joined);
        _joined.UnionWith(CountColumn.ToTheLeft(lines));
        var meter = Regex.Match(string.Join('\n', lines.Select(l => l.Plain)), @"(?<!\b[Gg]rade )\b(?<beats>[2346])/[48]\b(?!\)? ?(?:turn|to (?:face|the|your)|left|right|[LR]\b))", RegexOptions.CultureInvariant);
        var toTheBar = lines.Select(l => StepsToTheBar.Match(l.Plain)).FirstOrDefault(m => m.Success);
        _beats = meter.Success ? int.Parse(meter.Groups["beats"].Value, CultureInfo.InvariantCulture)
            : toTheBar is not null ? NumberWords.Read(toTheBar.Groups["n"].Value)
            : lines.Where(l => TwoLabels(l.Plain)).Select(l => CountLabel.AtStart(l.Plain, 0, out var after) is { Length: 1 } && CountLabel.AtStart(l.Plain, after, out _) is { } within ? within.To : 0).DefaultIfEmpty(0).Max();
        _bars = lines.Any(l => Regex.IsMatch(l.Plain, @"^(?:bars?|measures?|meas\.?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant))
            || lines.Count(l => TwoLabels(l.Plain)) > 1;
        _shouts = lines.Count(l => IsShouted(l.Plain)) * 3 < lines.Count(l => l.Plain.Length > 0);
        _head = lines.FindIndex(l => TableHead.IsMatch(l.Plain) || _drawn.Frame.Contains(l.Number) || ColumnsOf(l.Plain) is not null);
        _tunes = lines.Count(l => TuneHead.IsMatch(l.Plain) || TuneAlone.IsMatch(l.Plain)) > 1;
        if (_head < 0)
        {
            _head = FirstParagraph();
            _paragraphs = _head >= 0;
        }

        // Under a head of columns stands the dance; above it only what is said of it, unless there are counts as well.
        if (_head >= 0 && lines.Take(_head).Any(l => CountLabelled(l.Plain) || PartHead.Match(l.Plain) is { Success: true } part && part.Groups["key"].Success)) _head = -1;
        // A table of measures in an odd meter: the steps beside them tell how long they are.
        if (_beats == 0 && lines.Exists(l => TableHead.IsMatch(l.Plain) && HeadOfBars.IsMatch(l.Plain))) _beats = 4;
        _rhythm = lines.Select(l => EachPhrase.Match(l.Plain)).FirstOrDefault(m => m.Success)?.Groups["all"].Value ?? "";
        for (var i = 0; i < lines.Count; i++) Read(i);
        LengthOfEach.In(_plan, lines);
        return _plan;
    }

    private static readonly Regex Paragraph = new(@"^(?<n>\d{1,2})[.)]\s+\p{L}.{70}", RegexOptions.CultureInvariant);

    // "1. Take your partner's hand ... 2. Learn the step ...": numbered paragraphs, and what one needs listed above them.
    private int FirstParagraph()
    {
        var numbered = lines.Select(l => Paragraph.Match(l.Plain)).ToList();
        var numbers = numbered.Where(m => m.Success).Select(m => int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture)).ToList();
        // A list that begins again from 1 is somebody else's.
        return numbers.Count > 2 && numbers.Select((n, i) => n == i + 1).All(next => next) ? numbered.FindIndex(m => m.Success) : -1;
    }

    private void Read(int i)
    {
        var line = lines[i];
        if (line.Plain.Length == 0 && !_joined.Contains(line.Number))
        {
            Is(line, LineKind.Blank);
            return;
        }

        if (_drawn.Frame.Contains(line.Number))
        {
            Is(line, LineKind.Heading);
            return;
        }

        if (_drawn.Beside.TryGetValue(line.Number, out var beside)) _plan.Asides.Add(line with { Plain = beside });
        if (_joined.Contains(line.Number))
        {
            Is(line, LineKind.Steps);
            return;
        }

        if (_plan.Only is null && OnlyOne.Match(line.Plain) is { Success: true } only) _plan.Only = only.Groups["lead"].Success ? Role.Lead : Role.Follow;
        if (_explains.Contains(line.Number))
        {
            _plan.Facts.Add(line);
            Is(line, LineKind.Remark);
            return;
        }

        if (NotesHead.IsMatch(line.Plain)) _remarks = true;
        if (_remarks)
        {
            Is(line, LineKind.Remark);
            return;
        }

        var plain = line.Plain.TrimStart('#', ' ');
        if (Numbered.IsMatch(plain))
        {
            Is(line, LineKind.Heading);
            return;
        }

        if (HeadsTable(i, line, plain)) return;

        if (plain.Length > 2 && plain[0] == '(' && plain.IndexOf(')', StringComparison.Ordinal) == plain.Length - 1 && (CountLabel.AtStart(plain, 0, out _) is null || (_plan.Parts.Exists(p => p.Groups.Exists(g => g.Label is not null)) && SaidOfCounts.IsMatch(plain) && !NamesFoot.IsMatch(plain))) && _plan.Title.Length > 0)
        {
            // A line in brackets explains the one before it.
            _plan.Facts.Add(line);
            Is(line, LineKind.Remark);
            return;
        }

        if (Letter.IsMatch(plain))
        {
            _letter = true;
            _plan.Facts.Add(line);
            Is(line, LineKind.Remark);
            return;
        }

        if (_letter && _plan.Title.Length == 0)
        {
            _plan.Title = lines.Select(l => Called.Match(l.Plain)).FirstOrDefault(m => m.Success)?.Groups["name"].Value ?? "A dance without a name";
        }

        if (Fact.IsMatch(plain) && !(CountLabel.AtStart(plain, 0, out _) is not null) && !RoleWords.IsHeading(plain, out _))
        {
            _plan.Facts.Add(line);
            Is(line, LineKind.Fact);
            return;
        }

        if (_plan.Title.Length > 0 && _plan.Parts.TrueForAll(p => p.Groups.Count == 0) && (IsFact(plain) || i < _head || LengthFirst.IsMatch(plain) || (LengthAlone.IsMatch(plain) && NamesFoot.Count(plain.ToLowerInvariant()) < 2) || DefinesRoles.IsMatch(plain) || FeetOfBoth.IsMatch(plain)))
        {
            _plan.Facts.Add(line);
            Is(line, LineKind.Fact);
            return;
        }

        if (_plan.Title.Length == 0 && CountLabel.AtStart(plain, 0, out _) is null && !RoleWords.IsHeading(plain, out _) && ColumnsOf(plain) is null)
        {
            TitleOf(line, plain);
            return;
        }

        if (ColumnsOf(plain) is { } columns)
        {
            (_columns, _block) = (columns, null);
            if (HeadOfBars.IsMatch(plain)) (_table, _bars) = (true, true);
            _rightAt = line.Text.IndexOf(columns.Right, StringComparison.Ordinal);
            Is(line, LineKind.Heading);
            return;
        }

        if (RoleWords.IsHeading(plain, out var block))
        {
            (_block, _columns) = (block, null);
            Is(line, LineKind.Heading);
            return;
        }

        if (HeadsSteps(line, plain)) return;

        if (HeadingOf(i, plain) is { } heading)
        {
            var goesOn = PartHead.Match(plain) is { Success: true } named && CountLabelled(named.Groups["rest"].Value);
            if (!goesOn || _part is null || !_part.Heading.StartsWith(heading.Heading.Split("  ")[0], StringComparison.Ordinal))
            {
                _part = heading;
                _plan.Parts.Add(heading);
            }

            Is(line, LineKind.Heading);
            if (goesOn)
            {
                // "Part B 25-48 same as 1-24".
                Steps(line, PartHead.Match(plain).Groups["rest"].Value);
                return;
            }

            if (PartHead.Match(plain) is not { Success: true } match) return;
            var rest = match.Groups["rest"].Value;
            if (_plan.Parts.TrueForAll(p => p.Groups.Count == 0) && Regex.Replace(Counted.Replace(rest, ""), @"\([^)]*\)", "", RegexOptions.CultureInvariant).Trim(' ', '.', ':', ',') is { Length: < 60 } looks && Looks.IsMatch(looks))
            {
                // "Figure 1. Facing right, R free.": how they stand before the first step.
                _plan.Facts.Add(line with { Plain = looks });
                return;
            }

            // "Section 2: two half turns and a couple of touches" above counts only names what they hold.
            var over = lines.Skip(i + 1).FirstOrDefault(l => l.Plain.Length > 0) is { } below && CountLabel.AtStart(below.Plain, 0, out _) is { From: 1 };
            if (Counted.Replace(rest, "") is var words && ((words.Split(' ').Length > 6 && !over) || (Looks.IsMatch(words) && speaks(words)))) Steps(line, words);
            return;
        }

        Steps(line, plain);
    }

    // "(9-16: some call this the windows)": a name for counts, in brackets.
    private static readonly Regex SaidOfCounts = new(@"^\(\d{1,2}\s?-\s?\d{1,2}\s*:", RegexOptions.CultureInvariant);

    private void Is(SheetLine line, LineKind kind) => _plan.Kinds[line.Number] = kind;

    // "Fig. II  Turn to face centre", "End facing each other".
    private static readonly Regex Looks = new(@"^(?:(?:and|then|now|both|all|at the end,?|end(?:ing)?|finish(?:ing)?) )*(?:(?:drop|release|let go)(?: of)?(?: the)?(?: \w+)? hands? and )?(?:turn(?:ing)? to )?(?:face|facing)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static bool CountLabelled(string plain) => CountLabel.AtStart(plain, 0, out _) is not null;

    private static bool TwoLabels(string plain) =>
        CountLabel.AtStart(plain, 0, out var after) is { HasHalves: false, Length: <= 4 } && after < plain.Length && plain[after] is (>= '0' and <= '9') or '(' && CountLabel.AtStart(plain, after, out _) is not null && !plain[..after].TrimEnd().EndsWith('.');
}
