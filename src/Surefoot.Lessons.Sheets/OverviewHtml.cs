using System.Globalization;
using System.Net;
using System.Text;
using Surefoot.Draw;
using Surefoot.Lessons.Planning;

namespace Surefoot.Lessons.Sheets;

/// <summary>
/// The term on paper: for each class its dances in lines and its lessons in columns, with what is taught when, and
/// under it the days in words, to hand out or to hang up.
/// </summary>
public static class OverviewHtml
{
    /// <summary>Lessons that fit side by side on a page; a longer term continues below.</summary>
    private const int Columns = 16;

    public static string Write(TermPlan plan, SheetOptions options)
    {
        var term = plan.Case.Term;
        var title = term.Title.Length > 0 ? term.Title : "The term";
        var text = new StringBuilder(PrintedPage.Head(title, options, Rules));
        text.Append($"<h1>{E(title)}</h1>\n<p class=\"opening\">{E(Opening(plan))}</p>\n");
        foreach (var who in plan.Case.Classes) Class(text, plan, who);
        text.Append($"<p class=\"key\"><b>A B2</b> bites that are taught&ensp; <b class=\"end\">C</b> the dance is finished&ensp; <i>○</i> danced again&ensp; numbers are days of the month{(plan.Case.Past.Any(p => p) ? "&ensp; <span class=\"past\">grey</span> what was done" : "")}</p>\n");
        text.Append("<section class=\"day-by-day\">\n<h2>Day by day</h2>\n<ul class=\"days\">\n");
        foreach (var day in plan.Case.Lessons.Select(l => plan.Of(l) ?? DoneLesson.Of(plan.Case, l)).GroupBy(l => l.Lesson.Day))
        {
            var over = day.All(l => plan.Case.Past[l.Lesson.Index]);
            text.Append($"<li{(over ? " class=\"past\"" : "")}><b>{E(DayWords.Weekday(day.Key))}</b>");
            foreach (var lesson in day) text.Append($"<p><span>{E($"{DayWords.Time(lesson.Lesson.At)}, {lesson.Lesson.Slot.For.Words}")}</span> {E(LessonWords.InShort(plan.Case, lesson))}</p>");
            text.Append("</li>\n");
        }

        return text.Append("</ul>\n</section>\n").Append(PrintedPage.Foot).ToString();
    }

    private static string Opening(TermPlan plan)
    {
        var term = plan.Case.Term;
        var slots = string.Join("; ", term.Slots.OrderBy(s => ((int)s.Day + 6) % 7).ThenBy(s => s.At).Select(s => $"{s.Day} {DayWords.Time(s.At)} for {s.For.Words} ({s.Kinds.Words()}, {s.Minutes} minutes)"));
        var closed = term.Closed.Count == 0 ? "" : $" Closed: {string.Join(", ", term.Closed.Select(c => c.From == c.Until ? DayWords.Short(c.From) : $"{DayWords.Short(c.From)} to {DayWords.Short(c.Until)}"))}.";
        return $"From {DayWords.Full(term.From)} to {DayWords.Full(term.Until)}. {slots}.{closed}";
    }

    private static void Class(StringBuilder text, TermPlan plan, DanceClass who)
    {
        var lessons = plan.Case.Lessons.Where(l => l.Slot.For == who).ToList();
        for (var from = 0; from < lessons.Count; from += Columns)
        {
            var shown = lessons.GetRange(from, Math.Min(Columns, lessons.Count - from));
            text.Append($"<table><caption>{E(char.ToUpperInvariant(who.Words[0]) + who.Words[1..])}{(from > 0 ? ", continued" : "")}</caption>\n<colgroup><col class=\"name\"><col span=\"{shown.Count}\"></colgroup><thead><tr><td></td>");
            foreach (var month in shown.GroupBy(l => (l.Day.Year, l.Day.Month))) text.Append($"<th scope=\"colgroup\" colspan=\"{month.Count()}\">{E(month.First().Day.ToString("MMMM", CultureInfo.InvariantCulture))}</th>");
            text.Append("</tr>\n<tr><td></td>");
            foreach (var lesson in shown) text.Append($"<th scope=\"col\">{lesson.Day.Day}</th>");
            text.Append("</tr></thead>\n<tbody>\n");
            foreach (var course in plan.Case.Courses.Where(c => c.Class == who)) Dance(text, plan, course, shown);
            text.Append("</tbody></table>\n");
        }
    }

    private static void Dance(StringBuilder text, TermPlan plan, Course course, List<Lesson> lessons)
    {
        var wish = course.By is { } by ? $" <small>by {E(DayWords.Short(by))}</small>" : "";
        text.Append($"<tr><th scope=\"row\">{E(course.Dance.Title)}{wish}</th>");
        foreach (var lesson in lessons) text.Append(Cell(plan, course, lesson));
        text.Append("</tr>\n");
    }

    private static string Cell(TermPlan plan, Course course, Lesson lesson)
    {
        var past = plan.Case.Past[lesson.Index];
        // What is over stands as it was done, in the same marks.
        var items = (plan.Of(lesson) ?? DoneLesson.Of(plan.Case, lesson)).Items.Where(i => i.Course == course.Index).ToList();
        var bites = items.Where(i => i.Kind == ItemKind.Teach).Select(i => i.Bite!.Value).Distinct().Order().ToList();
        var kind = bites.Count > 0 ? "on" : items.Exists(i => i.Kind == ItemKind.Review) ? "again" : "";
        if (items.Exists(i => i.Kind == ItemKind.ToMusic)) kind += " end";
        if (past) kind = $"past {kind}".TrimEnd();
        return $"<td{(kind.Length > 0 ? $" class=\"{kind}\"" : "")}{(kind.EndsWith("again", StringComparison.Ordinal) ? " title=\"danced again\">○" : $">{E(Names(course, bites))}")}</td>";
    }

    /// <summary>"A", "A B", "A1–C2" where more follow each other; with a gap each run by itself.</summary>
    private static string Names(Course course, List<int> bites)
    {
        var runs = new List<string>();
        for (var first = 0; first < bites.Count;)
        {
            var last = first;
            while (last + 1 < bites.Count && bites[last + 1] == bites[last] + 1) last++;
            var (from, to) = (course.Bites[bites[first]].Name, course.Bites[bites[last]].Name);
            runs.Add(last == first ? from : last == first + 1 ? $"{from} {to}" : $"{from}–{to}");
            first = last + 1;
        }

        return string.Join(' ', runs);
    }

    private static string E(string text) => WebUtility.HtmlEncode(text);

    private static readonly string Rules = """
        table{border-collapse:collapse;table-layout:fixed;width:100%;margin:1em 0 0;break-inside:avoid;font-size:.8em}
        caption{font:600 1.4em/1.3 var(--book);text-align:left;padding-bottom:.2em}
        td,th{border-block-end:.75pt solid var(--line);padding:.25em .15em;text-align:center;font-weight:400}
        thead th{color:var(--quiet);font-variant-numeric:tabular-nums}thead tr:first-child th{border-inline-start:.75pt solid var(--line);text-align:left;padding-inline-start:.4em}
        col.name{width:13.5em}tbody th{text-align:left;padding-inline-start:0}tbody small{color:var(--quiet);white-space:nowrap}
        td{border-inline-start:.75pt dotted var(--line);overflow-wrap:anywhere;line-height:1.15}
        thead td,tbody th{border-inline-start:0}
        td.on{font-weight:700}td.end,.key .end{border-block-end:2.5pt solid var(--ink)}td.again,td.past{color:var(--quiet)}td.past,.key .past{background:var(--over)}td.past.on{font-weight:400}:root{--over:#ece9e2}@media screen and (prefers-color-scheme:dark){:root{--over:#2b2927}}
        .key{font-size:.82em;margin:.7em 0 1.2em}.key i{font-style:normal}
        h2{font:600 1.3em/1.2 var(--book);margin:1em 0 .3em;break-after:avoid}
        .day-by-day{break-inside:avoid}
        .days{list-style:none;padding:0;margin:0 0 1em;columns:2;column-gap:2em;font-size:.9em}
        .days li{break-inside:avoid;margin:0 0 .45em}.days b{display:block}.days p{margin:0}.days span{color:var(--quiet)}
        @media screen and (max-width:40rem){.days{columns:1}main{overflow-x:auto}table{min-width:36rem}}
        """.ReplaceLineEndings("");
}
