using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Library;

/// <summary>A dance as a list shows it: everything known of it without its page.</summary>
/// <param name="Name">Its page's name: "circle/five-barns".</param>
/// <param name="Walls">As the page says, or null.</param>
/// <param name="Counts">Length of one repeat.</param>
/// <param name="TempoFrom">Counts a minute, or null.</param>
/// <param name="Level">As the page says, in lower case; empty when it does not.</param>
/// <param name="Holds">Every hold the page names, in the order of the dance.</param>
/// <param name="Figures">Every figure once, in the order in which it is first danced.</param>
/// <param name="Songs">"Title (artist)".</param>
/// <param name="Errors">How many things cannot be danced as written.</param>
public sealed record ShelfItem(
    long Page,
    long Notebook,
    string Name,
    string Title,
    bool IsFigures,
    DateTimeOffset Changed,
    bool ForCouples,
    Floor Floor,
    int? Walls,
    int Counts,
    Meter Meter,
    int? TempoFrom,
    int? TempoTo,
    string Level,
    string Learned,
    int Errors,
    int Warnings,
    int Hints,
    ValueList<string> Holds,
    ValueList<string> Figures,
    ValueList<string> Aliases,
    ValueList<string> Tags,
    ValueList<string> Songs);

/// <summary>A dance that a search found.</summary>
/// <param name="Score">The higher the better; compared within one search only.</param>
/// <param name="Whole">True when it has all that was asked for; where no dance has, the nearest are given.</param>
/// <param name="At">For figures asked for one after the other: the count on which the first begins.</param>
/// <param name="Why">Where words that were asked for stand, if not in what a list shows: figures, holds, songs, steps; at most three.</param>
public sealed record Found(ShelfItem Dance, double Score, bool Whole, int? At, ValueList<string> Why = default);

/// <summary>How a list is sorted; equal ones by title.</summary>
public enum SortBy
{
    Title,
    Changed,
    Level,
    Counts,
    Tempo,
    Problems,
}

/// <summary>Which dances a list shows; whatever is null is not asked.</summary>
public sealed record ListQuestion
{
    public long? Notebook { get; init; }

    public SortBy Sort { get; init; }

    public bool Descending { get; init; }

    public bool? ForCouples { get; init; }

    public Floor? Floor { get; init; }

    public string? Level { get; init; }

    public string? Tag { get; init; }

    /// <summary>A hold it uses.</summary>
    public string? Hold { get; init; }

    /// <summary>A figure in it.</summary>
    public string? Figure { get; init; }

    public Meter? Meter { get; init; }

    public int? Counts { get; init; }

    /// <summary>A tempo in counts a minute it can be danced at.</summary>
    public int? Tempo { get; init; }

    /// <summary>Some tempo it can be danced at is this or faster, in counts a minute.</summary>
    public int? TempoAtLeast { get; init; }

    /// <summary>Some tempo it can be danced at is this or slower, in counts a minute.</summary>
    public int? TempoAtMost { get; init; }

    /// <summary>True for dances with something that cannot be danced, false for those without.</summary>
    public bool? Broken { get; init; }

    /// <summary>True for dances of which neither an error nor a warning is known, false for those with either.</summary>
    public bool? Clean { get; init; }

    public int Skip { get; init; }

    public int Take { get; init; } = int.MaxValue;
}

/// <summary>What there is to choose from when a list is narrowed down: each once, levels from the easiest, meters and counts from the smallest.</summary>
public sealed record ListChoices(IReadOnlyList<string> Levels, IReadOnlyList<Meter> Meters, IReadOnlyList<int> Counts, IReadOnlyList<string> Tags);

/// <summary>A stretch of a list, and how many there are altogether.</summary>
public sealed record ListAnswer(int Total, IReadOnlyList<ShelfItem> Dances);
