using Surefoot.Lessons.Reviewing;
using Surefoot.Lessons.Text;

namespace Surefoot.Lessons.Planning;

/// <summary>A lesson that is over as what was done in it, from what was ticked. Its minutes are the usual ones: nobody wrote down the real ones.</summary>
public static class DoneLesson
{
    /// <returns>Nothing but the warm-up where nothing was ticked.</returns>
    public static LessonPlan Of(TermCase term, Lesson lesson)
    {
        var items = new List<LessonItem>();
        var at = 0;
        Add(ItemKind.WarmUp, LessonMinutes.WarmUp, null, null, "");
        var reached = term.Reached.Where(r => r.Lesson == lesson.Index).ToList();
        foreach (var again in reached.Where(r => r.Bites.Count == 0)) Add(ItemKind.Review, LessonMinutes.Review, again.Course, null, Went(again));
        foreach (var dance in reached.Where(r => r.Bites.Count > 0).GroupBy(r => r.Course))
        {
            var course = term.Courses[dance.Key];
            var begun = term.Reached.Any(r => r.Course == course.Index && r.Bites.Count > 0 && r.Lesson < lesson.Index);
            if (begun) Add(ItemKind.Recap, LessonMinutes.Recap, course.Index, null, "");
            else Add(ItemKind.Show, LessonMinutes.Show, course.Index, null, "");
            foreach (var one in dance)
            {
                foreach (var bite in one.Bites) Add(ItemKind.Teach, course.Minutes[bite], course.Index, bite, Went(one));
            }

            if (!All(term, course, lesson.Index - 1) && All(term, course, lesson.Index)) Add(ItemKind.ToMusic, LessonMinutes.ToMusic, course.Index, null, "The dance was finished.");
        }

        return new(lesson, items.ToValueList())
        {
            NewHalfCounts = items.Where(i => i.Bite is not null).Sum(i => LessonMinutes.HalfCounts(term.Courses[i.Course!.Value].Bites[i.Bite!.Value])),
        };

        void Add(ItemKind kind, int minutes, int? course, int? bite, string reason)
        {
            items.Add(new(kind, at, minutes, course, bite, reason));
            at += minutes;
        }
    }

    /// <summary>Which bites of a course a class had by the end of a lesson that is over.</summary>
    public static IEnumerable<int> Had(TermCase term, Course course, int lesson) => Enumerable.Range(0, course.Bites.Count)
        .Where(b => course.KnownBefore || term.Reached.LastOrDefault(r => r.Course == course.Index && r.Lesson <= lesson && r.Bites.Contains(b))?.Quality >= Sm2.Passed);

    private static bool All(TermCase term, Course course, int lesson) => Had(term, course, lesson).Count() == course.Bites.Count;

    private static string Went(ReachedCourse reached) => $"It went {DoneLines.Mark(reached.Quality)}.";
}
