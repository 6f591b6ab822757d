using Surefoot.Lessons.Reviewing;

namespace Surefoot.Lessons.Planning;

/// <summary>Makes of what is taught and danced again when a plan with its minutes, its order and its reasons.</summary>
internal sealed class PlanWriter
{
    private readonly TermCase _term;
    private readonly List<(int Lesson, int Course, int Bite)> _bites;
    private readonly List<(int Lesson, int Course)> _reviews;
    private readonly Reasons _reasons;
    private readonly SpareTime _spare;

    public PlanWriter(TermCase term, List<(int Lesson, int Course, int Bite)> bites, List<(int Lesson, int Course)> reviews)
    {
        _term = term;
        _bites = [.. bites.OrderBy(b => b.Lesson).ThenBy(b => b.Course).ThenBy(b => b.Bite)];
        _reviews = [.. reviews.OrderBy(r => r.Lesson).ThenBy(r => r.Course)];
        _reasons = new(term, _bites, _reviews);
        _spare = new(term, _bites, _reviews);
    }

    public TermPlan Write(ValueList<Collision> collisions, bool best)
    {
        var lessons = _term.Lessons.Where(l => !_term.Past[l.Index]).Select(Lesson).ToValueList();
        var planned = _bites.Select(b => b.Course).ToHashSet();
        var left = _term.Courses
            .Where(c => !c.Finished && !planned.Contains(c.Index) && !collisions.Any(x => x.GivenUp == c.Index))
            .Select(c => new LeftOut(c.Index)).ToValueList();
        return new(_term, lessons, collisions, left, new Changes(_term, _bites, _reviews).All(), best);
    }

    private LessonPlan Lesson(Lesson lesson)
    {
        var items = new List<LessonItem>();
        var at = 0;
        Add(ItemKind.WarmUp, LessonMinutes.WarmUp, null, null, "");
        foreach (var (_, course) in _reviews.Where(r => r.Lesson == lesson.Index)) Add(ItemKind.Review, LessonMinutes.Review, course, null, _reasons.Review(lesson, course));
        foreach (var dance in _bites.Where(b => b.Lesson == lesson.Index).GroupBy(b => b.Course)) Teach(dance.Key, [.. dance.Select(b => b.Bite)]);
        foreach (var (kind, minutes, course, reason) in _spare.Fill(lesson, lesson.Slot.Minutes - at)) Add(kind, minutes, course, null, reason);
        if (lesson.Slot.Minutes > at) Add(ItemKind.Spare, lesson.Slot.Minutes - at, null, null, "");
        return new(lesson, items.ToValueList()) { NewHalfCounts = _bites.Where(b => b.Lesson == lesson.Index).Sum(b => LessonMinutes.HalfCounts(_term.Courses[b.Course].Bites[b.Bite])) };

        void Teach(int index, List<int> bites)
        {
            var course = _term.Courses[index];
            var first = !course.Progress.Begun && !_bites.Exists(b => b.Course == index && b.Lesson < lesson.Index);
            var goesOn = _bites.Exists(b => b.Course == index && b.Lesson > lesson.Index);
            if (first) Add(ItemKind.Show, LessonMinutes.Show, index, null, _reasons.Begun(lesson, course));
            else Add(ItemKind.Recap, LessonMinutes.Recap, index, null, _reasons.GoesOn(lesson, course));
            foreach (var bite in bites) Add(ItemKind.Teach, course.Minutes[bite], index, bite, _reasons.Bite(course, bite));
            if (!goesOn) Add(ItemKind.ToMusic, LessonMinutes.ToMusic, index, null, Reasons.Finished(lesson, course));
        }

        void Add(ItemKind kind, int minutes, int? course, int? bite, string reason)
        {
            items.Add(new(kind, at, minutes, course, bite, reason));
            at += minutes;
        }
    }
}
