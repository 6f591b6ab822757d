using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Motion;

/// <summary>Where a foot stands: the middle of its sole and which way its toe looks.</summary>
public readonly record struct FootPlace(Spot At, Facing Facing);

/// <summary>How a dancer stands once an action is done.</summary>
/// <param name="At">The count of the action; count 0 for the stance before the dance.</param>
/// <param name="Middle">The middle of the body seen from above.</param>
/// <param name="Step">Index of the action in the role's steps, -1 before the dance.</param>
/// <param name="Turned">Eighths of turning during the action, to the left; a full turn is not lost in it.</param>
public sealed record Stance(Count At, FootPlace Left, FootPlace Right, Spot Middle, Facing Facing, Weight Weight, int Step, int Turned)
{
    public FootPlace Foot(Foot foot) => foot == Basics.Foot.Left ? Left : Right;
}

/// <summary>A role's stances, the first before count 1 and one after each action.</summary>
public sealed record RoleMotion(Role Role, ValueList<Stance> Stances)
{
    /// <summary>From where the repeat began to where it ended, in metres.</summary>
    public Spot Travel => Stances[Stances.Count - 1].Middle - Stances[0].Middle;
}

/// <summary>Where everybody is through one repeat of the dance.</summary>
public sealed record DanceMotion(ValueList<RoleMotion> Roles)
{
    public RoleMotion? Of(Role role)
    {
        foreach (var one in Roles)
        {
            if (one.Role == role) return one;
        }

        return null;
    }
}
