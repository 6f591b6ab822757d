using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Wording;

namespace Surefoot.Transcribe.Writing;

/// <summary>Tells numbers of bars from numbers of counts where the sheet does not: by how long the steps beside them are.</summary>
internal static class BarsOrCounts
{
    /// <summary>Makes the plan's counts bars where the steps say so.</summary>
    /// <returns>How many beats such a bar has, or 0 where the numbers are counts.</returns>
    public static int In(SheetPlan plan, SheetFacts facts, PhraseWords words)
    {
        var groups = plan.Parts.SelectMany(p => p.Groups).ToList();
        var lines = groups.FindAll(g => g is { Again: null, Label: { Unit: LabelUnit.Counts, HasHalves: false } } && g.Phrases.TrueForAll(p => p.Label is null || Within(p.Label, g.Label)));
        if (groups.FindAll(g => g is { Again: null, Label.Unit: LabelUnit.Bars }) is { Count: > 3 } bars) return BeatsOf(bars, facts, words);
        // "1.", "2.", "3." may number the sentences.
        if (lines.Count < 3 || (lines.Count(g => g.Label!.Length > 1) * 2 < lines.Count && !(facts.Bars is > 3 and var inAll && facts.Meter is not null && lines.Max(g => g.Label!.To) == inAll)) || groups.Exists(g => g.Label?.Unit == LabelUnit.Bars)) return 0;
        // What nobody understood says nothing of how long it is.
        var told = lines.FindAll(g => g.Phrases.TrueForAll(p => words.Read(p.Text).Unknown.Count == 0));
        if (told.Count >= 2) lines = told;
        var lengths = lines.ConvertAll(g => (Label: g.Label!.Length, Own: Own(g, groups, words)));
        if (lengths.Count(l => l.Own <= Beats.Of(l.Label)) * 4 > lines.Count) return 0;
        foreach (var beats in facts.Meter is null ? (int[])[2, 4, 3] : [facts.BeatsInBar])
        {
            // Where the sheet says how many bars there are, and the numbers go as far, fewer have to fit.
            var known = facts.Bars is { } said && lines.Max(g => g.Label!.To) == said;
            if (beats < 2 || lengths.Count(l => l.Own == Beats.Of(l.Label * beats)) * 10 < lines.Count * (known ? 3 : 6)) continue;
            foreach (var group in groups.Where(g => g.Label?.Unit == LabelUnit.Counts))
            {
                // "1-4 ... three of them (1-3)": bars as well, and how long they are is known.
                for (var i = 0; i < group.Phrases.Count; i++)
                {
                    if (group.Phrases[i].Label is { } inside && Within(inside, group.Label!)) group.Phrases[i] = group.Phrases[i] with { Label = null };
                }

                group.Label = group.Label! with { Unit = LabelUnit.Bars };
            }

            foreach (var group in groups.Where(g => g.Again is { From: > 0 })) group.Again = group.Again! with { Unit = LabelUnit.Bars };
            return beats;
        }

        return 0;
    }

    // "16 bars of 2/4 or 8 of 4/4": how long a bar is, the steps in most of them say.
    private static int BeatsOf(List<PlanGroup> bars, SheetFacts facts, PhraseWords words)
    {
        var own = bars.ConvertAll(g => (Bars: g.Label!.Length, Own: Own(g, words)));
        var stated = Fitting(facts.BeatsInBar);
        return ((int[])[4, 2, 3]).FirstOrDefault(b => b != facts.BeatsInBar && Fitting(b) * 10 >= bars.Count * 4 && Fitting(b) > 2 * stated);

        int Fitting(int beats) => own.Count(o => o.Own == Beats.Of(o.Bars * beats));
    }

    /// <summary>How long what a group names is, with what follows on its line: "three ...; with three more a half turn" fill the line's counts together.</summary>
    public static Beats Own(PlanGroup group, IEnumerable<PlanGroup> groups, PhraseWords words)
    {
        var sum = Beats.Zero;
        foreach (var one in WithTheRest(group, groups)) sum += Own(one, words);
        return sum;
    }

    private static bool Within(CountLabel inside, CountLabel label) => !inside.HasHalves && inside.Length > 1 && inside.From >= label.From && inside.To <= label.To;

    private static IEnumerable<PlanGroup> WithTheRest(PlanGroup group, IEnumerable<PlanGroup> groups) =>
        groups.SkipWhile(g => g != group).Skip(1).TakeWhile(g => g.Line == group.Line && g is { Label: null, Again: null } && g.Role == group.Role).Prepend(group);

    /// <summary>How long what a group names is by itself.</summary>
    public static Beats Own(PlanGroup group, PhraseWords words)
    {
        var own = Beats.Zero;
        foreach (var phrase in group.Phrases)
        {
            if (!words.Speaks(phrase.Text)) continue;
            // Turning to look somewhere takes no time of its own.
            if (Laying.OnlyLooks(words.Read(phrase.Text))) continue;
            var length = words.Read(phrase.Text).Length;
            own += phrase.Beats == 2 && length == Beats.One ? Beats.Of(2) : length;
        }

        return own;
    }
}
