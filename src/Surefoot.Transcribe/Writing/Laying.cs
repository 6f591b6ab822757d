using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Choosing;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Source;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Writing;

/// <summary>Lays the plan's groups on counts: labels as they stand, the others one after the other; repeats danced out.</summary>
internal sealed partial class Laying(SheetPlan plan, SheetFacts facts, PhraseWords words)
{
    private static readonly Regex Over = new($@"\b(?:over|for|in|of|during|all)\s+(?<n>{NumberWords.Spelled}|\d{{1,2}})\s+(?:counts?|beats?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private readonly Dictionary<Role, int> _next = [];
    private DraftPart _part = null!;
    private bool _steps;
    private int _beatsInBar = facts.BeatsInBar;
    private int _item;
    private SheetLine? _itemLine;
    private bool _moved;
    private readonly Dictionary<DraftLine, int> _items = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<DraftLine, PlanGroup> _groups = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Role, List<DraftPhrase>> _looks = new() { [Role.Lead] = [], [Role.Follow] = [] };

    /// <summary>True when a list of counts that names nobody was taken for the follow's.</summary>
    public bool SecondListTaken { get; private set; }

    public List<DraftPart> Lay()
    {
        var parts = new List<DraftPart>();
        if (BarsOrCounts.In(plan, facts, words) is var beats and > 0) _beatsInBar = beats;
        foreach (var planned in plan.Parts)
        {
            Begin(planned.Heading, planned.StatedCounts);
            Taken.AddRange(OrderAsCounts.In(planned, words));
            _steps = NumbersAreSteps(planned);
            AtTheSameTime(planned);
            MusicAgain(planned);
            var (role, last) = ((Role?)null, 0);
            var roles = planned.Groups.Exists(g => g is { Role: Role.Follow, Label: not null } && planned.Groups.Find(o => o.Line == g.Line) == g);
            foreach (var group in planned.Groups)
            {
                // A second list from 1 is the follow's where two dance and nobody was named, or else a part of its own.
                if (group is { Role: null, Label: { Unit: not LabelUnit.Bars } label } && !roles)
                {
                    if (label.From == 1 && last > 1)
                    {
                        if (facts.Couple && role is null && plan.Parts.Count == 1 && !plan.Opposite && !facts.OtherFeetSaid && planned.Groups.Count(g => g is { Role: null, Label: { Unit: not LabelUnit.Bars, From: 1 } }) == 2)
                        {
                            (role, SecondListTaken) = (Role.Follow, true);
                            for (var i = 0; i < _part.Lines.Count; i++)
                            {
                                if (_part.Lines[i].Role is null) _part.Lines[i] = _part.Lines[i] with { Role = Role.Lead };
                            }

                            _next[Role.Follow] = 1;
                        }
                        else
                        {
                            Begin("", null);
                        }
                    }

                    last = label.To;
                }

                Lay(group, group.Role ?? role);
            }
        }

        parts.RemoveAll(p => p.Lines.Count == 0);
        LookAtTheEnd(parts);
        return parts;

        void Begin(string heading, int? stated)
        {
            if (_part is not null) _laid.Add((_part, _before));
            if (_part is not null) _before += _part.Lines.Select(l => l.Counts.To).DefaultIfEmpty(0).Max();
            _part = new() { Heading = heading, StatedCounts = stated };
            parts.Add(_part);
            (_next[Role.Lead], _next[Role.Follow]) = (1, 1);
        }
    }

    // "13-14  Walk on 4; ladies go once round": what fills the counts and names nobody is the other's, where the same counts are one dancer's as well.
    private void AtTheSameTime(PlanPart part)
    {
        for (var i = 0; i + 1 < part.Groups.Count; i++)
        {
            if (part.Groups[i] is { Role: null, Again: null, Label: { HasHalves: false } label } group && part.Groups[i + 1] is { Role: { } one } next && next.Line == group.Line && next.Label == label
                && BarsOrCounts.Own(group, words) >= Beats.Of(label.Length * (label.Unit == LabelUnit.Bars ? _beatsInBar : 1)))
            {
                group.Role = one == Role.Lead ? Role.Follow : Role.Lead;
            }
        }
    }

    // "1-4 ..." and under it "1-4 ...", "5-8 ..." and "5-8 ...": the music comes again, and other steps to it.
    private static void MusicAgain(PlanPart part)
    {
        var labelled = part.Groups.FindAll(g => g is { Role: null, Label: not null });
        if (part.Groups.Exists(g => g.Role is not null && g.Label is not null)) return;
        var (again, last) = (0, default(PlanGroup));
        foreach (var group in labelled)
        {
            if (last is { Label: { } before } && group.Line != last.Line)
            {
                if (group.Label == before) again++;
                else if (group.Label!.From != before.To + 1) return;
            }

            last = group;
        }

        // One list twice, and nothing else, is another matter: two dancers, or two parts.
        if (again == 0 || last!.Label == labelled[0].Label) return;
        var (moved, said) = (0, labelled[0].Label!);
        last = labelled[0];
        foreach (var group in labelled)
        {
            if (group.Line != last.Line && group.Label == said) moved += said.Length;
            said = group.Label!;
            group.Label = said.Moved(moved);
            last = group;
        }
    }

    // "End facing the line of dance": they turn with their last step.
    private void LookAtTheEnd(List<DraftPart> parts)
    {
        foreach (var (role, looks) in _looks)
        {
            if (looks.Count == 0 || parts.SelectMany(p => p.Lines).LastOrDefault(l => l.Role is null || l.Role == role) is not { } last) continue;
            // What both dance is written once.
            if (last.Role is not null || role == Role.Lead) last.Phrases.AddRange(looks);
        }
    }

    // "1) triple step ... on one-and-two": the numbers number the steps, not the counts.
    private bool NumbersAreSteps(PlanPart part)
    {
        // Items of several counts each: the numbers number the items.
        var single = part.Groups.FindAll(g => g.Label is { Unit: LabelUnit.Counts, Length: 1, HasHalves: false });
        var several = single.Count(g => g.Phrases.Where(p => words.Speaks(p.Text)).Sum(p => words.Read(p.Text).Length.Ceiling) > 1);
        // Numbered paragraphs of several sentences are no counts.
        if (single.Count > 2 && single.Select(g => g.Line).Distinct().Count(l => l.Plain.Length > 90 && l.Plain.Contains(". ", StringComparison.Ordinal)) * 2 > single.Select(g => g.Line).Distinct().Count()) return true;
        return part.Filled > 1 || (single.Count > 1 && single.Count * 2 > part.Groups.Count(g => g.Label is not null) && several * 3 >= single.Count * 2) || part.Groups.Exists(g => g.Label is { Unit: LabelUnit.Counts, Length: 1, HasHalves: false } && g.Phrases.Exists(p => p.Label is not null || p.Beats > 0));
    }

    private void Lay(PlanGroup group, Role? role)
    {
        if (group.Reckons > 0)
        {
            Reckon(group);
            return;
        }

        if (group.Again is { } again)
        {
            Repeat(group, again, role);
            return;
        }

        _item = group.Label is { } numbered && (numbered.Unit == LabelUnit.Order || (numbered.Unit == LabelUnit.Counts && _steps)) ? numbered.From : group.Label is null && !group.Phrases.TrueForAll(p => OnlyLooks(words.Read(p.Text))) ? _item : 0;
        _itemLine = group.Line;
        OnTheBar(group);
        var label = Plainer(LabelOf(group, role), group) ?? (group.Fill > 0 && !FilledTogether(group) ? CountLabel.Of(Next(role), group.Fill) : null);
        label = Mended(label, group, role);
        if (label is { HasHalves: false, Length: > 1 } && group.Again is null && GoesOn(group, label) && BarsOrCounts.Own(group, words) is var own && own.IsWhole && own > Beats.Zero && own < Beats.Of(label.Length)) label = CountLabel.Of(label.From, own.Ceiling) with { Unit = label.Unit };
        if (label is { HasHalves: false }) TurnsWithTheStep(group, label);
        for (var time = 0; time < group.Times; time++)
        {
            var at = label?.From ?? Next(role);
            // Beside counts of the line's own, numbers inside it say something else.
            var inside = (label is null || group.Label?.Unit == LabelUnit.Bars) && group.Phrases.Exists(p => p.Label is not null && words.Speaks(p.Text));
            // What fills the bars one after the other needs no counts of its own.
            inside = inside && !(label is { HasHalves: false } && BarsOrCounts.Own(group, words) == Beats.Of(label.Length));
            if (inside) LayByOwnLabels(group, role, label);
            else Add(role, label?.Moved(time * label.Length), at, group.Phrases, group);
        }
    }

    /// <summary>What was taken where no step of the same line could say it.</summary>
    public List<(int Line, string Says)> Taken { get; } = [];

    // Counts that stand inside a numbered item begin anew with it: the line, whose it is, and what stands before it.
    private (SheetLine? Line, Role? Role, int Before) _anew;

    private CountLabel? LabelOf(PlanGroup group, Role? role)
    {
        _moved = false;
        switch (group.Label)
        {
            case null or { Unit: LabelUnit.Order }:
                return null;
            case { Unit: LabelUnit.Bars } bars:
                var beats = _beatsInBar;
                var from = ((bars.From - 1) * beats) + 1;
                // Bars printed twice are danced after one another.
                _moved = from < Next(role);
                if (_moved && bars.Length > 1 && from == Next(role) - beats)
                {
                    // "Bars 12-16" after "bars 9-12": a slip of the first number.
                    _moved = false;
                    Taken.Add((group.Line.Number, $"bars {bars.From}-{bars.To} were taken for {bars.From + 1}-{bars.To}, because bar {bars.From} is danced already"));
                    return CountLabel.Of(Next(role), (bars.Length - 1) * beats);
                }

                if (_moved) from = Next(role);
                return CountLabel.Of(from, bars.Length * beats);
            case var counts when _steps && counts.Length == 1:
                return null;
            default:
                return group.Label;
        }
    }

    // "R forward (1), L forward (2)", "side left on beat one, then back on beat two".
    private void LayByOwnLabels(PlanGroup group, Role? role, CountLabel? bar)
    {
        var some = new List<Phrase>();
        foreach (var phrase in group.Phrases)
        {
            if (phrase.Text.Length > 0) some.Add(phrase);
            if (phrase.Label is not { } label || !words.Speaks(phrase.Text)) continue;
            if (_steps && bar is null && (_anew.Line != group.Line || _anew.Role != role)) _anew = (group.Line, role, label.From == 1 && _item > 1 ? Next(role) - 1 : 0);
            var shift = bar is null && _steps && _anew.Before > 0 ? _anew.Before : bar is not null ? bar.From - 1 : label.From < Next(role) && !_steps ? Next(role) + (label.Length == 1 ? Before(some) : 0) - label.From : 0;
            // "Right foot back, left foot to the side on beat two": what has no count of its own comes on the counts before.
            while ((label is { Length: 1, HasHalves: false } || Fits(phrase, label)) && some.Count > 1 && label.From + shift - Before(some) >= Math.Max(1, Next(role)))
            {
                var count = label.From + shift - Before(some);
                if (!words.Speaks(some[0].Text))
                {
                    Add(role, null, count, [some[0]], group);
                    some.RemoveAt(0);
                    continue;
                }

                Add(role, CountLabel.Of(count, OwnCounts(some[0])), count, [some[0]], group);
                some.RemoveAt(0);
            }

            if (some.Count > 0) Add(role, label.Moved(shift), label.From + shift, some, group);
            some = [];
        }

        if (some.Count > 0) Add(role, null, Next(role), some, group);
        if (bar is { HasHalves: false } && IsLastOfItsLine(group) && _part.Lines.Count > 0 && _part.Lines[^1] is { Counts.HasHalves: false } last && _groups.GetValueOrDefault(last) == group && last.Counts.To < bar.To)
        {
            // "Step side (1), draw the other to it (2, 3)": the bar goes on to its end.
            var whole = last with { Counts = CountLabel.Of(last.Counts.From, bar.To - last.Counts.From + 1) };
            var wait = whole.Counts.Length - last.Counts.Length;
            whole.Phrases.Add(new(wait == 1 ? "hold" : $"hold {wait} counts", "", []));
            _part.Lines[^1] = whole;
            (_items[whole], _groups[whole]) = (_item, group);
            Advance(role, whole.Counts);
        }
    }

    // How many counts what stands before the last of them takes.
    private int Before(List<Phrase> some) => some.Take(some.Count - 1).Where(p => words.Speaks(p.Text)).Sum(OwnCounts);

    private int OwnCounts(Phrase phrase) => Math.Max(1, words.Read(phrase.Text).Length.Ceiling);

    // "Rock forward, back onto the left, then a triple step (3 & 4)": the last alone fills what is named.
    private bool Fits(Phrase phrase, CountLabel label) =>
        label.Length > 1 && words.Read(phrase.Text) is { Length: var own } && (own == Beats.Of(label.Length) || (label.HasHalves && own >= Beats.Of(2)));

    // "Face left" of dancers who look to the middle.
    private static readonly Regex LooksAside = new(@"^(?:with a (?:small |little )?hop,? )?(?:at the end,? |and |then |now |both |all )*(?:(?:turn|pivot)(?:ing)?(?: (?:on )?(?:L|R|left|right))?(?: over (?:L|R|left|right) shoulder)? )?(?:to )?(?:face|facing) (?:to )?(?:the |your )?(?<side>left|right|L|R)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex GoesOut = new(@"^(?<steps>(?:(?:two|three|four|[2-4]) )?(?:steps?|walks?)) (?:back )?out(?:wards?)?(?: again)?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private string Placed(string text, Role? role)
    {
        if (LooksAside.Match(text) is { Success: true } aside)
        {
            var left = aside.Groups["side"].Value[0] is 'l' or 'L';
            return facts.Facing == "inside" || (facts.Circle && !facts.Couple) ? $"turn to {(left ? "RLOD" : "LOD")}" : $"turn ¼ {(left ? "left" : "right")}";
        }

        // Whoever stands with the back to the middle goes out forward, and a shared way is the lead's.
        if (GoesOut.Match(text) is { Success: true } goes && facts.Facing is { } looks && (looks.StartsWith("lead outside", StringComparison.Ordinal) || looks is "outside" or "inside"))
        {
            return $"{goes.Groups["steps"].Value} {(looks == "inside" ? "back" : "forward")}";
        }

        // The outside foot is his left and her right.
        if (role != Role.Follow) return text;
        return Outside.Replace(text, m => m.Value.StartsWith("o", StringComparison.OrdinalIgnoreCase) ? "inside" : "outside");
    }

    private static readonly Regex Outside = new(@"\b(?:outside|inside)(?= (?:foot|ft|heel|toe))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Turning to look somewhere, however far that is.
    internal static bool OnlyLooks(PhraseRead read) => LooksTo.IsMatch(read.Text);

    private static readonly Regex LooksTo = new(@"^turn(?:ing)? (?:left |right )?to (?:inside|outside|LOD|RLOD|line of dance|face partner)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Change places with your partner, 4 steps", "right elbow swing, 8 steps": each goes forward, though they look at each other.
    private static readonly Regex EachForward = new(@"\b(?:chang(?:e|ing) (?:places|sides) with|(?:right|left|R|L) elbow|pass(?:es|ing)? (?:your |the )?(?:(?:partner|ptnr|ptr)s? )?(?:by )?(?:the )?(?:L|R|left|right) (?:shoulder|shldr))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private void Add(Role? role, CountLabel? label, int at, List<Phrase> phrases, PlanGroup group)
    {
        if (role is null && facts.Couple && facts.SameFeet == false && EachForward.IsMatch(group.Line.Plain) && phrases.TrueForAll(p => !NamesFoot.IsMatch(words.Read(p.Text).Text.Replace("full right", "", StringComparison.Ordinal).Replace("full left", "", StringComparison.Ordinal))) && phrases.Exists(p => words.Speaks(p.Text)))
        {
            Add(Role.Lead, label, at, phrases, group);
            Add(Role.Follow, label, at, phrases, group);
            return;
        }

        phrases = phrases.ConvertAll(p => Placed(p.Text, role) is var placed && placed != p.Text ? p with { Text = placed } : p);
        var drafts = new List<DraftPhrase>();
        var length = Beats.Zero;
        var moves = false;
        var mended = new List<string>();
        var elsewhere = false;
        var looks = new List<string>();
        var filling = false;
        foreach (var phrase in phrases)
        {
            var read = words.Read(phrase.Text);
            // What follows "or" is another way to do it.
            elsewhere |= phrase.Text.StartsWith("or ", StringComparison.OrdinalIgnoreCase);
            if (!words.Speaks(phrase.Text) || elsewhere || (words.Meant[phrase.Text] is null && Layout.Phrases.SpeaksAside(phrase.Text)))
            {
                drafts.Add(new("", phrase.Said, read.Moves.Count == 0 ? read.Unknown : []) { Words = phrase.Text });
                continue;
            }

            moves = true;
            mended.AddRange(read.Mended);
            var text = Regex.Replace(Over.Replace(read.Text, ""), @"\s+", " ").Trim();
            var own = Over.Match(phrase.Text) is { Success: true } over ? Beats.Of(NumberWords.Read(over.Groups["n"].Value)) : read.Length == Beats.Zero ? read.Once : read.Length;
            // "Touch with a clap": hands need no count of their own.
            if (WithSound.IsMatch(phrase.Text) && own > Beats.One) own -= Beats.One;
            filling |= read.Length == Beats.Zero;
            // Turning to look somewhere goes with the step before or after it.
            if (OnlyLooks(read))
            {
                if (label is not { Length: 1 } || phrases.Exists(p => !ReferenceEquals(p, phrase) && words.Speaks(p.Text))) own = Beats.Zero;
                looks.Add($"\"{phrase.Said}\" is danced as a turn there, as far as it takes");
            }
            else if (phrase.Beats == 2 && read.Moves is [{ Figure: null }] && own == Beats.Of(Math.Max(1, read.Moves[0].Feet.Count))) (own, text) = (own + own, "slow " + text);
            length += own;
            drafts.Add(new(text, phrase.Said, read.Unknown) { Told = read.Told, Words = phrase.Text });
        }

        if (!moves && label is null)
        {
            plan.Asides.AddRange(phrases.Select(p => group.Line with { Plain = p.Said }));
            return;
        }

        if (moves && label is null && length == Beats.Zero && looks.Count > 0)
        {
            // A sentence that only says where they look now: they turn with their next step.
            foreach (var one in role is { } named ? (Role[])[named] : [Role.Lead, Role.Follow]) _looks[one].AddRange(drafts);
            Taken.AddRange(looks.Select(l => (group.Line.Number, l)));
            return;
        }

        if (moves)
        {
            // Where they look at last counts.
            var looked = _looks[role ?? Role.Lead].FindLastIndex(l => l.Text.Length > 0);
            var before = _looks[role ?? Role.Lead].Select((l, i) => i == looked || l.Text.Length == 0 ? l : l with { Text = "" });
            drafts.InsertRange(0, drafts.Find(d => d.Text.Length > 0) is { } begins && LooksTo.IsMatch(begins.Text) ? before.Select(l => l with { Text = "" }) : before);
            if (role is null or Role.Lead) _looks[Role.Lead].Clear();
            if (role is null or Role.Follow) _looks[Role.Follow].Clear();
        }

        if (phrases.TrueForAll(p => p.Beats == 0)) length = words.Together([.. drafts.Select(d => d.Text).Where(t => t.Length > 0)], length);
        length = JoinTurn(drafts, phrases, length);
        var counts = label ?? CountLabel.Of(at, Math.Max(1, length.Ceiling));
        var line = new DraftLine(role, counts, drafts, group.Line) { Labelled = label is not null && !_steps && !_moved && group.Label is { Unit: LabelUnit.Counts or LabelUnit.Bars }, Own = filling ? Beats.Zero : length };
        line.Assumed.AddRange(mended);
        line.Assumed.AddRange(looks);
        _items[line] = _item;
        _groups[line] = group;
        if (label is null && phrases.Exists(p => p.Beats > 0) && phrases.Exists(p => p.Beats == 0 && words.Speaks(p.Text) && !Layout.Phrases.SpeaksAside(p.Text) && BarsOrCounts.Own(new() { Line = group.Line, Phrases = [p] }, words) > Beats.Zero)) line.Assumed.Add("a step for which no slow or quick is told takes its usual time");
        if (drafts.Exists(d => TurnInSteps.IsMatch(d.Text) ? label is null : WholeTurn.IsMatch(group.Line.Plain) && words.Page(d.Text).Moves is [{ Figure: not null }])) line.Assumed.Add("how the turn is spread over its steps is not said");
        if (label is { HasHalves: false } && length.IsWhole && !filling && !OneToABar(line, group, length.Ceiling, label.Length)) Fit(line, length.Ceiling, label.Length);
        _part.Lines.Add(line);
        Advance(role, counts);
    }

    private static readonly Regex TurnInSteps = new(@"^(?:full|half) turn (?:left|right|L|R) in (?:two|three|four) steps\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex WholeTurn = new(@"\broll (?:one |a )?(?:full|whole) turn\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex WithSound = new(@"\S\s+(?:with|and|&) (?:a |your |their )?(?:claps?|snaps?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Over eight counts turn ¼ left, marching": the turn is spread over what fills the counts.
    private Beats JoinTurn(List<DraftPhrase> drafts, List<Phrase> phrases, Beats length)
    {
        if (drafts.Count(d => d.Text.Length > 0) != 2) return length;
        var turn = drafts.FindIndex(d => d.Text.Length > 0 && words.Page(d.Text) is { Moves: [{ OnlyTurn: true, Figure: null }] });
        var fills = drafts.FindIndex(d => d.Text.Length > 0 && words.Page(d.Text).Length == Beats.Zero);
        if (turn < 0 || fills < 0 || turn == fills) return length;
        drafts[fills] = drafts[fills] with { Text = $"{drafts[fills].Text} {Regex.Replace(drafts[turn].Text, @"^(?:make |do )?(?:a )?turn(?:ing)?\b", "turning", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)}" };
        drafts[turn] = drafts[turn] with { Text = "" };
        foreach (var phrase in phrases)
        {
            if (Over.Match(phrase.Text) is { Success: true } over) return Beats.Of(NumberWords.Read(over.Groups["n"].Value));
        }

        return length;
    }

    // "Bars 1-4: four steps forward" of a waltz: each on the first beat of its bar.
    private bool OneToABar(DraftLine line, PlanGroup group, int length, int counts)
    {
        if (_beatsInBar != 3 || group.Label is not { Unit: LabelUnit.Bars } || length < 2 || length * 3 != counts) return false;
        var steps = line.Phrases.ConvertAll(p => p.Text.Length == 0 ? null : SomeSteps.Match(p.Text));
        if (steps.Exists(s => s is { Success: false }) || steps.Sum(s => s is null ? 0 : Many(s)) != length) return false;
        for (var i = line.Phrases.Count - 1; i >= 0; i--)
        {
            if (steps[i] is not { } some) continue;
            var said = line.Phrases[i];
            line.Phrases.RemoveAt(i);
            for (var k = Many(some); k > 0; k--) line.Phrases.InsertRange(i, [said with { Text = $"{(some.Groups["what"].Value is "close" or "touch" ? some.Groups["what"].Value : "step")}{some.Groups["way"].Value}{(k == 1 ? some.Groups["foot"].Value : "")}" }, new("hold 2 counts", "", [])]);
        }

        line.Assumed.Add("one step to each bar, on its first beat");
        return true;

        static int Many(Match some) => some.Groups["n"] is { Success: true } n ? NumberWords.Read(n.Value) : 1;
    }

    private static readonly Regex SomeSteps = new(@"^(?:(?<n>two|three|four|[2-4]) )?(?<what>steps?|walks?|close|touch)(?<way> (?:forward|back|in place|side|together))?(?<foot> (?:starting )?(?:L|R|left|right))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Fewer steps than counts: slow ones, or they wait.
    private static void Fit(DraftLine line, int length, int counts)
    {
        if (length == 0 || length >= counts) return;
        var steps = line.Phrases.FindAll(p => p.Text.Length > 0);
        if (length * 2 == counts && steps.Count == length && !steps.Exists(p => p.Text.StartsWith("slow ", StringComparison.Ordinal) || p.Text.StartsWith("hold", StringComparison.OrdinalIgnoreCase)))
        {
            for (var i = 0; i < line.Phrases.Count; i++)
            {
                if (line.Phrases[i].Text.Length > 0) line.Phrases[i] = line.Phrases[i] with { Text = "slow " + line.Phrases[i].Text };
            }

            line.Assumed.Add("every step takes two counts");
            return;
        }

        var wait = counts - length;
        line.Phrases.Add(new(wait == 1 ? "hold" : $"hold {wait} counts", "", []));
        line.Assumed.Add(wait == 1 ? "the last count is waited" : $"the last {wait} counts are waited");
    }

    private int Next(Role? role) => role is { } one ? _next[one] : Math.Max(_next[Role.Lead], _next[Role.Follow]);

    private void Advance(Role? role, CountLabel counts)
    {
        foreach (var one in role is { } named ? (Role[])[named] : [Role.Lead, Role.Follow]) _next[one] = Math.Max(_next[one], counts.To + 1);
    }
}
