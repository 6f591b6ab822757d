namespace Surefoot.Lessons.Planning;

/// <summary>How firmly what is wished of a course is asked for.</summary>
internal enum Asked
{
    /// <summary>It has to be.</summary>
    Firmly,

    /// <summary>It is given up where nothing else helps.</summary>
    IfAtAll,

    /// <summary>It plays no part, and takes no time from the others.</summary>
    Not,
}

/// <summary>What is not asked for, to find out whether it stands in the way.</summary>
internal enum Eased
{
    Nothing,

    /// <summary>Dances may be taught in any order.</summary>
    Order,

    /// <summary>A lesson has room for any number of new counts.</summary>
    NewCounts,

    /// <summary>A lesson has room for any number of minutes.</summary>
    Minutes,

    /// <summary>Nothing is danced again.</summary>
    Reviews,
}

/// <summary>
/// The lessons that are to come for one class as a program: for each bite and lesson a column that is 1 once the
/// bite is done by that lesson. What a lesson holds are differences of these.
/// </summary>
internal sealed class ClassProgram
{
    // What giving something up costs, far enough apart that the greater is never paid for many of the lesser.
    private const long GivenUp = 100_000_000, NotTaught = 1_000_000, ToldBite = 8_000, ToldReview = 4_000, NotTold = 1_000;

    /// <summary>A dance begun before the day on which people were told it begins: whoever comes for it would miss it. More than a bite that was told.</summary>
    private const long BegunEarly = 12_000;

    /// <summary>
    /// A lesson in which a dance does not go on that the class has begun: more than a review that was told for it, so that a
    /// missed evening does not let it stand still, and less than a bite that was told.
    /// </summary>
    private const long Standing = 6_000;

    /// <summary>A lesson more after the day a dance was wished by: it goes before every dance without a date, and a bite that was told stays.</summary>
    private const long Overdue = 5_000;

    /// <summary>A lesson between begin and end of a dance; a dance more in a lesson; half a new count more than is comfortable.</summary>
    private const long Stretched = 300, AnotherDance = 120, Crowded = 40;

    /// <summary>A lesson later for the dance the teacher names last; those named before it cost more, each by this. At most so many.</summary>
    private const int Later = 1, MostLater = 20;

    /// <summary>Of the new counts a lesson has room for, so many thirds are comfortable. Working value.</summary>
    private const int ComfortableThirds = 2;

    /// <summary>New counts of a lesson that are comfortable, in halves.</summary>
    internal static int Comfortable(Lesson lesson) => 2 * lesson.MostNew * ComfortableThirds / 3;

    private readonly TermCase _case;
    private readonly Func<Course, Asked> _asked;
    private readonly Eased _eased;
    private readonly Dictionary<int, Taught> _taught = [];
    private readonly Dictionary<int, ReviewPaths> _paths = [];
    private readonly Dictionary<int, List<(int Column, int Times)>> _minutes = [];
    private readonly Dictionary<int, List<(int Column, int Times)>> _halves = [];

    /// <param name="open">The lessons of a course that are not over.</param>
    private sealed record Taught(Course Course, List<int> Open, List<int> Bites, int[,] Done, int[] Active);

    public ClassProgram(TermCase term, DanceClass who, Func<Course, Asked> asked, Eased eased = Eased.Nothing)
    {
        (_case, _asked, _eased) = (term, asked, eased);
        foreach (var lesson in term.Lessons)
        {
            if (lesson.Slot.For != who || term.Past[lesson.Index]) continue;
            _minutes[lesson.Index] = [];
            _halves[lesson.Index] = [];
        }

        foreach (var course in term.Courses)
        {
            if (course.Class != who || asked(course) == Asked.Not) continue;
            var open = course.Lessons.Where(l => !term.Past[l]).ToList();
            if (course.Finished && eased != Eased.Reviews) Review(course, open);
            else if (course.Finished) continue;
            else Teach(course, open);
        }

        foreach (var course in _taught.Values.Where(_ => eased != Eased.Order)) Order(course);
        Rooms();
        StayWithTold();
        if (term.Told.Count == 0) Guess(who);
    }

