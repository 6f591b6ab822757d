using Surefoot.Film.Alignment;

namespace Surefoot.Film.Notes;

/// <summary>
/// What was said of one step and does not fit it may fit the one beside it, of which nothing was heard: then it is that one, and one slip
/// explains both. At the end of a part and after "ladies" leaving out costs the alignment less than elsewhere, so it may choose the wrong one of the two.
/// </summary>
internal static class Relaying
{
    /// <summary>How many steps nothing was heard of there may be between. Working value.</summary>
    private const int MostUnheard = 4;

    public static void In(Pass pass, List<Course> courses)
    {
        for (var i = 0; i < pass.Items.Count; i++)
        {
            var one = pass.Items[i];
            if (one is not { How: Placing.Ask, Jumped: false, Heard.Move: { Bare: false } move }) continue;
            var course = courses[one.Course];
            var own = course.Asks[one.Ask];
            if (own.Again || Fit.Clashes(move, own, own.Shared && pass.Role != Dance.Basics.Role.Follow) == Clash.None || Fit.Of(move, own) is not { } fits) continue;
            var (from, to) = (From(pass, i, course), To(pass, i, course, courses));
            var open = Enumerable.Range(0, course.Asks.Count).Where(a => a != one.Ask && course.Asks[a] is var ask && ask.Stage == own.Stage && !ask.Again && ask.First >= from && ask.First < to && !Aligner.Silent(course, a)).ToList();
            if (open.Count is 0 or > MostUnheard) continue;
            // Beside it: else more would be left out than before. What is said last may belong to the end of the part.
            if (pass.Items.Skip(i + 1).Any(x => x.How is Placing.Ask or Placing.Step or Placing.Count)) open.RemoveAll(a => open.Exists(b => (b > one.Ask) == (a > one.Ask) && Math.Abs(b - one.Ask) < Math.Abs(a - one.Ask)));
            var better = open.Where(a => Fit.Clashes(move, course.Asks[a]) == Clash.None && Fit.Of(move, course.Asks[a]) > fits).OrderBy(a => Math.Abs(a - one.Ask)).Select(a => (int?)a).FirstOrDefault();
            if (better is { } ask) pass.Items[i] = one with { Ask = ask, Before = course.Asks[ask].First, After = course.Asks[ask].End };
        }
    }

    // Where the dancer had come to before, whoever was spoken of in between.
    private static int From(Pass pass, int at, Course course)
    {
        for (var i = at - 1; i >= 0; i--)
        {
            if (pass.Items[i] is var item && item.Course == pass.Items[at].Course && item.How is not (Placing.Talk or Placing.Turns)) return item.After;
        }

        return pass.Named ? course.Stages[pass.Stage].First : pass.Items[at].Before;
    }

    private static int To(Pass pass, int at, Course course, List<Course> courses)
    {
        for (var i = at + 1; i < pass.Items.Count; i++)
        {
            // What both dance may be said of the other's course.
            if (pass.Items[i] is { How: Placing.Ask } theirs && theirs.Course != pass.Items[at].Course && course.Asks.FirstOrDefault(a => a.Stage == pass.Stage && a.Source == courses[theirs.Course].Asks[theirs.Ask].Source && a.First >= pass.Items[at].Before) is { } shared) return shared.First;
            if (pass.Items[i] is var item && item.Course == pass.Items[at].Course && item.How is Placing.Ask or Placing.Step or Placing.Count or Placing.Again) return item.How == Placing.Ask ? course.Asks[item.Ask].First : item.Before;
        }

        return course.Stages[pass.Stage].End;
    }
}
