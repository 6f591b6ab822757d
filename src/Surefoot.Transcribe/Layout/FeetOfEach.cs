using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>Feet that are told of both, or of one after the other, where "lead" and "gentleman" would be taken for a part of a sentence.</summary>
internal static class FeetOfEach
{
    // "2 more shuffles fwd, left lead then right lead": on which foot each begins.
    private static readonly Regex Leads = new(@",\s*(?<foot>left|right) lead,?\s+(?:then|and|&)\s+(?:left|right) lead\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "The same returning, the gentleman with the right foot and the lady with the left".
    private static readonly Regex Same = new(@"\bthe same(?: returning| again| back)?,\s*(?:the )?(?:gentleman|gent|man) (?:with |on |from )?(?:the |his )?(?<his>left|right)(?: foot)?,? and (?:the )?(?:lady|woman) (?:with |on |from )?(?:the |her )?(?!\k<his>)(?:left|right)(?: foot)?(?=\s*[.,;]|$)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "In the direction of the dance": where couples go that look along it.
    private static readonly Regex Along = new(@"(?<!\b(?:looking|facing|look|face)\b[^.;,]{0,40}),?\s*\bin the direction of the dance\b(?=,)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<SheetLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var plain = Along.Replace(Same.Replace(Leads.Replace(lines[i].Plain, ", ${foot} foot first"), "the same with the other foot"), "");
            if (plain != lines[i].Plain) lines[i] = lines[i] with { Plain = plain };
        }
    }
}
