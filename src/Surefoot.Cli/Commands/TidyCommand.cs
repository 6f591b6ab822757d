using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Files;
using Surefoot.Cli.Mending;
using Surefoot.Cli.Printing;
using Surefoot.Dance.Text;

namespace Surefoot.Cli.Commands;

/// <summary>surefoot tidy: the page in its usual form.</summary>
internal static class TidyCommand
{
    public static Command Make(Screen screen)
    {
        var page = new Argument<string>("page") { HelpName = "PAGE", Description = "the page of a dance" };
        var write = new Option<bool>("--write") { Description = "writes it into the page, after showing what changes" };
        var command = new PlainCommand("tidy", "Prints a page in its usual form: short forms written out, counts in a column. It stays the same dance.")
        {
            Missing = "Say which page, for example: surefoot tidy millpond.dance",
            Examples = [("surefoot tidy millpond.dance", "shows the page tidied"), ("surefoot tidy millpond.dance --write", "tidies the page itself")],
        };
        command.Add(page);
        command.Add(write);
        command.SetAction(asked =>
        {
            if (OnePage.Read(asked.GetValue(page)!, screen) is not { } read) return ExitCode.CouldNotRead;
            var tidy = TidyPage.Print(read.Reading.Page, read.Book);
            if (asked.GetValue(write)) return Write(screen, read.File, LineEnds.Like(read.File.Text, tidy));
            screen.Out.Write(tidy);
            return ExitCode.Fine;
        });
        return command;
    }

    private static int Write(Screen screen, PageFile file, string tidy)
    {
        if (string.Equals(tidy, file.Text, StringComparison.Ordinal))
        {
            screen.Say($"{file.Path} is tidy already.");
            return ExitCode.Fine;
        }

        DifferencePrinter.Print(file.Path, "tidied", file.Text, tidy, screen.Out, screen.Skin);
        screen.Out.Flush();
        if (PageFiles.WriteBack(file, tidy) is not { } trouble) return ExitCode.Fine;
        trouble.Tell(screen.Err);
        return ExitCode.CouldNotRead;
    }
}
