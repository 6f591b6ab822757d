namespace Surefoot.Library;

/// <summary>A page of a notebook without its text.</summary>
/// <param name="Name">Its file's name without the ending, in folders by slashes: "circle/five-barns".</param>
/// <param name="IsFigures">True for a page that lends its figures to the notebook.</param>
/// <param name="Current">The number of the version that is the page now.</param>
/// <param name="Learned">Where and from whom it was learned, in free words.</param>
/// <param name="Deleted">When it was put into the bin, or null.</param>
public sealed record PageInfo(
    long Id,
    long Notebook,
    string Name,
    bool IsFigures,
    int Current,
    string Learned,
    DateTimeOffset Created,
    DateTimeOffset Changed,
    DateTimeOffset? Deleted);

/// <summary>A kept version of a page without its text.</summary>
/// <param name="Note">What the writer said of it.</param>
/// <param name="By">Who kept it, where they said so.</param>
/// <param name="Device">On what, where it was said.</param>
/// <param name="BasedOn">The version the writer had before them; 0 for the first.</param>
/// <param name="BesideOf">
/// The version that stood in its place already because two people wrote at the same time; this one was kept
/// beside it. Null for every other version.
/// </param>
/// <param name="BroughtBack">The earlier version whose text this is, for a version that was brought back.</param>
public sealed record VersionInfo(
    int Number,
    DateTimeOffset Saved,
    string Note,
    string By,
    string Device,
    int BasedOn,
    int? BesideOf,
    int? BroughtBack);

/// <summary>What an editor had in it, kept until a version is.</summary>
/// <param name="Session">The editor's own name for itself, one for each open page.</param>
/// <param name="Sequence">Counted up by the editor with every draft.</param>
public sealed record Draft(long Page, string Session, long Sequence, int BasedOn, string Text, DateTimeOffset Saved);
