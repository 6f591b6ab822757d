using System.Text;
using Surefoot.Dance.Text;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Text;

/// <summary>Writes into a term file what was reached and what people are told. Every other line stays as it stands.</summary>
public static class TermWriting
{
    /// <summary>
    /// The text with the plan's lessons under "Told", in place of what stood there; notes under it stay. What people have in their
    /// calendars and is not there any more, or at another time, goes on being named.
    /// </summary>
    public static string Told(string text, TermPlan plan)
    {
        var told = ToldLines(plan);
        var (lines, end) = Lines(text);
        var at = Heading(lines, "Told");
        if (at >= 0)
        {
            var until = Until(lines, at);
            var notes = lines.GetRange(at + 1, until - at - 1).FindAll(IsNote);
            lines.RemoveRange(at, until - at);
            // Where the heading stood in the middle, what follows keeps its place.
            lines.InsertRange(at, ["Told", .. notes, .. told, ""]);
            return string.Join(end, lines);
        }

        Spaced(lines);
        return string.Join(end, [.. lines, "Told", .. told, ""]);
    }

    /// <summary>The text with dances more to teach, behind those that stand there.</summary>
    public static string Taught(string text, IReadOnlyList<string> titles)
    {
        var (lines, end) = Lines(text);
        var at = lines.FindIndex(TermReader.IsDances);
        if (at < 0)
        {
            Spaced(lines);
            return string.Join(end, [.. lines, "Dances", .. titles, ""]);
        }

        var until = Until(lines, at);
        while (until > at + 1 && lines[until - 1].Trim().Length == 0) until--;
        lines.InsertRange(until, titles);
        if (lines[^1].Length > 0) lines.Add("");
        return string.Join(end, lines);
    }

    /// <summary>The text with one lesson more under "Reached"; a line for the same lesson is taken out for it.</summary>
    public static string Reached(string text, TermCase term, Lesson lesson, IReadOnlyList<(Course Course, IReadOnlyList<int> Bites, int Quality)> dances)
    {
        var (lines, end) = Lines(text);
        var said = dances.Select(d => $"{d.Course.Dance.Title} {(d.Bites.Count == 0 ? "again" : Bites(d.Bites))} went {DoneLines.Mark(d.Quality)}").ToList();
        var line = $"{When(lesson)}: {(said.Count == 0 ? "nothing" : string.Join(", ", said))}";
        var at = Heading(lines, "Reached");
        if (at < 0)
        {
            // Before what people were told, which is about what comes later.
            at = Heading(lines, "Told");
            if (at >= 0) lines.InsertRange(at, ["Reached", line, ""]);
            else
            {
                Spaced(lines);
                lines.AddRange(["Reached", line, ""]);
            }

            return string.Join(end, lines);
        }

        foreach (var old in LinesOf(text, term, lesson)) lines.RemoveAt(old);
        var until = Until(lines, at);
        while (until > at + 1 && lines[until - 1].Trim().Length == 0) until--;
        lines.Insert(until, line);
        return string.Join(end, lines);
    }

    /// <summary>The text without what was reached in a lesson, which is not over after all. A heading with nothing left under it goes too.</summary>
    public static string NotReached(string text, TermCase term, Lesson lesson)
    {
        var (lines, end) = Lines(text);
        foreach (var old in LinesOf(text, term, lesson)) lines.RemoveAt(old);
        var at = Heading(lines, "Reached");
        var until = at < 0 ? 0 : Until(lines, at);
        if (at >= 0 && lines.Skip(at + 1).Take(until - at - 1).All(l => l.Trim().Length == 0)) lines.RemoveRange(at, until - at);
        return string.Join(end, lines);
    }

    /// <summary>The lines under "Reached" that are about a lesson, the last first.</summary>
    private static List<int> LinesOf(string text, TermCase term, Lesson lesson)
    {
        var source = new SourceText(text);
        return [.. term.Term.Reached.Where(r => r.Day == lesson.Day && (r.At == lesson.At || (r.At is null && OnlyOne(term, lesson)))).Select(r => source.LineOf(r.Span.Start)).OrderDescending()];
    }

