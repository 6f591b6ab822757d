namespace Surefoot.Film.Hearing;

/// <summary>A word as it is understood, in small letters, with the times of the word it came from.</summary>
/// <param name="Line">The line of the caption file.</param>
internal readonly record struct Spoken(string Word, double From, double To, int Line);
