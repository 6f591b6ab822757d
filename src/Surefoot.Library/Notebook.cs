using System.Text.Json.Serialization;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;

namespace Surefoot.Library;

/// <summary>A notebook of dances with its hall's own figures and ways of saying things.</summary>
public sealed record Notebook(long Id, string Name, NotebookSettings Settings, DateTimeOffset Created);

/// <summary>A notebook in the bin.</summary>
/// <param name="Pages">How many pages come back with it.</param>
public sealed record DeletedNotebook(Notebook Notebook, DateTimeOffset Deleted, int Pages);

/// <summary>What holds for every page of a notebook.</summary>
public sealed record NotebookSettings
{
    /// <summary>What the hall calls the lead.</summary>
    public string LeadWord { get; init; } = "Lead";

    /// <summary>What the hall calls the follow.</summary>
    public string FollowWord { get; init; } = "Follow";

    /// <summary>In metres, for pages that do not say; null for the usual height.</summary>
    public double? LeadStature { get; init; }

    /// <inheritdoc cref="LeadStature"/>
    public double? FollowStature { get; init; }

    /// <summary>What pages of the notebook are read with.</summary>
    [JsonIgnore]
    public UsualHeights Heights => new(LeadStature, FollowStature);

    public Units Units { get; init; }

    public DecimalMark DecimalMark { get; init; }

    /// <summary>How the notebook writes lengths and numbers.</summary>
    [JsonIgnore]
    public Measures Measures => new(Units, DecimalMark);

    /// <summary>What its sheets are printed on, where nobody chooses another.</summary>
    public Paper Paper { get; init; }

    /// <summary>Counts a minute for a page that names no tempo; null for none.</summary>
    public int? UsualTempo { get; init; }

    /// <summary>How the screen looks: a name the screen knows, or empty for its own choice.</summary>
    public string Theme { get; init; } = "";
}

/// <summary>A sheet of paper.</summary>
public enum Paper
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>8.5 by 11 inches.</summary>
    Letter,
}
