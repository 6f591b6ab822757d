using Surefoot.Lessons.Reviewing;

namespace Surefoot.Lessons.Planning;

/// <summary>Follows what was reached from lesson to lesson.</summary>
internal static class ProgressMaker
{
    /// <summary>A bite that did not go well enough to pass is taught again; a finished dance's mark goes into its reviews.</summary>
    public static Progress Of(Course course, ValueList<Lesson> lessons, ValueList<ReachedCourse> reached)
    {
        var (done, begun, review, last) = (course.Progress.Done.ToArray(), course.Progress.Begun, course.Progress.Review, course.Progress.Last);
        foreach (var one in reached)
        {
            if (one.Course != course.Index) continue;
            var day = lessons[one.Lesson].Day;
            if (review is { } stands)
            {
                (review, last) = (stands.After(one.Quality), day);
                continue;
            }

            if (one.Bites.Count == 0) continue;
            begun = true;
            foreach (var bite in one.Bites) done[bite] = one.Quality >= Sm2.Passed;
            if (Array.TrueForAll(done, d => d)) (review, last) = (Sm2.New.After(one.Quality), day);
        }

        return new(done.ToValueList(), begun, review, last);
    }
}
