using Surefoot.Dance.Basics;
using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Couple;

/// <summary>A moment at which one of the two acts, with how both stand once they have.</summary>
/// <param name="LeadStance">Index of the lead's stance then; likewise the follow's.</param>
/// <param name="Turning">True while somebody turns, or they change places.</param>
/// <param name="Joined">Which hands are joined from here on, as far as the page tells.</param>
/// <param name="Raised">Which joined hands the page has up.</param>
/// <param name="Where">Where the follow may be, seen from the lead.</param>
public sealed record Moment(
    Count At, int LeadStance, int FollowStance, Facing Lead, Facing Follow, bool Turning, Pairs Joined, Pairs Raised, Region Where)
{
    /// <summary>The follow's facing against the lead's, positive to the left.</summary>
    public Turn Apart => Follow - Lead;

    /// <summary>The hold that the page names for this moment, or null.</summary>
    public StatedHold? Stated { get; init; }
}

/// <summary>A hold that the page names: in the steps ("into closed") or as a fact ("(closed)").</summary>
/// <param name="Claimed">True for a fact in brackets.</param>
/// <param name="LetGo">Joined hands of that hold which the page has let go and not taken again.</param>
/// <param name="Fits">True when both look the way the hold needs and its hands are not let go.</param>
public sealed record StatedHold(string Hold, bool Claimed, Pairs LetGo, bool Fits, TextSpan Span);

/// <summary>Where the follow's middle may be in the lead's frame, in metres.</summary>
/// <param name="Hold">The hold in force, or null when what they hold has no name.</param>
/// <param name="Wide">True while somebody turns or passes, or what they hold has no name: anywhere within reach.</param>
/// <param name="Centre">The middle of the region; when wide, about where usual steps would bring her.</param>
/// <param name="Give">How far she may be from the centre ahead and aside; when wide, how far from the lead.</param>
public sealed record Region(string? Hold, bool Wide, Spot Centre, double Give)
{
    /// <summary>True when a place, seen from the lead, lies in the region or no further out than a bit.</summary>
    public bool Has(Spot place, double bit) => Wide
        ? double.IsPositiveInfinity(Give) || place.Length <= Give + bit
        : Math.Abs(place.X - Centre.X) <= Give + bit && Math.Abs(place.Y - Centre.Y) <= Give + bit;
}
