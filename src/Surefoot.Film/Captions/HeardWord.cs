namespace Surefoot.Film.Captions;

/// <summary>A word of the captions with its time in seconds.</summary>
/// <param name="Line">The line of the caption file where its caption's times stand.</param>
public readonly record struct HeardWord(string Text, double From, double To, int Line);
