using Surefoot.Dance.Motion;

namespace Surefoot.Dance.Moving;

/// <summary>Where a hand is: over the floor and how high, in metres.</summary>
internal readonly record struct HandPlace(Spot At, double Up)
{
    public HandPlace Towards(HandPlace other, double share) => Towards(other, share, share);

    /// <summary>On the way to another place by a share across the floor and by another up or down.</summary>
    public HandPlace Towards(HandPlace other, double across, double up) => new(At + ((other.At - At) * across), Up + ((other.Up - Up) * up));
}

/// <summary>Both hands of a pair. They are one place, but where a hand lies on the partner.</summary>
internal readonly record struct PairPlace(HandPlace Lead, HandPlace Follow)
{
    public PairPlace Towards(PairPlace other, double share) => Towards(other, share, share);

    /// <inheritdoc cref="HandPlace.Towards(HandPlace, double, double)"/>
    public PairPlace Towards(PairPlace other, double across, double up) => new(Lead.Towards(other.Lead, across, up), Follow.Towards(other.Follow, across, up));

    public static PairPlace Joined(HandPlace grip) => new(grip, grip);
}
