using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli.Commands;

/// <summary>Where a sheet or a picture goes.</summary>
internal static class Output
{
    /// <summary>
    /// Into the file asked for, or under the usual name into the folder asked for; else on along the pipe;
    /// else, for what a terminal cannot show, under the usual name into the current folder.
    /// </summary>
    /// <param name="usual">The page's name with the ending of what was made of it.</param>
    /// <param name="readable">True for what a terminal can show.</param>
    public static int Give(Screen screen, string text, string? asked, string usual, bool readable)
    {
        var folder = asked is not null && (Directory.Exists(asked) || Path.EndsInDirectorySeparator(asked));
        var path = folder ? Path.Combine(asked!, usual) : asked ?? (screen.OnTerminal && !readable ? usual : null);
        if (path is null)
        {
            screen.Out.Write(text);
            return ExitCode.Fine;
        }

        if (PageFiles.Write(path, text) is { } trouble)
        {
            trouble.Tell(screen.Err);
            return ExitCode.CouldNotRead;
        }

        screen.Err.WriteLine($"Written to {path}");
        return ExitCode.Fine;
    }
}
