using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Choosing;
using Surefoot.Transcribe.Layout;

namespace Surefoot.Transcribe.Writing;

/// <content>What is danced again: which lines, how often, and what becomes of them.</content>
internal sealed partial class Laying
{
    private static readonly Regex Ways = new(@"\b(?:forward|back)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex NamesFoot = new(@"\b(?:left|right|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Leads = new(@"\b(?<foot>left|right|L|R)(?: foot)? first\b|\b(?:starting|beginning|start|begin)(?: with| on)?(?: the)? (?<foot>left|right|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private void Repeat(PlanGroup group, Again again, Role? role)
    {
        var label = LabelOf(group, role);
        var source = Source(again, role, group);
        if (group.Label is { Unit: LabelUnit.Order, Length: > 1 } items && again is { From: 0, Last: 0 })
        {
            // "4th, 5th, 6th. The same, the right foot leading": as many as are numbered.
            again = again with { Last = items.Length };
            source = Source(again, role, group);
        }

        again = OnTheFootSaid(again, group, source);
        if (source.Count == 0)
        {
            // There is nothing yet that could be danced again.
            plan.Asides.Add(group.Line);
            return;
        }

        var ending = EndsWith(group.Except);
        if (group.Except.Length > 0) Taken.Add((group.Line.Number, ending is null ? $"it is danced as before; \"{group.Except}\" was not understood and is not danced" : $"it is danced as before, and ends with \"{ending.Said}\""));
        var (first, last) = (source[0].Counts.From, source.Max(l => l.Counts.To));
        var length = last - first + 1;
        var turned = again.Mirrored && Regex.IsMatch(group.Line.Plain, @"\bdirection|\bbackwards?\b|\bback again\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
        var times = label is null ? again.Times : Math.Max(again.Times, 1);
        // "5-16 three times more", "22-32: do 17-20 another three times": the label's length tells how often where the words do not.
        if (label is not null && again.Times == 1 && label.Length > length && label.Length % length == 0) times = label.Length / length;
        var start = Math.Max(label?.From ?? 0, Next(role));
        if (group.AndSoOn)
        {
            times = Math.Max(1, (facts.StepsInAll - start + length) / length);
            Taken.Add((group.Line.Number, facts.StepsInAll > 0 ? $"it goes on so until there are {facts.StepsInAll} steps" : "it goes on so once, because the sheet does not say how long"));
        }

        if (label is not null && label.From < start && label.From > last) start = label.From;
        // "22-32" for twelve counts after 20: a slip of the first number.
        if (label is not null && (times * length) != label.Length && Next(role) + (times * length) - 1 == label.To) start = Next(role);
        var fits = label is not null && times * length == label.Length && start == label.From;
        if (label is not null && !fits && !group.AndSoOn) Taken.Add((group.Line.Number, $"what is danced again takes {times * length} counts, and the line has {label.Length}"));
        for (var time = 0; time < times; time++)
        {
            foreach (var line in source)
            {
                var phrases = line.Phrases.ConvertAll(p => again.Mirrored ? p with { Text = Turned(Alternatives.Mirrored(p.Text), turned) } : p);
                if (line == source[0] && again.Mirrored && Leads.Match(group.Line.Plain) is { Success: true } leads && phrases.FindIndex(p => p.Text.Length > 0) is var at and >= 0 && !NamesFoot.IsMatch(phrases[at].Text))
                {
                    // "Same back, R foot first": what names no foot itself.
                    phrases[at] = phrases[at] with { Text = $"{phrases[at].Text} {char.ToUpperInvariant(leads.Groups["foot"].Value[0])}" };
                }

                if (ending is not null && time == times - 1 && line == source[^1] && phrases.FindLastIndex(p => p.Text.Length > 0) is var end and >= 0) phrases[end] = ending;
                var counts = line.Counts.Moved(start - first);
                if (group.AndSoOn && facts.StepsInAll > 0 && counts.To > facts.StepsInAll) continue;
                var copy = new DraftLine(line.Role, counts, phrases, group.Line) { Labelled = fits, AgainOf = line.Phrases };
                copy.Assumed.AddRange(line.Assumed);
                _part.Lines.Add(copy);
                _groups[copy] = group;
                if (group.Label is null && _itemLine == group.Line) _items[copy] = _item;
                Advance(line.Role, counts);
            }

            start += length;
        }
    }

    // "... but touch the left beside the right": what is done this time in place of the last step; null where no one step of one count is named.
    private DraftPhrase? EndsWith(string except)
    {
        if (except.Length == 0 || !AtTheEnd.IsMatch(except)) return null;
        var carried = 0;
        var steps = Layout.Phrases.Of(new(null, false, null, Opens.Replace(except, "", 1)), _part.Lines[0].From, ref carried).FindAll(p => words.Speaks(p.Text) && !Refuses.IsMatch(p.Text));
        return steps is [var one] && words.Read(one.Text) is { Unknown.Count: 0 } read && read.Length == Beats.One ? new(read.Text, one.Said, []) { Told = read.Told } : null;
    }

    private static readonly Regex AtTheEnd = new(@"\b(?:at the end|instead|but|finish\w*|end\w*|last)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Opens = new(@"^(?:only|except(?: that)?|but|instead|this time|(?:and )?(?:finish|end)(?:ing)? with(?: a)?|\s|,)+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Refuses = new(@"\b(?:not|don't|no|instead of|in place of)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Same on the L", "the same back, L R L": whether that is the foot it began with the first time.
    private static Again OnTheFootSaid(Again again, PlanGroup group, List<DraftLine> source)
    {
        if (SaysFoot.Match(OfHands.Replace(group.Said, "")) is not { Success: true } said || source.SelectMany(l => l.Phrases).Select(p => NamesFoot.Match(p.Text)).FirstOrDefault(m => m.Success) is not { } first) return again;
        return again with { Mirrored = char.ToUpperInvariant(first.Value[0]) != char.ToUpperInvariant(said.Groups["foot"].Value[0]) };
    }

    // "... again but lifts his left hand and lets go with his right".
    private static readonly Regex OfHands = new(@"\b(?:but|and) (?:lifts?|raises?|lets?|drops?|takes?|releases?|joins?)\b.*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SaysFoot = new(@"(?<!\b(?:weight|wt\.?) )\b(?:on|from|with|commencing|beginning|starting|leading)(?: with| on| from)? (?:the |your |his |her )?(?<foot>left|right|LF|RF|L|R)(?: f(?:oo|ee)?t\.?)?\b(?! (?:hand|side|arm|hip|shoulder|heel|toe))|,\s*(?<foot>(?-i:[LR]))[ ,-]+(?-i:[LR])\b|\bthe (?<foot>left|right)(?: foot)? (?:leading|first)\b|\b(?<foot>LF|RF) first\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "That is one box. Dance two of them."
    private static readonly Regex Box = new(@"^that(?:'s| is| makes) (?:one|a) \w+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "The whole is then executed in the opposite direction", on a line of its own.
    private static readonly Regex TheWhole = new(@"\bthe (?:foregoing|above)\b|\b(?:the whole|everything|all of (?:it|this|that)) (?:is|are)\b|\b(?:recommence|commence again) (?:with|on|from)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private List<DraftLine> Source(Again again, Role? role, PlanGroup group)
    {
        var lines = _part.Lines.FindAll(l => role is null || l.Role == role || l.Role is null);
        if (again.LastCounts > 0) return lines.FindAll(l => l.Counts.From >= Next(role) - again.LastCounts);
        if (again.Last > 0) return lines.Skip(lines.Count - Math.Min(again.Last, lines.Count)).ToList();
        if (again.WholeLine && lines.FindAll(l => l.From == group.Line) is { Count: > 0 } here) return here;
        if (again.WholeLine && lines.Count > 0 && Box.IsMatch(group.Line.Plain) && !lines.Exists(l => _groups.GetValueOrDefault(l)?.Again is not null)) return lines;
        if (again.WholeLine && lines.Count > 0 && TheWhole.IsMatch(group.Line.Plain)) return lines;
        if (again.From > 0 && again.Unit == LabelUnit.Counts && lines.FindAll(l => _items.GetValueOrDefault(l) is var item && item >= again.From && item <= again.To) is { Count: > 0 } items) return items;
        if (again.From > 0)
        {
            var (from, to) = again.Unit == LabelUnit.Bars || group.Label?.Unit == LabelUnit.Bars || _beatsInBar != 4 && plan.Parts.Exists(p => p.Groups.Exists(g => g.Label?.Unit == LabelUnit.Bars))
                ? (((again.From - 1) * _beatsInBar) + 1, again.To * _beatsInBar)
                : (again.From, again.To);
            var named = lines.FindAll(l => l.Counts.From >= from && l.Counts.To <= to);
            if (named.Count > 0) return named;
            // "1-8 same as 17-24" where every part counts anew: of a part before this one.
            foreach (var (part, danced) in _laid)
            {
                var earlier = part.Lines.FindAll(l => (role is null || l.Role == role || l.Role is null) && l.Counts.From + danced >= from && l.Counts.To + danced <= to);
                if (earlier.Count > 0 && from > danced && Length(earlier) == to - from + 1) return earlier;
            }
        }

        // What came just before: the lines that the line of the sheet before it gave.
        if (lines.Count == 0) return [];
        var before = lines[^1].From;
        if (before == group.Line)
        {
            var last = _groups.TryGetValue(lines[^1], out var sentence) ? lines.FindAll(l => _groups.GetValueOrDefault(l) is { } one && one.Line == sentence.Line && one.Sentence == sentence.Sentence) : [lines[^1]];
            // "On the first beat ...; on the second .... On the third ...": one measure, however many sentences tell it.
            var into = (last[0].Counts.From - 1) % _beatsInBar;
            return into > 0 && sentence?.Phrases.Exists(p => p.Label is not null) == true ? lines.FindAll(l => l.From == before && l.Counts.From >= last[0].Counts.From - into) : last;
        }

        var just = lines.FindAll(l => l.From == before);
        // "13-16 the same again" after two lines of two counts: as many lines as fill them.
        if (LabelOf(group, role) is { } label && label.Length > Length(just) && lines[^1].Counts.To == label.From - 1)
        {
            var more = lines.FindAll(l => l.Counts.From >= label.From - label.Length && l.Counts.To < label.From);
            if (Length(more) == label.Length) return more;
        }

        return just;
    }

    // The parts before this one, with the counts that are danced before each.
    private readonly List<(DraftPart Part, int Before)> _laid = [];

    private static int Length(List<DraftLine> lines) => lines.Count == 0 ? 0 : lines.Max(l => l.Counts.To) - lines.Min(l => l.Counts.From) + 1;

    private static string Turned(string text, bool turned) =>
        turned ? Ways.Replace(text, m => m.Value.StartsWith("f", StringComparison.OrdinalIgnoreCase) ? "back" : "forward") : text;
}
