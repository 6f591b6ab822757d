using System.Globalization;

namespace Surefoot.Lessons.Planning;

/// <summary>
/// A lesson as people were told of it, and have it in their calendars, with what became of it: it is there, at the same time or at
/// another, or it falls away.
/// </summary>
/// <param name="Begin">When it was to be as people were told first.</param>
/// <param name="Now">The lesson it is now; null where there is none.</param>
public sealed record HandedOut(DateTime Begin, DanceClass For, Lesson? Now)
{
    /// <summary>It is there, on another day or at another hour.</summary>
    public bool Moved => Now is { } lesson && lesson.Begin != Begin;

    /// <summary>Every lesson that the lines under "Told" name, in the order in which they were to come.</summary>
    public static List<HandedOut> Of(TermCase term)
    {
        var all = new List<HandedOut>();
        var open = new List<(DateTime Begin, DateTime Said, DanceClass For)>();
        foreach (var line in term.Term.Told)
        {
            if (Hour(term.Term, line) is not { } at || ClassOf(term, line, at) is not { } who) continue;
            var said = line.Day.ToDateTime(at);
            var begin = line.ToldFirst ?? said;
            if (all.Exists(h => h.Begin == begin && h.For == who) || open.Exists(o => o.Begin == begin && o.For == who)) continue;
            if (term.Lessons.FirstOrDefault(l => l.Slot.For == who && l.Begin == said) is { } same) all.Add(new(begin, who, same));
            else open.Add((begin, said, who));
        }

        // Those that are there as they were told are found first; what is left was moved into the same week, or falls away.
        foreach (var (begin, said, who) in open)
        {
            var moved = term.Lessons.Where(l => l.Slot.For == who && Week(l.Begin) == Week(said) && !all.Exists(h => h.Now == l)).MinBy(l => (l.Begin - said).Duration());
            all.Add(new(begin, who, moved));
        }

        return [.. all.OrderBy(h => h.Begin).ThenBy(h => h.For)];
    }

    /// <summary>The evening it was, as far as the term still has it, or has another of the same class.</summary>
    public Slot? SlotIn(Term term) => term.Slots.Where(s => s.For == For).OrderByDescending(s => s.Day == Begin.DayOfWeek).ThenByDescending(s => s.At == TimeOnly.FromDateTime(Begin)).FirstOrDefault();

    private static (int Year, int Week) Week(DateTime day) => (ISOWeek.GetYear(day), ISOWeek.GetWeekOfYear(day));

    /// <summary>Whoever writes the line by hand may leave out the hour where the day has one evening.</summary>
    private static TimeOnly? Hour(Term term, ToldLesson line) => line.At ?? (term.Slots.Where(s => s.Day == line.Day.DayOfWeek).Select(s => s.At).Distinct().ToList() is [var only] ? only : null);

    /// <summary>For whom it was: as it is said; else the class of that evening; else the only one that learns what was told, then or in other weeks. Null where nobody can say.</summary>
    private static DanceClass? ClassOf(TermCase term, ToldLesson line, TimeOnly at)
    {
        if (line.FallsAwayFor is { } said) return said;
        if (Only(term.Term.Slots.Where(s => s.Day == line.Day.DayOfWeek && s.At == at).Select(s => s.For)) is { } evening) return evening;
        // Of an evening that is not in the term any more the other weeks say it, where this one has nothing planned.
        return Only(Learn(term, line))
            ?? Only(term.Term.Told.Where(t => t.Day.DayOfWeek == line.Day.DayOfWeek && t.At == line.At).SelectMany(t => Learn(term, t)))
            ?? Only(term.Term.Slots.Select(s => s.For));
    }

    /// <summary>The classes that learn what was told, where that is one for a dance.</summary>
    private static IEnumerable<DanceClass> Learn(TermCase term, ToldLesson line) => line.Dances
        .Select(d => Only(term.Courses.Where(c => c.Dance.Names.Any(n => n.Equals(d.Dance, StringComparison.OrdinalIgnoreCase))).Select(c => c.Class))).OfType<DanceClass>();

    private static DanceClass? Only(IEnumerable<DanceClass> classes) => classes.Distinct().ToList() is [var one] ? one : null;
}