    public WholeProgram Program { get; } = new();

    /// <summary>The columns of the dances of which everything that is left was told, at what was told; none where nobody was told anything.</summary>
    public List<(int Column, int Value)> AsTold { get; } = [];

    /// <summary>Only whether there is a plan is asked, not which is good.</summary>
    public ClassProgram WithoutCosts()
    {
        Program.ForgetCosts();
        return this;
    }

    /// <summary>The columns that say when a dance is taught, dance by dance in the order in which an answer begins them.</summary>
    public List<int[]> InOrder(WholeSolution solution) => [.. _taught.Values
        .OrderBy(t => Enumerable.Range(0, t.Open.Count).Select(l => (int?)t.Open[l]).FirstOrDefault(l => solution.Values[t.Done[0, t.Open.IndexOf(l!.Value)]] == 1) ?? int.MaxValue)
        .ThenBy(t => t.Course.Index)
        .Select(t => t.Done.Cast<int>().ToArray())];

    /// <summary>What an answer means.</summary>
    public ClassPlan Read(WholeSolution solution)
    {
        var bites = new List<(int Lesson, int Course, int Bite)>();
        var reviews = new List<(int Lesson, int Course)>();
        foreach (var taught in _taught.Values)
        {
            for (var b = 0; b < taught.Bites.Count; b++)
            {
                for (var l = 0; l < taught.Open.Count; l++)
                {
                    if (solution.Values[taught.Done[b, l]] - (l > 0 ? solution.Values[taught.Done[b, l - 1]] : 0) == 1) bites.Add((taught.Open[l], taught.Course.Index, taught.Bites[b]));
                }
            }
        }

        foreach (var (course, paths) in _paths)
        {
            foreach (var (lesson, column) in paths.Reviews)
            {
                if (solution.Values[column] == 1) reviews.Add((lesson, course));
            }
        }

        return new(bites, reviews);
    }

    private void Teach(Course course, List<int> open)
    {
        var bites = Enumerable.Range(0, course.Bites.Count).Where(b => !course.Progress.Done[b]).ToList();
        var asked = _asked(course);
        if (open.Count == 0)
        {
            if (asked == Asked.Firmly && course.By is not null) Program.AddRow(1, 1, []);
            return;
        }

        var done = new int[bites.Count, open.Count];
        var active = new int[open.Count];
        for (var l = 0; l < open.Count; l++)
        {
            active[l] = Program.AddColumn(0, 1);
            for (var b = 0; b < bites.Count; b++) done[b, l] = Program.AddColumn(0, 1);
        }

        var taught = new Taught(course, open, bites, done, active);
        _taught[course.Index] = taught;
        for (var l = 0; l < open.Count; l++)
        {
            for (var b = 0; b < bites.Count; b++)
            {
                if (l > 0) Program.AddRow(0, 1, [(done[b, l], 1), (done[b, l - 1], -1)]);
                if (b > 0) Program.AddRow(0, 1, [(done[b - 1, l], 1), (done[b, l], -1)]);
                // Whatever is taught in a lesson makes the dance one of its dances.
                Program.AddRow(0, 1, [(active[l], 1), .. Now(taught, b, l, -1)]);
            }
        }

        // What is begun is finished before the term ends.
        Program.AddRow(0, 0, [(done[0, open.Count - 1], 1), (done[bites.Count - 1, open.Count - 1], -1)]);
        Wish(taught, asked);
        Costs(taught);
        Minutes(taught);
        if (_eased == Eased.Reviews) return;
        _paths[course.Index] = ReviewPaths.AfterFinishing(Program, _case.Lessons, open, lesson => Now(taught, bites.Count - 1, open.IndexOf(lesson)));
        ReviewMinutes(course.Index);
    }

    private void Wish(Taught taught, Asked asked)
    {
        var last = taught.Bites.Count - 1;
        Program.AddCost(taught.Done[last, taught.Open.Count - 1], -NotTaught);
        if (taught.Course.By is not { } by) return;
        var until = taught.Open.FindLastIndex(l => _case.Lessons[l].Day <= by);
        if (asked == Asked.Firmly) Program.AddRow(1, 1, until < 0 ? [] : [(taught.Done[last, until], 1)]);
        else
        {
            if (until >= 0) Program.AddCost(taught.Done[last, until], -GivenUp);
            // What comes too late comes as soon as can be.
            for (var l = until + 1; l < taught.Open.Count; l++) Program.AddCost(taught.Done[last, l], -Overdue);
        }
    }

