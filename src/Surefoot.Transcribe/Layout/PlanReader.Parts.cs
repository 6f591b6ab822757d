using System.Text.RegularExpressions;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <content>Lines that head a part and begin its steps at once.</content>
internal sealed partial class PlanReader
{
    private static readonly Regex TagHead = new(@"^tag\b(?:\s*(?:\([^)]*\))?\s*[:.-]|[^:]{0,60}:)\s*(?<rest>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "... at the end of walls 2 and 4 add 4 counts - ...".
    private static readonly Regex TagWhen = new(@"^(?:at|after) (?:the )?(?:end of )?(?:the )?walls? \d[\d\s,&]*(?:and \d\s*)?,?\s*(?:add \d{1,2} counts?)?\s*[-:,]\s+(?=\S)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "A1" alone above its bars.
    private static readonly Regex TuneAlone = new(@"^(?<key>[A-D][1-4])\W*$", RegexOptions.CultureInvariant);

    private static readonly Regex HerPart = new($@"^(?:the\s+)?(?:{NumberWords.SpelledNth})\s+(?:part|figure|movement),\s*(?:the )?(?:lady|woman|follow\w*)[.:]\s+(?<rest>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex TuneHead = new(@"^(?<key>[A-D][1-4])\s*[:.-]\s+(?<rest>\S.*)$", RegexOptions.CultureInvariant);

    // "A (2nd)  b.1-2  a quarter right ...", "B  bars 1-4 ...": a strain, how often it was played, and the bars under it.
    private static readonly Regex StrainHeads = new($@"^(?<key>[A-D](?:\s?[1-4])?)\s*(?<time>\((?:[1-4](?:st|nd|rd|th)|{NumberWords.SpelledNth}|again|twice)(?: time)?\))?\s*[:.-]?\s+(?<rest>(?:bars?|meas\w*|bb?|m)[.\s]\s*\d.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private bool _tunes;

    // "Third Movement. As the first."
    private static readonly Regex NthThen = new($@"^(?:the\s+)?(?<nth>{NumberWords.SpelledNth})\s+(?:part|figure|movement|strain)\s*[.:-]+\s+(?<rest>\S.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex AsTheNth = new($@"^(?:is |are )?(?:danced )?(?:the same )?as (?:in )?(?:the )?(?<nth>{NumberWords.SpelledNth})\b(?:\s+(?:part|figure|movement|strain))?\W*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private readonly Dictionary<int, PlanPart> _movements = [];

    private void Movement(SheetLine line, Match movement)
    {
        var nth = NumberWords.Nth(movement.Groups["nth"].Value);
        _part = new() { Heading = $"Part {nth}" };
        _plan.Parts.Add(_part);
        _movements[nth] = _part;
        var rest = movement.Groups["rest"].Value;
        if (AsTheNth.Match(rest) is { Success: true } same && _movements.GetValueOrDefault(NumberWords.Nth(same.Groups["nth"].Value)) is { } before)
        {
            _part.Groups.AddRange(before.Groups);
            Is(line, LineKind.Steps);
            return;
        }

        Steps(line, rest);
    }

    // "A1: All in to the middle ...", "Tag: sway ...", "Third Movement. As the first."
    private bool HeadsSteps(SheetLine line, string plain)
    {
        if (TagHead.Match(plain) is { Success: true } tag && _plan.Parts.Exists(p => p.Groups.Count > 0))
        {
            // "Tag: end of wall 2. Sway R, L, R, L": danced when it is said, and no part of every repeat.
            _part = new() { Heading = "Tag" };
            _plan.Parts.Add(_part);
            Steps(line, TagWhen.Replace(tag.Groups["rest"].Value, found =>
            {
                _plan.Asides.Add(line with { Plain = found.Value.Trim(' ', '-', ':', ',') });
                return "";
            }));
            return true;
        }

        if (HerPart.Match(plain) is { Success: true } hers && Opposite.IsMatch(hers.Groups["rest"].Value))
        {
            // "First Part, lady. As the gentleman with contrary foot."
            _plan.Opposite = true;
            _plan.Facts.Add(line);
            Is(line, LineKind.Remark);
            return true;
        }

        if (_tunes && TuneAlone.Match(plain) is { Success: true } alone)
        {
            _part = new() { Heading = $"Part {alone.Groups["key"].Value}" };
            _plan.Parts.Add(_part);
            Is(line, LineKind.Heading);
            return true;
        }

        if (_tunes && TuneHead.Match(plain) is { Success: true } tune)
        {
            // "A1: All in to the middle ...": the strains of the tune are the parts.
            _part = new() { Heading = $"Part {tune.Groups["key"].Value}" };
            _plan.Parts.Add(_part);
            Steps(line, tune.Groups["rest"].Value);
            return true;
        }

        if (StrainHeads.Match(plain) is { Success: true } strain && char.IsUpper(plain[0]))
        {
            _part = new() { Heading = $"Part {strain.Groups["key"].Value} {strain.Groups["time"].Value}".Trim() };
            _plan.Parts.Add(_part);
            _bars = true;
            Steps(line, strain.Groups["rest"].Value);
            return true;
        }

        if (NthThen.Match(plain) is { Success: true } movement)
        {
            Movement(line, movement);
            return true;
        }

        return false;
    }
}
