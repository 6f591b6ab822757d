using System.Globalization;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;
using Surefoot.Dance.Text;

namespace Surefoot.Dance.Checks;

/// <summary>A count has no action for a role.</summary>
public sealed class CountGap : ICheck
{
    /// <summary>Counts that one line may be taken to hold when its dash is missing. Working value.</summary>
    private const int Longest = 16;

    public string Name => "count-gap";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var fault in dance.Score.Faults.Where(f => f.Kind == LayingFaultKind.Gap))
        {
            var from = new Count(fault.From.Value + Beats.Of(dance.Score.Parts[fault.Part].CountOffset));
            var stretch = Say.Stretch(from, from + fault.Named);
            var one = fault.Named == Beats.One;
            var partner = fault.Role switch { Role.Lead => Role.Follow, Role.Follow => Role.Lead, _ => (Role?)null };
            yield return new(
                Name, Severity.Error, fault.Span, dance.LabelIn(fault.Part), from.Name, fault.Role,
                $"{Say.Who(fault.Role, start: true)} {Say.Verb(fault.Role, "has", "have")} nothing to do on {(one ? "count" : "counts")} {stretch}.",
                partner is { } other
                    ? $"Only {Say.Who(other)} is told what to do there; write {Say.Who(fault.Role)}'s steps too, or leave the role word away when both do the same."
                    : "Every count needs a step; write \"hold\" where nobody moves.",
                default,
                Dash(dance, fault, from),
                PageEnd.NotYet(dance, fault, $"{Say.Who(fault.Role, start: true)} {Say.Verb(fault.Role, "has", "have")} nothing to do yet on {(one ? "count" : "counts")} {stretch}."));
        }
    }

    // "56" where 5 is due: the dash between two counts was left out.
    private static ValueList<Fix> Dash(DanceCase dance, LayingFault fault, Count from)
    {
        if (!from.Value.IsWhole || fault.Part >= dance.Page.Parts.Count) return default;
        foreach (var line in dance.Page.Parts[fault.Part].Lines)
        {
            if (line is not CountLine { Group: var group } || group.First.Value - from.Value < fault.Named) continue;
            var typed = dance.Words(group.Span);
            if (!typed.StartsWith(from.Name, StringComparison.Ordinal) || !int.TryParse(typed.AsSpan(from.Name.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var last)) continue;
            if (last <= from.Whole || last > from.Whole + Longest) continue;
            var meant = $"{from.Name}-{last}";
            return [new($"Did you mean: {meant}", Sureness.Likely, [new(group.Span, meant)])];
        }

        return default;
    }
}
