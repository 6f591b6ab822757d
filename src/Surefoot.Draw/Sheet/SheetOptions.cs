using Surefoot.Dance.Basics;

namespace Surefoot.Draw;

/// <summary>What a hall wants on its sheets.</summary>
public sealed record SheetOptions
{
    /// <summary>Type of at least 16 points, for dancers who do not read small print; the sheet then takes the pages it needs.</summary>
    public bool LargePrint { get; init; }

    public PaperSize Paper { get; init; }

    /// <summary>Adds the foot pictures to the printable sheet; plain text has none.</summary>
    public bool Pictures { get; init; } = true;

    /// <summary>What the hall calls the lead.</summary>
    public string LeadWord { get; init; } = "Lead";

    /// <summary>What the hall calls the follow.</summary>
    public string FollowWord { get; init; } = "Follow";

    /// <summary>Writes which foot goes where, count by count, in place of the page's own words.</summary>
    public bool FeetOnly { get; init; }

    /// <summary>
    /// How many places of the page cannot be danced as written. Where there are any the sheet says so at its top,
    /// because paper travels without the messages that came with it.
    /// </summary>
    public int Doubts { get; init; }

    /// <summary>Where those places are told, as the end of a sentence.</summary>
    public string DoubtsAt { get; init; } = "see surefoot check";

    /// <summary>How far a page that is still being written has come, as a sentence; empty for a finished one.</summary>
    public string SoFar { get; init; } = "";

    /// <summary>The sheet for one role alone, or null for both.</summary>
    public Role? Only { get; init; }
}

/// <summary>A sheet of paper.</summary>
public enum PaperSize
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>8.5 by 11 inches, 215.9 by 279.4 mm.</summary>
    Letter,
}
