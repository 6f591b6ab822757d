namespace Surefoot.Library;

/// <summary>What is kept of a dance's film; the film itself is not.</summary>
/// <param name="Address">Where the film's file is on the web, empty where it is played from a device.</param>
/// <param name="FileName">Of the caption file; empty where they were pasted.</param>
/// <param name="Captions">As they came, WebVTT or SRT; may be empty while only the address is known.</param>
public sealed record FilmInfo(long Page, string Address, string FileName, string Captions, DateTimeOffset Changed);
