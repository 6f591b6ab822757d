using System.Text.RegularExpressions;

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
}
