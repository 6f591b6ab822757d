using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Basics;
using Surefoot.Draw;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot calls: what is called out before each figure.</summary>
internal static class CallsCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var sheet = new Option<bool>("--sheet") { Description = "a page for the printer, to open in a browser" };
        var role = new Option<string?>("--role") { HelpName = "ROLE", Description = "lead or follow: what is called for that dancer alone" };
        var large = new Option<bool>("--large") { Description = "large print, with --sheet" };
        var paper = new Option<string?>("--paper") { HelpName = "SIZE", Description = "a4 or letter, with --sheet; a4 unless told" };
        var file = new Option<string?>("--out") { HelpName = "FILE", Description = "the file to write" };
        var command = new PlainCommand("calls", "Lists what is called out in a dance: a few syllables on the count or two before each figure, and nothing where the same goes on.")
        {
            Missing = "Say which page, for example: surefoot calls millpond.dance",
            Examples = [("surefoot calls millpond.dance", "lists the calls part by part"), ("surefoot calls millpond.dance --sheet --large", "writes millpond.calls.html to print and to hold in one hand")],
        };
        foreach (var option in (Option[])[json, sheet, role, large, paper, file]) command.Add(option);
        command.Add(page);
        command.SetAction(asked =>
        {
            if (Choices.Paper(asked.GetValue(paper), screen) is not { } size || Choices.Only(asked.GetValue(role), screen) is not { } only) return ExitCode.CouldNotRead;
            if (asked.GetValue(json) && asked.GetValue(sheet))
            {
                screen.Err.WriteLine("Choose one of --json and --sheet.");
                return ExitCode.CouldNotRead;
            }

            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            var score = read.Reading.Score;
            if (score.Sections.Count == 0)
            {
                screen.Err.WriteLine($"{read.File.Path} holds no dance to call.");
                return ExitCode.CouldNotRead;
            }

            if (only.Role is not null && !score.Facts.ForCouples)
            {
                screen.Err.WriteLine($"{read.File.Path} is danced without a partner, so there is no lead or follow. Leave out --role.");
                return ExitCode.CouldNotRead;
            }

            read.TellErrors(screen);
            var options = new SheetOptions { Paper = size, LargePrint = asked.GetValue(large), Only = only.Role, Doubts = read.Errors };
            if (asked.GetValue(sheet)) return Output.Give(screen, CallHtml.Write(read.Reading, options), asked.GetValue(file), read.Stem + ".calls.html", readable: false);
            if (!asked.GetValue(json)) return Output.Give(screen, CallText.Write(read.Reading, options), asked.GetValue(file), read.Stem + ".calls.txt", readable: true);
            using var text = new StringWriter();
            JsonOut.Write(text, writer => CallsJson.Write(writer, read.Reading));
            return Output.Give(screen, text.ToString(), asked.GetValue(file), read.Stem + ".calls.json", readable: true);
        });
        return command;
    }
}
