using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>Where a hand is: over the floor and how high, in metres.</summary>
internal readonly record struct HandPlace(Spot At, double Up)
{
    public HandPlace Towards(HandPlace other, double share) => new(At + ((other.At - At) * share), Up + ((other.Up - Up) * share));
}

/// <summary>Both hands of a pair. They are one place, but where a hand lies on the partner.</summary>
internal readonly record struct PairPlace(HandPlace Lead, HandPlace Follow)
{
    public PairPlace Towards(PairPlace other, double share) => new(Lead.Towards(other.Lead, share), Follow.Towards(other.Follow, share));

    public static PairPlace Joined(HandPlace grip) => new(grip, grip);
}
