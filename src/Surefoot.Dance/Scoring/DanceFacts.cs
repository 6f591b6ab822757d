using Surefoot.Dance.Basics;
using Surefoot.Dance.Steps;

namespace Surefoot.Dance.Scoring;

/// <summary>What the head of the page says about the dance.</summary>
/// <param name="Walls">How many walls a line dance is said to have, or null when the page does not say.</param>
/// <param name="TempoFrom">Slowest tempo in counts a minute, or null.</param>
/// <param name="Phrase">Length of the music's phrase in counts: 32 in 4/4, 24 in 3/4 (eight bars) unless the page says otherwise.</param>
public sealed record DanceFacts(
    bool ForCouples,
    Floor Floor,
    int? Walls,
    Meter Meter,
    int? TempoFrom,
    int? TempoTo,
    string? Hold,
    string? Level,
    Phrasing Phrase,
    FeetRelation FeetRelation,
    ValueList<string> OtherNames,
    ValueList<RoleStart> Starts,
    bool StartFootSaid)
{
    /// <summary>Stature of the lead in metres where the page says it ("Stature: lead 1.85, follow 1.58").</summary>
    public double? LeadStature { get; init; }

    /// <inheritdoc cref="LeadStature"/>
    public double? FollowStature { get; init; }

    /// <summary>What the page says of the music before the dance begins ("16 counts"), as written, or null.</summary>
    public string? Intro { get; init; }

    /// <summary>What the page says it is danced to, as written, or null.</summary>
    public string? Music { get; init; }

    /// <summary>What stands in the head and says nothing that can be gone by, in the order of the page.</summary>
    public ValueList<UnreadFact> Unread { get; init; }

    public ValueList<Role> Roles => ForCouples ? [Role.Lead, Role.Follow] : [Role.Dancer];

    public RoleStart Start(Role role)
    {
        foreach (var start in Starts)
        {
            if (start.Role == role) return start;
        }

        return Starts[0];
    }
}

/// <param name="Key">The word of the head, "hold".</param>
/// <param name="Span">What was not understood: the whole value, or the piece of it between two commas.</param>
public readonly record struct UnreadFact(string Key, TextSpan Span);

/// <summary>Beats in a bar and the note that is one beat: 4/4, 3/4, 2/4.</summary>
public readonly record struct Meter(int Beats, int Unit)
{
    public override string ToString() => $"{Beats}/{Unit}";
}

public enum FeetRelation
{
    /// <summary>Both dancers use the same foot.</summary>
    Same,

    /// <summary>The follow uses the other foot, forward and back turned round when they face each other.</summary>
    Opposite,
}

/// <summary>How a dancer stands before count 1.</summary>
public sealed record RoleStart(Role Role, Facing Facing, Weight Weight)
{
    public Foot? Free => Weight.Free();
}

/// <summary>The music's phrases as the page knows them.</summary>
/// <param name="Counts">Length of a phrase in counts; 32 in 4/4 and 24 in 3/4 (eight bars) unless the page says otherwise, 0 when it says "any".</param>
/// <param name="MeetsAfter">After how many repeats the page says dance and phrase meet again, or null.</param>
/// <param name="Sections">The song's phrases one by one, where the page lists them.</param>
public sealed record Phrasing(int Counts, int? MeetsAfter, ValueList<int> Sections, TextSpan? Span);
