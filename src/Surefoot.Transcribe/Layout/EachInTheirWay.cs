using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Four step-hops: M on the spot, W once round to R": the steps are both's, the way of dancing them each one's own.</summary>
internal static class EachInTheirWay
{
    private static readonly Regex Ways = new(
        $@"(?<=^|[.;]\s+|\d[.)]\s+)(?<steps>(?:{NumberWords.Spelled}|\d) (?:step-hops|step hops|steps|walks|shuffles|triples|triple steps|polka steps|polkas|waltz steps|waltzes))\b(?:\s*\([^()]*\))?:\s+(?:M|man|the man|he|lead|leader) (?<his>(?:on the spot|in place|forward|fwd|back)\b),? (?:and )?(?:W|lady|the lady|she|woman|follow|follower) (?<round>once|half(?: ?way)?) (?:a)?round to (?:the )?(?<way>L|R|left|right)\b[^.;]*",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<SheetLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var said = Ways.Replace(lines[i].Plain, found => $"He {found.Groups["steps"].Value} {found.Groups["his"].Value}; she {found.Groups["steps"].Value} turning {(found.Groups["round"].Value[0] is 'o' or 'O' ? "full" : "½")} {(found.Groups["way"].Value[0] is 'l' or 'L' ? "left" : "right")}");
            if (said != lines[i].Plain) lines[i] = lines[i] with { Plain = said };
        }
    }
}
