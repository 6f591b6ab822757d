using Surefoot.Cli.Files;
using Surefoot.Dance.Basics;
using Surefoot.Dance.Insight;
using Surefoot.Dance.Problems;
using Surefoot.Lessons;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Sheets;
using Surefoot.Lessons.Text;

namespace Surefoot.Cli.Printing;

/// <summary>A term on the screen: what is wrong with it, and its plan evening by evening.</summary>
internal static class TermPrinter
{
    public static void Problems(Screen screen, TermPage page, PageFile file, ValueList<Problem> problems)
    {
        foreach (var problem in problems)
        {
            var line = page.Source.Place(problem.Span.Start).Line;
            screen.Err.WriteLine($"{screen.RemarkSkin.Of(problem.Severity, ProblemPrinter.Word(problem.Severity))}  {screen.RemarkSkin.Title(problem.Name)}   {file.Path}, line {line}");
            if (Underline.Of(page.Source, problem.Span) is { } shown)
            {
                screen.Err.WriteLine("  " + shown.Line);
                screen.Err.WriteLine("  " + screen.RemarkSkin.Of(problem.Severity, shown.Carets));
            }

            foreach (var says in (string[])[problem.Message, problem.Reason])
            {
                foreach (var wrapped in Prose.Wrap(Cells.Harmless(says), screen.Width, 2, 2)) screen.Err.WriteLine(wrapped);
            }

            screen.Err.WriteLine();
        }
    }

    public static void Plan(Screen screen, TermPlan plan)
    {
        var term = plan.Case;
        if (term.Term.Title.Length > 0) screen.Out.WriteLine(screen.Skin.Title(Cells.Harmless(term.Term.Title)));
        foreach (var collision in plan.Collisions) screen.Say(Cells.Harmless(LessonWords.Of(term, collision)));
        foreach (var left in plan.LeftOut) screen.Say(Cells.Harmless(LessonWords.Of(term, left)));
        foreach (var change in LessonWords.Changes(plan)) screen.Say(Cells.Harmless(change));
        foreach (var lesson in plan.Lessons)
        {
            screen.Out.WriteLine();
            var at = lesson.Lesson;
            screen.Out.WriteLine(screen.Skin.Title($"{DayWords.Weekday(at.Day)}, {DayWords.Time(at.At)}: {at.Slot.For.Words}, {at.Slot.Kinds.Words()}, {at.Slot.Minutes} minutes"));
            foreach (var item in lesson.Items) Item(screen, term, at, item);
        }

        if (plan.Lessons.Count == 0) screen.Say("No lesson is to come.");
    }

    /// <summary>"8 new counts", "8 counts from the other foot", or both.</summary>
    private static string Counts(TeachingBite bite) => bite.Mirrored == 0 ? Prose.Number(bite.New, "new count")
        : $"{(bite.New == 0 ? "" : $"{Prose.Number(bite.New, "new count")} and ")}{Prose.Number(bite.Mirrored, "count")} from the other foot";

    private static void Item(Screen screen, TermCase term, Lesson lesson, LessonItem item)
    {
        var course = item.Course is { } index ? term.Courses[index] : null;
        var says = item.Kind switch
        {
            ItemKind.WarmUp => "warm up",
            ItemKind.Review => $"{course!.Dance.Title} again",
            ItemKind.Show => $"{course!.Dance.Title}, shown to music",
            ItemKind.Recap => $"{course!.Dance.Title}, what they have",
            ItemKind.ToMusic => $"{course!.Dance.Title} to music",
            ItemKind.OnceMore => $"{course!.Dance.Title} once more",
            ItemKind.Practice => $"{course!.Dance.Title} for practice",
            ItemKind.Spare => "free",
            _ => $"{course!.Dance.Title}, bite {item.Bite + 1}: {course.Bites[item.Bite!.Value].Name}, {Counts(course.Bites[item.Bite!.Value])}",
        };
        var reason = item.Reason.Length == 0 ? "" : $". {item.Reason}";
        screen.Say(Cells.Harmless($"  {DayWords.Time(lesson.At.AddMinutes(item.At))} {item.Minutes,3} min  {says}{reason}"), hanging: 18);
    }
}
