using System.Globalization;

namespace Surefoot.Transcribe.Layout;

/// <summary>Small numbers, in digits or as a sheet spells them.</summary>
internal static class NumberWords
{
    /// <summary>For patterns: any of the spelled ones.</summary>
    public const string Spelled = "one|two|three|four|five|six|seven|eight|sixteen";

    private static readonly string[] All = ["one", "two", "three", "four", "five", "six", "seven", "eight"];

    /// <returns>The number, or 0 when it is none.</returns>
    public static int Read(string word) => word.Equals("sixteen", StringComparison.OrdinalIgnoreCase) ? 16
        : Array.FindIndex(All, n => n.Equals(word, StringComparison.OrdinalIgnoreCase)) is var at and >= 0 ? at + 1
        : int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
