using Surefoot.Film.Hearing;

namespace Surefoot.Film.Alignment;

internal enum Placing
{
    /// <summary>It moves nothing on.</summary>
    Talk,
    /// <summary>It is what the page asks for.</summary>
    Ask,
    /// <summary>It is one step of what the page asks for.</summary>
    Step,
    /// <summary>It counts.</summary>
    Count,
    /// <summary>It leads to the beginning of a part or of the dance.</summary>
    Leads,
    /// <summary>It is said of earlier words danced again.</summary>
    Again,
    /// <summary>It names another part than is danced.</summary>
    Misnames,
    /// <summary>It turns to the other dancer.</summary>
    Turns,
}

/// <summary>Where in the dance something that was said belongs.</summary>
/// <param name="Course">For which role's course; index.</param>
/// <param name="Before">The moment before it is said.</param>
/// <param name="After">The moment that comes next then.</param>
/// <param name="Ask">What the page asks for there; -1 where nothing.</param>
/// <param name="Jumped">It does not go on from where the last thing ended.</param>
internal sealed record Placed(Heard Heard, Placing How, int Course, int Before, int After, int Ask, bool Jumped);
