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
        var lines = groups.FindAll(g => g is { Again: null, Label: { Unit: LabelUnit.Counts, HasHalves: false } } && g.Phrases.TrueForAll(p => p.Label is null));
        // "1.", "2.", "3." may number the sentences.
        if (lines.Count < 3 || lines.Count(g => g.Label!.Length > 1) * 2 < lines.Count || groups.Exists(g => g.Label?.Unit == LabelUnit.Bars)) return 0;
        var lengths = lines.ConvertAll(g => (Label: g.Label!.Length, Own: Own(g, words)));
        if (lengths.Count(l => l.Own <= Beats.Of(l.Label)) * 4 > lines.Count) return 0;
        foreach (var beats in facts.Meter is null ? (int[])[2, 4, 3] : [facts.BeatsInBar])
        {
            // Where the sheet says how many bars there are, and the numbers go as far, fewer have to fit.
            var bars = facts.Bars is { } said && lines.Max(g => g.Label!.To) == said;
            if (beats < 2 || lengths.Count(l => l.Own == Beats.Of(l.Label * beats)) * 10 < lines.Count * (bars ? 3 : 6)) continue;
            foreach (var group in groups.Where(g => g.Label?.Unit == LabelUnit.Counts)) group.Label = group.Label! with { Unit = LabelUnit.Bars };
            foreach (var group in groups.Where(g => g.Again is { From: > 0 })) group.Again = group.Again! with { Unit = LabelUnit.Bars };
            return beats;
        }

        return 0;
    }

    /// <summary>How long what a group names is by itself.</summary>
    public static Beats Own(PlanGroup group, PhraseWords words)
    {
        var own = Beats.Zero;
        foreach (var phrase in group.Phrases)
        {
            if (words.Speaks(phrase.Text)) own += words.Read(phrase.Text).Length;
        }

        return own;
    }
}
