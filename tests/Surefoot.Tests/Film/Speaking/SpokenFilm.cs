using Surefoot.Dance.Basics;

namespace Surefoot.Tests.Film.Speaking;

/// <summary>A word as it was spoken.</summary>
/// <param name="Meant">True for a word of a planted difference: the recogniser may mishear it but does not swallow it.</param>
internal sealed record SpokenWord(string Text, double From, double To, bool Meant = false);

internal enum Mistake
{
    /// <summary>A step or figure said once more than the page has it.</summary>
    OneTooMany,
    /// <summary>Left feet said for right ones, or the other way round.</summary>
    OtherFoot,
    /// <summary>Back for forward, or the other way round.</summary>
    OtherWay,
    /// <summary>A quarter for a half turn, or the other way round.</summary>
    OtherTurn,
    /// <summary>A step left out.</summary>
    Missing,
    /// <summary>The part called by another part's name and not put right.</summary>
    OtherPart,
}

/// <summary>A difference from the page that was said on purpose.</summary>
internal sealed record Planted(Mistake Kind, double At, string Said);

/// <summary>Where somebody who looks for a part would want to jump.</summary>
/// <param name="Part">Key of the part, or null for a run of the whole dance at tempo.</param>
/// <param name="Role">For whom it is shown where that is said; null for everybody.</param>
internal sealed record TrueChapter(string? Part, Role? Role, double From);

/// <summary>A run-through with everything that is true of it.</summary>
internal sealed record SpokenFilm(string Dance, int Seed, IReadOnlyList<SpokenWord> Words, IReadOnlyList<Planted> Planted, IReadOnlyList<TrueChapter> Chapters, string Captions);
