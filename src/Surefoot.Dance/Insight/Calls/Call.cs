using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Insight.Calls;

/// <summary>One call.</summary>
/// <param name="From">
/// The first whole count on which it is called, from 1 through the repeat; 0 and -1 are the last counts before the dance begins.
/// </param>
/// <param name="Counts">On how many counts, 1 or more.</param>
/// <param name="Role">For whom; null for everybody.</param>
/// <param name="Words">What is called; "{lead}" and "{follow}" stand for what the hall calls them, see <see cref="CallWords.For"/>.</param>
/// <param name="Step">The count on which what it names begins; one more than the repeat has for the start of the next.</param>
/// <param name="Turns">True when whoever it is for turns in it.</param>
/// <param name="Written">True when the page has it, false when it follows from the steps.</param>
public sealed record Call(int From, int Counts, Role? Role, string Words, Count Step, bool Turns, bool Written)
{
    /// <summary>The last count on which it is called.</summary>
    public int To => From + Counts - 1;
}

/// <summary>What is danced from a count on, in the words of its call, whether it is called or goes on silently.</summary>
/// <param name="Role">For whom; null for everybody.</param>
public sealed record NamedStep(Count At, Role? Role, string Words);

/// <summary>The calls of a tag, bridge, intro or ending; counted from 1 in it.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="AfterWall">After which repeat it is danced, or null.</param>
/// <param name="Danced">What is danced in it, in the words of its calls.</param>
public sealed record ExtraCalls(int Part, int? AfterWall, ValueList<Call> Calls, ValueList<NamedStep> Danced);

/// <summary>A call of one repeat only: that a tag comes, or that the dance begins again.</summary>
/// <param name="Wall">Which repeat, from 1. The call stands in place of what is called on its counts otherwise.</param>
public sealed record WallCall(int Wall, Call Call);

/// <summary>Everything that is called in a dance, a plain value made from its score.</summary>
/// <param name="Opening">What is called on the last counts before the dance begins.</param>
/// <param name="Calls">One repeat, in the order of their counts; the last ones lead into the start again.</param>
/// <param name="Danced">What is danced through one repeat, in the same words.</param>
public sealed record CallSheet(ValueList<Call> Opening, ValueList<Call> Calls, ValueList<NamedStep> Danced, ValueList<ExtraCalls> Extras, ValueList<WallCall> Walls)
{
    /// <summary>The same in the words that follow from the steps: a call of the page's own is said before its step, and need not be its name.</summary>
    public ValueList<NamedStep> FromSteps { get; init; }

    public static CallSheet None { get; } = new(default, default, default, default, default);
}
