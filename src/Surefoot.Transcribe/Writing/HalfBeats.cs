using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Transcribe.Layout;

namespace Surefoot.Transcribe.Writing;

/// <summary>A two-step whose quicks take half a beat and whose slows take one: laid on twice as many counts as there are, and then halved.</summary>
internal static class HalfBeats
{
    private static readonly Regex Said = new(
        @"\bquicks? (?:steps? )?(?:is|are|takes?|gets?|has|have|lasts?) (?:each )?(?:only |just )?(?:a half|half(?: of)?(?: a| one)?|½(?: a)?|1/2(?: a)?)(?:[- ](?:beat|count)s?)?\b|\bhalf-beat quicks?\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    public static void In(string sheet, List<DraftPart> parts)
    {
        if (!Said.IsMatch(sheet) || parts.Exists(p => p.Lines.Exists(l => l.Counts.HasHalves))) return;
        foreach (var part in parts)
        {
            for (var i = 0; i < part.Lines.Count; i++)
            {
                var line = part.Lines[i];
                for (var p = 0; p < line.Phrases.Count; p++)
                {
                    if (line.Phrases[p].Text.StartsWith("slow ", StringComparison.Ordinal)) line.Phrases[p] = line.Phrases[p] with { Text = line.Phrases[p].Text[5..] };
                }

                part.Lines[i] = line with { Counts = Halved(line.Counts) };
            }
        }
    }

    // The first two of the laid counts are 1 and the half after it; a half by itself is an "&" after the count before it.
    private static CountLabel Halved(CountLabel laid)
    {
        var (from, to) = ((laid.From + 1) / 2, (laid.To + 1) / 2);
        var before = laid.From % 2 == 0;
        var name = before && laid.Length == 1 ? "&"
            : from == to ? from.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{(before ? "&" : "")}{(before ? from + 1 : from)}-{to}");
        return new(LabelUnit.Counts, name, from, to);
    }
}
