using System.Text;
using Ical.Net;
using Surefoot.Lessons;
using Surefoot.Lessons.Calendar;
using Surefoot.Lessons.Sheets;

namespace Surefoot.Tests.Lessons;

/// <summary>The term's calendar file, read by another library (Ical.Net) and held against RFC 5545.</summary>
public class CalendarFiles
{
    private static readonly DateTime Stamp = new(2027, 1, 2, 3, 4, 5, DateTimeKind.Utc);

    private static string Written(string text, out Surefoot.Lessons.Planning.TermPlan plan)
    {
        var planned = plan = Terms.Plan(text);
        return CalendarFile.Write(planned, Stamp, lesson => LessonWords.InShort(planned.Case, lesson));
    }

    [Fact]
    public void Another_library_reads_every_lesson_with_its_times_and_words()
    {
        var file = Written(Terms.Demo.Replace("Winter at the Lantern Hall", "Winter; \"at\", the Lantern Häll, ½ \\ 冬の踊り冬の踊り冬の踊り冬の踊り冬の踊り冬の踊り"), out var plan);
        var calendar = Ical.Net.Calendar.Load(file)!;
        Assert.Equal(plan.Lessons.Count, calendar.Events.Count);
        var events = calendar.Events.OrderBy(e => e.DtStart!.Value).ToList();
        for (var i = 0; i < events.Count; i++)
        {
            var lesson = plan.Lessons[i];
            Assert.Equal(lesson.Lesson.Day.ToDateTime(lesson.Lesson.At), events[i].DtStart!.Value);
            Assert.Equal(lesson.Lesson.Day.ToDateTime(lesson.Lesson.At).AddMinutes(lesson.Lesson.Slot.Minutes), events[i].DtEnd!.Value);
            Assert.Equal(LessonWords.InShort(plan.Case, lesson), events[i].Description);
            Assert.Equal(plan.Case.Term.Title, Assert.Single(events[i].Categories));
            Assert.True(events[i].DtStart!.IsFloating, "at seven where the hall is");
        }

        Assert.Equal(events.Count, events.Select(e => e.Uid).Distinct().Count());
    }

    [Fact]
    public void Lines_end_with_CR_LF_and_have_at_most_75_octets()
    {
        var file = Written(Terms.Demo.Replace("Lantern Hall", "冬の踊り冬の踊り冬の踊り冬の踊り冬の踊り冬の踊り冬の踊り"), out _);
        Assert.DoesNotContain('\n', file.Replace("\r\n", ""));
        var lines = file.Split("\r\n");
        Assert.All(lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.Contains(lines, line => line.StartsWith(' '));
        // Cut between octets of one letter, a line would not be UTF-8 of its own.
        Assert.All(lines, line => Assert.Equal(line, Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(line))));
        Assert.Equal("", lines[^1]);
    }

    [Fact]
    public void A_lesson_that_is_over_stays_as_what_was_done_and_a_later_file_counts_for_more()
    {
        var file = Written(Terms.Demo + "\nReached\n12 January 19:00: Dinner Bell Six bites 1-4 went well\n19 January 19:00: nothing\n", out var plan);
        var events = Ical.Net.Calendar.Load(file)!.Events.OrderBy(e => e.DtStart!.Value).ToList();
        Assert.Equal(plan.Case.Lessons.Count, events.Count);
        Assert.Equal("Dinner Bell Six, all of it.", events[0].Description);
        Assert.Equal("Nothing is ticked.", events.First(e => e.DtStart!.Value == new DateTime(2027, 1, 19, 19, 0, 0, DateTimeKind.Unspecified)).Description);
        var later = Ical.Net.Calendar.Load(CalendarFile.Write(plan, Stamp.AddHours(1), _ => ""))!.Events;
        Assert.True(later.Min(e => e.Sequence) > events.Max(e => e.Sequence) && events.Min(e => e.Sequence) > 0);
    }

    [Fact]
    public void The_same_lesson_keeps_its_name_when_the_plan_changes()
    {
        static List<string> Names(string file) => [.. Ical.Net.Calendar.Load(file)!.Events.Select(e => e.Uid!)];
        Assert.Equal(Names(Written(Terms.Demo, out _)), Names(Written(Terms.Demo.Replace("Lamp Room Supper, for beginners\n", ""), out _)));
    }
}
