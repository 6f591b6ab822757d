using System.Globalization;
using System.Text;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Calendar;

/// <summary>
/// The term as an iCalendar file (RFC 5545), one event for each lesson, those that are over as what was done. Times are local times without a
/// zone (form 1 of section 3.3.5): a lesson is at seven where the hall is.
/// </summary>
public static class CalendarFile
{
    /// <summary>Octets of a line without its end; section 3.1.</summary>
    private const int Longest = 75;

    /// <param name="stamp">When the file is made; section 3.8.7.2 wants it in every event.</param>
    /// <param name="says">What a lesson's event says of it, in a sentence or two.</param>
    public static string Write(TermPlan plan, DateTime stamp, Func<LessonPlan, string> says)
    {
        var text = new StringBuilder();
        var title = plan.Case.Term.Title;
        Line(text, "BEGIN:VCALENDAR");
        Line(text, "VERSION:2.0");
        Line(text, "PRODID:-//Surefoot//Term//EN");
        Line(text, "CALSCALE:GREGORIAN");
        Line(text, "METHOD:PUBLISH");
        foreach (var lesson in plan.Case.Lessons.Select(l => plan.Of(l) ?? DoneLesson.Of(plan.Case, l)))
        {
            var at = lesson.Lesson;
            var begin = at.Day.ToDateTime(at.At);
            Line(text, "BEGIN:VEVENT");
            Line(text, $"UID:{begin.ToString("yyyyMMdd'T'HHmm", CultureInfo.InvariantCulture)}-{Name(at.Slot.For.Words)}-{Name(title)}@surefoot.invalid");
            Line(text, $"DTSTAMP:{stamp.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}");
            Line(text, $"SEQUENCE:{Sequence(stamp)}");
            Line(text, $"DTSTART:{Local(begin)}");
            Line(text, $"DTEND:{Local(begin.AddMinutes(at.Slot.Minutes))}");
            Line(text, $"SUMMARY:{Escaped($"{char.ToUpperInvariant(at.Slot.For.Words[0])}{at.Slot.For.Words[1..]}, {at.Slot.Kinds.Words()}")}");
            if (says(lesson) is { Length: > 0 } words) Line(text, $"DESCRIPTION:{Escaped(words)}");
            if (title.Length > 0) Line(text, $"CATEGORIES:{Escaped(title)}");
            Line(text, "END:VEVENT");
        }

        Line(text, "END:VCALENDAR");
        return text.ToString();
    }

    /// <summary>Section 3.8.7.4: a later file of the same lesson has a higher number, so that a calendar takes what it says in place of what it has. Minutes since 2020.</summary>
    private static int Sequence(DateTime stamp) => Math.Max(0, (int)Math.Min(int.MaxValue, (stamp - new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc)).TotalMinutes));

    private static string Local(DateTime at) => at.ToString("yyyyMMdd'T'HHmmss", CultureInfo.InvariantCulture);

    /// <summary>Section 3.3.11: backslash, semicolon, comma and the end of a line have a backslash before them; other control characters may not stand there.</summary>
    internal static string Escaped(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var c in text.ReplaceLineEndings("\n"))
        {
            if (c is '\\' or ';' or ',') safe.Append('\\').Append(c);
            else if (c == '\n') safe.Append("\\n");
            else safe.Append(char.IsControl(c) ? ' ' : c);
        }

        return safe.ToString();
    }

    /// <summary>A line of at most 75 octets; what is longer goes on in lines that begin with a blank. No letter is cut in two.</summary>
    private static void Line(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > Longest)
            {
                text.Append("\r\n ");
                octets = 1;
            }

            text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        text.Append("\r\n");
    }

    /// <summary>Letters and digits for a name that is the same in every file of a term, so that a calendar changes its events instead of doubling them.</summary>
    private static string Name(string words) => string.Concat(words.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')).Trim('-');
}
