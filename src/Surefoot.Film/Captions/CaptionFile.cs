using Surefoot.Dance.Basics;

namespace Surefoot.Film.Captions;

public enum CaptionForm
{
    WebVtt,
    Srt,
}

/// <summary>A file of captions as it was read. Reading never fails; what is not as it should be is told with its line.</summary>
public sealed record CaptionFile(CaptionForm Form, ValueList<Cue> Cues, ValueList<CaptionTrouble> Troubles);

/// <summary>One caption.</summary>
/// <param name="Text">Its lines as they stand, with their marks.</param>
/// <param name="Line">The line of the file its times stand in, from 1.</param>
public sealed record Cue(FilmTime From, FilmTime To, string? Name, ValueList<string> Text, int Line);

/// <summary>What is not as the form asks, or could not be used.</summary>
/// <param name="Line">Of the file, from 1.</param>
/// <param name="Lost">True where something that was said could not be used.</param>
public sealed record CaptionTrouble(int Line, string Says, bool Lost = false);