    private void Costs(Taught taught)
    {
        var last = taught.Bites.Count - 1;
        for (var l = 0; l < taught.Open.Count; l++)
        {
            Program.AddCost(taught.Active[l], AnotherDance);
            // Begun and not yet finished costs; so does every lesson until it is finished, and more for what the teacher named first.
            Program.AddCost(taught.Done[0, l], taught.Course.Progress.Begun ? -Standing : Stretched);
            Program.AddCost(taught.Done[last, l], -Stretched - (Later * Math.Min(MostLater, _case.Courses.Count - taught.Course.Index)));
        }
    }

    private void Review(Course course, List<int> open)
    {
        var paths = ReviewPaths.From(Program, _case.Lessons, open, course.Progress.Review!.Value, course.Progress.Last);
        _paths[course.Index] = paths;
        if (paths.First.Count == 0) return;
        var firmly = course.Progress.Last is not null && _asked(course) == Asked.Firmly;
        Program.AddRow(firmly ? 1 : 0, 1, paths.First);
        if (!firmly)
        {
            foreach (var (column, _) in paths.First) Program.AddCost(column, -(course.Progress.Last is null ? NotTaught / 2 : GivenUp));
        }

        ReviewMinutes(course.Index);
    }

    /// <summary>1 where a bite is taught in a lesson, as a sum.</summary>
    private static List<(int Column, int Times)> Now(Taught taught, int bite, int lesson, int times = 1) =>
        lesson > 0 ? [(taught.Done[bite, lesson], times), (taught.Done[bite, lesson - 1], -times)] : [(taught.Done[bite, lesson], times)];

    private void Minutes(Taught taught)
    {
        for (var l = 0; l < taught.Open.Count; l++)
        {
            var (minutes, halves) = (_minutes[taught.Open[l]], _halves[taught.Open[l]]);
            for (var b = 0; b < taught.Bites.Count; b++)
            {
                minutes.AddRange(Now(taught, b, l, taught.Course.Minutes[taught.Bites[b]]));
                halves.AddRange(Now(taught, b, l, LessonMinutes.HalfCounts(taught.Course.Bites[taught.Bites[b]])));
            }

            // A dance that goes on is gone through first; one that is begun is shown first instead.
            minutes.Add((taught.Active[l], LessonMinutes.Recap));
            if (!taught.Course.Progress.Begun) minutes.AddRange(Now(taught, 0, l, LessonMinutes.Show - LessonMinutes.Recap));
            minutes.AddRange(Now(taught, taught.Bites.Count - 1, l, LessonMinutes.ToMusic));
        }
    }

    private void ReviewMinutes(int course)
    {
        foreach (var (lesson, column) in _paths[course].Reviews) _minutes[lesson].Add((column, LessonMinutes.Review));
    }

    /// <summary>What comes before is finished in an earlier lesson.</summary>
    private void Order(Taught taught)
    {
        foreach (var index in taught.Course.After)
        {
            var before = _case.Courses[index];
            if (before.Finished) continue;
            for (var l = 0; l < taught.Open.Count; l++)
            {
                var earlier = _taught.TryGetValue(index, out var other) ? other.Open.FindLastIndex(o => o < taught.Open[l]) : -1;
                var row = new List<(int, int)> { (taught.Done[0, l], 1) };
                if (earlier >= 0) row.Add((other!.Done[other.Bites.Count - 1, earlier], -1));
                Program.AddRow(-1, 0, row);
            }
        }
    }

