using System.Text.RegularExpressions;

namespace Surefoot.Draw.Words;

/// <summary>
/// Sets the letters of feet apart from the way just before them: "full turn right L under" is misread, "full turn
/// right (L) under" is not. The page reads both alike.
/// </summary>
internal static partial class FeetApart
{
    public static string In(string words) => AfterWay().Replace(words, " (${feet})");

    [GeneratedRegex(@"(?<=\b(?:[Ll]eft|[Rr]ight)) (?<feet>[LR](?:[ -][LR])*)(?=$|[ ,;.])", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 200)]
    private static partial Regex AfterWay();
}
