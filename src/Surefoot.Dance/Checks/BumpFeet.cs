using Surefoot.Dance.Basics;
using Surefoot.Dance.Problems;

namespace Surefoot.Dance.Checks;

/// <summary>A foot comes down where the partner's foot is.</summary>
public sealed class BumpFeet : ICheck
{
    public string Name => "bump-feet";

    public IEnumerable<Problem> Find(DanceCase dance) => BumpWords.Of(dance, bodies: false, (bump, when) => (
        $"The lead's {bump.Lead!.Value.Word()} foot and the follow's {bump.Follow!.Value.Word()} foot are in the same place {when}.",
        "Standing a little further apart within their hold does not clear them. Let one of the two go another way there, or use the other foot."), Name);
}
