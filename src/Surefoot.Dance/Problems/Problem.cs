using Surefoot.Dance.Basics;

namespace Surefoot.Dance.Problems;

public enum Severity
{
    /// <summary>What was assumed where the page left something out.</summary>
    Hint,

    /// <summary>Can be danced, but was probably not meant or is not comfortable.</summary>
    Warning,

    /// <summary>Cannot be danced as written.</summary>
    Error,
}

/// <summary>
/// Something wrong, odd or assumed, said to a dancer. A plain value: printers only read it.
/// </summary>
/// <param name="Name">The stable name in words, such as "weight-same-foot".</param>
/// <param name="Span">What to underline; never empty unless the page is.</param>
/// <param name="Message">One sentence that stands alone.</param>
/// <param name="Reason">Why, with the figures, in dancing terms.</param>
/// <param name="Unfinished">How it reads while somebody is still writing there; null for what is wrong however the page goes on.</param>
public sealed record Problem(
    string Name,
    Severity Severity,
    TextSpan Span,
    string? Part,
    string? Count,
    Role? Role,
    string Message,
    string Reason,
    ValueList<RelatedSpan> Related = default,
    ValueList<Fix> Fixes = default,
    StillToWrite? Unfinished = null);

/// <summary>
/// A page that stops before the counts it states, a word with half its letters: wrong once it is finished, and no
/// fault while it is being written. Which of the two it is only the writer knows, so a shell that sees the cursor
/// judges by <paramref name="Where"/> and <paramref name="While"/>.
/// </summary>
/// <param name="Where">The stretch in which what is missing would be written.</param>
/// <param name="Says">The same without reproach: "Part A: 16 of 32 counts so far."</param>
public sealed record StillToWrite(TextSpan Where, string Says, Writing While);

/// <summary>When something is taken for unfinished instead of wrong; each needs more of the writer than the one before.</summary>
public enum Writing
{
    /// <summary>The cursor was left there: the page itself says that more is to come.</summary>
    Stated,

    /// <summary>The cursor stands there and takes keys: more may come.</summary>
    Open,

    /// <summary>A letter was typed just there: more is coming.</summary>
    Typed,
}

/// <summary>Another place that belongs to a problem, and what happened there.</summary>
public sealed record RelatedSpan(TextSpan Span, string Says);

public enum Sureness
{
    /// <summary>A thought: the writer has to judge.</summary>
    Idea,

    /// <summary>Probably what was meant.</summary>
    Likely,

    /// <summary>Keeps the meaning and all notes; may be applied without asking.</summary>
    Sure,
}

/// <summary>A change of the page that would mend a problem.</summary>
public sealed record Fix(string Title, Sureness Sureness, ValueList<TextEdit> Edits);

/// <summary>Put <paramref name="Text"/> where <paramref name="Span"/> stands; an empty span inserts.</summary>
public sealed record TextEdit(TextSpan Span, string Text);
