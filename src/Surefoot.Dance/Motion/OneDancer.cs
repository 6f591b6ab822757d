using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Motion;

/// <summary>
/// Follows one dancer's feet with the step lengths that the page and the table give. Facings are known
/// beforehand, so every place is a sum of lengths times fixed directions.
/// </summary>
public static class OneDancer
{
    public static DanceMotion Follow(DanceScore score, StepLengths? lengths = null) =>
        new(score.Roles.Select(r => Follow(score.Facts, r, lengths ?? StepLengths.Usual)).ToValueList());

    public static RoleMotion Follow(DanceFacts facts, RoleScore role, StepLengths lengths)
    {
        var stature = StatureOf(role.Role);
        var half = Body.HalfStance * stature;
        var facing = role.Start.Facing;
        var middle = StartOf(facts, role);
        var left = new FootPlace(middle.Moved(facing, 0, half), facing);
        var right = new FootPlace(middle.Moved(facing, 0, -half), facing);
        var stances = new Stance[role.Steps.Count + 1];
        stances[0] = new(Count.At(0), left, right, middle, facing, role.Start.Weight, -1);
        for (var i = 0; i < role.Steps.Count; i++)
        {
            var step = role.Steps[i];
            if (!step.Turn.IsNone)
            {
                // The body turns on the ball of the standing foot, which stays; the middle swings round it.
                var pivotFoot = stances[i].Weight.Free()?.Other();
                facing = step.Facing;
                if (pivotFoot is { } standing)
                {
                    var place = standing == Foot.Left ? left : right;
                    middle = place.At.Moved(facing, 0, standing == Foot.Left ? -half : half);
                    // In a pivot both feet turn on their balls; else only the one that stands.
                    var both = step.Kind == ActionKind.Pivot;
                    if (both || standing == Foot.Left) left = left with { Facing = facing };
                    if (both || standing == Foot.Right) right = right with { Facing = facing };
                }
                else
                {
                    left = left with { Facing = facing };
                    right = right with { Facing = facing };
                }
            }

            var foot = step.Foot.Single();
            if (foot is { } moving && step.Kind.PlacesFoot() && step.Kind != ActionKind.Drop)
            {
                var outward = moving == Foot.Left ? 1 : -1;
                var length = step.Kind.Rule() == WeightRule.Takes ? lengths.Chosen(step, stature) : TouchReach * stature;
                var (forward, side, ahead) = Course(step.Direction);
                var target = middle.Moved(facing, forward * length, side * outward * length);
                var place = new FootPlace(
                    target.Moved(facing, ahead * stature, outward * half), facing);
                if (step.Kind.Rule() == WeightRule.Takes) middle = target;
                if (moving == Foot.Left) left = place;
                else right = place;
            }
            else if (step.Kind == ActionKind.Jump)
            {
                var spread = step.Direction == Direction.Apart ? 2.2 * half : half;
                left = new(middle.Moved(facing, 0, spread), facing);
                right = new(middle.Moved(facing, 0, -spread), facing);
            }
            else if (step.Weight.Free() is { } free && (step.ChangesWeight || step.Weight != stances[i].Weight))
            {
                // Weight comes back over a foot that never moved.
                var standing = free.Other();
                var place = standing == Foot.Left ? left : right;
                middle = place.At.Moved(facing, 0, standing == Foot.Left ? -half : half);
            }

            stances[i + 1] = new(step.At, left, right, middle, facing, step.Weight, i);
        }

        return new(role.Role, new(stances));
    }

    /// <summary>Stature of a role in metres.</summary>
    public static double StatureOf(Role role) => role switch
    {
        Role.Lead => Body.LeadStature,
        Role.Follow => Body.FollowStature,
        _ => Body.ReferenceStature,
    };

    /// <summary>How far a touch reaches from under the body, / stature. Working value, from memory.</summary>
    private const double TouchReach = 0.16;

    // Forward, outward, and how far the foot itself stands ahead of the body's middle (/ stature): a foot that
    // crosses lands past the other foot's toe or heel.
    private static (double Forward, double Outward, double Ahead) Course(Direction direction) => direction switch
    {
        Direction.Forward => (1, 0, 0),
        Direction.Back => (-1, 0, 0),
        Direction.Side => (0, 1, 0),
        Direction.DiagonalForward => (0.7, 0.7, 0),
        Direction.DiagonalBack => (-0.7, 0.7, 0),
        Direction.Across => (0, -1, 0.06),
        Direction.Behind => (0, -1, -0.06),
        Direction.ForwardAcross => (0.9, -0.4, 0),
        Direction.LockBehind => (0, 0, -0.07),
        Direction.LockFront => (0, 0, 0.07),
        Direction.Apart => (0, 1, 0),
        _ => (0, 0, 0),
    };

    private static Spot StartOf(DanceFacts facts, RoleScore role)
    {
        if (role.Role != Role.Follow) return Spot.Origin;
        var hold = Holds.Named(facts.Hold) ?? Holds.Named("two hands")!;
        return Spot.Origin.Moved(facts.Start(Role.Lead).Facing, hold.Ahead, hold.Left);
    }
}
