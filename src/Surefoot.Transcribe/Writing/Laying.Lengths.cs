using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;

namespace Surefoot.Transcribe.Writing;

/// <content>How long a group is where its label, its line and its steps do not say the same.</content>
internal sealed partial class Laying
{
    // "3 and 4: right foot back": one step over two counts, and no half one.
    private CountLabel? Plainer(CountLabel? label, PlanGroup group) =>
        label is { HasHalves: true, Length: 2 } && group.Phrases.Count(p => words.Speaks(p.Text)) == 1 && BarsOrCounts.Own(group, words) == Beats.One ? CountLabel.Of(label.From, 2) : label;

    // "... (8 counts)" at the end of the second of two lines: both together take them.
    private bool FilledTogether(PlanGroup group)
    {
        if (plan.Parts.Find(p => p.Groups.Contains(group)) is not { } part) return false;
        var sum = BarsOrCounts.Own(group, words);
        for (var i = part.Groups.IndexOf(group) - 1; i >= 0 && sum < Beats.Of(group.Fill) && part.Groups[i] is { Fill: 0, Label: null, Again: null } before && before.Role == group.Role; i--) sum += BarsOrCounts.Own(before, words);
        return sum == Beats.Of(group.Fill) && BarsOrCounts.Own(group, words) < sum;
    }

    // "25-32: four walks forward, then 17-20 again": the line's counts are those of all its sentences.
    private bool GoesOn(PlanGroup group, CountLabel label)
    {
        var more = plan.Parts.SelectMany(p => p.Groups).SkipWhile(g => g != group).Skip(1).TakeWhile(g => g.Line == group.Line).Where(g => g.Label is null && g.Role == group.Role).ToList();
        return more.Exists(g => g.Again is not null) || (more.Count > 0 && group.Label?.Unit == LabelUnit.Bars && BarsOrCounts.Own(group, plan.Parts.SelectMany(p => p.Groups), words) == Beats.Of(label.Length));
    }

    private bool IsLastOfItsLine(PlanGroup group) => plan.Parts.TrueForAll(p => p.Groups.FindLast(g => g.Line == group.Line) is not { } last || last == group);

    // "That's sixteen" after fifteen: whatever was not understood, the next step is on 17.
    private void Reckon(PlanGroup group)
    {
        var danced = Next(null) - 1;
        var told = group.ReckonsBars ? group.Reckons * _beatsInBar : group.Reckons;
        // Each part counts anew; the sheet may go on from the one before.
        var said = told > danced + MostMissing ? told - _before : told;
        if (said == danced) return;
        Taken.Add((group.Line.Number, $"the sheet says that {told} counts are danced by now, and its steps take {danced + (said == told ? 0 : _before)}"));
        Off += Math.Min(MostMissing, Math.Abs(said - danced));
        if (said < danced || said > danced + MostMissing) return;
        _next[Role.Lead] = _next[Role.Follow] = said + 1;
        Reckoned = true;
    }

    // In a waltz a sentence begins a bar: who was given less in the sentence before waited.
    private void OnTheBar(PlanGroup group)
    {
        var first = _sentence != (group.Line, group.Sentence);
        _sentence = (group.Line, group.Sentence);
        if (!first || group.Label is not null || _beatsInBar != 3) return;
        var (lead, follow) = (_next[Role.Lead], _next[Role.Follow]);
        var later = Math.Max(lead, follow);
        if (later % 3 == 1 && later - Math.Min(lead, follow) is 1 or 2) _next[Role.Lead] = _next[Role.Follow] = later;
    }

    private (Source.SheetLine Line, int Number)? _sentence;

    /// <summary>True when counts were left out because the sheet says how many are danced by then.</summary>
    public bool Reckoned { get; private set; }

    /// <summary>Counts by which the steps miss what the sheet says is danced by then.</summary>
    public int Off { get; private set; }

    // More counts than these are not missing: something else was meant.
    private const int MostMissing = 8;

    // Counts of the parts before this one.
    private int _before;

