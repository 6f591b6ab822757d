namespace Surefoot.Library;

/// <summary>What became of one file.</summary>
public enum Taken
{
    /// <summary>It is a page of the notebook now.</summary>
    New,

    /// <summary>The page was there and said something else; what came in is its newest version.</summary>
    Changed,

    /// <summary>The page was there with the same text.</summary>
    AlreadyThere,

    /// <summary>It could not be read, or must not be.</summary>
    NotRead,
}

/// <summary>One file of an import.</summary>
/// <param name="File">Its name in the folder or zip.</param>
/// <param name="Page">The page it became or was, or null.</param>
/// <param name="Says">A sentence where something has to be said; empty otherwise.</param>
public sealed record ImportLine(string File, Taken Taken, long? Page, string Says);

/// <summary>What became of a folder or a zip.</summary>
/// <param name="OtherFiles">Files that are no pages, which were left alone.</param>
/// <param name="Stopped">Why the whole was not taken, or null.</param>
public sealed record ImportReport(IReadOnlyList<ImportLine> Lines, int OtherFiles, string? Stopped = null)
{
    public int Count(Taken taken) => Lines.Count(l => l.Taken == taken);
}

/// <summary>How far an import is.</summary>
/// <param name="Done">Pages looked at.</param>
/// <param name="Pages">Pages there are.</param>
public readonly record struct ImportProgress(int Done, int Pages);

/// <summary>How much is taken in at once. Working values: far above any hall's notebooks, far below what stops a machine.</summary>
public sealed record ImportLimits
{
    /// <summary>Files in a folder or zip. A dance with ten versions is thirteen.</summary>
    public int Files { get; init; } = 200_000;

    /// <summary>Bytes of all files read together.</summary>
    public long TotalBytes { get; init; } = 4L << 30;

    /// <summary>How many times larger than its packed form a zip may become. Text packs four to twenty times.</summary>
    public int Ratio { get; init; } = 200;

    /// <summary>Bytes below which the ratio is not asked: a small page of blanks packs well and does no harm.</summary>
    public long RatioFrom { get; init; } = 10 << 20;

    /// <summary>How deep folders are looked into.</summary>
    public int Depth { get; init; } = 16;
}
