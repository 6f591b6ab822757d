namespace Surefoot.Lessons.Planning;

/// <summary>What the lessons of a plan take, before what is left of them is filled: minutes, and new counts in halves.</summary>
internal sealed class LessonLoad
{
    private readonly TermCase _term;
    private readonly Dictionary<int, int> _minutes = [];
    private readonly Dictionary<int, int> _halves = [];

    public LessonLoad(TermCase term, IReadOnlyCollection<(int Lesson, int Course, int Bite)> bites, IReadOnlyCollection<(int Lesson, int Course)> reviews)
    {
        _term = term;
        foreach (var (lesson, _) in reviews) Take(lesson, LessonMinutes.Review, 0);
        foreach (var (lesson, course, bite) in bites) Take(lesson, term.Courses[course].Minutes[bite], LessonMinutes.HalfCounts(term.Courses[course].Bites[bite]));
        foreach (var dance in bites.GroupBy(b => b.Course))
        {
            var at = dance.Select(b => b.Lesson).Distinct().Order().ToList();
            for (var i = 0; i < at.Count; i++) Take(at[i], i == 0 && !term.Courses[dance.Key].Progress.Begun ? LessonMinutes.Show : LessonMinutes.Recap, 0);
            Take(at[^1], LessonMinutes.ToMusic, 0);
        }
    }

    /// <summary>Minutes that are left of a lesson.</summary>
    public int Free(int lesson) => _term.Lessons[lesson].Slot.Minutes - LessonMinutes.WarmUp - _minutes.GetValueOrDefault(lesson);

    /// <summary>New counts of a lesson, in halves.</summary>
    public int Halves(int lesson) => _halves.GetValueOrDefault(lesson);

    /// <summary>Takes of a lesson, or gives back what is below nothing.</summary>
    public void Take(int lesson, int minutes, int halves)
    {
        _minutes[lesson] = _minutes.GetValueOrDefault(lesson) + minutes;
        _halves[lesson] = _halves.GetValueOrDefault(lesson) + halves;
    }
}
