using System.Globalization;

namespace Surefoot.Lessons;

/// <summary>One lesson: a slot of the week on a day of the term.</summary>
/// <param name="Index">Its place among all lessons of the term.</param>
public sealed record Lesson(int Index, DateOnly Day, Slot Slot)
{
    public TimeOnly At => Slot.At;

    public DateTime Begin => Day.ToDateTime(At);

    /// <summary>New counts for which it has room.</summary>
    public int MostNew => Slot.MostNew ?? Slot.For.MostNew;

    internal static ValueList<Lesson> AllOf(Term term)
    {
        var lessons = new List<Lesson>();
        var slots = term.Slots.OrderBy(s => s.At).ToList();
        for (var day = term.From; day <= term.Until; day = day.AddDays(1))
        {
            var today = day;
            if (term.Closed.Any(c => c.Have(today))) continue;
            foreach (var slot in slots)
            {
                if (slot.Day == day.DayOfWeek) lessons.Add(new(lessons.Count, day, slot));
            }

            if (day == DateOnly.MaxValue) break;
        }

        return lessons.ToValueList();
    }
}

/// <summary>Days and times as they are said and written.</summary>
public static class DayWords
{
    /// <summary>"19 January 2027".</summary>
    public static string Full(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"19 January".</summary>
    public static string Short(DateOnly day) => day.ToString("d MMMM", CultureInfo.InvariantCulture);

    /// <summary>"Tuesday 19 January".</summary>
    public static string Weekday(DateOnly day) => day.ToString("dddd d MMMM", CultureInfo.InvariantCulture);

    /// <summary>"19:00".</summary>
    public static string Time(TimeOnly at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);
}
