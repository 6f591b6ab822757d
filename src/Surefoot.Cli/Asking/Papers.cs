using Surefoot.Cli.Printing;
using Surefoot.Draw;

namespace Surefoot.Cli.Asking;

/// <summary>The paper that was asked for.</summary>
internal static class Papers
{
    /// <returns>Null after saying what can be asked for.</returns>
    public static PaperSize? Read(string? said, Screen screen)
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
}
