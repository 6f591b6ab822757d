using Surefoot.Dance.Basics;

namespace Surefoot.Library;

/// <summary>How two versions of a dance differ: in what is danced, and in their lines.</summary>
/// <param name="Facts">What the head and the build of the dance say otherwise.</param>
/// <param name="Steps">What is danced otherwise, in the order of the dance.</param>
/// <param name="Lines">Both texts line by line.</param>
public sealed record DanceDifference(ValueList<FactChange> Facts, ValueList<StepChange> Steps, ValueList<TextLine> Lines)
{
    /// <summary>Parts that one of the two does not have at all, as they are headed.</summary>
    public ValueList<string> WholeParts { get; init; }

    /// <summary>True when exactly the same is danced, whatever the words.</summary>
    public bool DancesTheSame => Facts.Count == 0 && Steps.Count == 0;
}

/// <summary>A fact that changed: "tempo", "112-120", "108-116"; empty where it was not told.</summary>
public sealed record FactChange(string What, string Before, string After)
{
    public override string ToString() => Before.Length == 0 ? $"{What}: now {After}" : After.Length == 0 ? $"{What}: {Before} no longer" : $"{What}: {Before}, now {After}";
}

/// <summary>One action that changed, came or went.</summary>
/// <param name="Part">The part as it is headed: "Part A".</param>
/// <param name="Count">The count in that part: "3&amp;".</param>
/// <param name="Role">Whose it is; null when it is both partners'.</param>
/// <param name="Before">What was danced, in few words; null when it came.</param>
/// <param name="After">What is danced now; null when it went.</param>
public sealed record StepChange(string Part, Count Count, Role? Role, string? Before, string? After)
{
    public override string ToString()
    {
        var where = $"{Part}, count {Count.Name}{(Role is { } role and not Dance.Basics.Role.Dancer ? $", {role.Word()}" : "")}";
        return Before is null ? $"{where}: {After} came" : After is null ? $"{where}: {Before} went" : $"{where}: was {Before}, now {After}";
    }
}

public enum LineFate
{
    Stayed,
    Went,
    Came,
}

/// <summary>A line of one text or both.</summary>
/// <param name="Before">Its number in the earlier text, from 1; 0 when it came.</param>
/// <param name="After">Its number in the later text, from 1; 0 when it went.</param>
public sealed record TextLine(LineFate Fate, int Before, int After, string Text);
