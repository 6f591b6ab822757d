using Surefoot.Cli.Asking;
using Surefoot.Cli.Printing;

namespace Surefoot.Cli;

/// <summary>The command line. Everything it does is in <see cref="CommandLine"/>; here the process begins and ends.</summary>
public static class Program
{
    public static int Main(string[] args)
    {
        using var screen = Screen.OfProcess();
        return CommandLine.Run(args, screen);
    }
}
