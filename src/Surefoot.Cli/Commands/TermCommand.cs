using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Problems;
using Surefoot.Draw;
using Surefoot.Lessons;
using Surefoot.Lessons.Calendar;
using Surefoot.Lessons.Planning;
using Surefoot.Lessons.Sheets;
using Surefoot.Lessons.Solver;
using Surefoot.Lessons.Text;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot term: a term planned, its lesson sheets, its overview, its calendar.</summary>
internal static class TermCommand
{
    public static Command Make(Screen screen)
    {
        var file = new Argument<string>("term") { HelpName = "FILE", Description = "the term, a text file; its dances lie beside it or in folders below" };
        var dances = new Option<string?>("--dances") { HelpName = "FOLDER", Description = "where the dances are, if not beside the term" };
        var evening = new Option<string?>("--evening") { HelpName = "DATE", Description = "the lesson sheets of a day, such as \"19 January\": a page for the printer" };
        var text = new Option<bool>("--text") { Description = "with --evening: plain text" };
        var overview = new Option<bool>("--overview") { Description = "the term on paper, to hand out: a page for the printer" };
        var ics = new Option<bool>("--ics") { Description = "the lessons as a calendar file (iCalendar)" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var tell = new Option<bool>("--tell") { Description = "writes the plan into the file as what people are told; planning anew stays with it" };
        var paper = new Option<string?>("--paper") { HelpName = "SIZE", Description = "a4 or letter; a4 unless told" };
        var to = new Option<string?>("--out") { HelpName = "FILE", Description = "the file to write" };
        var command = new PlainCommand("term", "Plans a term of lessons: what is taught and danced again on every evening, in minutes, with reasons.")
        {
            Missing = "Say which term, for example: surefoot term winter.term",
            Examples =
            [
                ("surefoot term winter.term", "shows the plan, evening by evening"),
                ("surefoot term winter.term --evening \"19 January\"", "the lesson sheets of that evening, for the printer"),
                ("surefoot term winter.term --overview --out winter.html", "the whole term on paper"),
                ("surefoot term winter.term --ics --out winter.ics", "for everybody's calendar"),
            ],
        };
        command.Add(file);
        foreach (var option in (Option[])[dances, evening, text, overview, ics, json, tell, paper, to]) command.Add(option);
        command.SetAction(asked =>
        {
            bool[] forms = [asked.GetValue(evening) is not null, asked.GetValue(overview), asked.GetValue(ics), asked.GetValue(json), asked.GetValue(tell)];
            if (forms.Count(f => f) > 1)
            {
                screen.Err.WriteLine("Choose one of --evening, --overview, --ics, --json and --tell.");
                return ExitCode.CouldNotRead;
            }

            if (Choices.Paper(asked.GetValue(paper), screen) is not { } size || Read(asked.GetValue(file)!, asked.GetValue(dances), screen) is not { } read) return ExitCode.CouldNotRead;
            var (page, source, term) = read;
            var problems = term?.Problems ?? page.Problems;
            // A document for other programs has the problems in it.
            if (!asked.GetValue(json)) TermPrinter.Problems(screen, page, source, problems);
            if (term is null) return ExitCode.CouldNotRead;
            var plan = new Planner(new CpSatSolver()).Plan(term);
            var exit = problems.Any(p => p.Severity == Severity.Error) || plan.Collisions.Count > 0 ? ExitCode.ErrorsFound : ExitCode.Fine;
            var options = new SheetOptions { Paper = size };
            var stem = Path.GetFileNameWithoutExtension(source.Path);
            string? into = asked.GetValue(to);
            if (asked.GetValue(evening) is { } day) return Later(Evening(screen, plan, day, asked.GetValue(text), options, into, stem));
            if (asked.GetValue(overview)) return Later(Output.Give(screen, OverviewHtml.Write(plan, options), into, stem + ".html", readable: false));
            if (asked.GetValue(ics)) return Later(Output.Give(screen, CalendarFile.Write(plan, TimeProvider.System.GetUtcNow().UtcDateTime, lesson => LessonWords.InShort(term, lesson)), into, stem + ".ics", readable: false));
            if (asked.GetValue(tell)) return Later(Tell(screen, source, plan));
            if (asked.GetValue(json)) JsonOut.Write(screen.Out, writer => TermJson.Write(writer, page, plan));
            else TermPrinter.Plan(screen, plan);
            return exit;

            int Later(int given) => given == ExitCode.Fine ? exit : given;
        });
        return command;
    }

    private static (TermPage Page, PageFile Source, TermCase? Term)? Read(string path, string? folder, Screen screen)
    {
        var (file, trouble) = PageFiles.Read(path);
        if (file is null)
        {
            trouble?.Tell(screen.Err);
            return null;
        }

        var page = TermPage.Read(file.Text);
        if (page.Term is null) return (page, file, null);
        var (dances, troubles) = ManyDances.In(folder ?? (Path.GetDirectoryName(Path.GetFullPath(path)) ?? "."), null, screen, (of, reading) => TermDance.Of(reading, Path.GetFileNameWithoutExtension(of)));
        foreach (var one in troubles) one.Tell(screen.Err);
        return (page, file, TermCase.Of(page, dances));
    }

    private static int Evening(Screen screen, TermPlan plan, string asked, bool text, SheetOptions options, string? into, string stem)
    {
        if (TermDays.Read(asked, plan.Case.Term) is not { } day)
        {
            screen.Err.WriteLine($"\"{Cells.Harmless(asked)}\" is no day Surefoot can read. A day is written as in: 19 January");
            return ExitCode.CouldNotRead;
        }

        // What was ticked is shown as it was done.
        var lessons = plan.On(day);
        if (lessons.Count == 0)
        {
            var next = plan.Lessons.Select(l => l.Lesson.Day).Where(d => d >= day).Select(d => (DateOnly?)d).FirstOrDefault();
            screen.Err.WriteLine($"No lesson is to come on {DayWords.Weekday(day)}.{(next is { } on ? $" The next one is on {DayWords.Weekday(on)}." : "")}");
            return ExitCode.CouldNotRead;
        }

        var sheets = lessons.ConvertAll(l => LessonSheet.Of(plan, l, options));
        return text
            ? Output.Give(screen, LessonText.Write(sheets), into, $"{stem}-{day:yyyy-MM-dd}.txt", readable: true)
            : Output.Give(screen, LessonHtml.Write(sheets, options), into, $"{stem}-{day:yyyy-MM-dd}.html", readable: false);
    }

    private static int Tell(Screen screen, PageFile source, TermPlan plan)
    {
        if (PageFiles.WriteBack(source, TermWriting.Told(source.Text, plan)) is { } trouble)
        {
            trouble.Tell(screen.Err);
            return ExitCode.CouldNotRead;
        }

        screen.Say($"Written into {source.Path} under \"Told\": {Prose.Number(plan.Lessons.Count, "lesson")}.");
        return ExitCode.Fine;
    }
}
