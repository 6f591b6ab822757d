using System.Text.Json.Serialization;

namespace Surefoot.Library.Exchange;

/// <summary>
/// How an export lies on the disk; docs/library.md shows it. A notebook is a folder of pages as any other, so
/// that the other programs read it; what is known beside the pages lies in a folder next to each.
/// </summary>
internal static class Layout
{
    /// <summary>Counted up when a later Surefoot writes what an earlier one would misread.</summary>
    public const int Form = 1;

    public const string Library = "library.json";

    public const string Page = "page.json";

    /// <summary>The hall's own words, as <c>surefoot read --words</c> takes them too; left out where there are none.</summary>
    public const string Words = Transcribe.SheetWords.FileName;

    /// <summary>The captions of a page's film, as they came.</summary>
    public const string Captions = "captions.txt";

    /// <summary>The folder of a notebook's terms of lessons, and what their names end on.</summary>
    public const string Terms = "terms/", Term = ".term";

    /// <summary>The folder of deleted pages. Hidden, so that nobody takes them for dances of the notebook.</summary>
    public const string Bin = ".bin";
}

// Names in these are the names in the files.
internal sealed record LibraryFile(int Form, IReadOnlyList<NotebookFile> Notebooks);

internal sealed record NotebookFile(string Folder, string Name, DateTimeOffset Created, NotebookSettings Settings, IReadOnlyList<string> Pages, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] DateTimeOffset? Deleted = null)
{
    /// <summary>Its terms of lessons; left out where there are none.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public IReadOnlyList<TermFile>? Terms { get; init; }
}

internal sealed record TermFile(string Title, string File, int Version, DateTimeOffset Changed);

internal sealed record PageFile(
    string Name,
    DateTimeOffset Created,
    DateTimeOffset Changed,
    DateTimeOffset? Deleted,
    int Current,
    string Learned,
    IReadOnlyList<string> Aliases,
    IReadOnlyList<string> Tags,
    IReadOnlyList<SongFile> Songs,
    IReadOnlyList<VersionFile> Versions,
    IReadOnlyList<DraftFile> Drafts,
    IReadOnlyList<AttachmentFile> Attachments,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] FilmFile? Film = null);

internal sealed record SongFile(string Title, string Artist, double? Tempo);

internal sealed record VersionFile(int Number, string File, DateTimeOffset Saved, string Note, string By, string Device, int BasedOn, int? BesideOf, int? BroughtBack);

internal sealed record DraftFile(string Session, long Sequence, int BasedOn, string File, DateTimeOffset Saved);

internal sealed record AttachmentFile(string Title, string Address, string File, string FileName, string MediaType, DateTimeOffset Added);

/// <summary>A film's captions lie in a file of their own.</summary>
internal sealed record FilmFile(string Address, string File, string FileName, DateTimeOffset Changed);
