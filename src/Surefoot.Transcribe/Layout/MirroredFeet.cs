using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Polka step forward, M LRL, W RLR", "M R heel, W L heel": one movement with each dancer's own foot, said as his.</summary>
internal static class MirroredFeet
{
    private const string List = @"[LR]+\b(?:\s?\(\d\))?(?:[\s,-]+[LR]+\b(?:\s?\(\d\))?)*";

    private static readonly Regex Both = new($@"\bM (?<his>{List})(?<what> (?:heel|toe|foot|ft))?,?(?: and)? W (?<hers>{List})(?:\k<what>)?(?= |$|[,.;:)])", RegexOptions.CultureInvariant);

    private static readonly Regex Ways = new(@"\s*\(M to the (?:L|R|left|right), W to the (?:L|R|left|right)\)", RegexOptions.CultureInvariant);

    private static readonly Regex Letter = new("[LR]", RegexOptions.CultureInvariant);

    private static readonly Regex EndsWithCount = new(@"\s?\(\d\)$", RegexOptions.CultureInvariant);

    /// <returns>True where a line says so: partners are on opposite feet.</returns>
    public static bool In(List<SheetLine> lines)
    {
        var any = false;
        for (var i = 0; i < lines.Count; i++)
        {
            var said = Both.Replace(lines[i].Plain, found =>
            {
                var (his, hers) = (Feet(found.Groups["his"].Value), Feet(found.Groups["hers"].Value));
                if (his.Length != hers.Length || his.Zip(hers).Any(p => p.First == p.Second)) return found.Value;
                // Of a list the counts follow from its order; of one foot its count stays.
                return string.Join(' ', his.ToCharArray()) + found.Groups["what"].Value + (his.Length == 1 ? EndsWithCount.Match(found.Groups["hers"].Value).Value : "");
            });
            if (said == lines[i].Plain) continue;
            // "(M to the R, W to the L)": each one's own way round.
            said = Ways.Replace(said, "");
            any = true;
            lines[i] = lines[i] with { Plain = said };
        }

        return any;
    }

    private static string Feet(string list) => string.Concat(Letter.Matches(list).Select(m => m.Value));
}
