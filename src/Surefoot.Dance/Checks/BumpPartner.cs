using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>The bodies of the two would be in the same place.</summary>
public sealed class BumpPartner : ICheck
{
    public string Name => "bump-partner";

    public IEnumerable<Problem> Find(DanceCase dance) => BumpWords.Of(dance, bodies: true, (bump, when) => (
        $"The two bump into each other {when}: one would have to give way by {dance.Measures.Length(Math.Round(bump.Metres, 1, MidpointRounding.ToPositiveInfinity))}.",
        "That is so even with the steps that bring them past each other best. Send one of them further to the side, or let the other wait until there is room."), Name);
}
