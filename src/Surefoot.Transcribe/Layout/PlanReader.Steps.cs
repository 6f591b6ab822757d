using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;
using Surefoot.Transcribe.Trying;

namespace Surefoot.Transcribe.Layout;

/// <content>A line that speaks of steps: its counts, who dances it, and what each of its sentences does.</content>
internal sealed partial class PlanReader
{
    // "First 8:", "next 16 counts -": how long what follows is, which its steps say as well.
    private static readonly Regex NextOnes = new(@"^(?:the\s+)?(?:first|next|last|following|final)\s+(?:set of\s+)?(?:\d{1,2}|eight|sixteen)(?:\s+(?:counts?|beats?))?\s*(?:[:.]|-+|,)\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Second eight:" after "First eight:": what comes begins on 9, whatever was not understood before.
    private static readonly Regex EightOf = new($@"^(?:the\s+)?(?<nth>{NumberWords.SpelledNth})\s+(?:set of\s+)?(?<n>{NumberWords.Spelled}|\d{{1,2}})(?:\s+(?:counts?|beats?))?\s*(?:[:.]|-+|,)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private (int Nth, int Each) _eights;

    // "... (8 counts)" where a line ends: how long it is.
    private static readonly Regex Fills = new(@"\s*[(\[](?<n>\d{1,2})\s*(?:counts?|cts?\.?|beats)(?:\s*[,;:][^)]*)?[)\]]\s*\.?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "13th to 16th." is a range.
    private static readonly Regex NthToNth = new(@"^(?<from>\d{1,2})(?:st|nd|rd|th|d)\s*(?:to|and|-|through)\s*(?<to>\d{1,2})(?:st|nd|rd|th|d)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "4th, 5th, 6th." as well.
    private static readonly Regex NthList = new(@"^(?<from>\d{1,2})(?:st|nd|rd|th|d)(?:,\s*\d{1,2}(?:st|nd|rd|th|d))*,?\s+(?:and\s+)?(?<to>\d{1,2})(?:st|nd|rd|th|d)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "(a) Beginning with the left foot ..."
    private static readonly Regex ListLetter = new(@"^\(?[a-h]\)\s+", RegexOptions.CultureInvariant);

    // "1-4 | Step ...": a table drawn with bars.
    private static readonly Regex Drawn = new(@"\G\s*\|\s*", RegexOptions.CultureInvariant);

    // "... on the spot while she comes back": what the other does is said elsewhere.
    private static readonly Regex Meanwhile = new(@",?\s+(?:while|as) (?:she|he|the (?:lady|man|gent|woman)) (?:comes?|goes|does|finishes|turns|passes)(?: back| round| around| it| the same| by| under| half ?way(?: round)?| the rest| the other half)?(?=\s*(?:[:;,.)]|$))|\s+as you (?:take|lead|turn|bring|send) (?:the lady|her|him|the man|your partner)[^;,.]*|\s{3,}(?:re-?start|tag)\b.*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Outside foot. Step, close, step, hop": on which foot it begins.
    private static readonly Regex OutsideFoot = new(@"\b(?<foot>outside|inside) foot[.]\s+(?=[A-Z])", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // What the teacher calls, in a column of its own.
    private static readonly Regex Cue = new("^\\s*\"[^\"]*\"(?:\\s{2,}|\\s*[:-]\\s*)(?=\\S)", RegexOptions.CultureInvariant);

    // "... L tog (5-8).  3:00": the wall, as on a clock.
    private static readonly Regex ClockAtEnd = new(@"(?<=[.,;)\]]|\s)\s+(?:facing |to |now )?1?\d[:h][0-5]\d(?: wall)?\.?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "He has his left foot ready and she her right": how they stand before the first step.
    private static readonly Regex ReadyFeet = new(@"\b(?:he|the (?:man|gent\w*|lead\w*)|fellas|fellows|men|gents) (?:has|have) (?:his|the|their) (?:left|right)(?: foot)? (?:ready|free)\b,?(?: and)? (?:she|the (?:lady|woman)|ladies|women)(?: has| have)? (?:her|the|their) (?:left|right)(?: one| foot)?(?: ready| free)?(?=\s*[.,;])|,?\s*(?:with )?\b(?:his|the (?:man|gent\w*|lead\w*)'s) (?:weight|wt) (?:is )?on (?:the|his) (?:left|right)(?: foot)?,? (?:and )?(?:hers|her weight|the (?:lady|woman)'s)(?: is)? on (?:the|her) (?:left|right)(?: foot)?(?=\s*[.,;]|\s*$)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "One step to a bar.", "Two bars for the lady to go under, ...": how long it is, and what it is for.
    private static readonly Regex ToTheBar = new($@"(?<=^|[.;]\s+)\s*(?:(?:and|then|now) )*(?:[\w ]{{3,20}} now, )?(?:one step|two steps|three(?: steps)?) to (?:a|the|each|every) (?:bar|measure)[.,:]\s*|(?<=^|[.;]\s+)\s*(?:then )?(?:{NumberWords.Spelled}|\d) (?:bars|measures) (?:for|of) [^,;.:]{{3,60}},\s+(?=(?:she|he|man|woman|the man|the lady|lady)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Let go. M three steps ...": what hands do has no counts of its own.
    private static readonly Regex OnlyHands = new(@"^(?:(?:let go|drop|release|join|take|keep|change)(?: of)?(?: (?:the|your|both|all|left|right|L|R|inside|outside|other|joined))*(?: hands?)?(?: only)?|(?:both|inside|outside|R|L|right|left) hands?)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "The same back with the other foot: step, close, step, touch": what is danced again is said again.
    private static readonly Regex SameAsSaid = new(@"^(?:and |then |now )?(?:do )?(?:exactly )?the same\b[^:]*\b(?:other|opposite) f(?:oo|ee)t\b[^:]*:\s+.*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Keep walking: left foot forward, ...": what comes is said after it.
    private static readonly Regex KeepWalking = new(@"\b(?:keep|keeps|carry|carries) (?:on )?(?:walking|going|stepping|dancing|moving)(?: on)?:\s+|(?<=^|[.;]\s+)(?:and |then |now )?(?:together|apart|in|out|back) again:\s+(?=(?:he|she|the|left|right)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "When he lifts his hand turn half way": what the other does then is no step.
    private static readonly Regex WhenHe = new(@"(?<=^|[.;]\s+|^\d{1,2}[.)]\s+)(?:when|as|once) (?:he|she|the (?:man|lady|leader|follower)|your partner) (?:lifts?|raises?|drops?|lowers?|takes?|lets? go(?: of)?) (?:his|her|your|the) (?:left |right |other )?(?:hand|arm)s?,?\s+(?=\p{L})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex AgainAlone = new(@"^(?:and |now )?again$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SoOn = new(@"\b(?:and so on|and so forth|etc\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Differs = new(@"\b(?:except|but|only (?:that|do|this|you|the)|instead|apart from|(?:finish|end)ing with)\b.*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Same as 17-24 but to left with LF": which way and from which foot, and nothing that differs.
    private static readonly Regex OtherWayOnly = new(@",?\s*\bbut (?:(?:this time |going |moving )?(?:to|on|with|from|starting|beginning|commencing)(?: with| on| from)? (?:the |your |his )?(?:left|right|other|opposite|L|R|LF|RF)(?: foot| side| way)?\s*)+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex StartsOn = new(@"^(?:goes|moves|leads) (?:off )?first with (?:the |his |her )?(?:left|right)(?: foot)?(?:,? moving ahead)?$|^(?:starts?|begins?|starting|beginning|commences?|commencing)(?: on| with)?(?: the| his| her| your)? (?:left|right|L|R)(?: foot| ft\.?)?$|^your (?:left|right)(?: foot)?$|^(?:the )?(?:left|right|outside|inside|L|R)(?: foot| feet| ft\.?)? (?:first|to start|to begin|free|starts|begins|leads)\W*(?:\([^)]*\))?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex WayOnly = new(@"^(?:to|towards|in towards|out to) (?:the|his|her|their) (?:left|right|wall|centre|center|middle|outside|inside)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex InBars = new(@"\b(?:in|for|during|over)\s+(?:the\s+)?(?:bars?|measures?)\s", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Where counts stand beside the steps, words without counts and without feet are talk.
    private bool Labelled() => _part is { Groups.Count: > 2 } part && part.Groups.Count(g => g.Label is not null || g.Again is not null) * 10 >= part.Groups.Count * 8;

    // The last count of a list at the end of a line, and the part it is of.
    private int _listed;
    private PlanPart? _listedIn;

    private void Steps(SheetLine line, string plain)
    {
        var aside = new List<string>();
        if (EightOf.Match(plain) is { Success: true } eight && NumberWords.Nth(eight.Groups["nth"].Value) is var nth and > 1 && NumberWords.Read(eight.Groups["n"].Value) is var each and (4 or 8 or 16) && _part is { Groups.Count: > 0 } && _eights == (nth - 1, each)) Into(new() { Line = line, Sentence = -1, Reckons = (nth - 1) * each });
        if (EightOf.Match(plain) is { Success: true } one) _eights = (NumberWords.Nth(one.Groups["nth"].Value), NumberWords.Read(one.Groups["n"].Value));
        plain = Apart(WhenHe, ListLetter.Replace(plain, "", 1), aside);
        plain = NthList.Replace(plain, "${from}-${to}th", 1);
        plain = NthToNth.Replace(NextOnes.Replace(plain, "", 1), "${from}-${to}th", 1);
        var fills = Fills.Match(plain) is { Success: true } filled ? int.Parse(filled.Groups["n"].Value, CultureInfo.InvariantCulture) : 0;
        if (fills > 0) plain = Fills.Replace(plain, "");
        var (at, role, said) = (0, _block, false);
        var marked = false;
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

        if (_paragraphs && label is { Length: 1, HasHalves: false, Unit: LabelUnit.Counts } && char.IsDigit(plain[0])) label = label with { Unit = LabelUnit.Order };
        if (_lengths && label is { Length: 1, HasHalves: false, Unit: LabelUnit.Counts } && char.IsDigit(plain[0])) (fills, label) = (label.From, null);
        if (label is not null && Drawn.Match(plain, at) is { Success: true } drawn) at += drawn.Length;
        if (RoleWords.Opens(plain, at, out var opens, out var end, out marked) && (marked || end < plain.Length))
        {
            (role, said, at) = (opens, true, end);
            if (label is null && CountLabel.AtStart(plain, at, out after) is { } later) (label, at) = (later, after);
        }

        if (label is null && said && marked && role is not null && _part is { Groups.Count: > 0 } here && here.Groups[^1] is { Label: { } sameTime } above && above.Role is { } other && other != role && above.Line.Number == line.Number - 1)
        {
            // "17-20 Man: four walks" and under it "Lady: full turn right ...": at the same time.
            label = sameTime;
        }

        var labelled = label is not null;
        var whole = label;
        if (said && label is { Unit: LabelUnit.Bars } of && !NamesFoot.IsMatch(plain[at..]) && Above(of))
        {
            // "Lady: in bar 7 she falls back too": said of a bar that stands above.
            Is(line, LineKind.Remark);
            _plan.Facts.Add(line);
            return;
        }

        if (!said && label is not null && SaidOfAbove(line, label, plain[at..]))
        {
            Is(line, LineKind.Remark);
            _plan.Facts.Add(line);
            return;
        }

        var words = Apart(ReadyFeet, Apart(ClockAtEnd, Apart(Cue, Apart(Meanwhile, InColumns(line, plain[at..]), aside), aside), aside), aside);
        if (label is { Unit: LabelUnit.Counts } beats && _plan.BeatsInBar > 0 && BarPattern.In(ref words, beats) is { } pattern) label = pattern;
        words = Apart(ToTheBar, words, aside);
        words = KeepWalking.Replace(words, "");
        words = OutsideFoot.Replace(words, "from the ${foot} foot, ");
        if (Opposite.IsMatch(words) && (role == Role.Follow || Regex.IsMatch(words, @"\b(?:partner|lady|woman|follow\w*|man|lead\w*)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)) && AgainWords.Of(words) is not { From: > 0 }) _plan.Opposite = true;
        var any = false;
        var carried = 0;
        var instead = false;
        var first = true;
        var served = new List<Role?>();
        if (label is null or { Unit: LabelUnit.Order } && CountsAtTheEnd.In(ref words, _listedIn is not null && _listedIn == _part ? _listed + 1 : 1) is { Count: > 0 } listed)
        {
            // "Walk right, left. Right shuffle. (1-2, 3&4)": the counts of all of it, which each line may begin anew.
            if (_listedIn != _part) _listed = 0;
            var before = listed[0].From <= _listed ? _listed : 0;
            _listed = listed[^1].To + before;
            var counted = CountsAtTheEnd.Shared(listed, words, role, line, speaks);
            foreach (var (when, phrases) in counted) Into(new() { Line = line, Role = role, Label = when.Moved(before), Phrases = phrases });
            _listedIn = _part;
            if (counted.Count > 0)
            {
                Is(line, LineKind.Steps);
                foreach (var talk in aside) _plan.Asides.Add(line with { Plain = talk });
                return;
            }

            if (fills == 0) fills = listed[^1].To - listed[0].From + 1;
        }

        var sentences = Sentences.Of(words, role, label is not null).SelectMany(WithStepsAfter).ToList();
        foreach (var spoken in sentences)
        {
            var sentence = spoken with { Text = Rhythm.Before(ListLetter.Replace(WithoutTalk(spoken.Text, line, aside), "", 1), out var rhythm) };
            if (meant[sentence.Text] is { } tried and not TriedAs.NoStep)
            {
                Into(Tried(sentence, tried, line, first ? label : null, ref carried));
                (any, first) = (true, false);
                continue;
            }

            if (sentence.Label is null && label is null && _plan.Parts.TrueForAll(p => p.Groups.Count == 0) && MovesFirst.IsMatch(sentence.Text))
            {
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && label is null && _part is { Groups.Count: > 0 } && Reckoning.Of(sentence.Text) is var danced and > 0)
            {
                Into(new() { Line = line, Sentence = sentence.Number, Reckons = danced });
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && label is null && _part is { Groups.Count: > 0 } && Reckoning.BarsOf(sentence.Text) is var danceBars and > 0)
            {
                Into(new() { Line = line, Sentence = sentence.Number, Reckons = danceBars, ReckonsBars = true });
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && TurnSaidAfter.Match(sentence.Text) is { Success: true } late && _part?.Groups is [.., { Again: null, Phrases.Count: > 0 } turned] && turned.Line == line)
            {
                // "March on the spot. With the first march you turn a quarter to the left": made with what stands before.
                TurnWith(turned.Phrases, late, sentence.Text);
                continue;
            }

            if (spoken.Announces && sentences.SkipWhile(x => x != spoken).Skip(1).FirstOrDefault() is { Label: null } next && next.Role == spoken.Role && next.RoleSaid && NamesFoot.Count(next.Text) > 1)
            {
                // "The lady goes once round, half of it on each step: she steps back on her left ...".
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && label is null && OneWord.IsMatch(sentence.Text) && sentences.SkipWhile(x => x != spoken).Skip(1).FirstOrDefault() is { } told && (told.Text.StartsWith(sentence.Text, StringComparison.OrdinalIgnoreCase) || (words.Contains(sentence.Text + "!", StringComparison.Ordinal) && told.Text.Contains(sentence.Text.TrimEnd('s'), StringComparison.OrdinalIgnoreCase) && NamesFoot.IsMatch(told.Text))))
            {
                // "Now we rock. Rock forward on the right, ...": what comes is named first.
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && AgainAlone.IsMatch(sentence.Text) && spoken == sentences[^1] && lines.Skip(line.Number).All(l => l.Plain.Length == 0))
            {
                // "... and there you are. Again!" where the sheet ends: all of it from the start.
                aside.Add(sentence.Text);
                continue;
            }

            if (instead || Instead.IsMatch(sentence.Text))
            {
                // "Other starts that also work: ...": all that comes after it on its line.
                instead = true;
                aside.Add(sentence.Text);
                continue;
            }

            if (char.IsDigit(plain[0]) && label is { Length: 1, HasHalves: false } && spoken == sentences[0] && !spoken.Announces && spoken.Text.Split(' ').Length <= 3 && !spoken.RoleSaid && spoken.Label is null && !NamesFoot.IsMatch(spoken.Text) && sentences.Count > 1 && sentences[1].RoleSaid)
            {
                // "2. Underarm turn. He walks ...": the name of the figure, and who does what in it.
                aside.Add(sentence.Text);
                continue;
            }

            if (Named.IsMatch(sentence.Text) && !sentence.RoleSaid && sentence.Label is null && label is null)
            {
                // "The Dip. The left foot is placed well behind ...": the name of what comes.
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.Label is null && label is null && _plan.Parts.TrueForAll(p => p.Groups.Count == 0) && Stands.IsMatch(sentence.Text) && (!SaysFoot.IsMatch(sentence.Text) || StoodFirst.IsMatch(sentence.Text)) && !Wording.StandIns.Stands(sentence.Text))
            {
                // "Couples round the room facing anti-clockwise, nearest hands held": how they stand before the first step.
                aside.Add(sentence.Text);
                continue;
            }

            if ((Talk.IsMatch(sentence.Text) && AgainWords.DoAgain(sentence.Text) is null && !Wording.StandIns.Stands(sentence.Text) && sentence.Label is null && !(first && label is not null && !(_paragraphs && !NamesFoot.IsMatch(sentence.Text)))) || (Begins.IsMatch(sentence.Text) && !AgainWords.FromTheOtherFoot(sentence.Text)))
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

            if (sentence.Label is null && !labelled && Labelled() && !Looks.IsMatch(sentence.Text) && !Wording.StandIns.Stands(sentence.Text) && (!NamesFoot.IsMatch(sentence.Text) || sentence.RoleSaid || said) && AgainWords.Of(sentence.Text) is null && !AgainWords.FromTheOtherFoot(sentence.Text))
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

            if (sentence.Label is null && !labelled && Labelled() && Looks.IsMatch(sentence.Text) && sentence.Text.IndexOf(',', StringComparison.Ordinal) is > 0 and var comma && !NamesFoot.IsMatch(sentence.Text))
            {
                // "Face centre, the whole circle goes in and out" between lines with counts: only where they look.
                aside.Add(sentence.Text[(comma + 1)..].Trim());
                sentence = sentence with { Text = sentence.Text[..comma] };
            }

            if (SameAsSaid.IsMatch(sentence.Text)) sentence = sentence with { Text = "the same with the other foot" };
            if (OnlyHands.IsMatch(sentence.Text) && sentence.Label is null && sentences.SkipWhile(x => x != spoken).Skip(1).Any(s => speaks(s.Text)))
            {
                aside.Add(sentence.Text);
                continue;
            }

            var allOfIt = sentence.Text;
            if (SameAndMore.Match(sentence.Text) is { Success: true } more && !NamesFoot.IsMatch(Sides.Replace(more.Groups["rest"].Value, "")))
            {
                // "Same again, and let her come round to your right side": danced again, and said of how.
                aside.Add(more.Groups["rest"].Value);
                sentence = sentence with { Text = more.Groups["same"].Value };
            }
            else if (sentence.RoleSaid && sentence.Label is null && _part?.Groups is [.., { Again: not null } same] && same.Line == line && SameAndMore.IsMatch(same.Said + ", x") && !NamesFoot.IsMatch(Sides.Replace(sentence.Text, "")))
            {
                // "Same again - she comes back in front".
                aside.Add(sentence.Text);
                continue;
            }

            if (sentence.RoleSaid && SameForHer.IsMatch(sentence.Text))
            {
                // "W same": what both do is said once.
                aside.Add(sentence.Text);
                continue;
            }

            if (NamedBefore(sentence.Text) is { } named && (sentence.Label ?? (first ? label : null)) is { } when)
            {
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = when, Again = named });
                (any, first) = (true, false);
                continue;
            }

            if (AgainWords.DoAgain(sentence.Text) is { } order && _part is { Groups.Count: > 0 })
            {
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = sentence.Label ?? (first && allOfIt == words.Trim(' ', '.') ? label : null), Again = order, Said = sentence.Text });
                (any, first) = (true, false);
                continue;
            }

            // The line's counts are each dancer's own.
            var own = sentence.Label ?? (first || !served.Contains(sentence.Role) ? label : null);
            served.Add(sentence.Role);
            if (AgainWords.Of(sentence.Text) is { } again && (AgainWords.NamesCounts(sentence.Text) || (SoOn.IsMatch(sentence.Text) && again.From > 0) || !speaks(Regex.Replace(sentence.Text, @"\b(?:the\s+)?(?:in\s+R?LOD|L|R|LF|RF|beg|begins?|w|ft|inside|outside|ftwk|LOD|RLOD|steps?|dance|walks?|turns?|counts?|repeat|again|same|back|backwards?|forward|left|right|side|foot|feet|first|starting|opposite|other|end|finish|begin\w*|measures?|bars?|counts?|\d+|original|place)\b", " ", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant))))
            {
                if (SoOn.IsMatch(sentence.Text) && again.From > 0)
                {
                    Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Again = again with { To = Math.Max(again.To, (own?.From ?? 1) - 1) }, AndSoOn = true });
                    (any, first) = (true, false);
                    continue;
                }

                if (own is null && InBars.Match(sentence.Text) is { Success: true } bars && CountLabel.AtStart(sentence.Text, bars.Index, out _) is { } there) own = there;
                Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Again = again, Said = sentence.Text, Except = Differs.Match(OtherWayOnly.Replace(sentence.Text, "")) is { Success: true } differs ? differs.Value.Trim(' ', ',') : "" });
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
            if (rhythm.IsEmpty && _rhythm.Length > 0 && phrases.TrueForAll(p => p.Beats == 0 && p.Label is null) && sentence.Label is null && phrases.FindAll(p => speaks(p.Text)) is var timed && (timed.Count == Rhythm.Steps(_rhythm) || timed.Sum(p => NamesFoot.Count(p.Text)) == Rhythm.Steps(_rhythm))) Rhythm.Before(_rhythm + ": x", out rhythm);
            rhythm.Into(phrases, speaks);
            var speaking = phrases.Where(p => speaks(p.Text) && !Phrases.SpeaksAside(p.Text)).ToList();
            if (speaking.Count == 0)
            {
                // "Pause through beat four" may have no foot in it; words that only talk say nothing.
                // "For bars five and six hands are dropped": what is danced then is said in the sentences after it.
                var taken = own is { Unit: LabelUnit.Bars } && !sentence.RoleSaid && sentence.Text != words.Trim(' ', '.');
                if (taken && char.IsDigit(plain[0]) && phrases.Count > 0 && !sentences.Exists(s => s != spoken && (s.Label is not null || (speaks(s.Text) && !Looks.IsMatch(s.Text)))))
                {
                    // "2-4 swing; at the end face right": nothing else takes the bars.
                    Into(new() { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = own, Phrases = phrases });
                    (any, first) = (true, false);
                    continue;
                }

                if (own is null || taken)
                {
                    if (own is { Length: > 1 }) label = null;
                    aside.Add(sentence.Text);
                    continue;
                }

                if (sentence.RoleSaid && !first && phrases.Count > 0 && _part is { Groups: [.., { Again: null, Role: null } both] } && both.Line == line && both.Label == own)
                {
                    // "Change places, the lady going under": how they do it, and no steps beside it.
                    both.Phrases.AddRange(phrases.Select(p => p with { Text = sentence.Role switch { Role.Lead => "the man ", Role.Follow => "the lady ", _ => "both " } + p.Text }));
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

        // "Do it again (8 counts)": as many of those before it.
        if (fills > 0 && _part?.Groups is [.., { Label: null, Again: { From: 0, Last: 0, LastCounts: 0 } back } only] && only.Line == line && _part.Groups.Count(g => g.Line == line) == 1) only.Again = back with { LastCounts = fills, WholeLine = false };

        if (!any && whole is { Unit: LabelUnit.Bars } && char.IsDigit(plain[0]) && _part is { } swung && !swung.Groups.Exists(g => g.Line == line && g.Label == whole))
        {
            // "2-4  swing": nobody knows the steps, and the bars are there all the same.
            Into(new() { Line = line, Label = whole, Phrases = [new(words.Trim(' ', '.'), line, null, 0)] });
            (any, aside) = (true, []);
        }

        _plan.Passed.AddRange(aside.Select(talk => line with { Plain = talk }));
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

    // A sentence that sounds like talk, and is tried as steps, or as what came before danced again.
    private static PlanGroup Tried(Sentence sentence, TriedAs tried, SheetLine line, CountLabel? label, ref int carried)
    {
        var group = new PlanGroup { Line = line, Sentence = sentence.Number, Role = sentence.Role, Label = sentence.Label ?? label, Said = sentence.Text };
        if (tried == TriedAs.Again) group.Again = AgainWords.Of(sentence.Text) is { From: 0 } again ? again : AgainWords.Plainly(sentence.Text);
        else group.Phrases.AddRange(Phrases.Of(sentence, line, ref carried));
        return group;
    }

    // "With the first march you turn 90 degrees to the left so that ...".
    private static readonly Regex TurnSaidAfter = new(@"^(?:with|on|during) the (?:first|(?<last>last|fourth|final))(?: (?!turn)\w+)?,? (?:(?:you|they|we) )?(?:make |do )?(?:a )?(?:turn (?:a |by )?)?(?:(?<quarter>90 degrees|quarter|¼|1/4)|180 degrees|half|½|1/2)(?: turn)? (?:to (?:the |your )?)?(?<way>left|right|CW|CCW|clockwise)\b(?!.*\b(?:step|touch|kick)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static void TurnWith(List<Phrase> phrases, Match turn, string said)
    {
        var which = turn.Groups["last"].Success ? phrases.Count - 1 : 0;
        var how = $"turning {(turn.Groups["quarter"].Success ? "¼" : "½")} {(turn.Groups["way"].Value is ['l' or 'L', ..] or ['C' or 'c', 'C' or 'c', ..] ? "left" : "right")}";
        var step = phrases[which];
        if (which == 0 && FeetInARow.Match(step.Text) is { Success: true } row)
        {
            // "March on the spot right, left, right, left": with the first of them.
            phrases[0] = step.With($"{row.Groups["what"].Value} {row.Groups["first"].Value} {how}", said);
            phrases.Insert(1, step with { Text = $"{row.Groups["what"].Value} {row.Groups["rest"].Value}" });
            return;
        }

        phrases[which] = step.With($"{step.Text} {how}", said);
    }

    private static readonly Regex FeetInARow = new(@"^(?<what>.*?)(?: for \w+ counts)? (?<first>left|right|L|R),? (?<rest>(?:left|right|L|R)(?:,? (?:left|right|L|R))*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Do that again, stomp left": what is danced again, and what comes after it.
    private IEnumerable<Sentence> WithStepsAfter(Sentence sentence)
    {
        var at = AgainWords.StepsAfter(sentence.Text, speaks);
        if (at == 0) return [sentence];
        if (AgainWords.SaidAgain(sentence.Text[..(at - 1)], sentence.Text[at..], speaks)) return [sentence with { Text = sentence.Text[at..].Trim() }];
        return [sentence with { Text = sentence.Text[..(at - 1)].Trim() }, sentence with { Text = sentence.Text[at..].Trim(), Label = null }];
    }

    // Words that are no step of the line are kept beside it.
    private static string Apart(Regex what, string words, List<string> aside) => what.Replace(words, found =>
    {
        aside.Add(found.Value.Trim(' ', ',', '"'));
        return "";
    });

    // "Wait for the singing, and then off you go: step to the side, bring the other foot in, ...": what stands after the colon dances.
    private string WithoutTalk(string text, SheetLine line, List<string> aside)
    {
        var colon = text.IndexOf(": ", StringComparison.Ordinal);
        if (colon < 12 || !Talk.IsMatch(text[..colon]) || SaysFoot.IsMatch(text[..colon])) return text;
        var rest = text[(colon + 2)..];
        if (!SaysFoot.IsMatch(rest) || rest.Split(',').Count(p => speaks(p)) < 2 || NamesFoot.Count(rest) * 3 > rest.Split(' ').Length) return text;
        aside.Add(text[..colon]);
        return rest;
    }

    // "3  1&2  step ..." and, under it, "   3  step ...": a bar, and counts within it.
    private bool InTable(SheetLine line, string plain, ref CountLabel label, ref int at)
    {
        if (TwoLabels(plain) && CountLabel.AtStart(plain, at, out var second) is { } within)
        {
            (_bar, _barAt) = (label.From, Indent(line));
            if (label.Length > 1 || within.To > _beats)
            {
                (label, at) = (label with { Unit = LabelUnit.Bars }, second);
                return true;
            }

            (label, at) = (within.Moved((_bar - 1) * _beats), second);
            return true;
        }

        if ((_table || lines.Any(l => TwoLabels(l.Plain))) && _bar > 0 && Indent(line) > _barAt && label.Unit == LabelUnit.Counts && label.To <= _beats)
        {
            label = label.Moved((_bar - 1) * _beats);
            return true;
        }

        if (label.Unit != LabelUnit.Counts || label.HasHalves || !(_table || lines.Any(l => TwoLabels(l.Plain)))) return false;
        (_bar, _barAt) = (label.To, Indent(line));
        label = label with { Unit = LabelUnit.Bars };
        return true;
    }

    private static int Indent(SheetLine line) => line.Text.Length - line.Text.TrimStart().Length;

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
