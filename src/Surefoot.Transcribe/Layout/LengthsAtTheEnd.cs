using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"1. Three walks forward, then kick. (4)", "2. Three walks back, then touch. (4)": a bare number at the end is how long the line takes.</summary>
internal static class LengthsAtTheEnd
{
    // Fewer may be something else: a count, a note's number.
    private const int Enough = 3;

    // A line of more counts is no line but a part.
    private const int Longest = 32;

    private static readonly Regex Bare = new(@"\s*(?:[(\[](?<n>[0-9]{1,2})[)\]]|(?<=\s)[-=]\s*(?<n>[0-9]{1,2})|(?:\.{3,}|(?:\. ){3,})\s*(?<n>[0-9]{1,2})(?<note>\s*\([^()]*\))?)\s*\.?$", RegexOptions.CultureInvariant);

    /// <summary>Says "counts" where only the number stands.</summary>
    public static void In(List<SheetLine> lines)
    {
        var lengths = lines.ConvertAll(l => Bare.Match(l.Plain) is { Success: true } bare ? int.Parse(bare.Groups["n"].Value, CultureInfo.InvariantCulture) : 0);
        var said = lengths.FindAll(n => n > 0);
        // Counts go up from line to line; lengths do not.
        if (said.Count < Enough || said.Exists(n => n > Longest) || said.Zip(said.Skip(1)).All(p => p.Second > p.First) || said.Count(n => n % 2 == 0) * 3 < said.Count * 2) return;
        for (var i = 0; i < lines.Count; i++)
        {
            if (lengths[i] > 0) lines[i] = lines[i] with { Plain = Bare.Replace(lines[i].Plain, m => string.Create(CultureInfo.InvariantCulture, $"{m.Groups["note"].Value} ({lengths[i]} counts)")) };
        }
    }
}
