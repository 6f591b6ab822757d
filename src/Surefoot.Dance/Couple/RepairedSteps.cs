using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Couple;

/// <summary>A dance with one repair made in its score.</summary>
internal static class RepairedSteps
{
    /// <returns>Nothing when there is nothing to change in that way.</returns>
    public static DanceScore? Of(DanceScore score, Repair repair)
    {
        var roles = new RoleScore[score.Roles.Count];
        var changed = false;
        for (var r = 0; r < roles.Length; r++)
        {
            var role = score.Roles[r];
            roles[r] = role;
            if (repair.Role is { } only && only != role.Role) continue;
            var steps = repair.Kind switch
            {
                RepairKind.Shuffles => Shuffled(role, repair),
                RepairKind.AsThePartner => AsThePartner(role, score.Roles[1 - r], repair),
                _ => Each(role, repair),
            };
            if (steps is null) continue;
            roles[r] = role with { Steps = new(steps) };
            changed = true;
        }

        return changed ? score with { Roles = new(roles) } : null;
    }

    /// <summary>The repair with the first and the last count on which a step really changes.</summary>
    public static Repair Trimmed(DanceScore before, DanceScore after, Repair repair)
    {
        var (first, last) = (repair.To, repair.From);
        for (var r = 0; r < before.Roles.Count; r++)
        {
            for (var i = 0; i < before.Roles[r].Steps.Count; i++)
            {
                var step = before.Roles[r].Steps[i];
                if (step == after.Roles[r].Steps[i]) continue;
                if (step.At < first) first = step.At;
                if (step.At > last) last = step.At;
            }
        }

        return repair with { From = first, To = last };
    }

    private static ScoreStep[]? Each(RoleScore role, Repair repair)
    {
        ScoreStep[]? steps = null;
        for (var i = 0; i < role.Steps.Count; i++)
        {
            var step = role.Steps[i];
            if (step.At < repair.From || step.At > repair.To || step.Kind.Rule() != WeightRule.Takes) continue;
            var other = repair.Kind switch
            {
                RepairKind.OwnLength when step.Size.Metres > 0 => step with { Size = StepSize.Usual },
                RepairKind.OtherWay when IsAhead(step.Direction) != repair.Forward => step with { Direction = step.Direction.TurnedRound() },
                RepairKind.OnTheSpot when step.Kind == ActionKind.Step && step.Direction is not (Direction.InPlace or Direction.Together) => step with { Direction = Direction.InPlace, Size = StepSize.Usual },
                _ => step,
            };
            if (other == step) continue;
            steps ??= [.. role.Steps];
            steps[i] = other;
        }

        return steps;
    }

    private static bool? IsAhead(Direction direction) => direction switch
    {
        Direction.Forward or Direction.DiagonalForward => true,
        Direction.Back or Direction.DiagonalBack => false,
        _ => null,
    };

    // Two counts with one change of weight become one shuffle, four with an even number become two: the feet agree afterwards.
    private static ScoreStep[]? Shuffled(RoleScore role, Repair repair)
    {
        var steps = new List<ScoreStep>(role.Steps.Count + 4);
        var i = 0;
        while (i < role.Steps.Count && role.Steps[i].At < repair.From) steps.Add(role.Steps[i++]);
        var before = steps.Count == 0 ? role.Start : new(role.Role, steps[^1].Facing, steps[^1].Weight);
        if (before.Weight == Weight.Both || i == role.Steps.Count || role.Steps[i].At != repair.From) return null;
        var from = i;
        var counts = (repair.To - repair.From).Ceiling + 1;
        if (counts is not (2 or 4)) return null;
        while (i < role.Steps.Count && role.Steps[i].At < repair.From + Beats.Of(counts))
        {
            if (!role.Steps[i].Turn.IsNone) return null;
            i++;
        }

        var after = role.Steps[i - 1].Weight;
        var weight = before.Weight;
        for (var shuffle = 0; shuffle < counts / 2; shuffle++)
        {
            for (var step = 0; step < 3; step++)
            {
                var foot = weight.Free()!.Value;
                weight = foot.Weight();
                steps.Add(role.Steps[from] with
                {
                    At = repair.From + Beats.Of((4 * shuffle) + step, 2),
                    Foot = foot.Use(),
                    Kind = ActionKind.Step,
                    Direction = repair.Forward ? Direction.Forward : Direction.Back,
                    Weight = weight,
                    Size = StepSize.Usual,
                    InTriple = true,
                });
            }
        }

        if (weight != after) return null;
        while (i < role.Steps.Count) steps.Add(role.Steps[i++]);
        return [.. steps];
    }

    private static ScoreStep[]? AsThePartner(RoleScore role, RoleScore partner, Repair repair)
    {
        var steps = new List<ScoreStep>(role.Steps.Count);
        var changed = false;
        var p = 0;
        for (var i = 0; i < role.Steps.Count; i++)
        {
            var step = role.Steps[i];
            steps.Add(step);
            if (step.At < repair.From || step.At > repair.To) continue;
            while (p < partner.Steps.Count && partner.Steps[p].At < step.At) p++;
            if (p == partner.Steps.Count || partner.Steps[p] is not { } model || model.At != step.At) return null;
            if (!step.Turn.IsNone || !model.Turn.IsNone) continue;
            var apart = (model.Facing - step.Facing).Eighths;
            if (apart is not (0 or 4 or -4)) return null;
            var mirrored = (i == 0 ? role.Start.Weight : role.Steps[i - 1].Weight) != (p == 0 ? partner.Start.Weight : partner.Steps[p - 1].Weight);
            var (foot, weight) = mirrored ? (model.Foot.Mirrored(), model.Weight.Mirrored()) : (model.Foot, model.Weight);
            // The feet must be as they were for what follows, and go the same way across the floor.
            if (weight != step.Weight || (mirrored == (apart == 0) && IsAhead(model.Direction) is null && model.Kind.Rule() == WeightRule.Takes && model.Direction is not (Direction.InPlace or Direction.Together))) return null;
            steps[i] = step with { Foot = foot, Kind = model.Kind, Direction = apart == 0 ? model.Direction : model.Direction.TurnedRound(), Size = model.Size, InTriple = model.InTriple };
            changed |= steps[i].Kind != step.Kind || steps[i].Direction != step.Direction || steps[i].Size != step.Size;
        }

        return changed ? [.. steps] : null;
    }
}
