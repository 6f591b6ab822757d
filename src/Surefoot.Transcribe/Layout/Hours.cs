using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"R fwd, pivot 1/2 L (6), ...": a number in brackets after a turn is the wall on the clock, where no brackets hold counts.</summary>
internal static class Hours
{
    private static readonly Regex Wall = new(@"(?<turn>\b(?:turn\w*|pivot\w*|pvts?|piv|trn|1/[248]|3/4|[½¼¾]|half|quarter)\b[^,;()\n]{0,40})\((?<hour>12|3|6|9)(?: ?o'?clock)?\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "(1)", "(2)", "(count 3)": brackets that can be no wall of a dance with four.
    private static readonly Regex Count = new(@"\((?:counts?|cts?\.?|beats?)?\s*[124578]\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>Writes such walls as a page does.</summary>
    public static void In(List<SheetLine> lines)
    {
        if (lines.Exists(l => Count.IsMatch(l.Plain))) return;
        for (var i = 0; i < lines.Count; i++)
        {
            if (Wall.IsMatch(lines[i].Plain)) lines[i] = lines[i] with { Plain = Wall.Replace(lines[i].Plain, "${turn}(${hour}:00)") };
        }
    }
}
