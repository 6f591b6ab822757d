using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>The sheet's layout understood: who dances which phrases when. What the phrases mean is not asked yet.</summary>
internal sealed class SheetPlan
{
    public string Title { get; set; } = "";

    public List<PlanPart> Parts { get; } = [];

    /// <summary>What stands before the first step, and what speaks of the whole dance.</summary>
    public List<SheetLine> Facts { get; } = [];

    /// <summary>Sentences of lines with steps that give no step: they are kept as notes.</summary>
    public List<SheetLine> Asides { get; } = [];

    /// <summary>Sentences among the steps that were taken for talk, and may be none.</summary>
    public List<SheetLine> Passed { get; } = [];

    public Dictionary<int, LineKind> Kinds { get; } = [];

    /// <summary>Slips that were mended before lines were looked at, with their line.</summary>
    public List<(int Line, string Says)> Mended { get; } = [];

    /// <summary>Beats in a bar as a table of bars and counts shows them; 0 where there is none.</summary>
    public int BeatsInBar { get; set; }

    /// <summary>Of whom alone the sheet tells ("the lady"), or null.</summary>
    public Role? Only { get; set; }

    /// <summary>Lines that say the follow does the opposite of the lead.</summary>
    public bool Opposite { get; set; }
}

internal sealed class PlanPart
{
    public string Heading { get; init; } = "";

    public int? StatedCounts { get; init; }

    public List<PlanGroup> Groups { get; } = [];

    /// <summary>How many of its lines say how many counts they take: "(8 counts)".</summary>
    public int Filled { get; set; }
}

/// <summary>Phrases under one label, or of one line or sentence without one.</summary>
internal sealed class PlanGroup
{
    public required SheetLine Line { get; init; }

    public Role? Role { get; set; }

    /// <summary>Of which sentence of its line.</summary>
    public int Sentence { get; init; }

    public CountLabel? Label { get; set; }

    public List<Phrase> Phrases { get; init; } = [];

    /// <summary>Earlier counts danced again, when that is what the group says.</summary>
    public Again? Again { get; set; }

    /// <summary>The words that have it danced again.</summary>
    public string Said { get; init; } = "";

    /// <summary>What differs in it this time, as the sheet says it; empty where nothing does.</summary>
    public string Except { get; init; } = "";

    /// <summary>"As in 3, and so on": from there over and over until the dance has its steps.</summary>
    public bool AndSoOn { get; init; }

    /// <summary>Counts it takes as the sheet says where the line ends, or 0.</summary>
    public int Fill { get; set; }

    /// <summary>No steps, but how many counts the sheet says are danced by now; 0 otherwise.</summary>
    public int Reckons { get; init; }

    /// <summary>True where that is told in bars.</summary>
    public bool ReckonsBars { get; init; }

    /// <summary>How often it is danced where nothing else is said: "(four times)".</summary>
    public int Times { get; set; } = 1;
}

/// <summary>A few words between two separators: one thing to do, as a rule.</summary>
/// <param name="Text">Without its label and its slows and quicks.</param>
/// <param name="Beats">2 for a slow, 1 for a quick, 0 where the sheet does not say.</param>
internal sealed record Phrase(string Text, SheetLine Line, CountLabel? Label, int Beats)
{
    /// <summary>As the sheet says it, label and all.</summary>
    public string Said { get; init; } = Text;

    /// <summary>The same with more words that belong to it.</summary>
    public Phrase With(string text, string said) => this with { Text = text, Said = $"{Said}, {said}" };
}

/// <summary>Earlier counts, danced again.</summary>
/// <param name="From">The first count, or 0 for what came just before.</param>
/// <param name="Times">How many times more.</param>
internal sealed record Again(int From, int To, LabelUnit Unit, bool Mirrored, int Times)
{
    /// <summary>How many of the last counts, or 0.</summary>
    public int LastCounts { get; init; }

    /// <summary>How many of the last lines, or 0.</summary>
    public int Last { get; init; }

    /// <summary>True when the whole line up to here is danced again.</summary>
    public bool WholeLine { get; init; }
}
