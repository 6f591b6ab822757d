using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>A foot comes down where the partner's foot is.</summary>
public sealed class BumpFeet : ICheck
{
    public string Name => "bump-feet";

    public IEnumerable<Problem> Find(DanceCase dance) => BumpWords.Of(dance, bodies: false, (bump, when) => (
        $"The lead's {bump.Lead!.Value.Word()} foot and the follow's {bump.Follow!.Value.Word()} foot are in the same place {when}.",
        "That is so even with the steps that keep their feet apart best. Let one of the two step to the other side, or start with the other foot."), Name);
}
