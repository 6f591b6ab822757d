using Surefoot.Dance.Couple;

namespace Surefoot.Library;

/// <summary>What a library is opened with.</summary>
public sealed record LibraryOptions
{
    public TimeProvider Clock { get; init; } = TimeProvider.System;

    /// <summary>Solves couples when a page is kept, so that its list shows the same problems as its page; without one each dancer is followed alone.</summary>
    public ILinearSolver? Solver { get; init; }

    public LibraryLimits Limits { get; init; } = new();
}

/// <summary>How much a library takes. Working values, chosen far above what a hall writes and far below what would fill a machine.</summary>
public sealed record LibraryLimits
{
    /// <summary>Bytes of a page in UTF-8. A long dance takes 10 kB; 1 MB is some 20,000 lines.</summary>
    public int PageBytes { get; init; } = 1 << 20;

    /// <summary>Characters of a name, a tag, a title, an editor's session.</summary>
    public int NameLength { get; init; } = 200;

    /// <summary>Characters of a note, of where a dance was learned, of an address.</summary>
    public int NoteLength { get; init; } = 4000;

    /// <summary>Bytes of a stored file: a minute or two of film from a telephone.</summary>
    public int FileBytes { get; init; } = 50 << 20;

    /// <summary>Bytes of a film's captions in UTF-8: those of an hour take some 70 kB, and of eight hours, which nobody films of one dance, as much as this.</summary>
    public int CaptionBytes { get; init; } = 1 << 19;

    /// <summary>How many names, tags, songs, files a page may have of each.</summary>
    public int PerPage { get; init; } = 100;
}
