using System.Text.RegularExpressions;
using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Source;

namespace Surefoot.Transcribe.Layout;

/// <content>His steps and hers beside each other: in two columns, or hers under as many lines of his.</content>
internal sealed partial class PlanReader
{
    // "Man      Lady": what each does stands under his or her own word.
    private static (string Left, string Right)? ColumnsOf(string plain) =>
        Gap.Split(CountsHead.Replace(plain, "", 1)) is [var left, var right] && RoleWords.IsHeading(left, out var one) && RoleWords.IsHeading(right, out var other) && one is not null && other is not null && one != other
            ? (left.Trim(':', ' '), right.Trim(':', ' '))
            : null;

    // "Bar    Man    Lady".
    private static readonly Regex CountsHead = new(@"^(?:bars?|meas\w*|counts?|cts?|beats?)\.?\s{2,}", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private string InColumns(SheetLine line, string words)
    {
        if (_columns is not var (left, right) || Cells(line, words) is not var (his, hers)) return words;
        // Her cell alone: he does what he did, or nothing that is told.
        if (his.Length == 0) return $"{right}: {hers}";
        // What stands under it without counts goes on in its column.
        foreach (var under in lines.Skip(line.Number).TakeWhile(l => l.Plain.Length > 0 && CountLabel.AtStart(l.Plain, 0, out _) is null && Gap.IsMatch(l.Text)))
        {
            switch (Gap.Split(under.Plain))
            {
                case [var more, var also]:
                    (his, hers) = (GoesOn(his, more), GoesOn(hers, also));
                    break;
                case [var one] when under.Text.Length - under.Text.TrimStart().Length >= _rightAt - 2:
                    hers = GoesOn(hers, one);
                    break;
                case [var one]:
                    his = GoesOn(his, one);
                    break;
                default:
                    return $"{left}: {his.TrimEnd('.')}. {right}: {hers}";
            }

            _joined.Add(under.Number);
        }

        return $"{left}: {his.TrimEnd('.')}. {right}: {hers}";
    }

    // What hands do is a sentence of its own; other words go on with the one above.
    private static string GoesOn(string cell, string more) => Hands.IsMatch(more) ? $"{cell.TrimEnd('.')}. {more}" : $"{cell} {more}";

    private static readonly Regex Hands = new(@"^(?:then )?(?:let go|let loose|release|drop|raise|lift|lower|take|join|re-?join|pick up|keep|hold(?:ing)? (?:hands|on)|both hands|(?:new )?inside hands|hands?|(?:left|right|L|R) hands?)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    // By three blanks, by two, or by where her head stands.
    private (string His, string Hers)? Cells(SheetLine line, string words)
    {
        if (Gap.Split(words.Trim()) is [var his, var hers]) return (his, hers);
        if (TwoBlanks.Split(words.Trim()) is [var left, var right]) return (left, right);
        var cut = _rightAt - (line.Text.Length - line.Text.TrimStart().Length) - (line.Plain.Length - words.TrimEnd().Length);
        if (line.Text.Contains('\t', StringComparison.Ordinal) || _rightAt <= 0 || !line.Plain.EndsWith(words.TrimEnd(), StringComparison.Ordinal)) return null;
        if (cut <= 1) return cut >= -2 ? ("", words.Trim()) : null;
        return cut < words.Length && words[cut - 1] == ' ' && words[cut - 2] == ' ' ? (words[..cut].Trim(), words[cut..].Trim()) : null;
    }

    private static readonly Regex TwoBlanks = new(@"\s{2,}", RegexOptions.CultureInvariant);

    private readonly HashSet<int> _joined = [];

    private int _rightAt;

    private static readonly Regex Gap = new(@"\s{3,}", RegexOptions.CultureInvariant);

    private (string Left, string Right)? _columns;

    // "W: RF back, LF back, ..." under as many lines of his: she dances at the same time, in the same rhythm.
    private void BesideHis(SheetLine line)
    {
        if (_part is not { } part || part.Groups.FindIndex(g => g.Line == line) is not (> 0 and var hers)) return;
        var his = part.Groups.Take(hers).ToList();
        if (his.Exists(g => g.Role == Role.Follow || g.Label is not null || g.Again is not null || g.Times > 1)) return;
        var steps = his.SelectMany(g => g.Phrases).Where(p => speaks(p.Text)).ToList();
        var own = part.Groups.Skip(hers).SelectMany(g => g.Phrases).Count(p => speaks(p.Text));
        if (own < 3 || own != steps.Count) return;
        foreach (var group in his) group.Role = Role.Lead;
        var at = 0;
        foreach (var group in part.Groups.Skip(hers))
        {
            for (var i = 0; i < group.Phrases.Count; i++)
            {
                if (speaks(group.Phrases[i].Text)) group.Phrases[i] = group.Phrases[i] with { Beats = steps[at++].Beats };
            }
        }
    }
}
