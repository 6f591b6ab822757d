using Surefoot.Dance.Basics;
using Surefoot.Dance.Text;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;

namespace Surefoot.Film.Notes;

/// <summary>Says which line of the page is being shown when, so that page and film can lead to each other.</summary>
internal static class LineMaker
{
    public static ValueList<ShownLine> Of(IEnumerable<Flow> flows, List<Course> courses, SourceText page, double end)
    {
        var all = new List<(double From, double To, int Line)>();
        foreach (var flow in flows)
        {
            foreach (var pass in flow.Passes) all.AddRange(flow.Beat is null ? Walked(pass, courses, page) : InTime(flow, pass, courses, page));
        }

        var lines = new List<ShownLine>();
        foreach (var line in all.GroupBy(l => l.Line))
        {
            // Words of one line follow each other, and both dancers may have it: one stretch.
            (double From, double To)? open = null;
            foreach (var (from, to, _) in line.OrderBy(l => l.From))
            {
                if (open is { } now && from <= now.To + Together) open = (now.From, Math.Max(now.To, to));
                else
                {
                    Close(open, line.Key);
                    open = (from, to);
                }
            }

            Close(open, line.Key);
        }

        return lines.OrderBy(l => l.From).ThenBy(l => l.Line).ToValueList();

        void Close((double From, double To)? one, int line)
        {
            if (one is not { } stretch) return;
            var (from, to) = (Math.Max(0, stretch.From), Math.Min(stretch.To, end));
            if (to > from) lines.Add(new(FilmTime.OfSeconds(from), FilmTime.OfSeconds(to), line));
        }
    }

    /// <summary>Seconds between two stretches of a line that are one. Working value.</summary>
    private const double Together = 0.3;

    // A line is shown from its first word on until the first word of another one.
    private static IEnumerable<(double, double, int)> Walked(Pass pass, List<Course> courses, SourceText page)
    {
        var said = pass.Matched.Select(m => (m.Heard.From, Line: Line(m, courses, page))).Where(m => m.Line > 0).OrderBy(m => m.From).ToList();
        for (var i = 0; i < said.Count; i++) yield return (said[i].From, i + 1 < said.Count ? said[i + 1].From : pass.To, said[i].Line);
    }

    // Danced in time it does not matter what was heard: each count has its moment.
    private static IEnumerable<(double, double, int)> InTime(Flow flow, Pass pass, List<Course> courses, SourceText page)
    {
        for (var c = 0; c < courses.Count; c++)
        {
            if (pass.Role is not null && c != pass.Course) continue;
            var course = courses[c];
            var stage = course.Stages[pass.Stage];
            var asks = course.Asks.Where(a => a.Stage == pass.Stage).ToList();
            for (var i = 0; i < asks.Count; i++)
            {
                var from = flow.At(pass, Count(course, asks[i].First));
                // A run that breaks off shows nothing of what was not danced.
                if (from > flow.To + 1) break;
                var to = flow.At(pass, i + 1 < asks.Count ? Count(course, asks[i + 1].First) : course.Moments[stage.End - 1].InPart.Whole);
                yield return (from, to, page.Place(asks[i].Source.Start).Line);
            }
        }
    }

    private static double Count(Course course, int moment) => course.Moments[moment].InPart.Value.ToDouble() - 1;

    private static int Line(Placed one, List<Course> courses, SourceText page)
    {
        var course = courses[one.Course];
        var ask = one.Ask >= 0 ? one.Ask : one.Before < course.Moments.Count ? course.Moments[one.Before].Ask : -1;
        return ask < 0 ? 0 : page.Place(course.Asks[ask].Source.Start).Line;
    }
}
