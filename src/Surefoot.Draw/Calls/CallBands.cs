using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Insight.Calls;
using Surefoot.Dance.Scoring;
using Surefoot.Draw.Words;

namespace Surefoot.Draw.Calls;

/// <summary>Cuts a dance into bands of an 8 (in 3/4 of two bars), each part beginning a new one.</summary>
internal sealed class CallBands(DanceScore score, CallSheet sheet, RoleNames names, Role? only)
{
    private readonly int _size = score.Facts.Meter.Beats == 3 ? 6 : 8;

    public List<CallBand> All()
    {
        var bands = new List<CallBand>();
        if (score.Sections.Count == 0) return bands;
        bands.Add(Before());
        var times = new int[score.Parts.Count];
        foreach (var section in score.Sections)
        {
            var part = score.Parts[section.Part];
            var time = ++times[section.Part];
            var again = time > 1 ? $", {Numbers.Ordinal(time)} time" : "";
            Part(bands, part, part.Label + again + (section.Mirrored ? ", on the other foot" : ""), section.Start.Whole - 1, sheet.Calls, sheet.Danced);
        }

        foreach (var extra in sheet.Extras)
        {
            var part = score.Parts[extra.Part];
            if (part.Length > Beats.Zero) Part(bands, part, part.Label + (extra.AfterWall is { } wall ? $", after the {Numbers.Ordinal(wall)} repeat" : ""), 0, extra.Calls, default);
        }

        return bands;
    }

    // The last bar before the dance, counted as the end of an 8.
    private CallBand Before()
    {
        var bar = Math.Max(2, score.Facts.Meter.Beats);
        var counts = Enumerable.Range(_size - bar + 1, bar).Select(n => $"{n}").ToList();
        return new("Before it begins", "", counts, Cells(sheet.Opening, 1 - bar, bar), []);
    }

    private void Part(List<CallBand> bands, PartScore part, string heading, int ahead, ValueList<Call> calls, ValueList<NamedStep> danced)
    {
        var length = part.Length.Ceiling;
        for (var at = 0; at < length; at += _size)
        {
            var size = Math.Min(_size, length - at);
            var from = ahead + at + 1;
            var counts = Enumerable.Range(at + 1 + part.CountOffset, size).Select(n => $"{n}").ToList();
            bands.Add(new(at == 0 ? heading : "", at == 0 ? part.Name : "", counts, Cells(calls, from, size), Danced(danced, from, size)));
        }
    }

    private List<CallCell> Cells(ValueList<Call> calls, int from, int size)
    {
        var cells = new List<CallCell>();
        foreach (var call in calls)
        {
            if (only is not null && call.Role is not null && call.Role != only) continue;
            if (call.From < from || call.From >= from + size) continue;
            // A call that is said across the end of a band stands whole where it begins.
            cells.Add(new(call.From - from, Math.Min(call.Counts, from + size - call.From), only is null ? call.Role : null, Words(call.Words), call.Written));
        }

        return cells;
    }

    private List<CallCell> Danced(ValueList<NamedStep> danced, int from, int size)
    {
        var cells = new List<CallCell>();
        var apart = only is null && danced.AsSpan().ToArray().Any(d => d.Role is { } r && r != Role.Dancer && In(d, from, size));
        foreach (var role in apart ? (Role?[])[Role.Lead, Role.Follow] : [null])
        {
            var mine = danced.AsSpan().ToArray().Where(d => d.Role is null || d.Role == Role.Dancer || d.Role == (only ?? role)).ToList();
            for (var i = 0; i < mine.Count; i++)
            {
                var (start, until) = (Start(mine[i]), i + 1 < mine.Count ? Start(mine[i + 1]) : score.Counts.Ceiling + 1);
                var (first, last) = (Math.Max(start, from), Math.Min(until, from + size));
                // What began before this band and goes on is not said again.
                if (first >= last || start < from) continue;
                cells.Add(new(first - from, last - first, role, Words(mine[i].Words), false));
            }
        }

        return cells;
    }

    private static bool In(NamedStep step, int from, int size) => Start(step) >= from && Start(step) < from + size;

    private static int Start(NamedStep step) => Math.Max(1, step.At.Whole);

    private string Words(string words) => CallWords.For(words, names.Bare(Role.Lead), names.Bare(Role.Follow));
}
