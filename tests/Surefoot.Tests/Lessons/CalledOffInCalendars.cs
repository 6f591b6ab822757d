using Ical.Net.CalendarComponents;
using Surefoot.Lessons.Calendar;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Text;

namespace Surefoot.Tests.Lessons;

/// <summary>Lessons that people have in their calendars and that fall away or move: a later file says so of the same event, read by another library (Ical.Net).</summary>
public class CalledOffInCalendars
{
    private const string Weeks = "Short\nFrom: 12 January 2027\nUntil: 9 February 2027\nEvenings\nTuesday 19:00, 45 minutes, beginners, line dances\nDances\nHen House Hurry\n";

    private static readonly DateTime Stamp = new(2027, 1, 2, 3, 4, 5, DateTimeKind.Utc);

    private static readonly Lazy<string> Told = new(() => TermWriting.Told(Weeks, Terms.Plan(Weeks)));

    private static Dictionary<string, CalendarEvent> Events(string text, int later = 0) =>
        Ical.Net.Calendar.Load(CalendarFile.Write(Terms.Plan(text), Stamp.AddSeconds(later), _ => ""))!.Events.ToDictionary(e => e.Uid!);

    private static string Closing(string text, string day) => text.Replace("Evenings", $"Closed: {day}\nEvenings", StringComparison.Ordinal);

    private static DateTime At(int month, int day, int hour = 19, int minute = 0) => new(2027, month, day, hour, minute, 0, DateTimeKind.Unspecified);

    [Fact]
    public void A_day_that_is_closed_later_is_called_off_under_its_own_name_and_higher_than_before()
    {
        var before = Events(Told.Value);
        var after = Events(Closing(Told.Value, "26 January"), later: 1);
        Assert.Equal(before.Keys.Order(), after.Keys.Order());
        var off = Assert.Single(after.Values, e => e.Status == "CANCELLED");
        Assert.Equal(At(1, 26), off.DtStart!.Value);
        Assert.Equal(At(1, 26, 19, 45), off.DtEnd!.Value);
        Assert.True(off.DtStart.IsFloating);
        Assert.Equal(before[off.Uid!].DtStart, off.DtStart);
        Assert.All(after, e => Assert.True(e.Value.Sequence > before[e.Key].Sequence));
        Assert.All(after.Values.Where(e => e != off), e => Assert.Equal("CONFIRMED", e.Status));
        // Nobody was told of it: then nobody has it.
        Assert.DoesNotContain(Events(Closing(Weeks, "26 January")).Values, e => e.Status == "CANCELLED");
    }

    [Fact]
    public void It_stays_called_off_when_people_are_told_anew_and_comes_back_when_the_day_opens_again()
    {
        var closed = Closing(Told.Value, "26 January");
        var anew = TermWriting.Told(closed, Terms.Plan(closed));
        Assert.Contains("\n26 January 2027 19:00: no lesson for beginners\n", anew);
        Assert.Empty(Terms.Case(anew).Problems);
        Assert.Empty(Terms.Plan(anew).Changes);
        Assert.Equal(anew, TermWriting.Told(anew, Terms.Plan(anew)));
        Assert.Equal(At(1, 26), Assert.Single(Events(anew).Values, e => e.Status == "CANCELLED").DtStart!.Value);
        var open = anew.Replace("Closed: 26 January\n", "", StringComparison.Ordinal);
        var events = Events(open);
        Assert.Equal(Events(Told.Value).Keys.Order(), events.Keys.Order());
        Assert.DoesNotContain(events.Values, e => e.Status == "CANCELLED");
        Assert.DoesNotContain("no lesson", TermWriting.Told(open, Terms.Plan(open)));
    }

    [Theory]
    [InlineData("Tuesday 19:30", 12, 19, 30)]
    [InlineData("Wednesday 18:00", 13, 18, 0)]
    public void An_evening_at_another_time_is_the_same_event_moved_also_after_people_are_told_of_it(string evening, int day, int hour, int minute)
    {
        var before = Events(Told.Value);
        var moved = Told.Value.Replace("Tuesday 19:00", evening, StringComparison.Ordinal).Replace("Until: 9 February", "Until: 10 February", StringComparison.Ordinal);
        var anew = TermWriting.Told(moved, Terms.Plan(moved));
        Assert.Contains($"{day} January 2027 {hour}:{minute:00} instead of 12 January 2027 19:00: ", anew);
        Assert.Empty(Terms.Case(anew).Problems);
        Assert.Empty(Terms.Plan(anew).Changes);
        Assert.Equal(anew, TermWriting.Told(anew, Terms.Plan(anew)));
        // Twice moved is still the lesson people were told of first; ticked, it stays that.
        var back = anew.Replace(evening, "Tuesday 20:15", StringComparison.Ordinal);
        var ticked = TermWriting.Reached(anew, Terms.Case(anew), Terms.Case(anew).Lessons[0], []);
        ticked = TermWriting.Told(ticked, Terms.Plan(ticked));
        foreach (var (text, first) in new[] { (moved, At(1, day, hour, minute)), (anew, At(1, day, hour, minute)), (ticked, At(1, day, hour, minute)), (TermWriting.Told(back, Terms.Plan(back)), At(1, 12, 20, 15)) })
        {
            var after = Events(text, later: 1);
            Assert.Equal(before.Keys.Order(), after.Keys.Order());
            Assert.All(after, e => Assert.True(e.Value.Sequence > before[e.Key].Sequence && e.Value.Status == "CONFIRMED"));
            Assert.Equal(first, after.Values.Min(e => e.DtStart!.Value));
        }
    }

    [Fact]
    public void An_evening_taken_out_of_the_term_is_called_off_for_its_own_class_only()
    {
        var two = Weeks.Replace("Dances\n", "Tuesday 20:00, 45 minutes, improvers, line dances\nDances\n", StringComparison.Ordinal).Replace("Hen House Hurry\n", "Hen House Hurry, for beginners\nWet Meadow Waltz, for improvers\n", StringComparison.Ordinal);
        var told = TermWriting.Told(two, Terms.Plan(two));
        var before = Events(told);
        var gone = told.Replace("Tuesday 20:00, 45 minutes, improvers, line dances\n", "Thursday 20:00, 45 minutes, improvers, line dances\n", StringComparison.Ordinal).Replace("Until: 9 February", "Until: 3 February", StringComparison.Ordinal);
        var after = Events(gone, later: 1);
        Assert.Equal(before.Keys.Order(), after.Keys.Order());
        // The last week is not in the term any more, nor the last Thursday.
        Assert.Equal([At(2, 2, 20), At(2, 9), At(2, 9, 20)], after.Values.Where(e => e.Status == "CANCELLED").Select(e => e.DtStart!.Value).Order());
        Assert.Equal(At(1, 14, 20), after.Values.Where(e => e.Summary!.StartsWith("Improvers", StringComparison.Ordinal)).Min(e => e.DtStart!.Value));
    }
}
