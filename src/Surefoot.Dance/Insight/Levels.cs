namespace Surefoot.Dance.Insight;

/// <summary>Levels of dances, the easiest first. Common practice, no source.</summary>
public enum Level
{
    AbsoluteBeginner,
    Beginner,
    Improver,
    Intermediate,
    Advanced,
}

public static class Levels
{
    private static readonly string[] Names = ["absolute beginner", "beginner", "improver", "intermediate", "advanced"];

    /// <summary>All of them as a page writes them.</summary>
    public static IReadOnlyList<string> Words => Names;

    /// <summary>As a page writes it: "absolute beginner".</summary>
    public static string Word(this Level level) => Names[(int)level];

    /// <summary>The level a page states, or null when it is none of ours.</summary>
    public static Level? Read(string? text) =>
        Array.FindIndex(Names, n => n.Equals(text?.Trim(), StringComparison.OrdinalIgnoreCase)) is var at and >= 0 ? (Level)at : null;

    internal static Level Harder(Level a, Level b) => a > b ? a : b;
}
