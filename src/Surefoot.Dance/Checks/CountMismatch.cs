using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>A line's actions do not fit its counts.</summary>
public sealed class CountMismatch : ICheck
{
    public string Name => "count-mismatch";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.Mismatch))
        {
            var from = new Count(fault.From.Value + Beats.Of(dance.Score.Parts[fault.Part].CountOffset));
            var bySlots = fault.Words.StartsWith("actions", StringComparison.Ordinal);
            var message = fault.Words == "repeat"
                ? $"The line names {Say.Counts(fault.Named, dance.Measures)}, and what it repeats takes {Say.Counts(fault.Taken, dance.Measures)}."
                : bySlots ? $"{Asks(dance, fault)}, and {fault.Taken} {(fault.Taken == Beats.One ? "is" : "are")} written."
                : $"The line names {Say.Counts(fault.Named, dance.Measures)}, and its steps take {dance.Measures.Number(fault.Taken.ToDouble(), "0.##")}.";
            var colon = fault.Words.IndexOf(':', StringComparison.Ordinal);
            ValueList<RelatedSpan> related = fault.Other is { } group ? [new(group, "the counts named")] : default;
            yield return new(
                Name, Severity.Error, fault.Span, dance.LabelIn(fault.Part), from.Name, fault.Role,
                message,
                colon > 0
                    ? $"{(bySlots ? "Each number and each & is one step, touch or hold. How many each takes" : "How many counts each takes")}:{fault.Words[(colon + 1)..]}."
                    : "A repeat has to fill just the counts in front of it.",
                related,
                colon > 0 && !bySlots && Longer(dance, fault) is { } longer ? [longer] : default,
                fault.Taken < fault.Named && fault.Words != "repeat" ? PageEnd.LineEnd(dance.Page, fault.Span.End, SoFar(dance, fault, bySlots)) : null);
        }
    }

    // "1-4: 2 of 4 counts so far."
    private static string SoFar(DanceCase dance, LayingFault fault, bool bySlots)
    {
        var line = fault.Other is { } counts ? dance.Words(counts) : "The line";
        return bySlots ? $"{line}: {fault.Taken} of {fault.Named} {(fault.Named == Beats.One ? "step" : "steps")} so far." : $"{line}: {dance.Measures.Number(fault.Taken.ToDouble(), "0.##")} of {Say.Counts(fault.Named, dance.Measures)} so far.";
    }

    // "7  Shuffle" was meant as "7&8": the counts its steps take, where nothing else stands on them.
    private static Fix? Longer(DanceCase dance, LayingFault fault)
    {
        if (fault.Other is not { } counts || !int.TryParse(dance.Words(counts), NumberStyles.None, CultureInfo.InvariantCulture, out var first) || !fault.Taken.IsWhole) return null;
        var taken = fault.Taken.Ceiling;
        var from = fault.From.Value;
        if (taken < 2 || dance.Score.Parts[fault.Part].Rows.Any(r => r.From.Value > from && r.From.Value < from + fault.Taken)) return null;
        var steps = dance.Score.Roles.Max(r => r.Steps.Count(s => !s.Repeated && s.Source.Start >= fault.Span.Start && s.Source.End <= fault.Span.End));
        var label = steps == taken ? $"{first}-{first + taken - 1}" : taken == 2 && steps == 3 ? $"{first}&{first + 1}" : "";
        return label.Length == 0 ? null : new($"Write {label}", Sureness.Likely, [new(counts, label)]);
    }

    // "5&6 asks for 3 steps".
    private static string Asks(DanceCase dance, LayingFault fault) =>
        $"{(fault.Other is { } counts ? dance.Words(counts) : "The line")} asks for {fault.Named} {(fault.Named == Beats.One ? "step" : "steps")}";
}
