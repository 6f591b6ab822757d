using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>Nobody can tell where the weight goes: a recover without a rock, a step from even weight that names no foot, a hop on the foot in the air.</summary>
public sealed class WeightLost : ICheck
{
    public string Name => "weight-lost";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        foreach (var found in Conflicts.Of(dance, Conflict.NothingToRecover))
        {
            var before = found.Index > 0 ? found.Steps[found.Index - 1] : null;
            var after = before is null ? "the dance starts with it" : $"\"{dance.Words(before.Source)}\" comes before it";
            ValueList<RelatedSpan> related = before is null ? default : [new(before.Source, "no rock here")];
            yield return Tell(dance, found,
                "There is no rock to recover from: " + after + ".",
                "To recover is to take the weight back on a foot that stayed where it was while the other one rocked.",
                related,
                RockInstead(dance, before));
        }

        foreach (var found in Conflicts.Of(dance, Conflict.WeightEven))
        {
            yield return Tell(dance, found,
                $"{Say.Whose(found.Role)} weight is on both feet, and the page does not say which foot goes next.",
                "From even weight either foot may step; name it, for example with L or R.",
                default,
                default);
        }

        foreach (var found in Conflicts.Of(dance, Conflict.HopOnFreeFoot))
        {
            var foot = found.Step.Foot.Single() ?? Foot.Left;
            yield return Tell(dance, found,
                $"A hop leaves and lands on the same foot, and {Say.Who(found.Role)} {Say.Verb(found.Role, "stands", "stand")} on the {foot.Word()}.",
                $"The {foot.Other().Word()} foot is in the air; landing on it is a leap.",
                default,
                Conflicts.OtherFeet(dance, found.Step.Source));
        }
    }

    private Problem Tell(DanceCase dance, Conflicts.Found found, string message, string reason, ValueList<RelatedSpan> related, ValueList<Fix> fixes)
    {
        var (part, count) = found.Place(dance, found.Step);
        return new(Name, Severity.Error, found.Span, part, count, found.Role, message, reason, related, fixes);
    }

    private static ValueList<Fix> RockInstead(DanceCase dance, ScoreStep? before)
    {
        if (before is not { Kind: ActionKind.Step, Figure: null }) return default;
        var words = dance.Words(before.Source);
        var at = words.IndexOf("step", StringComparison.OrdinalIgnoreCase);
        if (at < 0) return default;
        var rock = char.IsUpper(words[at]) ? "Rock" : "rock";
        var edit = new TextEdit(new(before.Source.Start + at, 4), rock);
        return [new($"Did you mean: {words[..at]}{rock}{words[(at + 4)..]}", Sureness.Likely, [edit])];
    }
}
