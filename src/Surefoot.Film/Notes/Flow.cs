using Surefoot.Film.Alignment;

namespace Surefoot.Film.Notes;

/// <summary>Passes that go on from one to the next: one part walked, or the whole dance without stopping.</summary>
internal sealed class Flow
{
    public required List<Pass> Passes { get; init; }

    public ShownHow How { get; private set; }

    /// <summary>Seconds a count takes, where it is in time.</summary>
    public double? Beat { get; private set; }

    /// <summary>When the count 0 of the reckoning is; see <see cref="At"/>.</summary>
    public double Start { get; private set; }

    public double From => Passes[0].From;

    public double To => Passes[^1].To;

    /// <summary>Counts from the beginning of the first pass's part to a moment of a pass.</summary>
    private readonly Dictionary<Pass, double> _offsets = [];

    // Working values: a run keeps within these of an even tempo, in counts, and is not slower than this share of the page's slowest.
    private const double Steady = 1.6;
    private const double SteadyUncounted = 0.45;
    private const double FastEnough = 0.8;
    private const int FewestAnchors = 5;
    private const double OutOfTime = 1.5;

    public static List<Flow> Of(List<Pass> passes, List<Course> courses, double slowest)
    {
        var flows = new List<Flow>();
        foreach (var pass in passes)
        {
            if (pass.GoesOn && flows.Count > 0 && !pass.Named && flows[^1].KeepsTimeIn(pass, courses)) flows[^1].Passes.Add(pass);
            else flows.Add(new() { Passes = [pass] });
        }

        foreach (var flow in flows) flow.Time(courses, slowest);
        return flows;
    }

    /// <summary>When a count of a pass falls, in seconds.</summary>
    public double At(Pass pass, double inPart) => Start + ((_offsets[pass] + inPart) * (Beat ?? 0));

    // After a part was counted slowly, walking on to the next is another thing.
    private bool KeepsTimeIn(Pass next, List<Course> courses)
    {
        if (Passes[0].CountedIn is null) return true;
        // Where the whole dance was announced, what comes next in it goes on, however badly it was heard.
        if (Passes[0].Whole && next.Stage == Passes[^1].Stage + 1) return true;
        var (anchors, offset) = Anchors(Passes, courses);
        if (anchors.Count < FewestAnchors || Line(anchors) is not { Beat: > 0.1 } line) return true;
        var (first, _) = Anchors([next], courses);
        var late = first.Take(4).Select(a => Math.Abs(a.Time - line.Start - ((a.Count + offset) * line.Beat)) / line.Beat).Order().ToList();
        return late.Count == 0 || late[late.Count / 2] < OutOfTime;
    }

    private (List<(double Count, double Time)> Anchors, double Length) Anchors(List<Pass> passes, List<Course> courses)
    {
        var anchors = new List<(double Count, double Time)>();
        var offset = 0.0;
        foreach (var pass in passes)
        {
            var course = courses[pass.Course];
            _offsets[pass] = offset;
            foreach (var one in pass.Matched)
            {
                var its = courses[one.Course];
                var moment = one.How == Placing.Ask ? its.Asks[one.Ask].First : Math.Max(0, one.How == Placing.Count ? LastWhole(its, one.After - 1, one) : one.Before);
                if (moment < its.Moments.Count && its.Moments[moment].Stage == pass.Stage) anchors.Add((offset + its.Moments[moment].InPart.Value.ToDouble() - 1, one.Heard.From));
            }

            var stage = course.Stages[pass.Stage];
            offset += stage.End > stage.First ? course.Moments[stage.End - 1].InPart.Whole : 0;
        }

        return (anchors, offset);
    }

    private void Time(List<Course> courses, double slowest)
    {
        Measure(courses, slowest);
        // Whoever says "from the top" and counts in dances it in time, also where too little was heard to find the tempo.
        if (Passes[0].Whole && How == ShownHow.Walked) How = ShownHow.AtTempo;
    }

    private void Measure(List<Course> courses, double slowest)
    {
        var (anchors, _) = Anchors(Passes, courses);
        if (anchors.Count < FewestAnchors || Line(anchors) is not { Beat: > 0.1 } line) return;
        var errors = anchors.Select(a => Math.Abs(a.Time - line.Start - (a.Count * line.Beat)) / line.Beat).Order().ToList();
        var counted = Passes[0].CountedIn is not null;
        // The middle error: single words that were put wrong do not spoil a run.
        if (errors[errors.Count * 3 / 4] > (counted ? Steady : SteadyUncounted)) return;
        if (!counted && Passes.Count < 2) return;
        var fast = 60 / line.Beat >= FastEnough * slowest;
        if (!fast && !counted) return;
        (Start, Beat) = (line.Start, line.Beat);
        How = fast ? ShownHow.AtTempo : ShownHow.Counted;
    }

    private Flow() => How = ShownHow.Walked;

    private static int LastWhole(Course course, int moment, Placed one)
    {
        // A count-in taken for counts anchors at its first number.
        var m = one.Heard.Kind == Hearing.HeardKind.CountIn ? one.Before : moment;
        while (m > 0 && m < course.Moments.Count && !course.Moments[m].Whole) m--;
        return m;
    }

    // The median of slopes between pairs (Theil 1950, Sen 1968), which a few wrong anchors do not bend.
    private static (double Start, double Beat)? Line(List<(double Count, double Time)> anchors)
    {
        var slopes = new List<double>();
        for (var i = 0; i < anchors.Count; i++)
        {
            for (var k = i + 1; k < anchors.Count; k++)
            {
                if (anchors[k].Count - anchors[i].Count >= 2) slopes.Add((anchors[k].Time - anchors[i].Time) / (anchors[k].Count - anchors[i].Count));
            }
        }

        if (slopes.Count == 0) return null;
        slopes.Sort();
        var beat = slopes[slopes.Count / 2];
        var starts = anchors.Select(a => a.Time - (a.Count * beat)).Order().ToList();
        return (starts[starts.Count / 2], beat);
    }
}
