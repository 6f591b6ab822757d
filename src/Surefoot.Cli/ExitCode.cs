namespace Surefoot.Cli;

/// <summary>What the process says when it ends.</summary>
public static class ExitCode
{
    /// <summary>Done; a check found no errors.</summary>
    public const int Fine = 0;

    /// <summary>A check found errors.</summary>
    public const int ErrorsFound = 1;

    /// <summary>A page could not be read, a file not be written, or the command was not understood.</summary>
    public const int CouldNotRead = 2;
}