    private void Rooms()
    {
        foreach (var (lesson, sum) in _minutes)
        {
            var at = _case.Lessons[lesson];
            if (_eased != Eased.Minutes) Program.AddRow(-WholeRow.Open, at.Slot.Minutes - LessonMinutes.WarmUp, sum);
            if (_halves[lesson].Count == 0 || _eased == Eased.NewCounts) continue;
            var comfortable = Comfortable(at);
            var over = Program.AddColumn(0, (2 * at.MostNew) - comfortable);
            Program.AddCost(over, Crowded);
            Program.AddRow(-WholeRow.Open, comfortable, [.. _halves[lesson], (over, -1)]);
        }
    }

    /// <summary>Where the search begins when nobody was told anything yet.</summary>
    private void Guess(DanceClass who)
    {
        var courses = _case.Courses.Where(c => c.Class == who && _asked(c) != Asked.Not).ToList();
        foreach (var ((course, bite), lesson) in new FirstGuess(_case).Of(who, courses))
        {
            if (!_taught.TryGetValue(course, out var taught)) continue;
            for (var l = 0; l < taught.Open.Count; l++) Program.Hint(taught.Done[taught.Bites.IndexOf(bite), l], taught.Open[l] >= lesson ? 1 : 0);
        }
    }

    /// <summary>What people were told is changed only where it has to be, and a lesson they were told of takes nothing else where it need not.</summary>
    private void StayWithTold()
    {
        foreach (var told in _case.Told)
        {
            if (!_minutes.ContainsKey(told.Lesson)) continue;
            if (told.Bites.Count > 0 && _taught.TryGetValue(told.Course, out var taught) && taught.Open.IndexOf(told.Lesson) is var l and >= 0)
            {
                foreach (var bite in told.Bites)
                {
                    if (taught.Bites.IndexOf(bite) is not (var b and >= 0)) continue;
                    foreach (var (column, times) in Now(taught, b, l)) Program.AddCost(column, -ToldBite * times);
                    for (var at = 0; at < taught.Open.Count; at++) Program.Hint(taught.Done[b, at], at < l ? 0 : 1);
                }
            }
            else if (told.Bites.Count == 0 && _paths.TryGetValue(told.Course, out var paths))
            {
                foreach (var (_, column) in paths.Reviews.Where(r => r.Lesson == told.Lesson)) Program.AddCost(column, -ToldReview);
            }
        }

        foreach (var taught in _taught.Values.Where(t => !t.Course.Progress.Begun))
        {
            var days = _case.Told.Where(t => t.Course == taught.Course.Index && t.Bites.Count > 0).Select(t => _case.Lessons[t.Lesson].Day)
                .Concat(_case.Fallen.Where(f => f.Course == taught.Course.Index && f.Bites.Count > 0).Select(f => f.Day)).ToList();
            var early = days.Count == 0 ? -1 : taught.Open.FindLastIndex(l => _case.Lessons[l].Day < days.Min());
            if (early >= 0) Program.AddCost(taught.Done[0, early], BegunEarly);
        }

        foreach (var taught in _taught.Values)
        {
            var told = taught.Bites.ConvertAll(b => _case.Told.Where(t => t.Course == taught.Course.Index && t.Bites.Contains(b)).Select(t => taught.Open.IndexOf(t.Lesson)).LastOrDefault(-1));
            if (told.Contains(-1)) continue;
            for (var b = 0; b < told.Count; b++)
            {
                for (var l = 0; l < taught.Open.Count; l++) AsTold.Add((taught.Done[b, l], l < told[b] ? 0 : 1));
            }
        }

        var spoken = _case.Told.Select(t => t.Lesson).ToHashSet();
        foreach (var taught in _taught.Values)
        {
            for (var l = 0; l < taught.Open.Count; l++)
            {
                if (!spoken.Contains(taught.Open[l])) continue;
                var said = _case.Told.Any(t => t.Lesson == taught.Open[l] && t.Course == taught.Course.Index && t.Bites.Count > 0);
                // That a dance goes on that the class has begun surprises nobody.
                if (!said && taught.Course.Progress.Begun) continue;
                Program.AddCost(taught.Active[l], said ? -NotTold : NotTold);
            }
        }
    }
}

/// <summary>What is taught and danced again in which lesson of a class.</summary>
internal sealed record ClassPlan(List<(int Lesson, int Course, int Bite)> Bites, List<(int Lesson, int Course)> Reviews);
