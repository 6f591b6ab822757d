using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>Finds title, facts, parts, roles and labels in a sheet, line by line.</summary>
/// <param name="speaks">Tells whether words name something to dance.</param>
internal sealed class PlanReader(List<SheetLine> lines, Func<string, bool> speaks)
{
    private static readonly Regex Fact = new(
        @"^(?:source|kind|facts|style|text-status|complete|choreograph\w*(?:\s+by)?|by|music|song|tempo|bpm|meter|metre|time(?:\s+signature)?|level|difficulty|walls?|counts?|count|formation|position|hold|start(?:ing)?(?:\s+(?:position|foot|facing))?|footwork|intro(?:duction)?|rhythm|dance|type|description|note|notes|hint|tip|remarks?|also|aka|written|date|hands|progression|variation)\b[^:]{0,24}:",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex PartHead = new(
        @"^(?:#+\s*)?(?<word>part|section|sect(?:\.|\b)|sec(?:\.|\b)|s(?=\d)|set|segment|tag|bridge|intro|ending|chorus|verse|figure|phrase|pattern)\s*(?<key>[A-Z]|\d{1,2}|[IVX]{1,4})?\b\s*[:.)-]*\s*(?<rest>.*)$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Counted = new(@"\(?\b(?<n>\d{1,3})\s*(?:counts?|cts?|beats)\b\)?", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NotesHead = new(@"^#+\s.*\bnotes?\b|^(?:collector's\s+)?notes?\s*:?\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Opposite = new(
        @"\b(?:opposite\s+(?:of|to)\s+(?:your\s+)?(?:partner|man|the\s+man|lead\w*|him)|mirror\s+(?:of\s+)?(?:the\s+)?(?:man|lead\w*|gent\w*|partner)|(?:natural|uses?|does|with|on)\s+(?:the\s+)?opposite\s*(?:foot(?:work)?|feet)?|in\s+reverse|does\s+the\s+(?:reverse|opposite|mirror\w*)|opposite\s+footwork|counterpart)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Sentences that speak about the dance, offer something else or explain, and give no step of it.
    private static readonly Regex Talk = new(
        @"^\W*(?:that (?:makes|is|gives|means)|other (?:starts|ways|versions?)|variations?|what (?:matters|counts)|they can|(?:it|this|there|these|those|such) (?:is|are|can|may|was|were|goes|dance)|in a (?:tight|small|big)|for (?:emphasis|style|fun|beginners)|the usual|each number|note that|remember|tip|hint|as a mixer|or(?:,)? |after the |after that you|if |optional|you (?:can|may|should|will)|try to|make sure|be sure|keep|do not|don't|like the|the (?:complete|whole|slows?|quicks?|steps?|rhythm|left foot moves|right foot only|dance) (?:is|are|has|have|moves|only|takes?|begins?|starts?))\b|\b(?:slow|quick)s?\s+(?:is|are)\b|\b(?:may|might|could)\b|^(?:the )?(?:first|second|third|other) (?:half|time|version)\b|\bfree at the end\b|\b(?:when|while) (?:his|he|your partner)\b|\bdirections in reverse\b|^(?:begin|start)(?:s|ning|ing)? (?:with|on) (?:the |your )?(?:left|right|L|R)(?: foot)?\W*$|\blet the\b|\b(?:of the music|to the music|the song)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Repeat", with nothing after it that could be meant: begin again.
    private static readonly Regex Begins = new(@"^\W*(?:repeat|begin again|start (?:over|again))\W*$|^\W*(?:start|begin)\s+(?:over|again|from the)\b|^\W*repeat,?\s+(?:from the (?:beginning|start|top)|travel\w*|moving|around|until|the (?:whole )?(?:dance|pattern|sequence)|as (?:often|many))\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NamesFoot = new(@"\b(?:left|right|L|R|LF|RF|l|r)\b", RegexOptions.CultureInvariant);

    private readonly SheetPlan _plan = new();
    private PlanPart? _part;
    private Role? _block;
    private bool _remarks;
    private bool _bars;

    public SheetPlan Read()
    {
        _bars = lines.Any(l => Regex.IsMatch(l.Plain, @"^(?:bars?|measures?|meas\.?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant))
            || lines.Count(l => TwoLabels(l.Plain)) > 1;
        for (var i = 0; i < lines.Count; i++) Read(i);
        return _plan;
    }

    private void Read(int i)
    {
        var line = lines[i];
        if (line.Plain.Length == 0)
        {
            Is(line, LineKind.Blank);
            return;
        }

        if (NotesHead.IsMatch(line.Plain)) _remarks = true;
        if (_remarks)
        {
            Is(line, LineKind.Remark);
            return;
        }

        var plain = line.Plain.TrimStart('#', ' ');
        if (Fact.IsMatch(plain) && !(CountLabel.AtStart(plain, 0, out _) is not null) && !RoleWords.IsHeading(plain, out _))
        {
            _plan.Facts.Add(line);
            Is(line, LineKind.Fact);
            return;
        }

        if (_plan.Title.Length > 0 && _plan.Parts.TrueForAll(p => p.Groups.Count == 0) && IsFact(plain))
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
            Is(line, LineKind.Heading);
            return;
        }

        if (RoleWords.IsHeading(plain, out var block))
        {
            (_block, _columns) = (block, null);
            Is(line, LineKind.Heading);
            return;
        }

        if (HeadingOf(i, plain) is { } heading)
        {
            _part = heading;
            _plan.Parts.Add(heading);
            Is(line, LineKind.Heading);
            if (PartHead.Match(plain) is not { Success: true } match) return;
            var rest = match.Groups["rest"].Value;
            if (rest.Split(' ').Length > 6 && speaks(rest)) Steps(line, rest);
            return;
        }

        Steps(line, plain);
    }

    // "Line dance, 4 walls, beginner", "Couples in closed position, man facing LOD": before the first step, and hardly a foot in it.
    private static bool IsFact(string plain) =>
        FactWords.IsMatch(plain) && !PartHead.IsMatch(plain) && CountLabel.AtStart(plain, 0, out _) is null && NamesFoot.Count(plain.ToLowerInvariant()) < 2
        && !RoleWords.IsHeading(plain, out _) && !(RoleWords.Opens(plain, 0, out _, out _, out var marked) && marked);

    private static readonly Regex FactWords = new(
        @"\b(?:line\s+dance|circle\s+dance|couples?(?:\s+dance)?|partners?(?:\s+dance)?|round\s+dance|contra|walls?|\dw|beginner|improver|intermediate|advanced|position|hold|bpm|\d/\d|counts)\b|^\W*(?:line|circle|partner|couple)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

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

        var end = Regex.Match(plain, @"\s*(?:[,:;(.]|\s-\s)") is { Success: true, Index: > 2 } cut ? cut.Index : plain.Length;
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

    private PlanPart? HeadingOf(int i, string plain)
    {
        var match = PartHead.Match(plain);
        if (match.Success && (match.Groups["key"].Success || plain.Length < 24) && !CountLabelled(plain))
        {
            var stated = Counted.Match(plain);
            var rest = match.Groups["rest"].Value;
            var word = match.Groups["word"].Value.TrimEnd('.').ToLowerInvariant() is "s" or "sec" or "sect" ? "section" : match.Groups["word"].Value.ToLowerInvariant();
            var name = $"{char.ToUpperInvariant(word[0])}{word[1..]} {match.Groups["key"].Value.ToUpperInvariant()}".Trim();
            if (rest.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length is > 0 and <= 6) name += "  " + Counted.Replace(rest, "").Trim(' ', ':', '-', '.');
            return new() { Heading = name.Trim(), StatedCounts = stated.Success ? int.Parse(stated.Groups["n"].Value, CultureInfo.InvariantCulture) : null };
        }

        // "[1-8] Vines", or a few words without counts above lines that have them.
        var label = CountLabel.AtStart(plain, 0, out var after);
        var next = lines.Skip(i + 1).FirstOrDefault(l => l.Plain.Length > 0);
        var nextLabel = next is null ? null : CountLabel.AtStart(next.Plain, 0, out _);
        if (label is { Length: >= 4, HasHalves: false } && plain[0] is '[' or '(' && next is not null && nextLabel is null && plain[after..].Split(' ', StringSplitOptions.RemoveEmptyEntries).Length <= 6)
        {
            return new() { Heading = $"Part {_plan.Parts.Count + 1}  {plain[after..].Trim(' ', '-', ':', '.')}".Trim(), StatedCounts = label.Length };
        }

        if (label is { Length: >= 4, HasHalves: false } && nextLabel is not null && nextLabel.From == label.From && nextLabel.To < label.To)
        {
            return new() { Heading = $"Part {_plan.Parts.Count + 1}  {plain[after..].Trim(' ', '-', ':', '.')}".Trim(), StatedCounts = label.Length };
        }

        if (label is null && nextLabel is { Unit: not LabelUnit.Order } && plain.Split(' ').Length <= 6 && !plain.Contains('.') && (_part is null || nextLabel.From == 1 || nextLabel.From == LastCount() + 1) && !RoleWords.Opens(plain, 0, out _, out _, out _) && !Wording.StandIns.Stands(plain))
        {
            return new() { Heading = $"Part {_plan.Parts.Count + 1}  {plain.Trim(':', ' ')}" };
        }

        return null;
    }

    // Where counts stand beside the steps, words without counts and without feet are talk.
    private bool Labelled() => _part is { Groups.Count: > 2 } part && part.Groups.Count(g => g.Label is not null || g.Again is not null) * 10 >= part.Groups.Count * 8;

    private int LastCount() => _part?.Groups.LastOrDefault(g => g.Label is not null)?.Label?.To ?? 0;

    private static bool CountLabelled(string plain) => CountLabel.AtStart(plain, 0, out _) is not null;

    private static bool TwoLabels(string plain) =>
        CountLabel.AtStart(plain, 0, out var after) is { HasHalves: false, Length: <= 4 } && after < plain.Length && plain[after] is (>= '0' and <= '9') or '(' && CountLabel.AtStart(plain, after, out _) is not null && !plain[..after].TrimEnd().EndsWith('.');

    private void Steps(SheetLine line, string plain)
    {
        var (at, role, said) = (0, _block, false);
        var label = CountLabel.AtStart(plain, 0, out var after);
        if (label is not null)
        {
            at = after;
            if (_bars && CountLabel.AtStart(plain, at, out var second) is { } within && TwoLabels(plain))
            {
                // "1 1-2 both hands": a table of bars and counts. The bar says when.
                (label, at) = (label with { Unit = LabelUnit.Bars }, second);
                _plan.BeatsInBar = Math.Max(_plan.BeatsInBar, label.Length == 1 ? within.To : 0);
            }
            else if (_bars && label.Unit == LabelUnit.Counts && Regex.IsMatch(plain, @"^(?:\d{1,2})(?:-\d{1,2})?\s", RegexOptions.CultureInvariant) && lines.Any(l => TwoLabels(l.Plain)))
            {
                label = label with { Unit = LabelUnit.Bars };
            }
        }

        if (RoleWords.Opens(plain, at, out var opens, out var end, out var marked) && (marked || end < plain.Length))
        {
            (role, said, at) = (opens, true, end);
            if (label is null && CountLabel.AtStart(plain, at, out after) is { } later) (label, at) = (later, after);
        }

        var words = InColumns(plain[at..]);
        if (Opposite.IsMatch(words) && (role == Role.Follow || Regex.IsMatch(words, @"\b(?:partner|lady|woman|follow\w*|man|lead\w*)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)) && AgainWords.Of(words) is not { From: > 0 }) _plan.Opposite = true;
        var any = false;
        var carried = 0;
        var first = true;
        var served = new List<Role?>();
        var aside = new List<string>();
        foreach (var sentence in Sentences.Of(words, role, label is not null))
        {
            if ((Talk.IsMatch(sentence.Text) && !Wording.StandIns.Stands(sentence.Text) && sentence.Label is null && !(first && label is not null)) || Begins.IsMatch(sentence.Text))
            {
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Role == Role.Follow && Opposite.IsMatch(sentence.Text) && AgainWords.Of(sentence.Text) is not { From: > 0 })
            {
                _plan.Opposite = true;
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && label is null && Labelled() && !Wording.StandIns.Stands(sentence.Text) && (!NamesFoot.IsMatch(sentence.Text) || sentence.RoleSaid || said) && AgainWords.Of(sentence.Text) is null)
            {
                aside.Add(sentence.Text);
                continue;
            }

            // The line's counts are each dancer's own.
            var own = sentence.Label ?? (first || !served.Contains(sentence.Role) ? label : null);
            served.Add(sentence.Role);
            if (AgainWords.Of(sentence.Text) is { } again && (AgainWords.NamesCounts(sentence.Text) || !speaks(Regex.Replace(sentence.Text, @"\b(?:the\s+)?(?:steps?|dance|walks?|turns?|counts?|repeat|again|same|back|backwards?|forward|left|right|side|foot|feet|first|starting|opposite|other|end|finish|begin\w*|measures?|bars?|counts?|\d+|original|place)\b", " ", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant))))
            {
                Into(new() { Line = line, Role = sentence.Role, Label = own, Again = again });
                (any, first) = (true, false);
                continue;
            }

            var phrases = Phrases.Of(sentence, line, ref carried);
            var speaking = phrases.Where(p => speaks(p.Text)).ToList();
            if (speaking.Count == 0)
            {
                // "Pause through beat four" may have no foot in it; words that only talk say nothing.
                if (own is null)
                {
                    aside.Add(sentence.Text);
                    continue;
                }

                first = false;
                if (phrases.Count == 0) continue;
                Into(new() { Line = line, Role = sentence.Role, Label = own, Phrases = phrases });
                continue;
            }

            Into(new() { Line = line, Role = sentence.Role, Label = own, Phrases = phrases, Times = TimesOf(words) });
            (any, first) = (true, false);
        }

        if (any)
        {
            Is(line, LineKind.Steps);
            foreach (var talk in aside) _plan.Asides.Add(line with { Plain = talk });
        }
        else
        {
            Is(line, LineKind.Remark);
            _plan.Facts.Add(line);
        }
    }

    // "Man      Lady": what each does stands under his or her own word.
    private static (string Left, string Right)? ColumnsOf(string plain) =>
        Gap.Split(plain) is [var left, var right] && RoleWords.IsHeading(left, out var one) && RoleWords.IsHeading(right, out var other) && one is not null && other is not null && one != other
            ? (left.Trim(':', ' '), right.Trim(':', ' '))
            : null;

    private string InColumns(string words) =>
        _columns is var (left, right) && Gap.Split(words.Trim()) is [var his, var hers] ? $"{left}: {his.TrimEnd('.')}. {right}: {hers}" : words;

    private static readonly Regex Gap = new(@"\s{3,}", RegexOptions.CultureInvariant);

    private (string Left, string Right)? _columns;

    // "(written out four times)" at the end of a line holds for the whole line.
    private static int TimesOf(string words) =>
        Regex.Match(words, @"\((?<in>[^)]*\btimes\b[^)]*|twice|x\s?\d)\)\s*\.?$|\((?<twice>repeat(?:ed)?)\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant) is { Success: true } match ? match.Groups["twice"].Success ? 2 : Math.Max(1, AgainWords.Times(match.Groups["in"].Value)) : 1;

    private void Into(PlanGroup group)
    {
        if (_part is null)
        {
            _part = new();
            _plan.Parts.Add(_part);
        }

        _part.Groups.Add(group);
    }
}
