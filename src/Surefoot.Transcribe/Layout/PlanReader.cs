using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>Finds title, facts, parts, roles and labels in a sheet, line by line.</summary>
/// <param name="speaks">Tells whether words name something to dance.</param>
internal sealed partial class PlanReader(List<SheetLine> lines, Func<string, bool> speaks)
{
    private static readonly Regex Fact = new(
        @"^(?:source|kind|facts|style|text-status|complete|choreograph\w*(?:\s+by)?|by|music|song|tempo|bpm|meter|metre|time(?:\s+signature)?|level|difficulty|walls?|counts?|count|formation|position|hold|start(?:ing)?(?:\s+(?:position|foot|facing))?|footwork|intro(?:duction)?|rhythm|dance|type|description|note|notes|hint|tip|remarks?|also|aka|written|date|hands|progression|variation)\b[^:]{0,24}:",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex PartHead = new(
        @"^(?:#+\s*)?(?<word>part|section|sect(?:\.|\b)|sec(?:\.|\b)|s(?=\d)|set|segment|tag|bridge|intro|ending|chorus|verse|figure|fig\.?|phrase|pattern)\s*(?<key>[A-Z]|\d{1,2}|[IVX]{1,4}|one|two|three|four|five|six)?\b\s*[:.)-]*\s*(?<rest>.*)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Counted = new(@"\(?\b(?<n>\d{1,3})\s*(?:counts?|cts?|beats)\b\)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NotesHead = new(@"^#+\s.*\bnotes?\b|^(?:collector's\s+)?notes?\s*:?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "From: ...", "Subject: ...", "Hi Marge,": a letter.
    private static readonly Regex Letter = new(@"^(?:from|to|cc|subject|sent|re)\s*:|^(?:hi|hello|dear|hey)\b[^.:;]{0,30}[,!]$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Called = new(@"\b(?:we call it|(?:it's|it is|is) called|the (?:dance|name of it|name) is(?: called)?)\s+""?(?<name>(?-i:[A-Z][\w']*)(?:\s+(?:(?-i:[A-Z])[\w']*|of|the|and|in|on))*)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // The head of a table of bars, counts and steps.
    private static readonly Regex TableHead = new(@"^(?:meas\w*|bars?)\.?:?$|^(?:meas\w*|bars?|counts?|cts?|beats?)\.?\s*\||^(?:meas\w*|bars?)\.?\s+(?:ct\w*|counts?|beats?)\b|^(?:steps?|movements?)\s{2,}(?:counts?|beats?)$|^(?:beats?|counts?|cts?)\.?\s{3,}(?!lead|follow|man|lady)[\p{L} ]+\s{3,}[\p{L} ]+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Strain | Bar | Step": the first column says which part.
    private static readonly Regex StrainHead = new(@"^(?:strain|part|fig\w*|section)\s*\|\s*(?:bars?|meas\w*)\s*\|", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex StrainLine = new(@"^(?<strain>[A-Z]|\d{1,2}|[IVX]{1,4})\s*\|\s*(?<rest>\S.*)$", RegexOptions.CultureInvariant);

    private bool _strains;

    private string _strain = "";

    private static readonly Regex HeadOfBars = new(@"^(?:meas\w*|bars?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "4  Out, out, in, in", "4  Same", "2  Stamp, clap" under "Beats": how long each takes, and not when.
    private bool LengthsUnder(int head)
    {
        var numbers = lines.Skip(head + 1).Select(l => Regex.Match(l.Plain, @"^(?<n>\d{1,2})\s{2,}\S", RegexOptions.CultureInvariant)).Where(m => m.Success).Select(m => NumberWords.Read(m.Groups["n"].Value)).ToList();
        return numbers.Count > 2 && numbers.Zip(numbers.Skip(1)).Any(n => n.Second == n.First) && numbers.Exists(n => n != 1);
    }

    // "Step 1" by itself, above what is done in it.
    private static readonly Regex Numbered = new($@"^(?:step|no\.?|number)\s*(?:\d{{1,2}}|{NumberWords.Spelled})[\s:.)-]*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "II. Side", "IV": where the steps stand under it.
    private static readonly Regex Roman = new(@"^(?-i:[IVX]{1,4})(?:[.)]\s*(?<name>[^.;,]{0,32})|(?<name>))$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "C. SIDE, CLAP", "HEELS & SHUFFLES": capitals where the steps have none.
    private static readonly Regex Lettered = new(@"^[A-H][.):]\s+(?<name>(?=[^a-z]*[A-Z]{3})[^a-z\d]{3,48})$", RegexOptions.CultureInvariant);

    private static readonly Regex Shouted = new(@"^(?<name>.*)$", RegexOptions.CultureInvariant);

    private static bool IsShouted(string line) => Regex.Replace(line, @"\s*\([^)]*\)\s*$", "", RegexOptions.CultureInvariant) is var plain &&
        plain.Length is > 3 and < 49 && plain.Count(char.IsLetter) * 4 >= plain.Length * 3 - 4 && !plain.Any(char.IsLower) && !plain.Any(char.IsDigit)
        && Regex.IsMatch(plain, @"[A-Z]{3}", RegexOptions.CultureInvariant) && !Regex.IsMatch(plain, @"\b(?:LEFT|RIGHT|L|R|LF|RF)\b|^[SQ\s,-]+$", RegexOptions.CultureInvariant);

    // "SECOND PART.", "Third Figure".
    private static readonly Regex Nth = new($@"^(?:the\s+)?(?:{NumberWords.SpelledNth}|last)\s+(?:part|figure|movement|section|half|strain)(?:,\s*(?:the )?(?:gentleman|gent|man|leader))?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex TagHead = new(@"^tag\b(?:\s*(?:\([^)]*\))?\s*[:.-]|[^:]{0,60}:)\s*(?<rest>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex HerPart = new($@"^(?:the\s+)?(?:{NumberWords.SpelledNth})\s+(?:part|figure|movement),\s*(?:the )?(?:lady|woman|follow\w*)[.:]\s+(?<rest>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex TuneHead = new(@"^(?<key>[A-D][1-4])\s*[:.-]\s+(?<rest>\S.*)$", RegexOptions.CultureInvariant);

    private bool _tunes;

    // "Third Movement. As the first."
    private static readonly Regex NthThen = new($@"^(?:the\s+)?(?<nth>{NumberWords.SpelledNth})\s+(?<what>part|figure|movement|strain)\s*[.:-]+\s+(?<rest>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex AsTheNth = new($@"^(?:is |are )?(?:danced )?(?:the same )?as (?:in )?(?:the )?(?<nth>{NumberWords.SpelledNth})\b(?:\s+(?:part|figure|movement|strain))?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private readonly Dictionary<int, PlanPart> _movements = [];

    private void Movement(SheetLine line, Match movement)
    {
        var nth = NumberWords.Nth(movement.Groups["nth"].Value);
        _part = new() { Heading = $"Part {nth}" };
        _plan.Parts.Add(_part);
        _movements[nth] = _part;
        var rest = movement.Groups["rest"].Value;
        if (AsTheNth.Match(rest) is { Success: true } same && _movements.GetValueOrDefault(NumberWords.Nth(same.Groups["nth"].Value)) is { } before)
        {
            _part.Groups.AddRange(before.Groups);
            Is(line, LineKind.Steps);
            return;
        }

        Steps(line, rest);
    }

    // "BASIC (S S Q Q S)  8 cts".
    private static readonly Regex RhythmHead = new(@"^(?<name>[\p{L}][\p{L} '-]{2,30}?)\s*\(\s*(?:(?:slow|quick|[SQ])\b[\s,-]*){2,}\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex StepsToTheBar = new($@"\b(?<n>{NumberWords.Spelled}|[2346])\s+(?:steps|beats|counts)\s+(?:to|in)\s+(?:the|a|each)\s+(?:bar|measure)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NamesFoot = new(@"\b(?:left|right|L|R|LF|RF|l|r|(?:inside|outside) foot)\b", RegexOptions.CultureInvariant);

    private readonly SheetPlan _plan = new();
    private PlanPart? _part;
    private Role? _block;
    private bool _remarks;
    private bool _letter;
    private bool _bars;
    private bool _table;
    private int _beats;
    private int _bar;

    // Where the head of the columns stands, or -1; and whether words in capitals stand out from the others.
    private int _head = -1;
    private bool _shouts;

    // Numbers number paragraphs, and no counts.
    private bool _paragraphs;

    // Numbers before the steps say how long these take.
    private bool _lengths;

    public SheetPlan Read()
    {
        _joined.UnionWith(CountColumn.ToTheLeft(lines));
        var meter = Regex.Match(string.Join('\n', lines.Select(l => l.Plain)), @"(?<!\b[Gg]rade )\b(?<beats>[2346])/[48]\b(?!\)? ?(?:turn|to (?:face|the|your)|left|right|[LR]\b))", RegexOptions.CultureInvariant);
        var toTheBar = lines.Select(l => StepsToTheBar.Match(l.Plain)).FirstOrDefault(m => m.Success);
        _beats = meter.Success ? int.Parse(meter.Groups["beats"].Value, CultureInfo.InvariantCulture)
            : toTheBar is not null ? NumberWords.Read(toTheBar.Groups["n"].Value)
            : lines.Where(l => TwoLabels(l.Plain)).Select(l => CountLabel.AtStart(l.Plain, 0, out var after) is { Length: 1 } && CountLabel.AtStart(l.Plain, after, out _) is { } within ? within.To : 0).DefaultIfEmpty(0).Max();
        _bars = lines.Any(l => Regex.IsMatch(l.Plain, @"^(?:bars?|measures?|meas\.?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant))
            || lines.Count(l => TwoLabels(l.Plain)) > 1;
        _shouts = lines.Count(l => IsShouted(l.Plain)) * 3 < lines.Count(l => l.Plain.Length > 0);
        _head = lines.FindIndex(l => TableHead.IsMatch(l.Plain) || ColumnsOf(l.Plain) is not null);
        _tunes = lines.Count(l => TuneHead.IsMatch(l.Plain)) > 1;
        _paragraphs = _head < 0 && FirstParagraph() >= 0;
        if (_paragraphs) _head = FirstParagraph();
        // Under a head of columns stands the dance; above it only what is said of it, unless there are counts as well.
        if (_head >= 0 && lines.Take(_head).Any(l => CountLabelled(l.Plain) || PartHead.Match(l.Plain) is { Success: true } part && part.Groups["key"].Success)) _head = -1;
        // A table of measures in an odd meter: the steps beside them tell how long they are.
        if (_beats == 0 && lines.Exists(l => TableHead.IsMatch(l.Plain) && HeadOfBars.IsMatch(l.Plain))) _beats = 4;
        for (var i = 0; i < lines.Count; i++) Read(i);
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
        if (line.Plain.Length == 0)
        {
            Is(line, LineKind.Blank);
            return;
        }

        if (_joined.Contains(line.Number))
        {
            Is(line, LineKind.Steps);
            return;
        }

        if (_plan.Only is null && OnlyOne.Match(line.Plain) is { Success: true } only) _plan.Only = only.Groups["lead"].Success ? Role.Lead : Role.Follow;
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

        if (StrainHead.IsMatch(plain))
        {
            (_strains, _table, _bars) = (true, true, true);
            Is(line, LineKind.Heading);
            return;
        }

        if (_strains && StrainLine.Match(plain) is { Success: true } strain)
        {
            if (strain.Groups["strain"].Value != _strain)
            {
                _strain = strain.Groups["strain"].Value;
                _part = new() { Heading = $"Part {_strain}" };
                _plan.Parts.Add(_part);
            }

            Steps(line, strain.Groups["rest"].Value);
            return;
        }

        if (TableHead.IsMatch(plain))
        {
            if (HeadOfBars.IsMatch(plain)) (_table, _bars) = (true, true);
            else _lengths = LengthsUnder(i);
            Is(line, LineKind.Heading);
            return;
        }

        if (plain.Length > 2 && plain[0] == '(' && plain.IndexOf(')', StringComparison.Ordinal) == plain.Length - 1 && CountLabel.AtStart(plain, 0, out _) is null && _plan.Title.Length > 0)
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

        if (_plan.Title.Length > 0 && _plan.Parts.TrueForAll(p => p.Groups.Count == 0) && (IsFact(plain) || i < _head || LengthFirst.IsMatch(plain)))
        {
            _plan.Facts.Add(line);
            Is(line, LineKind.Fact);
            return;
        }

        if (_plan.Title.Length == 0 && CountLabel.AtStart(plain, 0, out _) is null && !RoleWords.IsHeading(plain, out _))
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

        if (TagHead.Match(plain) is { Success: true } tag && _plan.Parts.Exists(p => p.Groups.Count > 0))
        {
            // "Tag: end of wall 2. Sway R, L, R, L": danced when it is said, and no part of every repeat.
            _part = new() { Heading = "Tag" };
            _plan.Parts.Add(_part);
            Steps(line, tag.Groups["rest"].Value);
            return;
        }

        if (HerPart.Match(plain) is { Success: true } hers && Opposite.IsMatch(hers.Groups["rest"].Value))
        {
            // "First Part, lady. As the gentleman with contrary foot."
            _plan.Opposite = true;
            _plan.Facts.Add(line);
            Is(line, LineKind.Remark);
            return;
        }

        if (_tunes && TuneHead.Match(plain) is { Success: true } tune)
        {
            // "A1: All in to the middle ...": the strains of the tune are the parts.
            _part = new() { Heading = $"Part {tune.Groups["key"].Value}" };
            _plan.Parts.Add(_part);
            Steps(line, tune.Groups["rest"].Value);
            return;
        }

        if (NthThen.Match(plain) is { Success: true } movement)
        {
            Movement(line, movement);
            return;
        }

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

    // "Line dance, 4 walls, beginner", "Couples in closed position, man facing LOD": before the first step, and hardly a foot in it.
    private static bool IsFact(string plain) =>
        FactWords.Count(plain) is var facts and > 0 && !PartHead.IsMatch(plain) && (CountLabel.AtStart(plain, 0, out _) is null || LengthOf.IsMatch(plain))
        && (NamesFoot.Count(plain.ToLowerInvariant()) < 2 || (facts > 1 && plain.Length < 170 && (NamesFoot.Count(plain.ToLowerInvariant()) < 4 || Defines.IsMatch(plain))))
        && !RoleWords.IsHeading(plain, out _) && !(RoleWords.Opens(plain, 0, out _, out _, out var marked) && marked);

    // "RF = right foot".
    private static readonly Regex Defines = new(@"\b(?:RF|LF|[RL])\s*=\s*(?:right|left)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "48 count partner dance".
    private static readonly Regex LengthOf = new(@"^\d{2,3}[- ]counts?\s+\p{L}", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex FactWords = new(
        @"^music\b|\b(?:RF|LF|[MWLGR])\s*=\s*\w+|\b(?:line\s+dance|circle\s+dance|sequence\s+dance|couples?(?:\s+dance)?|partners?(?:\s+dance)?|round\s+dance|contra|walls?|\dw|beginner|improver|intermediate|advanced|position|hold|bpm|\d/\d|(?:1[2-9]|[2-9]\d)[- ]counts?)\b|^\W*(?:line|circle|partner|couple)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "32 cts, shuffle tempo. Big circle of couples ...".
    private static readonly Regex LengthFirst = new(@"^\d{2,3}[- ](?:counts?|cts?|beats)\b\.?\s*(?:[,;]|$)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex OnlyOne = new(@"\b(?:(?<lead>gentleman|man|gent|leader)|(?<follow>lady|woman|follower))'s (?:part|steps?) (?:only|alone)\b|\bonly the (?:(?<lead>gentleman|man|gent|leader)|(?<follow>lady|woman|follower))'s\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private void Is(SheetLine line, LineKind kind) => _plan.Kinds[line.Number] = kind;

    // "Foxtrot, closed position", "Texas two-step: two quick steps and two slow steps", "Mayim".
    private void TitleOf(SheetLine line, string plain)
    {
        if (RoleWords.Opens(plain, 0, out _, out _, out var marked) && marked)
        {
            _plan.Title = "A dance without a name";
            Steps(line, plain);
            return;
        }

        if (IsA.Match(plain) is { Success: true } named)
        {
            // "The Ketteridge Strut is a line dance ...": what follows may already dance.
            _plan.Title = named.Groups["name"].Value.Trim();
            var first = Regex.Match(plain, @"\.\s+(?=\S)");
            _plan.Facts.Add(line with { Plain = first.Success ? plain[..first.Index] : plain });
            Is(line, LineKind.Title);
            if (first.Success && plain.Length - first.Index > 60) Steps(line, plain[(first.Index + first.Length)..]);
            else if (first.Success) _plan.Facts.Add(line with { Plain = plain[(first.Index + first.Length)..] });
            if (_plan.Kinds[line.Number] == LineKind.Remark) Is(line, LineKind.Title);
            return;
        }

        var end = Regex.Match(plain, @"\s*(?:[,:;(.]|\s-\s|\s{3,})") is { Success: true, Index: > 2 } cut ? cut.Index : plain.Length;
        // A line of steps is no title.
        if (end == plain.Length && plain.Length > 70)
        {
            _plan.Title = "A dance without a name";
            Steps(line, plain);
            return;
        }

        _plan.Title = plain[..end].Trim();
        Is(line, LineKind.Title);
        var rest = plain[end..].Trim(' ', ',', ':', ';', '.', '-', '(', ')');
        if (rest.Length == 0) return;
        if (RoleWords.IsHeading(rest, out var only) && only is not null)
        {
            _plan.Only = only;
            return;
        }

        _plan.Facts.Add(line with { Plain = rest });
    }

    // "Fig. II  Turn to face centre", "End facing each other".
    private static readonly Regex Looks = new(@"^(?:(?:and|then|now|both|all|at the end,?|end(?:ing)?|finish(?:ing)?) )*(?:turn(?:ing)? to )?(?:face|facing)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex IsA = new(@"^(?:The\s+)?(?<name>(?:[\p{Lu}\d][\w'-]*\s+|(?:of|the|and|in|on|for|at)\s+){1,6}?(?:(?!is\b|was\b)\p{Ll}{2,12}\s+)?)(?:is|was)\s+(?:a|an|one|the|danced)\b", RegexOptions.CultureInvariant);

    private PlanPart? HeadingOf(int i, string plain)
    {
        if (RhythmHead.Match(plain) is { Success: true } rhythm)
        {
            var counted = Counted.Match(plain);
            return new() { Heading = $"Part {NextPart()}  {rhythm.Groups["name"].Value.Trim()}", StatedCounts = counted.Success ? int.Parse(counted.Groups["n"].Value, CultureInfo.InvariantCulture) : null };
        }

        var match = PartHead.Match(plain);
        if (match.Success && (match.Groups["key"].Success || plain.Length < 24) && !CountLabelled(plain))
        {
            var stated = Counted.Match(plain);
            var rest = match.Groups["rest"].Value;
            var word = match.Groups["word"].Value.TrimEnd('.').ToLowerInvariant() is "s" or "sec" or "sect" ? "section" : match.Groups["word"].Value.TrimEnd('.').Equals("fig", StringComparison.OrdinalIgnoreCase) ? "figure" : match.Groups["word"].Value.ToLowerInvariant();
            var name = $"{char.ToUpperInvariant(word[0])}{word[1..]} {match.Groups["key"].Value.ToUpperInvariant()}".Trim();
            if (rest.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length is > 0 and <= 6) name += "  " + Counted.Replace(rest, "").Trim(' ', ':', '-', '.');
            return new() { Heading = name.Trim(), StatedCounts = stated.Success ? int.Parse(stated.Groups["n"].Value, CultureInfo.InvariantCulture) : null };
        }

        if (Lettered.Match(plain) is { Success: true } lettered || (_shouts && IsShouted(plain) && _plan.Title.Length > 0 && (lettered = Shouted.Match(plain)).Success))
        {
            return new() { Heading = $"Part {NextPart()}  {lettered.Groups["name"].Value.Trim(' ', '.', ':')}".Trim() };
        }

        if (Nth.Match(plain) is { Success: true } nth)
        {
            return new() { Heading = $"Part {NextPart()}" };
        }

        if (Roman.Match(plain) is { Success: true } roman)
        {
            return new() { Heading = $"Part {NextPart()}  {roman.Groups["name"].Value.Trim()}".Trim() };
        }

        // "[1-8] Vines", or a few words without counts above lines that have them.
        var label = CountLabel.AtStart(plain, 0, out var after);
        var next = lines.Skip(i + 1).FirstOrDefault(l => l.Plain.Length > 0);
        var nextLabel = next is null ? null : CountLabel.AtStart(next.Plain, 0, out _);
        if (label is { Length: >= 4, HasHalves: false } && plain[0] is '[' or '(' && next is not null && nextLabel is null && plain[after..].Split(' ', StringSplitOptions.RemoveEmptyEntries).Length <= 6)
        {
            return new() { Heading = $"Part {NextPart()}  {plain[after..].Trim(' ', '-', ':', '.')}".Trim(), StatedCounts = label.Length };
        }

        if (label is { Length: >= 4, HasHalves: false } && nextLabel is not null && ((nextLabel.From == label.From && nextLabel.To < label.To) || (nextLabel.From == 1 && label.From > 1 && nextLabel.To < label.Length && plain[0] is '[' or '(')))
        {
            return new() { Heading = $"Part {NextPart()}  {plain[after..].Trim(' ', '-', ':', '.')}".Trim(), StatedCounts = label.Length };
        }

        if (label is null && nextLabel is { From: 1 } && plain.EndsWith(':') && plain.Split(' ').Length <= 7 && _part is not null && !RoleWords.Opens(plain, 0, out _, out _, out _))
        {
            // "The Waltz, turning to the right:" above "1st."
            return new() { Heading = $"Part {NextPart()}  {plain.Trim(':', ' ')}" };
        }

        if (label is null && nextLabel is { Unit: not LabelUnit.Order } && !Looks.IsMatch(plain) && plain.Split(' ').Length <= 6 && !plain.Contains('.') && (_part is null || nextLabel.From == 1 || nextLabel.From == LastCount() + 1) && !RoleWords.Opens(plain, 0, out _, out _, out _) && !Wording.StandIns.Stands(plain))
        {
            return new() { Heading = $"Part {NextPart()}  {plain.Trim(':', ' ')}" };
        }

        return null;
    }

    private int NextPart() => _plan.Parts.Count(p => p.Groups.Count > 0) + 1;

    private int LastCount() => _part?.Groups.LastOrDefault(g => g.Label is not null)?.Label?.To ?? 0;

    private static bool CountLabelled(string plain) => CountLabel.AtStart(plain, 0, out _) is not null;

    private static bool TwoLabels(string plain) =>
        CountLabel.AtStart(plain, 0, out var after) is { HasHalves: false, Length: <= 4 } && after < plain.Length && plain[after] is (>= '0' and <= '9') or '(' && CountLabel.AtStart(plain, after, out _) is not null && !plain[..after].TrimEnd().EndsWith('.');
}
