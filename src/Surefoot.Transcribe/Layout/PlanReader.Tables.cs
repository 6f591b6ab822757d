using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <content>Heads of tables, and what their columns say.</content>
internal sealed partial class PlanReader
{
    // The head of a table of bars, counts and steps.
    private static readonly Regex TableHead = new(@"^(?:meas\w*|bars?)\.?:?$|^(?:meas\w*|bars?|counts?|cts?|beats?)\.?\s*\||^(?:meas\w*|bars?)\.?\s+(?:ct\w*|counts?|beats?)\b|^(?:steps?|movements?)\s{2,}(?:counts?|beats?)$|^(?:beats?|counts?|cts?)\.?\s{3,}(?!\s|lead|follow|man|men|lady|ladies|gent|woman|M\b|W\b)[\p{L} ]+\s{3,}[\p{L} ]+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "Strain | Bar | Step": the first column says which part.
    private static readonly Regex StrainHead = new(@"^(?:strain|part|fig\w*|section)\s*\|\s*(?:bars?|meas\w*)\s*\|", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex StrainLine = new(@"^(?<strain>[A-Z]|\d{1,2}|[IVX]{1,4})\s*\|\s*(?<rest>\S.*)$", RegexOptions.CultureInvariant);

    private bool _strains;

    private string _strain = "";

    private static readonly Regex HeadOfBars = new(@"^(?:meas\w*|bars?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // "4  Out, out, in, in", "4  Same", "2  Stamp, clap" under "Beats": how long each takes, and not when.
    private bool LengthsUnder(int head)
    {
        var numbers = lines.Skip(head + 1).Select(l => Regex.Match(l.Plain, @"^(?<n>\d{1,2})\s{2,}\S", RegexOptions.CultureInvariant)).Where(m => m.Success).Select(m => NumberWords.Read(m.Groups["n"].Value)).ToList();
        return numbers.Count > 2 && numbers.Zip(numbers.Skip(1)).Any(n => n.Second == n.First) && numbers.Exists(n => n != 1);
    }

    // Numbers before the steps say how long these take.
    private bool _lengths;

    // A line that only draws.
    private static readonly Regex Ruled = new(@"^[-=_~+#.\s|]*[-=_~]{3}[-=_~+#.\s|]*$", RegexOptions.CultureInvariant);

    private static readonly Regex OverPart = new(@"^(?:meas\w*|bars?)\.?:?\s{2,}(?<part>(?:part|fig(?:ure)?|section|strain)\b\.?\s*(?:[A-H]|\d{1,2}|[IVX]{1,4})\b.*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // The head of a table, or a line of one whose first column names the part.
    private bool HeadsTable(int i, SheetLine line, string plain)
    {
        if (Ruled.IsMatch(plain) || Ruled.IsMatch(line.Text))
        {
            Is(line, LineKind.Heading);
            return true;
        }

        if (OverPart.Match(plain) is { Success: true } over)
        {
            // "MEAS   PART I - along the reeds": the head of the column and of the first part in one line.
            (_table, _bars) = (true, true);
            plain = over.Groups["part"].Value;
            _part = HeadingOf(i, plain) ?? new() { Heading = $"Part {NextPart()}  {plain}" };
            _plan.Parts.Add(_part);
            Is(line, LineKind.Heading);
            return true;
        }

        if (StrainHead.IsMatch(plain))
        {
            (_strains, _table, _bars) = (true, true, true);
            Is(line, LineKind.Heading);
            return true;
        }

        if (_strains && StrainLine.Match(plain) is { Success: true } strain)
        {
            if (strain.Groups["strain"].Value != _strain)
            {
                _strain = strain.Groups["strain"].Value;
                _part = new() { Heading = $"Part {_strain}" };
                _plan.Parts.Add(_part);
            }

            Steps(line, strain.Groups["rest"].Value);
            return true;
        }

        if (TableHead.IsMatch(plain))
        {
            if (HeadOfBars.IsMatch(plain)) (_table, _bars) = (true, true);
            else _lengths = LengthsUnder(i);
            Is(line, LineKind.Heading);
            return true;
        }

        return false;
    }
}
