namespace Surefoot.Lessons;

/// <summary>A term as the teacher writes it: when there are lessons, what is to be taught in them, and what was reached so far.</summary>
/// <param name="From">The first day on which there may be a lesson, <paramref name="Until"/> the last.</param>
/// <param name="Told">What people were told of evenings to come; planning anew stays with it as far as it can.</param>
public sealed record Term(
    string Title,
    DateOnly From,
    DateOnly Until,
    ValueList<Days> Closed,
    ValueList<Slot> Slots,
    ValueList<DanceWish> Wishes,
    ValueList<KnownDance> Known,
    ValueList<ReachedLesson> Reached,
    ValueList<ToldLesson> Told,
    ValueList<string> Notes)
{
    /// <summary>Every lesson of the term in the order in which they come.</summary>
    public ValueList<Lesson> Lessons() => Lesson.AllOf(this);
}

/// <summary>Days from one to another, both among them.</summary>
public readonly record struct Days(DateOnly From, DateOnly Until)
{
    public bool Have(DateOnly day) => day >= From && day <= Until;
}

/// <summary>A time of the week at which there is a lesson.</summary>
/// <param name="MostNew">New counts for which there is room, where the teacher says it; else what its class usually takes.</param>
public sealed record Slot(DayOfWeek Day, TimeOnly At, int Minutes, DanceClass For, DanceKinds Kinds, int? MostNew, TextSpan Span);

/// <summary>A dance to be taught.</summary>
/// <param name="For">Who learns it, or null where its page's level decides.</param>
/// <param name="By">The last day on which it may be finished, or null where it is taught if there is room.</param>
/// <param name="After">Dances that come before it, by name.</param>
public sealed record DanceWish(string Dance, DanceClass? For, DateOnly? By, ValueList<Named> After, TextSpan NameSpan, TextSpan Span);

/// <summary>A dance that the regulars know.</summary>
/// <param name="Danced">When they last danced it, where the teacher says it.</param>
public sealed record KnownDance(string Dance, DanceClass? For, DateOnly? Danced, TextSpan NameSpan, TextSpan Span);

/// <summary>A name as it stands in the text.</summary>
public readonly record struct Named(string Name, TextSpan Span);

/// <summary>What was reached in a lesson, and how it went.</summary>
public sealed record ReachedLesson(DateOnly Day, TimeOnly? At, ValueList<ReachedDance> Dances, TextSpan Span);

/// <param name="Bites">Bites that were taught, from 1; none for a dance that was only danced again.</param>
/// <param name="Quality">How it went, from 0 to 5 as SM-2 has it; 4 where nothing is said.</param>
public sealed record ReachedDance(string Dance, ValueList<int> Bites, int Quality, TextSpan NameSpan, TextSpan Span);

/// <summary>What people were told of a lesson to come.</summary>
public sealed record ToldLesson(DateOnly Day, TimeOnly? At, ValueList<ToldDance> Dances, TextSpan Span)
{
    /// <summary>When it was to be as people were told first, where it was moved since: the lesson in their calendars is that one.</summary>
    public DateTime? ToldFirst { get; init; }

    /// <summary>For whom there is no lesson then, where people had been told of one and were told since that it falls away.</summary>
    public DanceClass? FallsAwayFor { get; init; }
}

/// <param name="Bites">Bites that will be taught, from 1; none for a dance that will be danced again.</param>
public sealed record ToldDance(string Dance, ValueList<int> Bites, TextSpan NameSpan, TextSpan Span);
