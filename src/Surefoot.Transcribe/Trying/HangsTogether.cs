using Surefoot.Dance.Basics;
using Surefoot.Transcribe.Layout;
using Surefoot.Transcribe.Writing;

namespace Surefoot.Transcribe.Trying;

/// <summary>
/// How badly a reading hangs together: feet that are not free, counts that are danced twice or not at all, and lengths
/// which are not those the sheet tells. Who reads a sheet that is not clear looks for the reading in which these come out.
/// </summary>
internal static class HangsTogether
{
    // Working values, tried on the corpus: a count too many weighs a little less than a change of words.
    private const double OtherLength = 2, CountOff = 1, MostOff = 10, Twice = 2, Waits = 0.5, OffBeat = 0.5, OddLength = 2, Feet = 0.5;

    // A figure by itself may have any length.
    private const int OneFigure = 8;

    public static double Of(Attempt read)
    {
        var cost = (read.Feet.Cost * Feet) + (read.Laying.Off * CountOff);
        var beats = read.Facts.BeatsInBar;
        var all = 0;
        foreach (var part in read.Parts)
        {
            if (part.Lines.Count == 0) continue;
            var (first, last) = (part.Lines.Min(l => l.Counts.From), part.Lines.Max(l => l.Counts.To));
            // A part's counts go on from the one before, or begin anew.
            var length = first > 1 && first == all + 1 ? last - all : last;
            all += length;
            if (part.StatedCounts is { } said && said != length) cost += Off(said - length);
            foreach (var role in part.Lines.Exists(l => l.Role is not null) ? (Role[])[Role.Lead, Role.Follow] : [Role.Lead]) cost += Gaps([.. part.Lines.Where(l => l.Role is null || l.Role == role)], last);
            cost += part.Lines.Sum(l => Of(l, beats));
        }

        if (read.Facts.Counts is { } stated) cost += stated == all ? 0 : OtherLength + (2 * Off(stated - all));
        else if (all > OneFigure && all % (beats == 3 ? 6 : 8) != 0 && all % 6 != 0) cost += OddLength;
        return cost;
    }

    private static double Off(int counts) => Math.Min(MostOff, CountOff * Math.Abs(counts));

    // Counts on which a dancer has nothing to do, or two things.
    private static double Gaps(List<DraftLine> lines, int last)
    {
        var (cost, next) = (0.0, 1);
        foreach (var line in lines.OrderBy(l => l.Counts.From).ThenBy(l => l.Counts.To))
        {
            if (next == 1 && line == lines[0]) next = line.Counts.From;
            if (line.Counts.From > next) cost += Off(line.Counts.From - next);
            else if (line.Counts.From < next && !line.Counts.HasHalves) cost += Twice;
            next = Math.Max(next, line.Counts.To + 1);
        }

        return cost + (lines.Count == 0 ? 0 : Off(last + 1 - next));
    }

    private static double Of(DraftLine line, int beats)
    {
        var cost = line.Phrases.Count(p => p.Text.StartsWith("hold", StringComparison.Ordinal) && p.Said.Length == 0) * Waits;
        if (line.Own > Beats.Of(line.Counts.Length)) cost += Off(line.Own.Ceiling - line.Counts.Length);
        // Counts that are named and have no step.
        if (line.Labelled && line.AgainOf is null && line.Phrases.TrueForAll(p => p.Text.Length == 0)) cost += Off(line.Counts.Length);
        if (!line.Labelled && line.AgainOf is null && (line.Counts.From - 1) % (beats == 3 ? 3 : 2) != 0) cost += OffBeat;
        return cost;
    }
}
