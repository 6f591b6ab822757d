using Surefoot.Dance.Basics;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring.Laying;

/// <summary>A move on its counts, for one role, still in words.</summary>
/// <param name="Times">When each of its actions falls, in the part.</param>
/// <param name="End">When the next move of the line begins, or the line ends.</param>
/// <param name="ForBoth">True when the words are for both roles, so that "opposite feet" turns them round for the follow.</param>
/// <param name="Line">Where the line stands, to tell words of one line from another's.</param>
/// <param name="Doubtful">Something in the line was not understood or did not fit; what follows from it stays silent.</param>
internal sealed record LaidMove(Move Move, ValueList<Count> Times, Count End, bool ForBoth, TextSpan Line, bool Doubtful)
{
    public bool Mirrored { get; init; }

    public bool Repeated { get; init; }

    /// <summary>The line that has it danced again, for a repeat inside a part.</summary>
    public TextSpan? RepeatedBy { get; init; }
}
