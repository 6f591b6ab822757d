using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Writing;

/// <summary>A part of the page to be.</summary>
internal sealed class DraftPart
{
    public required string Heading { get; init; }

    public int? StatedCounts { get; init; }

    public List<DraftLine> Lines { get; } = [];
}

/// <summary>A count line of the page to be.</summary>
/// <param name="Role">Null for both.</param>
internal sealed record DraftLine(Role? Role, CountLabel Counts, List<DraftPhrase> Phrases, SheetLine From)
{
    /// <summary>True when its counts stand on the sheet; otherwise they follow from what comes before.</summary>
    public bool Labelled { get; init; }

    /// <summary>The phrases that it dances again; null where it is told for itself.</summary>
    public List<DraftPhrase>? AgainOf { get; init; }

    /// <summary>How long its steps are by themselves; nothing where they fill what there is.</summary>
    public Beats Own { get; init; }

    /// <summary>What was taken where the sheet says nothing.</summary>
    public List<string> Assumed { get; } = [];

    /// <summary>The same line for both dancers.</summary>
    public DraftLine ForBoth() => this with { Role = null };
}

/// <summary>A phrase of the page to be.</summary>
/// <param name="Text">In a page's words; empty where the phrase speaks of no step.</param>
/// <param name="Said">As the sheet says it.</param>
internal sealed record DraftPhrase(string Text, string Said, IReadOnlyList<string> Unknown, int Clashes = 0)
{
    /// <summary>True where somebody told what it means.</summary>
    public bool Told { get; init; }

    /// <summary>The words that were read.</summary>
    public string Words { get; init; } = "";
}
