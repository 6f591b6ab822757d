using System.Globalization;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli.Asking;

/// <summary>Whole numbers after an option.</summary>
internal static class Numbers
{
    /// <summary>Tempi outside of this, in counts a minute, are slips of the finger.</summary>
    public const int SlowestTempo = 10, FastestTempo = 400;

    /// <summary>The number, the usual one where none was typed, or null after saying what is wrong with it.</summary>
    public static int? Whole(string? text, string option, int usual, int least, int most, Screen screen)
    {
        if (text is null) return usual;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most) return number;
        screen.Err.WriteLine($"After {option} comes a whole number from {least} to {most}, not \"{Cells.Harmless(text)}\".");
        return null;
    }
}
