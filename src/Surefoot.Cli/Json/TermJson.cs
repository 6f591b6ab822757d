using System.Text.Json;
using Surefoot.Lessons;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Sheets;
using Surefoot.Lessons.Text;

namespace Surefoot.Cli.Json;

/// <summary>A term planned; the shape is docs/term.schema.json.</summary>
internal static class TermJson
{
    public static void Write(Utf8JsonWriter json, TermPage page, TermPlan plan)
    {
        var term = plan.Case;
        json.WriteStartObject();
        json.WriteString("title", term.Term.Title);
        json.WriteString("from", Day(term.Term.From));
        json.WriteString("until", Day(term.Term.Until));
        json.WriteBoolean("best", plan.Best);
        json.WriteStartArray("problems");
        foreach (var problem in term.Problems)
        {
            json.WriteStartObject();
            json.WriteString("name", problem.Name);
            json.WriteString("severity", Printing.ProblemPrinter.Word(problem.Severity));
            json.WriteNumber("line", page.Source.Place(problem.Span.Start).Line);
            json.WriteString("message", problem.Message);
            json.WriteString("reason", problem.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("dances");
        foreach (var course in term.Courses) Course(json, course);
        json.WriteEndArray();
        json.WriteStartArray("lessons");
        foreach (var lesson in plan.Lessons) Lesson(json, term, lesson);
        json.WriteEndArray();
        Sentences(json, "collisions", plan.Collisions.Select(c => LessonWords.Of(term, c)));
        Sentences(json, "leftOut", plan.LeftOut.Select(l => LessonWords.Of(term, l)));
        Sentences(json, "changes", LessonWords.Changes(plan));
        json.WriteEndObject();
    }

    private static void Course(Utf8JsonWriter json, Course course)
    {
        json.WriteStartObject();
        json.WriteString("title", course.Dance.Title);
        json.WriteString("for", course.Class.Words);
        json.Text("by", course.By is { } by ? Day(by) : null);
        json.WriteBoolean("known", course.KnownBefore);
        json.WriteStartArray("bites");
        for (var i = 0; i < course.Bites.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("name", course.Bites[i].Name);
            json.WriteNumber("newCounts", course.Bites[i].New);
            json.WriteNumber("otherFootCounts", course.Bites[i].Mirrored);
            json.WriteNumber("minutes", course.Minutes[i]);
            json.WriteBoolean("done", course.Progress.Done[i]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Lesson(Utf8JsonWriter json, TermCase term, LessonPlan lesson)
    {
        json.WriteStartObject();
        json.WriteString("day", Day(lesson.Lesson.Day));
        json.WriteString("at", DayWords.Time(lesson.Lesson.At));
        json.WriteNumber("minutes", lesson.Lesson.Slot.Minutes);
        json.WriteString("for", lesson.Lesson.Slot.For.Words);
        json.WriteString("kinds", lesson.Lesson.Slot.Kinds.Words());
        json.WriteStartArray("items");
        foreach (var item in lesson.Items)
        {
            json.WriteStartObject();
            json.WriteString("kind", Kind(item.Kind));
            json.WriteNumber("after", item.At);
            json.WriteNumber("minutes", item.Minutes);
            if (item.Course is { } course) json.WriteString("dance", term.Courses[course].Dance.Title);
            if (item.Bite is { } bite) json.WriteNumber("bite", bite + 1);
            if (item.Reason.Length > 0) json.WriteString("reason", item.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Sentences(Utf8JsonWriter json, string name, IEnumerable<string> all)
    {
        json.WriteStartArray(name);
        foreach (var one in all) json.WriteStringValue(one);
        json.WriteEndArray();
    }

    private static string Kind(ItemKind kind) => kind switch
    {
        ItemKind.WarmUp => "warm-up",
        ItemKind.ToMusic => "to-music",
        ItemKind.OnceMore => "once-more",
        _ => kind.ToString().ToLowerInvariant(),
    };

    private static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
