using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <content>A line that speaks of steps: its counts, who dances it, and what each of its sentences does.</content>
internal sealed partial class PlanReader
{
    private static readonly Regex Opposite = new(
        @"\b(?:opposite\s+(?:of|to)\s+(?:your\s+)?(?:partner|man|the\s+man|lead\w*|him)|mirror\s+(?:of\s+)?(?:the\s+)?(?:man|lead\w*|gent\w*|partner)|(?:natural|uses?|does|with|on)\s+(?:the\s+)?opposite\s*(?:foot(?:work)?|feet)?|in\s+reverse|(?:steps|footwork|feet)\s+(?:is|are)\s+(?:all\s+)?opposite|reverse\s+of\s+(?:the\s+)?(?:man|gent\w*|lead\w*)|does\s+(?:throughout\s+)?the\s+(?:reverse|opposite|mirror\w*)|opposite\s+footwork|counterpart|same\s+(?:with|on)\s+(?:the\s+)?(?:other|opposite)\s+(?:foot|feet))\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Sentences that speak about the dance, offer something else or explain, and give no step of it.
    private static readonly Regex Talk = new(
        @"^\W*(?:that(?:'?s| makes| is| gives| means)|other (?:starts|ways|versions?)|variations?|what (?:matters|counts)|they can|(?:it|this|there|these|those|such) (?:is|are|can|may|was|were|goes|dance)|in a (?:tight|small|big)|for (?:emphasis|style|fun|beginners)|the usual|each number|note that|remember|tip|hint|as a mixer|or(?:,)? |after the |after that you|if |optional|you (?:can|may|should|will|are (?:now )?(?:looking|facing))|say hello|try to|make sure|be sure|keep|do not|don't|like the|the (?:complete|whole|entire) [^.]{0,30}?(?:is|has|takes|lasts)|the (?:complete|whole|slows?|quicks?|steps?|rhythm|left foot moves|right foot only|dance) (?:is|are|has|have|moves|only|takes?|begins?|starts?))\b|\b(?:slow|quick)s?\s+(?:is|are)\b|\b(?:may|might|could)\b|^(?:the )?(?:first|second|third|other) (?:half|time|version)\b|^no \w+|^some (?:of|people|dancers|couples|finish|do|halls|groups|clubs|like|prefer)\b|\bmeans\b|\boff (?:you|we) go\b|\b(?:he|she|your partner) (?:turns|leads|takes|brings|guides) (?:you|her|him)\b|\btowards? your (?:left|right)\b|^steps? (?:are |is )?(?:given|described|written)\b|\b(?:M|man|W|lady) (?:is )?described\b|^(?:the |your )?(?:hips?|knees?|shoulders?|arms?|heads?|eyes|rhythm|timing)\b|\bat \([a-h]\)|^now (?:for )?the \w+ (?:that|which|where|again)\b|^(?:the )?(?:first|second|third|fourth|fifth|sixth|last|next) (?:figure|part|section|movement)\b(?!.*\b(?:left|right)\b)|\bfree at the end\b|\b(?:when|while) (?:his|he|your partner)\b|\bdirections in reverse\b|^(?:begin|start)(?:s|ning|ing)? (?:with|on) (?:the |your )?(?:left|right|L|R)(?: foot)?\W*$|\blet the\b|\b(?:of the music|to the music|the song)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Repeat", with nothing after it that could be meant: begin again.
    private static readonly Regex Begins = new(@"^\W*(?:repeat|begin again|start (?:over|again))\W*$|^\W*(?:start|begin)\s+(?:over|again|from the)\b|,\s*(?:start over|begin again)\W*$|^\W*repeat,?\s+(?:(?:to|until|till) (?:the )?end|from (?:the )?(?:step 1\b|step one|number 1\b|1\b|first|beg\b|beginning|start|top)|travel\w*|moving|around|until|the (?:whole )?(?:dance|pattern|sequence)|as (?:often|many))\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "First 8:", "next 16 counts -": how long what follows is, which its steps say as well.
    private static readonly Regex NextOnes = new(@"^(?:the\s+)?(?:first|next|last|following|final)\s+(?:set of\s+)?(?:\d{1,2}|eight|sixteen)(?:\s+(?:counts?|beats?))?\s*(?:[:.]|-+|,)\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "... (8 counts)" where a line ends: how long it is.
    private static readonly Regex Fills = new(@"\s*[(\[](?<n>\d{1,2})\s*(?:counts?|cts?\.?|beats)(?:\s*[,;:][^)]*)?[)\]]\s*\.?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "13th to 16th." is a range.
    private static readonly Regex NthToNth = new(@"^(?<from>\d{1,2})(?:st|nd|rd|th|d)\s*(?:to|and|-|through)\s*(?<to>\d{1,2})(?:st|nd|rd|th|d)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "(a) Beginning with the left foot ..."
    private static readonly Regex Letter1 = new(@"^\(?[a-h]\)\s+", RegexOptions.CultureInvariant);

    // "1-4 | Step ...": a table drawn with bars.
    private static readonly Regex Drawn = new(@"\G\s*\|\s*", RegexOptions.CultureInvariant);

    private static readonly Regex SoOn = new(@"\b(?:and so on|and so forth|etc\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Differs = new(@"\b(?:except|but|only that|instead|apart from)\b.*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex StartsOn = new(@"^(?:starts?|begins?|starting|beginning|commences?|commencing)(?: on| with)?(?: the| his| her| your)? (?:left|right|L|R)(?: foot| ft\.?)?$|^your (?:left|right)(?: foot)?$|^(?:the )?(?:left|right|outside|inside|L|R)(?: foot| feet| ft\.?)? (?:first|to start|to begin|free|starts|begins|leads)\W*(?:\([^)]*\))?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex WayOnly = new(@"^(?:to|towards|in towards|out to) (?:the|his|her|their) (?:left|right|wall|centre|center|middle|outside|inside)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex InBars = new(@"\b(?:in|for|during|over)\s+(?:the\s+)?(?:bars?|measures?)\s", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SaysFoot = new(@"\b(?:left|right|outside|inside) f(?:oo|ee)t\b|(?<!'s )\b(?-i:[LR])\b|\bsteps?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex TurnsOnly = new(@"^(?:on the last(?: step| count| one)?,? |and |then )*(?:turn|fac|end|finish)\w*\b(?!.*\bsteps?\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Stands = new(@"\b(?:facing|looking|held|joined|side by side|hands?|in (?:a|one|two|the) (?:\w+ )?(?:ring|circle|lines?|rows?)|round the (?:room|hall|floor))\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Instead = new(@"^\W*(?:other|some other|alternative) (?:starts|ways|versions?|endings?)\b|^\W*(?:variations?|alternatives?|alternatively|instead)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Named = new(@"^The \p{Lu}\w*(?: \p{Lu}\w*)?$", RegexOptions.CultureInvariant);

    // Where counts stand beside the steps, words without counts and without feet are talk.
    private bool Labelled() => _part is { Groups.Count: > 2 } part && part.Groups.Count(g => g.Label is not null || g.Again is not null) * 10 >= part.Groups.Count * 8;

    private void Steps(SheetLine line, string plain)
    {
        plain = Letter1.Replace(plain, "", 1);
        plain = NthToNth.Replace(NextOnes.Replace(plain, "", 1), "${from}-${to}th", 1);
        var fills = Fills.Match(plain) is { Success: true } filled ? int.Parse(filled.Groups["n"].Value, CultureInfo.InvariantCulture) : 0;
        if (fills > 0) plain = Fills.Replace(plain, "");
        var (at, role, said) = (0, _block, false);
        var label = CountLabel.AtStart(plain, 0, out var after);
        if (label is not null)
        {
            at = after;
            if (_bars && _beats > 0 && InTable(line, plain, ref label, ref at))
            {
                _plan.BeatsInBar = _beats;
            }
            else if (_bars && CountLabel.AtStart(plain, at, out var second) is { } within && TwoLabels(plain))
            {
                // "1 1-2 both hands": a table of bars and counts, and nobody knows how long a bar is. The bar says when.
                (label, at) = (label with { Unit = LabelUnit.Bars }, second);
                _plan.BeatsInBar = Math.Max(_plan.BeatsInBar, label.Length == 1 ? within.To : 0);
            }
            else if (_bars && label.Unit == LabelUnit.Counts && Regex.IsMatch(plain, @"^(?:\d{1,2})(?:-\d{1,2})?\s", RegexOptions.CultureInvariant) && lines.Any(l => TwoLabels(l.Plain)))
            {
                label = label with { Unit = LabelUnit.Bars };
            }
        }

        if (label is not null && Drawn.Match(plain, at) is { Success: true } drawn) at += drawn.Length;
        if (RoleWords.Opens(plain, at, out var opens, out var end, out var marked) && (marked || end < plain.Length))
        {
            (role, said, at) = (opens, true, end);
            if (label is null && CountLabel.AtStart(plain, at, out after) is { } later) (label, at) = (later, after);
        }

        var labelled = label is not null;
        var words = InColumns(line, plain[at..]);
        if (Opposite.IsMatch(words) && (role == Role.Follow || Regex.IsMatch(words, @"\b(?:partner|lady|woman|follow\w*|man|lead\w*)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)) && AgainWords.Of(words) is not { From: > 0 }) _plan.Opposite = true;
        var any = false;
        var carried = 0;
        var instead = false;
        var first = true;
        var served = new List<Role?>();
        var aside = new List<string>();
        foreach (var said1 in Sentences.Of(words, role, label is not null))
        {
            var sentence = said1 with { Text = Rhythm.Before(Letter1.Replace(said1.Text, "", 1), out var rhythm) };
            if (instead || Instead.IsMatch(sentence.Text))
            {
                // "Other starts that also work: ...": all that comes after it on its line.
                instead = true;
                aside.Add(sentence.Text);
                continue;
            }

            if (Named.IsMatch(sentence.Text) && !sentence.RoleSaid && sentence.Label is null && label is null)
            {
                // "The Dip. The left foot is placed well behind ...": the name of what comes.
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && label is null && _plan.Parts.TrueForAll(p => p.Groups.Count == 0) && Stands.IsMatch(sentence.Text) && !SaysFoot.IsMatch(sentence.Text))
            {
                // "Couples round the room facing anti-clockwise, nearest hands held": how they stand before the first step.
                aside.Add(sentence.Text);
                continue;
            }

            if ((Talk.IsMatch(sentence.Text) && !Wording.StandIns.Stands(sentence.Text) && sentence.Label is null && !(first && label is not null)) || Begins.IsMatch(sentence.Text))
            {
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Role == Role.Follow && Opposite.IsMatch(sentence.Text) && AgainWords.Of(sentence.Text) is not { From: > 0 })
            {
                _plan.Opposite = true;
                aside.Add(sentence.Text);
                // "Man side left, close right, ... Lady same with the other foot": his steps are both's.
                foreach (var his in _part?.Groups.FindAll(g => g.Line == line && g.Role == Role.Lead) ?? []) his.Role = null;
                continue;
            }

            if (sentence.Label is null && !labelled && Labelled() && !Looks.IsMatch(sentence.Text) && !Wording.StandIns.Stands(sentence.Text) && (!NamesFoot.IsMatch(sentence.Text) || sentence.RoleSaid || said) && AgainWords.Of(sentence.Text) is null)
            {
                aside.Add(sentence.Text);
                continue;
            }

            // "Man starts with the left foot", "facing line of dance" before the first step: how the dance begins.
            if (StartsOn.IsMatch(sentence.Text) || (sentence.Label is null && label is null && _plan.Parts.TrueForAll(p => p.Groups.Count == 0) && Looks.IsMatch(sentence.Text))
                || (Opposite.IsMatch(sentence.Text) && !NamesFoot.IsMatch(sentence.Text) && sentence.RoleSaid))
            {
                _plan.Opposite |= Opposite.IsMatch(sentence.Text);
                aside.Add(sentence.Text);
                continue;
            }

            // "The man to the left and the lady to the right": whereto, and not yet what.
            if (sentence.RoleSaid && WayOnly.IsMatch(sentence.Text) && label is not { Length: 1 } && sentence.Label is null)
            {
                aside.Add(sentence.Text);
                continue;
            }

            if (AgainWords.DoAgain(sentence.Text) is { } order && _part is { Groups.Count: > 0 })
            {
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = sentence.Label ?? (first && sentence.Text == words.Trim(' ', '.') ? label : null), Again = order });
                (any, first) = (true, false);
                continue;
            }

            // The line's counts are each dancer's own.
            var own = sentence.Label ?? (first || !served.Contains(sentence.Role) ? label : null);
            served.Add(sentence.Role);
            if (AgainWords.Of(sentence.Text) is { } again && (AgainWords.NamesCounts(sentence.Text) || (SoOn.IsMatch(sentence.Text) && again.From > 0) || !speaks(Regex.Replace(sentence.Text, @"\b(?:the\s+)?(?:L|R|LF|RF|LOD|RLOD|steps?|dance|walks?|turns?|counts?|repeat|again|same|back|backwards?|forward|left|right|side|foot|feet|first|starting|opposite|other|end|finish|begin\w*|measures?|bars?|counts?|\d+|original|place)\b", " ", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant))))
            {
                if (SoOn.IsMatch(sentence.Text) && again.From > 0)
                {
                    Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Again = again with { To = Math.Max(again.To, (own?.From ?? 1) - 1) }, AndSoOn = true });
                    (any, first) = (true, false);
                    continue;
                }

                if (own is null && InBars.Match(sentence.Text) is { Success: true } bars && CountLabel.AtStart(sentence.Text, bars.Index, out _) is { } there) own = there;
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Again = again, Except = Differs.Match(sentence.Text) is { Success: true } differs ? differs.Value.Trim(' ', ',') : "" });
                (any, first) = (true, false);
                continue;
            }

            if (own is { Length: > 1 } && sentence.Text == words.Trim(' ', '.') && AgainWords.AndBack(sentence.Text) && _part is { Groups.Count: > 0 })
            {
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Again = new(0, 0, LabelUnit.Counts, true, 1) });
                (any, first) = (true, false);
                continue;
            }

            var phrases = Phrases.Of(sentence, line, ref carried);
            rhythm.Into(phrases, speaks);
            var speaking = phrases.Where(p => speaks(p.Text) && !Phrases.SpeaksAside(p.Text)).ToList();
            if (speaking.Count == 0)
            {
                // "Pause through beat four" may have no foot in it; words that only talk say nothing.
                // "For bars five and six hands are dropped": what is danced then is said in the sentences after it.
                if (own is null || (own is { Unit: LabelUnit.Bars } && !sentence.RoleSaid && sentence.Text != words.Trim(' ', '.')))
                {
                    if (own is { Length: > 1 }) label = null;
                    aside.Add(sentence.Text);
                    continue;
                }

                first = false;
                if (phrases.Count == 0) continue;
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Phrases = phrases });
                continue;
            }

            // "Meas 3: face the centre. Step right ...": the steps after it have the counts.
            if (own is { Unit: LabelUnit.Bars } && Looks.IsMatch(sentence.Text) && !NamesFoot.IsMatch(sentence.Text) && sentence.Text != words.Trim(' ', '.'))
            {
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Phrases = phrases });
                any = true;
                continue;
            }

            if (own is null && label is { Unit: not LabelUnit.Order } && _part?.Groups is [.., { Again: null, Times: 1 } before] && before.Line == line && before.Role == sentence.Role && before.Label == label
                && !speaking.TrueForAll(p => TurnsOnly.IsMatch(p.Text)) && ((before.Phrases.TrueForAll(p => p.Label is null) && phrases.TrueForAll(p => p.Label is null)) || (label.Unit == LabelUnit.Bars && before.Phrases.Exists(p => p.Label is not null))))
            {
                // "9-10  Step forward, touch. Step back, touch": all of it fills the counts.
                before.Phrases.AddRange(phrases);
                any = true;
                continue;
            }

            Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Phrases = phrases, Times = TimesOf(words) });
            (any, first) = (true, false);
        }

        if (said && role == Role.Follow && !labelled) BesideHis(line);

        if (fills > 0 && _part is { } part && part.Groups.FindAll(g => g.Line == line && g.Again is null && g.Phrases.Exists(p => speaks(p.Text))) is { Count: > 0 } mine)
        {
            // Each dancer's own, or the whole line's where it is one.
            foreach (var group in mine.Exists(g => g.Role is not null) ? mine.FindAll(g => g.Role is not null && mine.Count(o => o.Role == g.Role) == 1) : mine.Count == 1 ? mine : []) group.Fill = fills;
            part.Filled++;
        }

        if (!any && label is { Unit: LabelUnit.Bars } && char.IsDigit(plain[0]) && _part is not null)
        {
            // "2-4  swing": nobody knows the steps, and the bars are there all the same.
            Into(new() { Line = line, Label = label, Phrases = [new(words.Trim(' ', '.'), line, null, 0)] });
            (any, aside) = (true, []);
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

    // "W: RF back, LF back, ..." under as many lines of his: she dances at the same time, in the same rhythm.
    private void BesideHis(SheetLine line)
    {
        if (_part is not { } part || part.Groups.FindIndex(g => g.Line == line) is not (> 0 and var hers)) return;
        var his = part.Groups.Take(hers).ToList();
        if (his.Exists(g => g.Role == Role.Follow || g.Label is not null || g.Again is not null || g.Times > 1)) return;
        var steps = his.SelectMany(g => g.Phrases).Where(p => speaks(p.Text)).ToList();
        var own = part.Groups.Skip(hers).SelectMany(g => g.Phrases).Count(p => speaks(p.Text));
        if (own < 3 || own != steps.Count) return;
        foreach (var group in his) group.Role = Role.Lead;
        var at = 0;
        foreach (var group in part.Groups.Skip(hers))
        {
            for (var i = 0; i < group.Phrases.Count; i++)
            {
                if (speaks(group.Phrases[i].Text)) group.Phrases[i] = group.Phrases[i] with { Beats = steps[at++].Beats };
            }
        }
    }

    // "3  1&2  step ..." and, under it, "   3  step ...": a bar, and counts within it.
    private bool InTable(SheetLine line, string plain, ref CountLabel label, ref int at)
    {
        if (TwoLabels(plain) && CountLabel.AtStart(plain, at, out var second) is { } within)
        {
            _bar = label.From;
            if (label.Length > 1 || within.To > _beats)
            {
                (label, at) = (label with { Unit = LabelUnit.Bars }, second);
                return true;
            }

            (label, at) = (within.Moved((_bar - 1) * _beats), second);
            return true;
        }

        if (_table && _bar > 0 && line.Text.Length > 0 && char.IsWhiteSpace(line.Text[0]) && label.Unit == LabelUnit.Counts && label.To <= _beats)
        {
            label = label.Moved((_bar - 1) * _beats);
            return true;
        }

        if (label.Unit != LabelUnit.Counts || label.HasHalves || !(_table || lines.Any(l => TwoLabels(l.Plain)))) return false;
        _bar = label.To;
        label = label with { Unit = LabelUnit.Bars };
        return true;
    }

    // "Man      Lady": what each does stands under his or her own word.
    private static (string Left, string Right)? ColumnsOf(string plain) =>
        Gap.Split(plain) is [var left, var right] && RoleWords.IsHeading(left, out var one) && RoleWords.IsHeading(right, out var other) && one is not null && other is not null && one != other
            ? (left.Trim(':', ' '), right.Trim(':', ' '))
            : null;

    private string InColumns(SheetLine line, string words)
    {
        if (_columns is not var (left, right) || Gap.Split(words.Trim()) is not [var his, var hers]) return words;
        // What stands under it without counts goes on in its column.
        foreach (var under in lines.Skip(line.Number).TakeWhile(l => l.Plain.Length > 0 && CountLabel.AtStart(l.Plain, 0, out _) is null && Gap.IsMatch(l.Text)))
        {
            switch (Gap.Split(under.Plain))
            {
                case [var more, var also]:
                    (his, hers) = ($"{his} {more}", $"{hers} {also}");
                    break;
                case [var one] when under.Text.Length - under.Text.TrimStart().Length >= _rightAt - 2:
                    hers += " " + one;
                    break;
                case [var one]:
                    his += " " + one;
                    break;
                default:
                    return $"{left}: {his.TrimEnd('.')}. {right}: {hers}";
            }

            _joined.Add(under.Number);
        }

        return $"{left}: {his.TrimEnd('.')}. {right}: {hers}";
    }

    private readonly HashSet<int> _joined = [];

    private int _rightAt;

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
