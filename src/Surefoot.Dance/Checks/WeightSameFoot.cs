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
        var (part, count) = dance.Place(step.At);
        var before = Conflicts.LastWeight(found.Steps, found.Index);
        var how = before is { } index
            ? $"\"{dance.Words(found.Steps[index].Source)}\" on {dance.Place(found.Steps[index].At).Count} ended there"
            : "the dance starts that way";
        var does = step.Kind.Rule() is WeightRule.Takes or WeightRule.Returns ? "so it cannot step" : "so it cannot leave the floor to do this";
        ValueList<RelatedSpan> related = before is { } b ? [new(found.Steps[b].Source, "the weight moved onto it here")] : default;
        return new(
            Name,
            Severity.Error,
            step.Source,
            part,
            count,
            found.Role,
            $"{Say.Whose(found.Role)} weight is already on the {foot.Word()} foot: {how}.",
            $"The {foot.Word()} foot carries the weight after count {(before is { } i ? dance.Place(found.Steps[i].At).Count : "0")}, {does}; the {foot.Other().Word()} foot is free.",
            related,
            Conflicts.OtherFeet(dance, step.Source));
    }
}
