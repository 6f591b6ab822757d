using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"M 1-2 rock forward ..." and "L 1-2 rock back ...": where both stand before counts, L is the lady and no foot.</summary>
internal static class LadyAsL
{
    /// <summary>Makes her letter W, which is no foot's.</summary>
    public static void In(List<SheetLine> lines)
    {
        if (lines.Exists(l => Says.IsMatch(l.Plain)) && lines.Exists(l => Named.IsMatch(l.Plain)))
        {
            // "M = man  L = lady": said of the letters before a colon.
            for (var i = 0; i < lines.Count; i++)
            {
                if (Named.IsMatch(lines[i].Plain)) lines[i] = lines[i] with { Plain = "W" + lines[i].Plain[1..] };
            }
        }

        if (lines.Count(l => Hers.IsMatch(l.Plain)) < 2 || lines.Count(l => His.IsMatch(l.Plain)) < 2) return;
        for (var i = 0; i < lines.Count; i++)
        {
            if (Hers.IsMatch(lines[i].Plain)) lines[i] = lines[i] with { Plain = "W" + lines[i].Plain[1..] };
        }
    }

    private static readonly Regex Hers = new(@"^L:?\s+\d", RegexOptions.CultureInvariant);

    private static readonly Regex Says = new(@"\bL\s*=\s*(?:the )?(?:lady|ladies|woman)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Named = new(@"^L:\s", RegexOptions.CultureInvariant);

    private static readonly Regex His = new(@"^M:?\s+\d", RegexOptions.CultureInvariant);
}
