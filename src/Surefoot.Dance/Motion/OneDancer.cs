using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Motion;

/// <summary>Follows each dancer's feet with the step lengths that the page and the table give, whoever the partner is.</summary>
public static class OneDancer
{
    public static DanceMotion Follow(DanceScore score, StepLengths? lengths = null) =>
        new(score.Roles.Select(r => Follow(score.Facts, r, lengths ?? StepLengths.Usual)).ToValueList());

    public static RoleMotion Follow(DanceFacts facts, RoleScore role, StepLengths lengths)
    {
        var stature = StatureOf(facts, role.Role);
        var chosen = new double[role.Steps.Count];
        for (var i = 0; i < chosen.Length; i++) chosen[i] = lengths.Chosen(role.Steps[i], stature);
        return Footwork.Of(role, stature).Dance(StartOf(facts, role), chosen, new double[chosen.Length]);
    }

    /// <summary>Stature of a role in metres.</summary>
    public static double StatureOf(DanceFacts facts, Role role) => role switch
    {
        Role.Lead => facts.LeadStature ?? Body.LeadStature,
        Role.Follow => facts.FollowStature ?? Body.FollowStature,
        _ => Body.ReferenceStature,
    };

    private static Spot StartOf(DanceFacts facts, RoleScore role)
    {
        if (role.Role != Role.Follow) return Spot.Origin;
        var hold = Holds.Named(facts.Hold) ?? Holds.Named("two hands")!;
        return Spot.Origin.Moved(facts.Start(Role.Lead).Facing, hold.Ahead, hold.Left);
    }
}
