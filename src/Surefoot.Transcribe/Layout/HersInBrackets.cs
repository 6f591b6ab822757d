using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"Next the right foot crosses in front (she: left crosses in front)": what is told outside the brackets is his.</summary>
internal static class HersInBrackets
{
    private static readonly Regex Hers = new(
        @"(?<=^|[.;:]\s+)(?<his>[^.;:()]+?)\s*\((?:she|the lady|lady|woman|W)\s*:\s*(?<hers>[^()]+)\)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(List<SheetLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            if (!lines[i].Plain.Contains('(', StringComparison.Ordinal)) continue;
            var said = Hers.Replace(lines[i].Plain, found =>
            {
                var his = found.Groups["his"].Value;
                return $"{(RoleWords.Opens(his, 0, out _, out _, out _) ? "" : "he ")}{his}; she {found.Groups["hers"].Value}";
            });
            if (said != lines[i].Plain) lines[i] = lines[i] with { Plain = said };
        }
    }
}
