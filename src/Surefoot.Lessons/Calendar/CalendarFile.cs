using System.Globalization;
using System.Text;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Calendar;

/// <summary>
/// The term as an iCalendar file (RFC 5545), one event for each lesson, those that are over as what was done; and one for each
/// of which people were told and which is not there any more. Times are local times without a
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
        var handedOut = HandedOut.Of(plan.Case);
        foreach (var lesson in plan.Case.Lessons.Select(l => plan.Of(l) ?? DoneLesson.Of(plan.Case, l)))
        {
            var at = lesson.Lesson;
            // What was moved keeps the name of when it was to be at first: it is the same lesson, at another time.
            Begin(handedOut.Find(h => h.Now == at)?.Begin ?? at.Begin, at.Slot.For, at.Begin, at.Slot.Minutes);
            Line(text, "STATUS:CONFIRMED");
            Line(text, $"SUMMARY:{Escaped(Summary(at.Slot.For, at.Slot.Kinds))}");
            End(says(lesson));
        }

        // What falls away is called off, and not left out: a calendar keeps what a later file says nothing of.
        foreach (var gone in handedOut.Where(h => h.Now is null))
        {
            var slot = gone.SlotIn(plan.Case.Term);
            Begin(gone.Begin, gone.For, gone.Begin, slot?.Minutes);
            Line(text, "STATUS:CANCELLED");
            Line(text, $"SUMMARY:{Escaped(Summary(gone.For, slot?.Kinds))}");
            End(plan.Case.Term.Closed.Any(c => c.Have(DateOnly.FromDateTime(gone.Begin))) ? "Closed on this day: there is no lesson." : "There is no lesson at this time any more.");
        }

        Line(text, "END:VCALENDAR");
        return text.ToString();

        void Begin(DateTime named, DanceClass who, DateTime begin, int? minutes)
        {
            Line(text, "BEGIN:VEVENT");
            Line(text, $"UID:{named.ToString("yyyyMMdd'T'HHmm", CultureInfo.InvariantCulture)}-{Name(who.Words)}-{Name(title)}@surefoot.invalid");
            Line(text, $"DTSTAMP:{stamp.ToString("yyyyMMdd'T'HHmmss'Z'", CultureInfo.InvariantCulture)}");
            Line(text, $"SEQUENCE:{Sequence(stamp)}");
            Line(text, $"DTSTART:{Local(begin)}");
            if (minutes is { } length) Line(text, $"DTEND:{Local(begin.AddMinutes(length))}");
        }

        void End(string words)
        {
            if (words.Length > 0) Line(text, $"DESCRIPTION:{Escaped(words)}");
            if (title.Length > 0) Line(text, $"CATEGORIES:{Escaped(title)}");
            Line(text, "END:VEVENT");
        }
    }

    /// <summary>"Beginners, line dances".</summary>
    private static string Summary(DanceClass who, DanceKinds? kinds) => $"{char.ToUpperInvariant(who.Words[0])}{who.Words[1..]}{(kinds is { } all ? $", {all.Words()}" : "")}";

    /// <summary>Section 3.8.7.4: a later file of the same lesson has a higher number, so that a calendar takes what it says in place of what it has. Seconds since 2020.</summary>
    private static int Sequence(DateTime stamp) => Math.Max(0, (int)Math.Min(int.MaxValue, (stamp - new DateTime(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc)).TotalSeconds));

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
