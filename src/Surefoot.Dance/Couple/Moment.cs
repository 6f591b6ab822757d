using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>A moment at which one of the two acts, with how both stand once they have.</summary>
/// <param name="LeadStance">Index of the lead's stance then; likewise the follow's.</param>
/// <param name="Joined">Which hands are joined from here on, as far as the page tells.</param>
/// <param name="Raised">Which joined hands the page has up.</param>
/// <param name="Where">Where the follow may be, seen from the lead.</param>
public sealed record Moment(
    Count At, int LeadStance, int FollowStance, Facing Lead, Facing Follow, Pairs Joined, Pairs Raised, Region Where)
{
    /// <summary>The follow's facing against the lead's, positive to the left.</summary>
    public Turn Apart => Follow - Lead;
}

/// <summary>Where the follow's middle may be in the lead's frame, in metres.</summary>
/// <param name="Hold">The hold in force, or null when what they hold has no name.</param>
/// <param name="Wide">True while somebody turns or passes: anywhere within reach on the side where she is.</param>
/// <param name="Centre">The middle of the region; when wide, where she was when the turning began.</param>
/// <param name="Give">How far she may be from the centre ahead and aside; when wide, how far from the lead.</param>
public sealed record Region(string? Hold, bool Wide, Spot Centre, double Give);
