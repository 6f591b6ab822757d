using Surefoot.Dance.Problems;
using Surefoot.Lessons.Text;

namespace Surefoot.Lessons.Planning;

/// <summary>A term together with the dances it speaks of: all there is to plan.</summary>
/// <param name="Past">For each lesson whether it is over: everything up to the last lesson in which its class reached something.</param>
/// <param name="Told">What people were told of lessons to come.</param>
/// <param name="Fallen">What they were told of lessons that are not there any more.</param>
/// <param name="Missed">What they were told of lessons that are over and that was not reached in them, or since.</param>
/// <param name="Problems">Those of the text, and what turned up when dances and lessons were looked for.</param>
public sealed record TermCase(
    Term Term,
    ValueList<Lesson> Lessons,
    ValueList<bool> Past,
    ValueList<Course> Courses,
    ValueList<ReachedCourse> Reached,
    ValueList<ToldCourse> Told,
    ValueList<ToldCourse> Missed,
    ValueList<FallenCourse> Fallen,
    ValueList<Problem> Problems)
{
    /// <param name="dances">The dances there are pages of; those the term does not speak of are left alone.</param>
    /// <returns>Null where the text does not say when the term is.</returns>
    public static TermCase? Of(TermPage page, IReadOnlyList<TermDance> dances) => page.Term is { } term ? new CaseMaker(page, term, dances).Make() : null;

    /// <summary>Classes in the order of their levels.</summary>
    public IEnumerable<DanceClass> Classes => Term.Slots.Select(s => s.For).Distinct().Order();

    /// <summary>The lessons that are over, the last first.</summary>
    public IEnumerable<Lesson> Over => Lessons.Where(l => Past[l.Index]).OrderByDescending(l => l.Index);

    /// <summary>For each class the lesson that was ticked last: only that one can be taken back without leaving a gap.</summary>
    public IEnumerable<Lesson> LastReached => Over.GroupBy(l => l.Slot.For).Select(g => g.First());

    public bool HasErrors => Problems.Any(p => p.Severity == Severity.Error);
}

/// <summary>What a lesson brought for one course.</summary>
/// <param name="Bites">From 0; none where it was danced again.</param>
public sealed record ReachedCourse(int Lesson, int Course, ValueList<int> Bites, int Quality);

/// <summary>What people were told of a course for a lesson.</summary>
public sealed record ToldCourse(int Lesson, int Course, ValueList<int> Bites);

/// <summary>What people were told of a course for a lesson that is not there any more.</summary>
public sealed record FallenCourse(DateOnly Day, int Course, ValueList<int> Bites);
