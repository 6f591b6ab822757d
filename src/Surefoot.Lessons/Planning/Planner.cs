namespace Surefoot.Lessons.Planning;

/// <summary>Plans a term, class by class. The same term gives the same plan on every run.</summary>
/// <param name="effort">How much of the usual work is spent on making the plan better; it keeps everything it has to with any.</param>
public sealed class Planner(IWholeSolver solver, double effort = 1)
{
    /// <summary>
    /// Work that is spent on a plan, shared between the classes: about two seconds for each unit. Where people were told a
    /// plan the search begins there and needs less. Questions whether something can be at all are answered sooner.
    /// </summary>
    private const double PlanWork = 1.0, AnewWork = 0.15, QuestionWork = 0.2;

    /// <summary>Least work in which a first plan is looked for, and most.</summary>
    private const double LeastWork = 0.03, MostWork = 3;

    public TermPlan Plan(TermCase term)
    {
        var (bites, reviews) = (new List<(int Lesson, int Course, int Bite)>(), new List<(int Lesson, int Course)>());
        var collisions = new List<Collision>();
        var best = true;
        var work = effort * (term.Told.Count > 0 ? AnewWork : PlanWork) / Math.Max(1, term.Classes.Count());
        foreach (var who in term.Classes)
        {
            var (plan, clashes, proven) = Plan(term, who, work);
            bites.AddRange(plan.Bites);
            reviews.AddRange(plan.Reviews);
            collisions.AddRange(clashes);
            best &= proven;
        }

        reviews = new DueReviews(term, bites, reviews).BroughtForward();
        bites = new EvenBites(term, bites, reviews).Evened();
        return new PlanWriter(term, bites, reviews).Write(collisions.ToValueList(), best);
    }

    private (ClassPlan Plan, List<Collision> Collisions, bool Best) Plan(TermCase term, DanceClass who, double work)
    {
        var firm = new ClassProgram(term, who, _ => Asked.Firmly);
        if (firm.Program.Columns == 0) return (new([], []), [], true);
        var solution = Solved(firm, work);
        if (solution.Found) return (firm.Read(solution), [], solution.Outcome == Outcome.Best);

        // Something has to give: as little as possible.
        var soft = new ClassProgram(term, who, _ => Asked.IfAtAll);
        solution = Solved(soft, work);
        if (!solution.Found) return (new([], []), [], false);
        var plan = soft.Read(solution);
        var kept = term.Courses.Where(c => c.Class == who && IsDemand(c) && IsKept(term, c, plan)).ToList();
        var collisions = new List<Collision>();
        foreach (var course in term.Courses.Where(c => c.Class == who && IsDemand(c) && !kept.Contains(c)))
        {
            collisions.Add(new Clash(solver, term, who, QuestionWork).Of(course, kept, Finished(term, course, plan)));
        }

        return (plan, collisions, solution.Outcome == Outcome.Best);
    }

    /// <summary>A third of the work finds a plan, the rest makes it better. Where it finds none, more is spent: a plan that is not quite as good is better than none.</summary>
    private WholeSolution Solved(ClassProgram asked, double work)
    {
        // As told, where that can still be: what has to move is then found beside it.
        var first = asked.AsTold.Count == 0 ? new(Outcome.Unknown, []) : Told(solver.Solve(asked.Program.Holding(asked.AsTold), QuestionWork));
        if (!first.Found) first = solver.Solve(asked.Program, Math.Max(work / 3, LeastWork));
        if (first.Outcome == Outcome.Unknown) first = solver.Solve(asked.Program, MostWork);
        return new Polishing(solver).Polish(asked, first, work * 2 / 3);

        // The best as told need not be the best.
        static WholeSolution Told(WholeSolution found) => found.Found ? found with { Outcome = Outcome.Good } : new(Outcome.Unknown, []);
    }

    /// <summary>True for what has to be: a dance with a wish date, and the reviews of one that was danced on a known day.</summary>
    internal static bool IsDemand(Course course) => course.Finished ? course.Progress.Last is not null : course.By is not null;

    private static bool IsKept(TermCase term, Course course, ClassPlan plan)
    {
        if (!course.Finished) return Finished(term, course, plan) is { } day && day <= course.By;
        var open = course.Lessons.Where(l => !term.Past[l]).ToList();
        return plan.Reviews.Exists(r => r.Course == course.Index) || ReviewPaths.Due(term.Lessons, open, course.Progress.Last!.Value, course.Progress.Review!.Value.Interval).Count == 0;
    }

    private static DateOnly? Finished(TermCase term, Course course, ClassPlan plan)
    {
        if (course.Finished) return null;
        var lessons = plan.Bites.Where(b => b.Course == course.Index).Select(b => b.Lesson).ToList();
        return lessons.Count == 0 ? null : term.Lessons[lessons.Max()].Day;
    }
}
