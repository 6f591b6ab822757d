using System.Globalization;

namespace Surefoot.Transcribe.Layout;

/// <summary>Small numbers, in digits or as a sheet spells them.</summary>
internal static class NumberWords
{
    /// <summary>For patterns: any of the spelled ones.</summary>
    public const string Spelled = "one|two|three|four|five|six|seven|eight|sixteen";

    /// <summary>For patterns: any of the spelled ones that counts of a dance add up to.</summary>
    public const string SpelledLarge = "four|eight|ten|twelve|sixteen|twenty-four|twenty-eight|twenty|thirty-two|thirty-six|forty-eight|forty|fifty-six|sixty-four";

    private static readonly (string Word, int Number)[] Large =
        [("ten", 10), ("twelve", 12), ("sixteen", 16), ("twenty", 20), ("twenty-four", 24), ("twenty-eight", 28), ("thirty-two", 32), ("thirty-six", 36), ("forty", 40), ("forty-eight", 48), ("fifty-six", 56), ("sixty-four", 64)];

    /// <summary>For patterns: any of the spelled ordinal ones.</summary>
    public const string SpelledNth = "first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth";

    private static readonly string[] AllNth = SpelledNth.Split('|');

    /// <returns>1 for "first"; 0 for no ordinal.</returns>
    public static int Nth(string word) => Array.FindIndex(AllNth, n => n.Equals(word, StringComparison.OrdinalIgnoreCase)) + 1;

    private static readonly string[] All = ["one", "two", "three", "four", "five", "six", "seven", "eight"];

    /// <returns>A small number as a word, for where digits would be taken for counts.</returns>
    public static string Spell(int number) => number >= 1 && number <= All.Length ? All[number - 1] : number.ToString(CultureInfo.InvariantCulture);

    /// <returns>The number, or 0 when it is none.</returns>
    public static int Read(string word) => Array.Find(Large, n => n.Word.Equals(word, StringComparison.OrdinalIgnoreCase)) is { Number: > 0 } large ? large.Number
        : Array.FindIndex(All, n => n.Equals(word, StringComparison.OrdinalIgnoreCase)) is var at and >= 0 ? at + 1
        : int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : 0;
}
