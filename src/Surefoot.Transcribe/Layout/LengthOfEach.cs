using System.Globalization;
using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <summary>"8 beats each part": where the numbered lines of a sheet end, whatever was not understood in them.</summary>
internal static class LengthOfEach
{
    private const string Thing = "(?:pts?|parts?|figures?|figs?|sections?|lines?|pieces?|numbers?|patterns?)";

    private static readonly Regex Said = new(
        $@"\b(?<n>{NumberWords.Spelled}|\d{{1,2}}) (?:beats|counts) (?:(?:to |for |in |per )?(?:each|every|per|a)) {Thing}\b|\b(?:each|every) {Thing} (?:is|has|takes|lasts|of) (?<n>{NumberWords.Spelled}|\d{{1,2}}) (?:beats|counts)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Number = new(@"^(?<n>\d{1,2})[.)]\s", RegexOptions.CultureInvariant);

    /// <summary>Adds to the plan how many counts are danced by the end of each numbered line.</summary>
    public static void In(SheetPlan plan, List<SheetLine> lines)
    {
        var said = lines.Select(l => Said.Match(l.Plain)).FirstOrDefault(m => m.Success);
        if (said is null || NumberWords.Read(said.Groups["n"].Value) is not (> 1 and var each) || plan.Parts is not [var part]) return;
        var numbered = part.Groups.Select(g => g.Line).Distinct().Where(l => Number.IsMatch(l.Plain)).ToList();
        // Only one list, all of it in steps.
        if (numbered.Count < 2 || numbered.Where((l, i) => int.Parse(Number.Match(l.Plain).Groups["n"].Value, CultureInfo.InvariantCulture) != i + 1).Any()) return;
        for (var i = 0; i < numbered.Count; i++)
        {
            part.Groups.Insert(part.Groups.FindLastIndex(g => g.Line == numbered[i]) + 1, new() { Line = numbered[i], Sentence = int.MaxValue, Reckons = each * (i + 1) });
        }
    }
}
