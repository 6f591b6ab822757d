using Surefoot.Cli.Printing;
using Surefoot.Dance.Basics;
using Surefoot.Draw;

namespace Surefoot.Cli.Asking;

/// <summary>What is chosen for whatever is printed; nothing after saying what can be chosen.</summary>
internal static class Choices
{
    public static PaperSize? Paper(string? said, Screen screen)
    {
        switch (said?.ToLowerInvariant())
        {
            case null or "a4":
                return PaperSize.A4;
            case "letter":
                return PaperSize.Letter;
            default:
                screen.Err.WriteLine($"Paper is a4 or letter, not {Cells.Harmless(said!)}.");
                return null;
        }
    }

    /// <summary>A dancer, or null for both.</summary>
    public sealed record Chosen(Role? Role);

    public static Chosen? Only(string? said, Screen screen)
    {
        switch (said?.ToLowerInvariant())
        {
            case null:
                return new(null);
            case "lead":
                return new(Role.Lead);
            case "follow":
                return new(Role.Follow);
            default:
                screen.Err.WriteLine($"A role is lead or follow, not {Cells.Harmless(said!)}.");
                return null;
        }
    }
}
