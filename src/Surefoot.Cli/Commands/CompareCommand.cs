using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Json;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot compare: two dances side by side.</summary>
internal static class CompareCommand
{
    public static Command Make(Screen screen)
    {
        var pages = new Argument<string[]>("page") { HelpName = "PAGE", Arity = new ArgumentArity(2, 2), Description = "the pages of two dances" };
        var json = new Option<bool>("--json") { Description = "answers in JSON, for other programs" };
        var command = new PlainCommand("compare", "Lays two dances side by side and says whether they are one dance, versions of one, or share a part.")
        {
            Missing = "Say which two pages, for example: surefoot compare millpond.dance mill-race.dance",
            Examples = [("surefoot compare millpond.dance mill-race.dance", "says what the two have in common, and what differs count by count")],
        };
        command.Add(pages);
        command.Add(json);
        command.SetAction(asked =>
        {
            if (asked.GetValue(pages) is not [var a, var b] || OnePage.Read(a, screen) is not { } first || OnePage.Read(b, screen) is not { } second) return ExitCode.CouldNotRead;
            first.TellErrors(screen);
            second.TellErrors(screen);
            if (asked.GetValue(json)) JsonOut.Write(screen.Out, writer => CompareJson.Write(writer, (first.File.PortablePath, second.File.PortablePath), first.Reading.Score, second.Reading.Score));
            else LikenessPrinter.Compare(screen, first.Reading.Score, second.Reading.Score);
            return ExitCode.Fine;
        });
        return command;
    }
}
