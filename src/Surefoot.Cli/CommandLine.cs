using System.CommandLine;
using Surefoot.Cli.Asking;
using Surefoot.Cli.Commands;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli;

/// <summary>What somebody typed, understood and done.</summary>
public static class CommandLine
{
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static int Run(IReadOnlyList<string> args, Screen screen)
    {
        try
        {
            var root = Root(screen);
            var asked = root.Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null, EnablePosixBundling = false });
            if (Help.Wanted(asked)) return Help.Print(asked, screen);
            if (WrongWords.In(asked) is { } wrong)
            {
                foreach (var line in wrong) screen.Err.WriteLine(line);
                return ExitCode.CouldNotRead;
            }

            return asked.Invoke(new InvocationConfiguration
            {
                EnableDefaultExceptionHandler = false,
                ProcessTerminationTimeout = null,
                Output = screen.Out,
                Error = screen.Err,
            });
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            screen.Out.Flush();
            screen.Err.WriteLine("Surefoot stumbled and could not finish this. That is a fault of the program, not of your page.");
            screen.Err.WriteLine("Please tell its makers what you typed and send them the page.");
            // For the makers themselves; a dancer never sees it.
            if (Environment.GetEnvironmentVariable("SUREFOOT_FAULTS") is not null) screen.Err.WriteLine(fault);
            return ExitCode.CouldNotRead;
        }
    }

    /// <summary>All commands, for the parser and for help.</summary>
    public static RootCommand Root(Screen screen)
    {
        var root = new RootCommand("Surefoot reads dances as a teacher writes them, follows every foot and makes the sheet.");
        // Only what is described here can be typed; the library's own extras would need explaining.
        root.Options.Clear();
        root.Directives.Clear();
        root.Add(Help.Option());
        root.Add(Help.Version());
        root.Add(CheckCommand.Make(screen));
        root.Add(ExplainCommand.Make(screen));
        root.Add(WordsCommand.Make(screen));
        root.Add(StepsCommand.Make(screen));
        root.Add(SheetCommand.Make(screen));
        root.Add(CallsCommand.Make(screen));
        root.Add(DrawCommand.Make(screen));
        root.Add(MotionCommand.Make(screen));
        root.Add(FramesCommand.Make(screen));
        root.Add(FloorCommand.Make(screen));
        root.Add(TidyCommand.Make(screen));
        root.Add(ReadCommand.Make(screen));
        root.Add(LearnCommand.Make(screen));
        root.Add(FilmCommand.Make(screen));
        root.Add(TermCommand.Make(screen));
        root.Add(CompareCommand.Make(screen));
        root.Add(LikeCommand.Make(screen));
        return root;
    }
}
