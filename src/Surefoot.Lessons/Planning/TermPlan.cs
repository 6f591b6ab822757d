namespace Surefoot.Lessons.Planning;

/// <summary>A term planned: every lesson that is to come, what could not be kept, and what was told otherwise.</summary>
/// <param name="Best">True where it is proven that no plan keeps the wishes better; false where the search was ended before.</param>
public sealed record TermPlan(
    TermCase Case, ValueList<LessonPlan> Lessons, ValueList<Collision> Collisions, ValueList<LeftOut> LeftOut, ValueList<Change> Changes, bool Best)
{
    /// <summary>The lessons of a day: those to come as they are planned, those that are over as what was done.</summary>
    public List<LessonPlan> On(DateOnly day) => [.. Case.Lessons.Where(l => l.Day == day).Select(l => Of(l) ?? DoneLesson.Of(Case, l))];

    public LessonPlan? Of(Lesson lesson) => Lessons.FirstOrDefault(l => l.Lesson == lesson);
}

/// <param name="Items">In the order in which they are danced; their minutes together are the lesson's.</param>
public sealed record LessonPlan(Lesson Lesson, ValueList<LessonItem> Items)
{
    /// <summary>New counts, those from the other foot counted half.</summary>
    public int NewHalfCounts { get; init; }
}

public enum ItemKind
{
    WarmUp,

    /// <summary>A finished dance, danced again.</summary>
    Review,

    /// <summary>A dance that is begun, shown once to music.</summary>
    Show,

    /// <summary>What the class has of a dance that goes on.</summary>
    Recap,

    /// <summary>A bite.</summary>
    Teach,

    /// <summary>A dance that is finished, to music.</summary>
    ToMusic,

    /// <summary>What was learned in this lesson, once more.</summary>
    OnceMore,

    /// <summary>What the class has of a dance, danced because there is time; no review.</summary>
    Practice,

    /// <summary>Time that is left.</summary>
    Spare,
}

/// <param name="At">Minutes after the lesson's begin.</param>
/// <param name="Course">Index of the course, or null where it is about none.</param>
/// <param name="Bite">Which bite is taught, from 0; null otherwise.</param>
/// <param name="Reason">Why it is here, as a sentence; empty where it needs none.</param>
public sealed record LessonItem(ItemKind Kind, int At, int Minutes, int? Course, int? Bite, string Reason);

/// <summary>Wishes that cannot all be kept; without any one of them the others can.</summary>
/// <param name="GivenUp">The course whose wish the plan gives up.</param>
/// <param name="With">The others. Empty where the wish cannot be kept even by itself.</param>
/// <param name="Instead">A day by which the one given up is finished in this plan, or null.</param>
/// <param name="Why">The figures: how much there is to do, and for how much there is room.</param>
public sealed record Collision(int GivenUp, ValueList<int> With, DateOnly? Instead, string Why);

/// <summary>A course without a wish date for which there is no room.</summary>
public sealed record LeftOut(int Course);

/// <summary>Something people were told that is now otherwise.</summary>
/// <param name="Bites">Bites, from 0, that move; none where a dance is danced again.</param>
/// <param name="Day">The day it was told for; of what comes in that was not told, the day on which it is now.</param>
/// <param name="To">The lesson in which it is now; null where it is nowhere.</param>
public sealed record Change(int Course, ValueList<int> Bites, DateOnly Day, int? To, ChangeCause Cause);

/// <summary>Why something is not as it was told.</summary>
public enum ChangeCause
{
    /// <summary>The plan is better so.</summary>
    Moved,

    /// <summary>The lesson is over and did not bring it.</summary>
    NotReached,

    /// <summary>The day is closed now.</summary>
    Closed,

    /// <summary>The evening is not in the term any more.</summary>
    NoLesson,

    /// <summary>Nobody was told; it comes in now.</summary>
    ComesIn,

    /// <summary>Nobody was told; it was taught and did not stay.</summary>
    TaughtAgain,
}
