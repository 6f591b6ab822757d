using System.Globalization;

namespace Surefoot.Transcribe.Layout;

/// <summary>Small numbers, in digits or as a sheet spells them.</summary>
internal static class NumberWords
{
    /// <summary>For patterns: any of the spelled ones.</summary>
    public const string Spelled = "one|two|three|four|five|six|seven|eight|sixteen";

    /// <summary>For patterns: any of the spelled ordinal ones.</summary>
    public const string SpelledNth = "first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth";

    private static readonly string[] AllNth = SpelledNth.Split('|');

    /// <returns>1 for "first"; 0 for no ordinal.</returns>
    public static int Nth(string word) => Array.FindIndex(AllNth, n => n.Equals(word, StringComparison.OrdinalIgnoreCase)) + 1;

    private static readonly string[] All = ["one", "two", "three", "four", "five", "six", "seven", "eight"];

    /// <returns>A small number as a word, for where digits would be taken for counts.</returns>
    public static string Spell(int number) => number >= 1 && number <= All.Length ? All[number - 1] : number.ToString(CultureInfo.InvariantCulture);

    /// <returns>The number, or 0 when it is none.</returns>
    public static int Read(string word) => word.Equals("sixteen", StringComparison.OrdinalIgnoreCase) ? 16
        : word.Equals("ten", StringComparison.OrdinalIgnoreCase) ? 10 : word.Equals("twelve", StringComparison.OrdinalIgnoreCase) ? 12
        : word.Equals("twenty", StringComparison.OrdinalIgnoreCase) ? 20 : word.Equals("thirty-two", StringComparison.OrdinalIgnoreCase) ? 32
        : Array.FindIndex(All, n => n.Equals(word, StringComparison.OrdinalIgnoreCase)) is var at and >= 0 ? at + 1
        : int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
