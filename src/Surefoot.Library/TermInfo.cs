namespace Surefoot.Library;

/// <summary>A term of lessons as it is kept.</summary>
/// <param name="Notebook">The notebook whose dances are taught.</param>
/// <param name="Version">Counts up whenever it is kept, from 1.</param>
public sealed record TermInfo(long Id, long Notebook, string Title, string Text, int Version, DateTimeOffset Changed);
