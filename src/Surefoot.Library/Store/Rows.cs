using Surefoot.Dance.Basics;

namespace Surefoot.Library.Store;

/// <summary>The one row that counts changes. Every change of what is listed or searched takes it first.</summary>
internal sealed class StateRow
{
    public int Id { get; set; }

    /// <summary>
    /// Counted up by every change, inside its transaction. Whoever changes something holds this row until the
    /// change stands, so changes come one after the other and their numbers are in the order in which they became visible.
    /// </summary>
    public long Revision { get; set; }
}

/// <summary>A word of the hall: what sheets say, and what a page would write.</summary>
internal sealed class WordRow
{
    public long Id { get; set; }

    public string Said { get; set; } = "";

    public string SaidKey { get; set; } = "";

    public string Means { get; set; } = "";

    public DateTimeOffset Added { get; set; }
}

internal sealed class NotebookRow
{
    public long Id { get; set; }

    public string Name { get; set; } = "";

    public string NameKey { get; set; } = "";

    public DateTimeOffset Created { get; set; }

    public string LeadWord { get; set; } = "";

    public string FollowWord { get; set; } = "";

    public double? LeadStature { get; set; }

    public double? FollowStature { get; set; }

    public Units Units { get; set; }

    public DecimalMark DecimalMark { get; set; }

    public Paper Paper { get; set; }

    public int? UsualTempo { get; set; }

    public string Theme { get; set; } = "";

    /// <summary>When it was put into the bin, or null.</summary>
    public DateTimeOffset? Deleted { get; set; }
}

/// <summary>A page of a notebook: a dance, or a page of the hall's figures.</summary>
internal sealed class PageRow
{
    public long Id { get; set; }

    public long NotebookId { get; set; }

    /// <summary>Its file's name without the ending: "circle/five-barns".</summary>
    public string Name { get; set; } = "";

    public string NameKey { get; set; } = "";

    public bool IsFigures { get; set; }

    /// <summary>The number of the version that is the page now.</summary>
    public int Current { get; set; }

    public string Learned { get; set; } = "";

    public DateTimeOffset Created { get; set; }

    public DateTimeOffset Changed { get; set; }

    /// <summary>When it was put into the bin, or null.</summary>
    public DateTimeOffset? Deleted { get; set; }
}

internal sealed class VersionRow
{
    public long Id { get; set; }

    public long PageId { get; set; }

    public int Number { get; set; }

    public string Text { get; set; } = "";

    public DateTimeOffset Saved { get; set; }

    public string Note { get; set; } = "";

    public string By { get; set; } = "";

    public string Device { get; set; } = "";

    /// <summary>The version the writer had before them; 0 for the first.</summary>
    public int BasedOn { get; set; }

    /// <summary>The version that was there already when this one was saved from an older one, or null.</summary>
    public int? BesideOf { get; set; }

    /// <summary>The version that was brought back, or null.</summary>
    public int? BroughtBack { get; set; }
}

internal sealed class DraftRow
{
    public long PageId { get; set; }

    public string Session { get; set; } = "";

    /// <summary>Counted up by the editor, so that a draft that arrives late does not replace a newer one.</summary>
    public long Sequence { get; set; }

    public int BasedOn { get; set; }

    public string Text { get; set; } = "";

    public DateTimeOffset Saved { get; set; }
}

internal sealed class AliasRow
{
    public long Id { get; set; }

    public long PageId { get; set; }

    public string Name { get; set; } = "";

    public string NameKey { get; set; } = "";
}

internal sealed class TagRow
{
    public long Id { get; set; }

    public long PageId { get; set; }

    public string Name { get; set; } = "";

    public string NameKey { get; set; } = "";
}

internal sealed class SongRow
{
    public long Id { get; set; }

    public long PageId { get; set; }

    public string Title { get; set; } = "";

    public string Artist { get; set; } = "";

    /// <summary>Counts a minute, or null where nobody has listened yet.</summary>
    public double? Tempo { get; set; }
}

internal sealed class AttachmentRow
{
    public long Id { get; set; }

    public long PageId { get; set; }

    public string Title { get; set; } = "";

    /// <summary>Where a film can be seen; empty for a stored file.</summary>
    public string Address { get; set; } = "";

    public string FileName { get; set; } = "";

    public string MediaType { get; set; } = "";

    public long Size { get; set; }

    public DateTimeOffset Added { get; set; }
}

/// <summary>A stored file's bytes, apart from its name so that listing does not read them.</summary>
internal sealed class FileRow
{
    public long AttachmentId { get; set; }

    public byte[] Bytes { get; set; } = [];
}

/// <summary>
/// What is known of a page without reading it again: made from its reading whenever it is kept, from its
/// names and songs whenever they change. Lists and searches read these rows and nothing else.
/// </summary>
internal sealed class ShelfRow
{
    public long PageId { get; set; }

    public long NotebookId { get; set; }

    public long Revision { get; set; }

    public bool Deleted { get; set; }

    public bool IsFigures { get; set; }

    public string Name { get; set; } = "";

    public string Title { get; set; } = "";

    public DateTimeOffset Changed { get; set; }

    public bool ForCouples { get; set; }

    public Floor Floor { get; set; }

    public int? Walls { get; set; }

    public int Counts { get; set; }

    public int MeterBeats { get; set; }

    public int MeterUnit { get; set; }

    public int? TempoFrom { get; set; }

    public int? TempoTo { get; set; }

    public string Level { get; set; } = "";

    public string Learned { get; set; } = "";

    public int Errors { get; set; }

    public int Warnings { get; set; }

    public int Hints { get; set; }

    // One a line from here on.
    public string Holds { get; set; } = "";

    public string Figures { get; set; } = "";

    public string Aliases { get; set; } = "";

    public string Tags { get; set; } = "";

    public string Songs { get; set; } = "";

    /// <summary>Other words of the page: names of its parts, its notes. Read by searches only.</summary>
    public string Words { get; set; } = "";

    /// <summary>What is danced, in order, one action or figure a line: see <see cref="Searching.Moves"/>. Read by searches only.</summary>
    public string Moves { get; set; } = "";

    /// <summary>What is danced count by count, as likeness compares it: see <see cref="Likeness.DanceSteps.ToBytes"/>. Read by that only.</summary>
    public byte[] Steps { get; set; } = [];

    /// <summary>The version it was made from, and a mark of the figures it was read with: when they no longer fit, it is made again.</summary>
    public int Version { get; set; }

    public string ReadWith { get; set; } = "";
}

/// <summary>A term of lessons, with what was reached in it; all of it is its text.</summary>
internal sealed class TermRow
{
    public long Id { get; set; }

    public long NotebookId { get; set; }

    public string Title { get; set; } = "";

    public string Text { get; set; } = "";

    /// <summary>Counts up whenever it is kept.</summary>
    public int Version { get; set; }

    public DateTimeOffset Changed { get; set; }
}

/// <summary>The film of a dance: its captions, and where it can be played. The film itself is never kept.</summary>
internal sealed class FilmRow
{
    public long PageId { get; set; }

    /// <summary>Of the film's own file; empty where she plays it from her device.</summary>
    public string Address { get; set; } = "";

    /// <summary>The name of the caption file; empty for captions that were pasted.</summary>
    public string FileName { get; set; } = "";

    public string Captions { get; set; } = "";

    public DateTimeOffset Changed { get; set; }

    /// <summary>When it was taken away, or null; it can come back until the bin is emptied or another one is kept.</summary>
    public DateTimeOffset? Away { get; set; }
}
