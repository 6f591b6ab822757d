using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Scoring;

/// <summary>A call as the page has it, "Call 7-8, follow: your turn".</summary>
/// <param name="Part">Index of the part whose counts it means, -1 for one before the first part.</param>
/// <param name="From">First whole count in the part on which it is called.</param>
/// <param name="To">Last whole count on which it is called.</param>
/// <param name="Role">For whom; null for everybody.</param>
/// <param name="Time">In which dancing of the part only, from 1; 0 for the last; null for all.</param>
/// <param name="Words">What is called; empty together with <paramref name="None"/> false when the page says nothing there.</param>
/// <param name="None">Nothing is called there.</param>
/// <param name="Unread">What the line says before its colon and nobody understands; null when nothing.</param>
public sealed record ScoreCall(int Part, int From, int To, Role? Role, int? Time, string Words, bool None, TextSpan Span, TextSpan? Unread)
{
    /// <summary>True for what is called before the dance begins, which stands on no count of it.</summary>
    public bool Opening { get; init; }
}
