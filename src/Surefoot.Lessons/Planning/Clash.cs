namespace Surefoot.Lessons.Planning;

/// <summary>Finds a smallest set of wishes that collide with one: each is taken away in turn, and stays away where the rest still cannot be.</summary>
internal sealed class Clash(IWholeSolver solver, TermCase term, DanceClass who, double work)
{
    public Collision Of(Course givenUp, IReadOnlyList<Course> kept, DateOnly? instead)
    {
        var with = kept.ToList();
        // What is wished last is taken away last: it is the likeliest to be talked about.
        foreach (var one in kept)
        {
            var rest = with.Where(c => c != one).ToList();
            if (!Possible([givenUp, .. rest])) with = rest;
        }

        return new(givenUp.Index, [.. with.Select(c => c.Index)], instead, Why([givenUp, .. with]));
    }

    /// <summary>Whether all of some wishes can be kept. Where the search is given up it counts as possible, so that no wish is blamed without proof.</summary>
    private bool Possible(IReadOnlyList<Course> wishes)
    {
        var firmly = wishes.Select(w => w.Index).ToHashSet();
        // What a wish needs before it is part of it.
        foreach (var wish in wishes) AddBefore(wish, firmly);
        var program = new ClassProgram(term, who, c => firmly.Contains(c.Index) ? Asked.Firmly : Asked.Not).WithoutCosts();
        return solver.Solve(program.Program, work).Outcome != Outcome.Impossible;
    }

    private void AddBefore(Course course, HashSet<int> all)
    {
        foreach (var before in course.After)
        {
            if (!term.Courses[before].Finished && all.Add(before)) AddBefore(term.Courses[before], all);
        }
    }

    private string Why(IReadOnlyList<Course> wishes)
    {
        var all = wishes.Select(w => w.Index).ToHashSet();
        foreach (var wish in wishes) AddBefore(wish, all);
        var courses = all.Order().Select(i => term.Courses[i]).ToList();
        var taught = courses.Where(c => !c.Finished).ToList();
        var days = taught.Where(c => c.By is not null).Select(c => c.By!.Value).ToList();
        var until = days.Count > 0 ? days.Max() : term.Term.Until;
        var lessons = term.Lessons.Where(l => l.Day <= until && !term.Past[l.Index] && courses.Exists(c => c.Lessons.Contains(l.Index))).ToList();
        var counts = taught.Sum(c => c.Bites.Where((_, b) => !c.Progress.Done[b]).Sum(b => b.New));
        var minutes = taught.Sum(c => c.Minutes.Where((_, b) => !c.Progress.Done[b]).Sum() + LessonMinutes.ToMusic + (c.Progress.Begun ? 0 : LessonMinutes.Show));
        var again = courses.Count(c => c.Finished);
        return $"{(taught.Count == 1 ? "It has" : "Together they have")} {counts} new counts to learn and take at least {minutes} minutes{(again > 0 ? $" besides {again} dance{(again == 1 ? "" : "s")} to be danced again" : "")}; until {DayWords.Full(until)} there {Lessons(lessons.Count)} for them, with room for {lessons.Sum(l => l.MostNew)} new counts and {lessons.Sum(l => l.Slot.Minutes - LessonMinutes.WarmUp)} minutes, reviews of what was finished included.";
    }

    private static string Lessons(int count) => count == 1 ? "is one lesson" : $"are {(count == 0 ? "no" : $"{count}")} lessons";
}