    private static bool OnlyOne(TermCase term, Lesson lesson) => term.Lessons.Count(l => l.Day == lesson.Day) == 1;

    private static List<string> ToldLines(TermPlan plan)
    {
        var lines = new List<(DateTime When, string Line)>();
        var known = HandedOut.Of(plan.Case);
        foreach (var lesson in plan.Lessons) lines.Add((lesson.Lesson.Begin, $"{When(lesson.Lesson)}{Instead(lesson.Lesson)}: {Told(plan.Case, lesson)}"));
        foreach (var one in known)
        {
            if (one.Now is null) lines.Add((one.Begin, $"{When(one.Begin)}: {DoneLines.NoLesson}for {one.For.Words}"));
            // Of a lesson that is over only its place in people's calendars counts.
            else if (one.Moved && plan.Of(one.Now) is null) lines.Add((one.Now.Begin, $"{When(one.Now)}{Instead(one.Now)}: nothing"));
        }

        return [.. lines.OrderBy(l => l.When).Select(l => l.Line)];

        string Instead(Lesson lesson) => known.Find(k => k.Now == lesson && k.Moved) is { } moved ? $" {DoneLines.InsteadOf} {When(moved.Begin)}" : "";
    }

    private static string Told(TermCase term, LessonPlan lesson)
    {
        var dances = lesson.Items.Where(i => i.Kind == ItemKind.Review).Select(i => $"{term.Courses[i.Course!.Value].Dance.Title} again").ToList();
        foreach (var dance in lesson.Items.Where(i => i.Kind == ItemKind.Teach).GroupBy(i => i.Course!.Value)) dances.Add($"{term.Courses[dance.Key].Dance.Title} {Bites([.. dance.Select(i => i.Bite!.Value)])}");
        return dances.Count == 0 ? "nothing" : string.Join(", ", dances);
    }

    private static string When(Lesson lesson) => When(lesson.Begin);

    private static string When(DateTime begin) => $"{DayWords.Full(DateOnly.FromDateTime(begin))} {DayWords.Time(TimeOnly.FromDateTime(begin))}";

    /// <summary>"bites 1-3+5", from bites counted from 0.</summary>
    private static string Bites(IReadOnlyList<int> bites)
    {
        var runs = new StringBuilder();
        for (var i = 0; i < bites.Count;)
        {
            var last = i;
            while (last + 1 < bites.Count && bites[last + 1] == bites[last] + 1) last++;
            if (runs.Length > 0) runs.Append('+');
            runs.Append(bites[i] + 1);
            if (last > i) runs.Append('-').Append(bites[last] + 1);
            i = last + 1;
        }

        return $"{(bites.Count == 1 ? "bite" : "bites")} {runs}";
    }

    private static (List<string> Lines, string End) Lines(string text)
    {
        var end = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var source = new SourceText(text);
        return ([.. Enumerable.Range(0, source.LineCount).Select(n => source.Words(source.Line(n)))], end);
    }

    private static void Spaced(List<string> lines)
    {
        while (lines.Count > 0 && lines[^1].Trim().Length == 0) lines.RemoveAt(lines.Count - 1);
        if (lines.Count > 0) lines.Add("");
    }

    private static int Heading(List<string> lines, string heading) => lines.FindIndex(l => Is(l, heading));

    private static int Until(List<string> lines, int heading)
    {
        var next = lines.FindIndex(heading + 1, l => TermReader.IsHeading(l));
        return next < 0 ? lines.Count : next;
    }

    private static bool Is(string line, string heading) => line.Trim().TrimEnd(':').TrimEnd().Equals(heading, StringComparison.OrdinalIgnoreCase);

    private static bool IsNote(string line) => line.TrimStart().StartsWith('>');
}
