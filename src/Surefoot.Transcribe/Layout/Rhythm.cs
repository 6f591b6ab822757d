using System.Text.RegularExpressions;

namespace Surefoot.Transcribe.Layout;

/// <summary>Slows and quicks that stand before the steps they are of: "QQS  side, close, side", "Quick, quick: ...".</summary>
internal sealed class Rhythm
{
    private static readonly Regex Letters = new(@"^(?<all>[SQ]{1,8}|[SQ](?:[ ,-]+[SQ])+)\s*[:.-]?\s+(?=[^\s:])", RegexOptions.CultureInvariant);

    private static readonly Regex Spoken = new(@"^(?<all>(?:slow|quick)(?:(?:\s*,\s*|\s+(?:and )?)(?:slow|quick))+)\s*[:.-]\s*(?=\S)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Each = new("slow|quick|[SQ]", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Feet = new(@"^(?<what>(?:(?!\bshuffle|\btriple|\bpolka|\bcha)[^,;(])*?)(?<feet>(?:left|right|L|R)(?:(?:\s*,\s*|\s+|\s*-\s*)(?:and |then )?(?:left|right|L|R)\b)+)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Foot = new(@"\b(?:left|right|L|R)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // A walk is as long as a page says; a step is as long as its slow or quick.
    private static readonly Regex Walks = new(@"^walk(?:s|ing)?(?= (?:forwards?|back(?:wards?)?)\b)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private readonly List<int> _beats = [];

    /// <summary>How many steps such words are of.</summary>
    public static int Steps(string rhythm) => Each.Count(rhythm);

    /// <summary>True where none stands before the steps.</summary>
    public bool IsEmpty => _beats.Count == 0;

    /// <returns>The words after it.</returns>
    public static string Before(string text, out Rhythm rhythm)
    {
        rhythm = new();
        var match = Letters.Match(text) is { Success: true } letters ? letters : Spoken.Match(text);
        if (!match.Success) return text;
        foreach (Match one in Each.Matches(match.Groups["all"].Value)) rhythm._beats.Add(one.Value[0] is 's' or 'S' ? 2 : 1);
        return text[match.Length..];
    }

    /// <summary>Gives each step its beats in turn.</summary>
    public void Into(List<Phrase> phrases, Func<string, bool> speaks)
    {
        var next = 0;
        for (var i = 0; i < phrases.Count && next < _beats.Count; i++)
        {
            // "QQSS  fwd L, R, L, R": each foot has its own.
            if (Feet.Match(phrases[i].Text) is { Success: true } list && Foot.Matches(list.Groups["feet"].Value) is var feet && next + feet.Count <= _beats.Count && _beats.Skip(next).Take(feet.Count).Distinct().Count() > 1)
            {
                var phrase = phrases[i];
                phrases.RemoveAt(i);
                phrases.InsertRange(i, feet.Select(f => phrase with { Text = $"{Walks.Replace(list.Groups["what"].Value, "step")}{f.Value}", Beats = 0 }));
            }

            if (speaks(phrases[i].Text)) phrases[i] = phrases[i] with { Beats = _beats[next++] };
        }
    }
}
