using Surefoot.Dance.Basics;
using Surefoot.Film.Alignment;
using Surefoot.Film.Captions;

namespace Surefoot.Film.Notes;

/// <summary>Captions with counts and calls for the stretches in which the dance is shown in time.</summary>
internal static class RunCaptions
{
    /// <summary>Counts that a caption stands at least, so that it can be read. Working value.</summary>
    private const double Least = 2;

    public static ValueList<TimedText> Of(IEnumerable<Flow> flows, List<Course> courses, ICalls calls, RolesCalled called, double end)
    {
        var captions = new List<TimedText>();
        foreach (var flow in flows.Where(f => f is { How: ShownHow.AtTempo, Beat: not null }))
        {
            foreach (var pass in flow.Passes)
            {
                var course = courses[pass.Course];
                var asks = course.Asks.Where(a => a.Stage == pass.Stage).ToList();
                var stage = course.Stages[pass.Stage];
                for (var i = 0; i < asks.Count;)
                {
                    var until = i + 1;
                    while (until < asks.Count && Count(course, asks[until].First) - Count(course, asks[i].First) < Least) until++;
                    var from = flow.At(pass, Count(course, asks[i].First));
                    var to = flow.At(pass, until < asks.Count ? Count(course, asks[until].First) : course.Moments[stage.End - 1].InPart.Whole);
                    // A run that breaks off has no captions for what was not danced.
                    if (from > flow.To + 1) break;
                    var range = asks.GetRange(i, until - i);
                    if (from >= 0 && Math.Min(to, end) > from) captions.Add(new(FilmTime.OfSeconds(from), FilmTime.OfSeconds(Math.Min(to, end)), $"{Counts(course, range)}  {Words(pass, range, courses, calls, called)}"));
                    i = until;
                }
            }
        }

        return captions.OrderBy(c => c.From).ToValueList();
    }

    private static double Count(Course course, int moment) => course.Moments[moment].InPart.Value.ToDouble() - 1;

    private static string Counts(Course course, List<Ask> asks)
    {
        var (from, to) = (course.Moments[asks[0].First].InPart, course.Moments[asks[^1].End - 1].InPart);
        return from == to ? from.Name : $"{from.Name}-{to.Whole}";
    }

    // Both dancers' calls where they differ.
    private static string Words(Pass pass, List<Ask> asks, List<Course> courses, ICalls calls, RolesCalled called)
    {
        var course = courses[pass.Course];
        var first = Called(course, asks);
        if (courses.Count < 2) return first;
        var other = courses[1 - pass.Course];
        var (from, to) = (course.Moments[asks[0].First].InPart, course.Moments[asks[^1].First].InPart);
        var theirs = other.Asks.Where(a => a.Stage == pass.Stage && other.Moments[a.First].InPart >= from && other.Moments[a.First].InPart <= to).ToList();
        // The same words of the page for both are called once.
        if (theirs.Count == 0 || theirs[0].Source == asks[0].Source) return first;
        var (lead, follow) = pass.Course == 0 ? (first, Called(other, theirs)) : (Called(other, theirs), first);
        return lead == follow ? lead : $"{Capital(called.Lead)}: {lead}\n{Capital(called.Follow)}: {follow}";

        string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

        string Called(Course who, List<Ask> all) => string.Join(", ", all.Select(a => calls.Of(who.Role, a.Steps)).Distinct(StringComparer.Ordinal));
    }
}
