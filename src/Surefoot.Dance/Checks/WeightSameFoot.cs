using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>A foot is asked to act while it carries the weight.</summary>
public sealed class WeightSameFoot : ICheck
{
    public string Name => "weight-same-foot";

    public IEnumerable<Problem> Find(DanceCase dance) =>
        Conflicts.Of(dance, Conflict.FootCarriesWeight).Select(c => Tell(dance, c));

    private Problem Tell(DanceCase dance, Conflicts.Found found)
    {
        var step = found.Step;
        var foot = step.Foot.Single() ?? Foot.Left;
        var (part, count) = found.Place(dance, step);
        var before = Conflicts.LastWeight(found.Steps, found.Index) is { } index ? found.Steps[index] : null;
        var how = before is not null ? $"\"{dance.Words(before.Source)}\" on {found.Place(dance, before).Count} ended there"
            : found.Extra is null ? "the dance starts that way"
            : "the dance before it ends that way";
        var does = step.Kind.Rule() is WeightRule.Takes or WeightRule.Returns ? "so it cannot step" : "so it cannot leave the floor to do this";
        var related = new List<RelatedSpan>();
        if (before is not null) related.Add(new(before.Source, "the weight moved onto it here"));
        if (step.RepeatedBy is not null) related.Add(new(step.Source, "these words are danced again"));
        return new(
            Name,
            Severity.Error,
            found.Span,
            part,
            count,
            found.Role,
            $"{Say.Whose(found.Role)} weight is already on the {foot.Word()} foot: {how}.",
            $"The {foot.Word()} foot carries the weight {(before is null ? "at the start" : $"after count {found.Place(dance, before).Count}")}, {does}; the {foot.Other().Word()} foot is free.",
            related.ToValueList(),
            step.RepeatedBy is { } repeat ? Conflicts.StartOther(dance, repeat, foot.Other()) : Conflicts.OtherFeet(dance, step.Source));
    }
}
