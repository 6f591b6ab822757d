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
            // Where the search is given up it counts as possible, so that no wish is blamed without proof.
            if (Tried([givenUp, .. rest], Eased.Nothing) == Outcome.Impossible) with = rest;
        }

        Course[] all = [givenUp, .. with];
        return new(givenUp.Index, [.. with.Select(c => c.Index)], instead, new ClashReason(term, Needed(all), [.. all.Select(c => c.Index)], eased => Tried(all, eased) is Outcome.Best or Outcome.Good).Says());
    }

    private Outcome Tried(IReadOnlyList<Course> wishes, Eased eased)
    {
        var firmly = wishes.Select(c => c.Index).ToHashSet();
        var needed = Needed(wishes).Select(c => c.Index).ToHashSet();
        // What only comes before a wish is taught in time for it, whatever day it was wished by itself.
        var program = new ClassProgram(term, who, c => firmly.Contains(c.Index) ? Asked.Firmly : needed.Contains(c.Index) ? Asked.IfAtAll : Asked.Not, eased).WithoutCosts();
        return solver.Solve(program.Program, work).Outcome;
    }

    /// <summary>Wishes, with what each needs before it, which is part of it.</summary>
    private List<Course> Needed(IReadOnlyList<Course> wishes)
    {
        var all = wishes.Select(w => w.Index).ToHashSet();
        foreach (var wish in wishes) AddBefore(wish, all);
        return [.. all.Order().Select(i => term.Courses[i])];
    }

    private void AddBefore(Course course, HashSet<int> all)
    {
        foreach (var before in course.After)
        {
            if (!term.Courses[before].Finished && all.Add(before)) AddBefore(term.Courses[before], all);
        }
    }
}
