using System.Globalization;

namespace Surefoot.Lessons.Text;

/// <summary>Reads days as they are written: "12 January 2027", "January 12", "12 Jan", "2027-01-12", each also with its weekday in front.</summary>
internal static class DateReader
{
    private static readonly string[] Months =
        [.. CultureInfo.InvariantCulture.DateTimeFormat.MonthNames.Take(12).Select(m => m.ToLowerInvariant())];

    /// <param name="Weekday">The weekday that stands in front, or null.</param>
    internal readonly record struct Read(DateOnly Day, DayOfWeek? Weekday)
    {
        /// <summary>True where the weekday in front is another than the day's.</summary>
        public bool Contradicts => Weekday is { } said && said != Day.DayOfWeek;
    }

    /// <param name="near">A day without a year is the first on or after this one; null where the year has to be said.</param>
    /// <param name="before">True to take the last one before it instead.</param>
    public static Read? Of(string words, DateOnly? near, bool before = false)
    {
        var parts = words.Split([' ', ',', '.', '\u00A0'], StringSplitOptions.RemoveEmptyEntries).ToList();
        DayOfWeek? weekday = null;
        if (parts.Count > 1 && Weekday(parts[0]) is { } named)
        {
            weekday = named;
            parts.RemoveAt(0);
        }

        if (parts is [var iso] && DateOnly.TryParseExact(iso, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var whole)) return new(whole, weekday);
        if (parts.Count is not (2 or 3)) return null;
        var (day, month) = (Day(parts[0]), Month(parts[1]));
        if (day is null || month is null) (month, day) = (Month(parts[0]), Day(parts[1]));
        if (day is null || month is null) return null;
        if (parts.Count == 3) return Year(parts[2]) is { } year && Made(year, month.Value, day.Value) is { } dated ? new(dated, weekday) : null;
        return near is { } at && Nearest(at, month.Value, day.Value, before) is { } found ? new(found, weekday) : null;
    }

    public static DayOfWeek? Weekday(string word)
    {
        var said = word.Trim().TrimEnd('.').ToLowerInvariant();
        if (said.Length < 2) return null;
        for (var day = DayOfWeek.Sunday; day <= DayOfWeek.Saturday; day++)
        {
            var name = day.ToString().ToLowerInvariant();
            if (said == name || said == name + "s" || (said.Length is >= 3 and <= 5 && name.StartsWith(said, StringComparison.Ordinal))) return day;
        }

        return null;
    }

    private static DateOnly? Nearest(DateOnly near, int month, int day, bool before)
    {
        // Eight years find even a 29 February.
        for (var away = 0; away <= 8; away++)
        {
            var year = near.Year + (before ? -away : away);
            if (Made(year, month, day) is { } found && (before ? found < near : found >= near)) return found;
        }

        return null;
    }

    private static DateOnly? Made(int year, int month, int day) =>
        year is >= 1900 and <= 9000 && day <= DateTime.DaysInMonth(year, month) ? new DateOnly(year, month, day) : null;

    private static int? Day(string word)
    {
        var digits = word.ToLowerInvariant();
        foreach (var ending in (string[])["st", "nd", "rd", "th"])
        {
            if (digits.EndsWith(ending, StringComparison.Ordinal)) digits = digits[..^2];
        }

        return int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var day) && day is >= 1 and <= 31 ? day : null;
    }

    private static int? Year(string word) => int.TryParse(word, NumberStyles.None, CultureInfo.InvariantCulture, out var year) && word.Length == 4 ? year : null;

    private static int? Month(string word)
    {
        var said = word.ToLowerInvariant();
        if (said.Length < 3) return null;
        var at = Array.FindIndex(Months, m => m.StartsWith(said, StringComparison.Ordinal));
        if (at < 0 && said == "sept") at = 8;
        return at < 0 ? null : at + 1;
    }
}