    // "L back, half turn right, R side, L close" in three counts: the turn is made with the step before it.
    private void TurnsWithTheStep(PlanGroup group, CountLabel label)
    {
        // "A quarter left, four walks": nothing stands before it, and it is made with the first of them.
        if (group.Phrases.Count > 1 && group.Phrases[0].Label is null && TurnOnly.Match(group.Phrases[0].Text) is { Success: true } begins && words.Speaks(group.Phrases[1].Text) && BarsOrCounts.Own(group, words) > Beats.Of(label.Length))
        {
            var after = group.Phrases[1];
            group.Phrases[1] = after with { Text = $"{after.Text} turning {begins.Groups["how"].Value} {begins.Groups["way"].Value}", Said = $"{group.Phrases[0].Said}, {after.Said}" };
            group.Phrases.RemoveAt(0);
            ForHerAsWell(group, group.Phrases[0]);
        }

        for (var i = group.Phrases.Count - 1; i > 0 && BarsOrCounts.Own(group, words) > Beats.Of(label.Length); i--)
        {
            if (TurnOnly.Match(group.Phrases[i].Text) is not { Success: true } turn || group.Phrases[i].Label is not null || !words.Speaks(group.Phrases[i - 1].Text)) continue;
            var before = group.Phrases[i - 1];
            group.Phrases[i - 1] = before.With($"{before.Text} turning {turn.Groups["how"].Value} {turn.Groups["way"].Value}", group.Phrases[i].Said);
            group.Phrases.RemoveAt(i);
            ForHerAsWell(group, group.Phrases[i - 1]);
        }
    }

    // Which way she goes when both turn with one step, the sheet says of him alone.
    private void ForHerAsWell(PlanGroup group, Phrase step)
    {
        if (facts.Couple && group.Role is null && Ways.IsMatch(step.Text)) Taken.Add((group.Line.Number, $"\"{step.Said}\" is danced in one; which way the follow goes with it follows from the lead's way"));
    }

    private static readonly Regex TurnOnly = new(@"^(?:and |then |now |so )*(?:a |make (?:a )?)?(?<how>half|quarter|½|¼|1/2|1/4|full)(?: a)?(?: turn)? (?:to (?:the |your |his |her )?)?(?<way>left|right|L|R)$|^(?:and |then |now |(?:the )?gent\w* )*turn(?:s|ing)? (?:a |one |through (?:a |one )?)?(?<how>half|quarter|½|¼|1/2|1/4) (?:to (?:the |your )?)?(?<way>left|right|L|R)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // Labels that were taken for one count more: what the other does at the same time has them too.
    private readonly HashSet<(DraftPart Part, string Name)> _slips = [];

    // "16-20" for four counts after 16: a slip of the first number.
    private CountLabel? Mended(CountLabel? label, PlanGroup group, Role? role)
    {
        if (label is { Unit: LabelUnit.Counts, HasHalves: false, Length: > 2 } late && late.From == Next(role) + 1 && late.To % 4 == 0 && BarsOrCounts.Own(group, words) == Beats.Of(late.Length + 1))
        {
            // "38-40" for four counts after 36.
            Taken.Add((group.Line.Number, $"{late.From}-{late.To} was taken for {late.From - 1}-{late.To}, because its steps take so long"));
            return CountLabel.Of(late.From - 1, late.Length + 1);
        }

        if (group.Label is { Unit: LabelUnit.Counts } && label is { Unit: LabelUnit.Counts, HasHalves: false, Length: > 2 } same && _slips.Contains((_part, same.Name))) return CountLabel.Of(same.From, same.Length + 1);
        if (group.Label is { Unit: LabelUnit.Counts } && label is { Unit: LabelUnit.Counts, HasHalves: false, Length: > 2 } early && early.From == Next(role) && (early.To + 1) % 4 == 0 && BarsOrCounts.Own(group, words) == Beats.Of(early.Length + 1)
            && plan.Parts.SelectMany(p => p.Groups).SkipWhile(g => g != group).FirstOrDefault(g => g.Label is { Unit: LabelUnit.Counts } after && after.From > early.To)?.Label?.From == early.To + 2)
        {
            // "29-31" for four counts before 33.
            Taken.Add((group.Line.Number, $"{early.From}-{early.To} was taken for {early.From}-{early.To + 1}, because its steps take so long"));
            _slips.Add((_part, early.Name));
            return CountLabel.Of(early.From, early.Length + 1);
        }

        if (label is not { Unit: LabelUnit.Counts, HasHalves: false, Length: > 2 } || label.From == 1 || label.From != Next(role) - 1) return label;
        Taken.Add((group.Line.Number, $"{label.From}-{label.To} was taken for {label.From + 1}-{label.To}, because {label.From} is danced already"));
        return CountLabel.Of(label.From + 1, label.Length - 1);
    }
}
