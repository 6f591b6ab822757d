using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Four step-hops: M on the spot, W once round to R": the steps are both's, the way of dancing them each one's own.</summary>
internal static class EachInTheirWay
{
    private static readonly Regex Ways = new(
        $@"(?<=^|[.;]\s+|\d[.)]\s+)(?<steps>(?<n>{NumberWords.Spelled}|\d) (?<kind>step-hops|step hops|steps|walks|shuffles|triples|triple steps|polka steps|polkas|waltz steps|waltzes))\b(?:\s*\([^()]*\))?:\s+(?:M|man|the man|he|lead|leader) (?<his>(?:on the spot|in place|forward|fwd|back)\b),? (?:and )?(?:W|lady|the lady|she|woman|follow|follower) (?<round>once|half(?: ?way)?) (?:a)?round to (?:the )?(?<way>L|R|left|right)\b(?<rest>[^.;]*)",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<SheetLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var said = Ways.Replace(lines[i].Plain, found =>
            {
                var steps = found.Groups["steps"].Value;
                // Under joined hands she stays before him.
                var place = found.Groups["rest"].Value.Contains("under", StringComparison.OrdinalIgnoreCase) ? " in place" : "";
                return $"He {steps} {found.Groups["his"].Value}; she {steps}{place} turning {Each(found)} {(found.Groups["way"].Value[0] is 'l' or 'L' ? "left" : "right")}";
            });
            if (said != lines[i].Plain) lines[i] = lines[i] with { Plain = said };
        }
    }

    // A page says of several figures how far each of them turns.
    private static string Each(Match found)
    {
        var eighths = found.Groups["round"].Value[0] is 'o' or 'O' ? 8 : 4;
        var figures = !found.Groups["kind"].Value.EndsWith("walks", StringComparison.OrdinalIgnoreCase) && !found.Groups["kind"].Value.Equals("steps", StringComparison.OrdinalIgnoreCase);
        var each = figures && NumberWords.Read(found.Groups["n"].Value) is > 0 and var n && eighths % n == 0 ? eighths / n : eighths;
        return each switch { 8 => "full", 4 => "½", 2 => "¼", _ => "⅛" };
    }
}
