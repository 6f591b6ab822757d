using Surefoot.Dance.Basics;
using Surefoot.Dance.Scoring;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;

namespace Surefoot.Film.Notes;

/// <summary>Says of every stretch of the film what it shows: part, counts, for whom, from which side, how sure.</summary>
internal static class StretchMaker
{
    /// <summary>Seconds between stretches that are worth being called talk. Working value.</summary>
    private const double WorthSaying = 3;

    public static ValueList<Stretch> Of(List<Flow> flows, DanceScore score, List<Course> courses, double end)
    {
        var all = new List<Stretch>();
        var last = 0.0;
        foreach (var flow in flows)
        {
            foreach (var pass in flow.Passes)
            {
                Talk(last, pass.From);
                var course = courses[pass.Course];
                var stage = course.Stages[pass.Stage];
                var counts = pass.Matched.SelectMany(m => Range(courses[m.Course], m)).ToList();
                var (from, to) = (counts.DefaultIfEmpty(1).Min(), counts.DefaultIfEmpty(1).Max());
                all.Add(new(FilmTime.OfSeconds(pass.From), FilmTime.OfSeconds(pass.To), flow.How, score.Parts[stage.Part].Label, from, to, pass.Role, pass.Side, flow.Beat is { } beat ? (int)Math.Round(60 / beat) : null, Sure(pass, counts, from, to)));
                last = pass.To;
            }
        }

        Talk(last, end);
        return all.ToValueList();

        void Talk(double from, double to)
        {
            if (to - from > WorthSaying) all.Add(new(FilmTime.OfSeconds(from), FilmTime.OfSeconds(to), ShownHow.Talk, null, 0, 0, null, Hearing.FilmSide.Unsaid, null, 1));
        }
    }

    private static IEnumerable<int> Range(Course course, Placed one)
    {
        var (first, end) = one.How == Placing.Ask ? (course.Asks[one.Ask].First, course.Asks[one.Ask].End) : (Math.Max(0, one.After - 1), one.After);
        for (var m = first; m < end && m < course.Moments.Count; m++) yield return course.Moments[m].InPart.Whole;
    }

    // The share of counts that were heard, less a little for each that did not fit.
    private static double Sure(Pass pass, List<int> counts, int from, int to)
    {
        var heard = counts.Distinct().Count() / (double)Math.Max(1, to - from + 1);
        var astray = pass.Items.Count(i => i.How == Placing.Talk && i.Heard.Move is { Loose: false });
        return Math.Round(Math.Clamp(heard - (0.05 * astray), 0, 1), 2);
    }
}
