using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"In the first bar he steps ...; in the second he steps ...": in a dance told bar by bar the word is said once and meant after it.</summary>
internal static class ProseBars
{
    // So many bars have to be told in full before one is understood.
    private const int Enough = 2;

    private static readonly Regex Told = new($@"\b(?:in|for|during|over)\s+the\s+(?:{NumberWords.SpelledNth})(?:\s+and\s+(?:the\s+)?(?:{NumberWords.SpelledNth}))?\s+(?:bars?|measures?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Meant = new($@"(?<before>;\s+|[.]\s+|^)(?<in>(?:and\s+)?(?:in|for|during)\s+the\s+(?:{NumberWords.SpelledNth}))(?=,?\s+(?:he|she|they|both|the|it)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex AfterSemicolon = new($@";\s+(?=(?:and\s+)?(?:in|for|during)\s+the\s+(?:{NumberWords.SpelledNth})\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "The sixth bar is the same in the other direction: a step to the side ...": what stands after the colon is danced in it.
    private static readonly Regex Is = new($@"(?<=[.]\s+|^)The\s+(?<nth>{NumberWords.SpelledNth})\s+(?<unit>bar|measure)\s+is\s+[^:.]{{0,60}}:\s+", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<SheetLine> lines)
    {
        if (lines.Sum(l => Told.Count(l.Plain)) < Enough) return;
        for (var i = 0; i < lines.Count; i++)
        {
            var plain = Is.Replace(lines[i].Plain, "In the ${nth} ${unit} ");
            plain = Meant.Replace(plain, "${before}${in} bar");
            lines[i] = lines[i] with { Plain = AfterSemicolon.Replace(plain, ". ") };
        }
    }
}
