using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Checks;

/// <summary>The page says where somebody looks, and the steps give another facing.</summary>
public sealed class FacingClaimed : ICheck
{
    public string Name => "facing-claim";

    public IEnumerable<Problem> Find(DanceCase dance)
    {
        var floor = dance.Score.Facts.Floor;
        foreach (var (claim, role, found) in ClaimTimes.Failing(dance, Fails))
        {
            var stated = ((FacingClaim)claim.Claim).Facing;
            var (part, count) = (dance.LabelIn(claim.Part), ClaimTimes.CountOf(dance, claim));
            yield return new(
                Name, Severity.Error, claim.Span, part, count, role,
                $"The page says {stated.Name(floor)}, and the steps have {Say.Who(role)} facing {found.Facing.Name(floor)}.",
                $"From the start, facing {dance.Score.Facts.Start(role ?? dance.Score.Facts.Roles[0]).Facing.Name(floor)}, the turns up to here add up to {found.Turned}.",
                default,
                Edit(dance, claim.Span, stated, found.Facing, floor));
        }

        foreach (var problem in Relations(dance)) yield return problem;
        foreach (var problem in Events(dance, floor)) yield return problem;

        static FacingFound? Fails(Claim claim, ClaimTimes.Moment moment, Role role) =>
            claim is FacingClaim { Facing: var facing } && facing != moment.Stands.Facing ? new(moment.Stands.Facing, moment.Turned) : null;
    }

    private sealed record FacingFound(Facing Facing, Turn Turned);

    private IEnumerable<Problem> Relations(DanceCase dance)
    {
        if (!dance.Score.Facts.ForCouples) yield break;
        var told = new HashSet<TextSpan>();
        foreach (var claim in dance.Score.Claims)
        {
            if (claim.Claim is not RelationClaim { Relation: var relation } || !told.Add(claim.Span)) continue;
            if (ClaimTimes.Of(dance, claim, Role.Lead) is not { } lead || ClaimTimes.Of(dance, claim, Role.Follow) is not { } follow) continue;
            var apart = Math.Abs((follow.Stands.Facing - lead.Stands.Facing).Eighths);
            var holds = relation == Relation.SameWay ? apart == 0 : apart == 4;
            if (holds) continue;
            var floor = dance.Score.Facts.Floor;
            yield return new(
                Name, Severity.Error, claim.Span, dance.LabelIn(claim.Part), ClaimTimes.CountOf(dance, claim), null,
                $"The page says \"{dance.Words(claim.Span).Trim('(', ')', '[', ']')}\", and the steps have the lead facing {lead.Stands.Facing.Name(floor)} and the follow {follow.Stands.Facing.Name(floor)}.",
                relation == Relation.SameWay ? "Partners who look the same way have the same facing." : "Partners who face each other, or stand back to back, look opposite ways.");
        }
    }

    private IEnumerable<Problem> Events(DanceCase dance, Floor floor)
    {
        foreach (var moment in WallWalk.Of(dance.Score))
        {
            if (moment.Event.Facing is not { } stated || stated == moment.Facing) continue;
            var what = moment.Event.Kind == PassEventKind.Tag ? "tag" : "restart";
            yield return new(
                Name, Severity.Error, moment.Event.Span, null, null, null,
                $"The page says the {what} faces {stated.Name(floor)}, and after {(moment.Event.Kind == PassEventKind.Tag ? $"{Say.Repeat(dance)} {moment.Event.Wall}" : $"{moment.Event.AfterCount} counts of {Say.Repeat(dance)} {moment.Event.Wall}")} they face {moment.Facing.Name(floor)}.",
                $"Each whole repeat turns them {moment.PerWall}.",
                default,
                Edit(dance, moment.Event.Span, stated, moment.Facing, floor));
        }
    }

    private static ValueList<Fix> Edit(DanceCase dance, TextSpan span, Facing stated, Facing found, Floor floor)
    {
        var at = dance.Words(span).IndexOf(stated.Name(floor), StringComparison.OrdinalIgnoreCase);
        if (at < 0) return default;
        return [new($"Say {found.Name(floor)} instead of {stated.Name(floor)}", Sureness.Idea, [new(new(span.Start + at, stated.Name(floor).Length), found.Name(floor))])];
    }
}
