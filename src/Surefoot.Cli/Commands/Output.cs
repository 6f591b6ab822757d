using Surefoot.Cli.Files;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli.Commands;

/// <summary>Where a sheet or a picture goes.</summary>
internal static class Output
{
    /// <summary>
    /// Into the file asked for; else on along the pipe; else, for what a terminal cannot show, into a file
    /// of the page's name in the current folder.
    /// </summary>
    public static int Give(Screen screen, string text, string? asked, string? unasked)
    {
        var path = asked ?? (screen.OnTerminal ? unasked : null);
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
