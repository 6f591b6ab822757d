using System.Globalization;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe;

/// <summary>What words of a sheet mean, told by somebody who knows: a correction of one sheet, or a word of the hall.</summary>
/// <param name="Said">As sheets say it; large and small letters do not matter. It stands for itself and is no pattern.</param>
/// <param name="Means">What a page would write; <see cref="NoStep"/> where it is no step.</param>
public sealed record SheetWord(string Said, string Means)
{
    /// <summary>The meaning of words that are only a remark.</summary>
    public const string NoStep = "no step";

    /// <summary>The one place where it holds; everywhere when null.</summary>
    public SheetPlace? Only { get; init; }

    /// <summary>True for a word that the hall keeps; false for a correction of the sheet that is read.</summary>
    public bool OfTheHall { get; init; }

    public bool IsNoStep => string.Equals(Means.Trim(), NoStep, StringComparison.OrdinalIgnoreCase) || Means.Trim().Length == 0;

    /// <summary>Alike for two that say the same words, however they are spaced and capitalised.</summary>
    public string Key => KeyOf(Said);

    internal static string KeyOf(string said) =>
        string.Join(' ', SheetText.PlainWords(said).Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToLower(CultureInfo.InvariantCulture);
}

/// <summary>Where words stand on a sheet.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Time">Which time they stand on that line, from 0.</param>
public readonly record struct SheetPlace(int Line, int Time);

/// <summary>Words of the sheet that were taken as somebody had told.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Said">As the sheet says it.</param>
public sealed record WordUsed(int Line, string Said, SheetWord Word)
{
    /// <summary>What was taken, in a dancer's words: "frobble" is "hitch R", the hall's own word.</summary>
    public string Says => $"\"{Said}\" is {(Word.IsNoStep ? "no step" : $"\"{Word.Means}\"")}, {(Word.OfTheHall ? "the hall's own word" : "as you corrected it")}";
}
