using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring;

/// <summary>
/// The dance as a value: who steps where on which count of one repeat, and how the repeat is built.
/// Made from the page by a pure function; checks, sheets and pictures only read it.
/// </summary>
/// <param name="Counts">Length of one repeat.</param>
/// <param name="Parts">The parts as the page writes them, each once.</param>
/// <param name="Sections">The dancings of parts that make up one repeat, in order.</param>
/// <param name="Extras">Dancings of tags, bridges, intro and ending, outside the repeat.</param>
/// <param name="Roles">The steps of each role through one repeat.</param>
public sealed record DanceScore(
    string Title,
    DanceFacts Facts,
    Beats Counts,
    ValueList<PartScore> Parts,
    ValueList<Section> Sections,
    ValueList<RoleScore> Roles,
    ValueList<ExtraScore> Extras,
    ValueList<PassEvent> Events,
    ValueList<ScoreClaim> Claims,
    ValueList<ScoreHands> Hands,
    ValueList<ScoreNote> Notes,
    ValueList<LayingFault> Faults)
{
    /// <summary>The calls that the page writes itself; every other call follows from the steps.</summary>
    public ValueList<ScoreCall> Calls { get; init; }

    public RoleScore? Of(Role role)
    {
        foreach (var one in Roles)
        {
            if (one.Role == role) return one;
        }

        return null;
    }

    /// <summary>Counts before a tag or the like where all that stands outside the repeat is counted on behind it, each once; null for a part that does not.</summary>
    public int? BeforeExtra(int part)
    {
        var before = Counts.Ceiling;
        foreach (var extra in Extras.DistinctBy(e => e.Part))
        {
            if (extra.Part == part) return before;
            before += Parts[extra.Part].Length.Ceiling;
        }

        return null;
    }

    /// <summary>The part that is danced at a count of the repeat, with the count inside that part.</summary>
    public (PartScore Part, Count InPart)? PartAt(Count at)
    {
        for (var i = Sections.Count - 1; i >= 0; i--)
        {
            if (Sections[i].Start <= at) return (Parts[Sections[i].Part], Count.First + (at - Sections[i].Start));
        }

        return null;
    }
}

/// <summary>A part as the page writes it.</summary>
/// <param name="Key">What the order line calls it: "A", "1", "Tag".</param>
/// <param name="Name">The name after it, "Rocks and shuffles"; may be empty.</param>
/// <param name="Label">Both, as a heading: "Part A".</param>
/// <param name="Length">How many counts its lines really hold.</param>
/// <param name="CountOffset">What the page's own numbers are ahead of the part's: 16 when a part is counted on from 17.</param>
public sealed record PartScore(
    PartKind Kind,
    string Key,
    string Name,
    string Label,
    Beats Length,
    int CountOffset,
    TextSpan Span,
    ValueList<PartRow> Rows,
    ValueList<RepeatedStretch> Repeats);

/// <summary>One dancing of a part within a repeat of the dance.</summary>
public sealed record Section(int Part, Count Start, bool Mirrored);

/// <summary>A stretch of a part that is danced from earlier words.</summary>
/// <param name="From">First count, in the part.</param>
/// <param name="Length">How long, in counts.</param>
/// <param name="SourcePart">Index of the part whose words are danced again.</param>
/// <param name="SourceFrom">First count of those words in their part.</param>
/// <param name="Changes">The counts that differ ("repeat, but").</param>
public sealed record RepeatedStretch(
    Count From,
    Beats Length,
    int SourcePart,
    Count SourceFrom,
    bool Mirrored,
    ValueList<CountStretch> Changes,
    TextSpan Span)
{
    /// <summary>How long the words are that are danced again; several times over when the stretch is longer.</summary>
    public Beats Each { get; init; } = Length;

    /// <summary>The moment of the source that a moment of the stretch dances again, or null where it lies outside or is danced otherwise.</summary>
    public Count? SourceOf(Count at)
    {
        if (at < From || at >= From + Length || Changes.Any(c => c.From <= at && at < c.To)) return null;
        var into = at - From;
        while (into >= Each && Each > Beats.Zero) into -= Each;
        return SourceFrom + into;
    }
}

/// <summary>A stretch of counts; <paramref name="Role"/> is null when it is every role's.</summary>
public sealed record CountStretch(Count From, Count To, Role? Role);

/// <summary>A row of the sheet: a count group and each role's words, as the page has them.</summary>
/// <param name="Label">The count group as written, counted in the part: "3&amp;4"; slows and quicks as letters: "QQSS".</param>
/// <param name="From">First count in the part.</param>
/// <param name="Length">Counts the row takes.</param>
public sealed record PartRow(
    string Label,
    Count From,
    Beats Length,
    RowKind Kind,
    ValueList<RoleWords> Words,
    TextSpan Span);

public enum RowKind
{
    Written,
    /// <summary>"Repeat 1-8", in words for every role.</summary>
    Repeat,
    /// <summary>A line that differs within a "repeat, but".</summary>
    Change,
}

/// <summary>A role's words in a row; <paramref name="Role"/> is null when they are for every role.</summary>
public sealed record RoleWords(Role? Role, string Text);

/// <summary>The steps of one role.</summary>
/// <param name="End">How the dancer stands after the last count.</param>
public sealed record RoleScore(Role Role, RoleStart Start, ValueList<ScoreStep> Steps, RoleStart End);

/// <summary>A tag, bridge, intro or ending danced by itself, from where the dance stands when it comes.</summary>
public sealed record ExtraScore(int Part, int? AfterWall, ValueList<RoleScore> Roles);

/// <summary>Something that happens in one repeat only.</summary>
/// <param name="Wall">In or after which repeat, from 1.</param>
/// <param name="AfterCount">For a restart: how many counts of the repeat are danced.</param>
/// <param name="Part">For a tag: index of its part, or -1 when the page has no such part.</param>
/// <param name="Facing">Where the page says they look then, or null.</param>
/// <param name="StatedLength">How many counts the order line says it has, or null.</param>
public sealed record PassEvent(PassEventKind Kind, int Wall, int AfterCount, int Part, Facing? Facing, int? StatedLength, TextSpan Span);

public enum PassEventKind
{
    Tag,
    Restart,
}

/// <summary>A fact stated by the page, to be compared with what the steps give.</summary>
/// <param name="After">The claim is about how they stand once every action up to this moment of the part is done.</param>
public sealed record ScoreClaim(Claim Claim, Role? Role, Count After, int Part, TextSpan Span);

/// <summary>What the page says about hands at a count of a part.</summary>
public sealed record ScoreHands(HandWords Words, Role? Role, Count At, int Part, TextSpan Span);

/// <summary>A note kept with the count it stands at, never interpreted.</summary>
/// <param name="Part">Index of its part, -1 for a note in the head of the page.</param>
public sealed record ScoreNote(string Text, Role? Role, int Part, Count? At, TextSpan Span);
