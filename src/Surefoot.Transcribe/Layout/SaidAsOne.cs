using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"A grapevine to the left, L R L, touch R, and one to the right": the name of the figure is said once and meant twice.</summary>
internal static class SaidAsOne
{
    private static readonly Regex One = new(
        @"\b(?<figure>grapevine|vine|weave|shuffle|polka(?: step)?|triple(?: step)?|side step|chass[eé]|two-step|waltz step)(?<between>\b[^.;]{0,60}?(?:,|\band)\s+)(?:then )?(?:an?other )?one(?= (?:to (?:the|his|her|your) |back )?(?:left|right|back)\b| (?:starting|beginning|leading|from|with|on)(?: with| on| from)? (?:the |his |her |your )?(?:left|right|L|R|outside|inside|other)\b)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<SheetLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            if (One.IsMatch(lines[i].Plain)) lines[i] = lines[i] with { Plain = One.Replace(lines[i].Plain, "${figure}${between}${figure}") };
        }
    }
}
