using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <content>What was told before and is only named now.</content>
internal sealed partial class PlanReader
{
    // "Yemenite R" after "Yemenite L: left to the side, ...": a figure that was told once, danced again.
    private Again? NamedBefore(string text)
    {
        if (NameAndFoot.Match(text) is not { Success: true } said || speaks(said.Groups["name"].Value)) return null;
        foreach (var told in _part?.Groups.Where(g => g.Label is { HasHalves: false }) ?? [])
        {
            if (Regex.Match(told.Line.Plain, $@"\b{Regex.Escape(said.Groups["name"].Value)} (?<foot>L|R|left|right):", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant) is not { Success: true } before) continue;
            return new(told.Label!.From, told.Label.To, told.Label.Unit, char.ToUpperInvariant(before.Groups["foot"].Value[0]) != char.ToUpperInvariant(said.Groups["foot"].Value[0]), 1);
        }

        return null;
    }

    private static readonly Regex NameAndFoot = new(@"^(?<name>[\p{L}'-]{4,}(?: step)?) (?<foot>L|R|left|right)(?:,? (?:opposite|the same|the other way|mirrored?))?$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SameForHer = new(@"^(?:does |do |dances? )?(?:exactly )?(?:the )?same\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private bool Above(CountLabel bars) => _part?.Groups.Exists(g => g.Label is { Unit: LabelUnit.Bars } label && label.From <= bars.From && label.To >= bars.To) == true;

    // "17-18: the quarter goes with the first walk", under the last line: said of what stands above.
    private bool SaidOfAbove(SheetLine line, CountLabel label, string words) =>
        label is { Unit: LabelUnit.Counts, HasHalves: false, From: > 1 } && label.To <= LastCount() && _part!.Groups.Count > 3 && !NamesFoot.IsMatch(words)
        && AgainWords.Of(words) is null && AgainWords.DoAgain(words) is null && lines.Skip(line.Number).All(l => CountLabel.AtStart(l.Plain, 0, out _) is null) && Explains.IsMatch(words);

    private static readonly Regex StoodFirst = new(@"^(?:we|you|they|everyone|everybody|all|couples|partners|dancers)?\s*(?:all |both )?(?:stood|stand|stands|are standing)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex OneWord = new(@"^\p{L}+$", RegexOptions.CultureInvariant);

    private static readonly Regex Explains = new(@"^\W*(?:the|this|these|those|that|it|you|your|both|keep|make|do not|don't|here|if|when)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex SameAndMore = new(@"^(?<same>(?:the )?same(?: again| steps?| thing| as before| walks?)+)\s*(?:,|-|\band\b)\s*(?<rest>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "To your right side" names no foot.
    private static readonly Regex Sides = new(@"\b(?:to|on|at) (?:the |your |his |her )?(?:left|right)(?: side| hand)?\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
}
