using Surefoot.Dance.Basics;
using Surefoot.Dance.Figures;
using Surefoot.Dance.Phrases;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Text;

/// <summary>
/// The page as a tree. Reading never fails and leaves nothing out: every line is a node, and what was
/// not understood stands in it as a piece of its own.
/// </summary>
public sealed class Page
{
    public required SourceText Source { get; init; }

    public string Title { get; set; } = "";

    public TextSpan? TitleSpan { get; set; }

    public List<HeaderLine> Headers { get; } = [];

    public List<PartNode> Parts { get; } = [];

    public List<Figure> Figures { get; } = [];

    /// <summary>Notes that stand before the first part.</summary>
    public List<NoteLine> Notes { get; } = [];

    /// <summary>Calls that stand before the first part, where nobody knows whose counts they mean.</summary>
    public List<CallLine> Calls { get; } = [];

    /// <summary>Every line of the page in order, for tidy printing and for the promise that nothing is lost.</summary>
    public List<LineNode> Lines { get; } = [];

    public HeaderLine? Header(string key)
    {
        foreach (var header in Headers)
        {
            if (header.Key == key) return header;
        }

        return null;
    }
}

public abstract record LineNode(TextSpan Span);

public sealed record BlankLine(TextSpan Span) : LineNode(Span);

public sealed record TitleLine(TextSpan Span) : LineNode(Span);

/// <summary>"Word: value" in the head.</summary>
/// <param name="Key">The canonical key, or the word as written when it is not known.</param>
public sealed record HeaderLine(string Key, bool Known, string Value, TextSpan KeySpan, TextSpan ValueSpan, TextSpan Span) : LineNode(Span);

/// <summary>A line that starts with ">".</summary>
public sealed record NoteLine(string Text, TextSpan Span) : LineNode(Span);

public sealed record HeadingLine(PartNode Part, TextSpan Span) : LineNode(Span);

/// <summary>"Lead:" alone on a line: what follows is for that role.</summary>
public sealed record RoleLine(Role? Role, TextSpan Span) : LineNode(Span);

/// <summary>A line of a figure's definition that is not a count line: heading, fact or version.</summary>
public sealed record FigureLine(Figure Figure, string Key, string Value, TextSpan KeySpan, TextSpan Span) : LineNode(Span);

/// <summary>Text without counts where counts were looked for.</summary>
public sealed record StrayLine(List<Piece> Pieces, TextSpan Span) : LineNode(Span);

/// <summary>Counts on the left, actions on the right.</summary>
public sealed record CountLine(CountGroup Group, List<Segment> Segments, TextSpan Span) : LineNode(Span)
{
    /// <summary>The role of the block the line stands in; null outside a block.</summary>
    public Role? Block { get; set; }

    /// <summary>Where the line before it ends when both stand on one line of the page; null for a line of its own.</summary>
    public int? JoinedAfter { get; init; }
}

/// <summary>"Repeat 1-8", "Repeat Part A starting right, but".</summary>
/// <param name="Group">The counts it fills, when the line names them.</param>
public sealed record RepeatLine(
    CountGroup? Group,
    int? From,
    int? To,
    string? PartKey,
    bool Mirrored,
    Foot? Starting,
    int Times,
    bool But,
    TextSpan What,
    TextSpan Span) : LineNode(Span)
{
    public Role? Block { get; set; }

    public List<Piece> Pieces { get; init; } = [];

    /// <summary>What the line says beyond what is repeated, and nobody can dance from it; null when nothing.</summary>
    public TextSpan? Unread { get; init; }

    /// <summary>"Repeat" with nothing after it: begin the dance again.</summary>
    public bool WholeDance { get; init; }
}

/// <summary>"Call 7-8, follow: your turn": what is called out on these counts.</summary>
/// <param name="Group">The counts, as the page numbers them; null for "Call before the dance: walk", which is called on the last ones before it begins.</param>
/// <param name="Role">Whom it is for as the line says it; null when it says nobody or both.</param>
/// <param name="Time">In which dancing of the part only, from 1; 0 for the last; null for all.</param>
/// <param name="Words">What is called, empty when nothing is written there.</param>
/// <param name="None">"none": the call that would be made is left out.</param>
/// <param name="Unread">What stands before the colon and is neither role nor time; null when nothing.</param>
public sealed record CallLine(
    CountGroup? Group, Role? Role, bool RoleSaid, int? Time, string Words, bool None, TextSpan? Unread, TextSpan Span) : LineNode(Span)
{
    /// <summary>The role of the block the line stands in; null outside a block.</summary>
    public Role? Block { get; set; }

    /// <summary>Whom it is for.</summary>
    public Role? Whose => RoleSaid ? Role : Block;
}

/// <summary>A role's stretch of a line; <paramref name="Role"/> null means both.</summary>
public sealed record Segment(Role? Role, TextSpan? RoleSpan, List<Piece> Pieces, TextSpan Span);

public sealed class PartNode
{
    public PartKind Kind { get; init; }

    public string Key { get; init; } = "";

    public string Name { get; init; } = "";

    public string Label { get; init; } = "";

    public TextSpan Span { get; init; }

    /// <summary>"(16 counts)" in the heading.</summary>
    public int? StatedCounts { get; set; }

    public TextSpan StatedSpan { get; set; }

    /// <summary>"[17-24]" in the heading.</summary>
    public (int From, int To)? StatedRange { get; set; }

    public List<Piece> HeadingPieces { get; init; } = [];

    public List<LineNode> Lines { get; } = [];
}
